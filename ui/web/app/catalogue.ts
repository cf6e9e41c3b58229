/**
 * The scenarios that come with the page: all of /scenarios but those that are broken on purpose. Of all but the opening
 * one only names are there at first.
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

/** The scenario that the page opens with. */
export const opening = { id: 'demo', scenario: demo as unknown as Scenario };

const files = import.meta.glob<Scenario>(['../../../scenarios/*.json', '!../../../scenarios/*_broken.json'], {
  import: 'default',
});
const names = import.meta.glob<string>(['../../../scenarios/*.json', '!../../../scenarios/*_broken.json'], {
  eager: true,
  import: 'name',
});
const notes = import.meta.glob<string>(['../../../scenarios/*.json', '!../../../scenarios/*_broken.json'], {
  eager: true,
  import: 'note',
});

export const catalogue: CatalogueEntry[] = Object.entries(files)
  .map(([path, load]) => {
    const id = path.replace(/^.*\/|\.json$/g, '');
    return { id, name: names[path] ?? id, note: notes[path] ?? '', load };
  })
  .sort((a, b) => Number(b.id === opening.id) - Number(a.id === opening.id) || (a.name < b.name ? -1 : 1));
