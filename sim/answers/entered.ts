/** Values put into a scenario file as a person would enter them. */
import { entering, type FilledDefault, type Mark, type Scenario } from '../scenario/index.ts';
import { type Edit, edited } from './edit.ts';

/** A scenario file and what its reading filled in and found marked. */
export interface File {
  scenario: Scenario;
  filled: readonly FilledDefault[];
  marks: readonly Mark[];
}

/** Edits that put values in, one after the other: what stood in for a whole is written down beside them. */
export function entered(
  { scenario, filled }: Pick<File, 'scenario' | 'filled'>,
  values: readonly (readonly [path: string, value: unknown])[],
): Edit[] {
  let file = scenario;
  const edits: Edit[] = [];
  for (const [path, value] of values) {
    const own = entering(file, path, value, filled).edits;
    file = edited(file, own);
    edits.push(...own);
  }
  return edits;
}
