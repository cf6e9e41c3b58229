/** Values that were measured, as edits of a scenario: each with the band it is believed in, marked as a doubt. */
import type { Scenario } from '../../scenario/index.ts';
import type { Edit } from '../edit.ts';

/** An input as measured; texts as a file has them. */
export interface Measured {
  path: string;
  value: string | number;
  low: string;
  high: string;
}

/** Puts values in, and between which ends they are believed; marks of other inputs stay. */
export function measuredEdits({ doubts = [] }: Scenario, measured: readonly Measured[]): Edit[] {
  const paths = new Set(measured.map(({ path }) => path));
  const others = doubts.filter(({ input }) => !paths.has(input));
  const marks = measured.flatMap(({ path, low, high }) =>
    low === high ? [] : [{ input: path, unsure: 'between' as const, from: low, to: high }],
  );
  const values = measured.map(({ path, value }) => ({ path, value }));
  return marks.length + others.length === 0 && doubts.length === 0
    ? values
    : [...values, { path: 'doubts', value: [...others, ...marks] }];
}
