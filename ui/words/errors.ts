import { fromSim } from './from-sim.ts';

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
export function problemText(problem: Omit<Trouble, 'where'>): string {
  const text = partsText(problem);
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

/** One line: `store.water_depth - expected a length, 2 in to 10 ft - got "50 psi" - give it as in "3 ft".` */
export function troubleLine({ where, ...problem }: Trouble): string {
  return `${fromSim(where) || 'the file'} - ${problemText(problem)}`;
}

/** The message of an error of the simulation, which has the shape already: one trouble or several, a line each. */
export function errorText(message: string): string {
  const lines = message.split('\n').map((line) => {
    const trouble = troubleIn(line);
    return trouble ? `${fromSim(trouble.where)} - ${partsText(trouble)}` : fromSim(line);
  });
  return lines.join('\n');
}

/** The parts of an error's message; null where it has another shape. */
export function troubleIn(message: string): Trouble | null {
  const parts = /^(.+?) - expected (.+?) - got (.+?) - (.+)$/s.exec(message);
  return parts && { where: parts[1], expected: parts[2], got: parts[3], fix: parts[4] };
}

function partsText({ expected, got, fix }: Omit<Trouble, 'where'>): string {
  return `expected ${fromSim(expected)} - got ${errorText(got)} - ${fromSim(fix)}`;
}
