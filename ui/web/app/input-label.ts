/** Inputs by the names a person knows them by. */
import { outlineOf, pathSteps, type Scenario, valueAt } from '../../../sim/index.ts';
import { itemTitle, partTitle } from '../../words/index.ts';

/** The part that an input's path lies in, which has a card of its own. */
export function partOf(path: string): string {
  return /^(?:taps\.(?:showers|draws)\[\d+\]|[^.[]+(?:\[\d+\])?)/.exec(path)?.[0] ?? path;
}

/** Of the part and of the input, as in "Coil: household, rolls". */
export function inputLabel(path: string, scenario: Scenario): string {
  const part = partOf(path);
  const name = valueAt(scenario, [...pathSteps(part), 'name']);
  const title = partTitle(part, typeof name === 'string' ? name : null);
  if (part === path) return title;
  const label = outlineOf(scenario, path)?.label ?? path.slice(part.length + 1);
  return itemTitle(title, label);
}
