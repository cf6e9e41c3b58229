/** One input and the values it takes: `store.water_depth=20 in:40 in:5`, `coils[0].rolls=1:4:4`, `store.lid=closed|ajar`. */
import { type FilledDefault, type OutlineEntry, outlineOf, type Scenario } from '../../scenario/index.ts';
import { nearestPath } from '../../scenario/known-path.ts';
import { refusal } from '../refusal.ts';
import { type Values, valuesOf } from './values.ts';

export interface Axis extends Values {
  path: string;
  /** The field's own label. */
  label: string;
}

/**
 * @param filled what reading the scenario filled in: an input that the file leaves out can be varied too
 * @throws RangeError in the house form
 */
export function readAxis(spec: string, scenario: Scenario, filled: readonly FilledDefault[]): Axis {
  const cut = spec.indexOf('=');
  const path = spec.slice(0, Math.max(0, cut)).trim();
  const values = spec.slice(cut + 1).trim();
  if (path === '' || values === '') {
    const fix = 'write it as store.water_depth="20 in:40 in:5"';
    throw refusal('vary', 'a path and its values', `"${spec}"`, fix);
  }
  const { field, label } = entryAt(path, scenario, filled);
  return { path, label, ...valuesOf(path, field, values) };
}

function entryAt(path: string, scenario: Scenario, filled: readonly FilledDefault[]): OutlineEntry {
  const node = outlineOf(scenario, path, filled);
  if (node?.kind === 'entry') return node;
  if (node)
    throw refusal(path, 'an input that holds one value', 'a part with several', 'name one value in it');
  // The word that decides what else a part has is told of with its part.
  const part = outlineOf(scenario, path.slice(0, Math.max(0, path.lastIndexOf('.'))), filled);
  const word = part?.kind === 'group' ? part.nodes.find((each) => each.path === path) : undefined;
  if (word?.kind === 'entry') return word;
  const near = nearestPath(path);
  if (near === path) {
    const fix = 'name a part that is there, of the kind the file says it is';
    throw refusal(path, 'an input of this scenario', 'one that it does not have', fix);
  }
  const fix = near ? `did you mean ${near}?` : 'see tankful schema for the names';
  throw refusal(path, 'the path of an input', 'none of that name', fix);
}
