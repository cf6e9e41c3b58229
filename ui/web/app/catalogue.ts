/**
 * The scenarios that come with the page: all of /scenarios but those that are broken on purpose. All but the opening
 * one are loaded when they are chosen; their names stand in the page since it was built.
 */
import demo from '../../../scenarios/demo.json';
import type { Scenario } from '../../../sim/index.ts';

export interface CatalogueEntry {
  id: string;
  name: string;
  note: string;
  /** As read from the file, unchecked: the worker checks it. */
  load(): Promise<Scenario>;
}

export type NamedScenario = Pick<CatalogueEntry, 'id' | 'name' | 'note'>;

/** The scenario that the page opens with. */
export const opening = { id: 'demo', scenario: demo as unknown as Scenario };

const files = import.meta.glob<Scenario>(
  ['../../../scenarios/*.json', '!../../../scenarios/demo.json', '!../../../scenarios/*_broken.json'],
  { import: 'default' },
);

/** In the order of their names; a page that was not built names them by their files. */
export function catalogueOf(named: readonly NamedScenario[]): CatalogueEntry[] {
  const entries = Object.entries(files).map(([path, load]) => {
    const id = path.replace(/^.*\/|\.json$/g, '');
    return { id, name: id, note: '', ...named.find((each) => each.id === id), load };
  });
  const { name, note = '' } = opening.scenario;
  const first = { id: opening.id, name, note, load: async () => opening.scenario };
  return [first, ...entries.sort((a, b) => (a.name < b.name ? -1 : 1))];
}
