/** Inputs by the names a person knows them by. */
import { outlineOf, pathSteps, type Scenario, valueAt } from '../../../sim/index.ts';
import { fromSim, itemTitle, partTitle } from '../../words/index.ts';

/** The part that an input's path lies in, which has a card of its own. */
export function partOf(path: string): string {
  return /^(?:taps\.(?:showers|draws)\[\d+\]|[^.[]+(?:\[\d+\])?)/.exec(path)?.[0] ?? path;
}

/** Of the part and of all that the input lies in, as in "Store, insulation, sides, thickness". */
export function inputLabel(path: string, scenario: Scenario): string {
  const part = partOf(path);
  const name = valueAt(scenario, [...pathSteps(part), 'name']);
  const title = partTitle(part, typeof name === 'string' ? name : null);
  if (part === path) return title;
  return prefixes(part, path).reduce((all, at) => itemTitle(all, labelAt(at, scenario)), title);
}

/** Paths of what lies between a part and an input, and of the input itself; a list's first item goes without saying. */
function prefixes(part: string, path: string): string[] {
  const ends = [...path.matchAll(/\.|\[(?!0\])|$/g)]
    .map(({ index }) => index)
    .filter((end) => end > part.length);
  return ends.map((end) => path.slice(0, end).replace(/\[0\]$/, ''));
}

/** What it is called, without what its label adds by way of explanation; the second item of a list and later ones by number. */
function labelAt(path: string, scenario: Scenario): string {
  const label = outlineOf(scenario, path)?.label;
  const found = label && fromSim(label).split(',')[0];
  const item = /\[(\d+)\]$/.exec(path)?.[1];
  return `${found ?? path.replace(/^.*\.|\[\d+\]$/g, '')}${item === undefined ? '' : ` ${Number(item) + 1}`}`;
}
