/** The one shape of an error a person reads: where - expected what - got what - what to do. */
export interface Trouble {
  where: string;
  expected: string;
  got: string;
  fix: string;
}

/** What may come of work that does not end as it ought to. */
export const workWords = {
  expected: 'a result',
  notStarted: 'a worker that did not start',
  /** What to do where the message says what is wrong, and where it does not. */
  change: 'change the design where the message points',
  load: 'change the design, or load the page again',
} as const;

/** Without where it is: `expected a length, 2 in to 10 ft - got "50 psi" - give it as in "3 ft".` */
export function problemText({ expected, got, fix }: Omit<Trouble, 'where'>): string {
  return `expected ${expected} - got ${got} - ${fix}${/[.!?]$/.test(fix) ? '' : '.'}`;
}

/** One line: `store.water_depth - expected a length, 2 in to 10 ft - got "50 psi" - give it as in "3 ft".` */
export function troubleLine({ where, ...problem }: Trouble): string {
  return `${where || 'the file'} - ${problemText(problem)}`;
}
