import demoFile from '../../../../../scenarios/demo.json';
import {
  type FilledDefault,
  type Note,
  type OutlineEntry,
  type OutlineNode,
  outlineOf,
  readScenario,
  type Scenario,
} from '../../../../../sim/index.ts';
import { nodesIn } from '../../../../../ui/web/elements/cards/card-plan.ts';
import type { Surroundings } from '../../../../../ui/web/elements/cards/entry-view.ts';

export const demo = demoFile as Scenario;

/** As little as a scenario can say. */
export const bare: Scenario = {
  format: 'tankful',
  version: 1,
  name: 'bare',
  site: { latitude: '44 N' },
  store: { inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' } },
  coils: [
    { name: 'one', tube: { kind: 'refrigeration', size: '3/8 in' }, roll_length: '50 ft' },
    { name: 'two', tube: { kind: 'PEX', size: '1/2 in' }, roll_length: '50 ft' },
  ],
  taps: { coil: 'one' },
};

export function readOf(scenario: Scenario): { filled: FilledDefault[]; notes: Note[] } {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

export function outline(scenario: Scenario, path: string): OutlineNode {
  const root = outlineOf(scenario, path, readOf(scenario).filled);
  if (!root) throw new Error(path);
  return root;
}

/** An entry of a part, and what stands beside it. */
export function entryOf(
  scenario: Scenario,
  part: string,
  path: string,
): { entry: OutlineEntry; siblings: OutlineNode[] } {
  const all = nodesIn(outline(scenario, part));
  const entry = all.find((node) => node.path === path);
  if (entry?.kind !== 'entry') throw new Error(path);
  const siblings = all.find((node) => node.kind === 'group' && node.nodes.includes(entry));
  return { entry, siblings: siblings?.kind === 'group' ? siblings.nodes : [] };
}

export const calm: Surroundings = {
  problems: [],
  notes: [],
  typed: {},
  units: 'US',
  draft: null,
  sourced: null,
  examples: new Set(),
};
