/** The one shape of an error a person reads: where - expected what - got what - what to do. */
export interface Trouble {
  where: string;
  expected: string;
  got: string;
  fix: string;
}

/** One line: `store.water_depth - expected a length, 2 in to 10 ft - got "50 psi" - give it as in "3 ft".` */
export function troubleLine({ where, expected, got, fix }: Trouble): string {
  return `${where || 'the file'} - expected ${expected} - got ${got} - ${fix}${/[.!?]$/.test(fix) ? '' : '.'}`;
}
