/** The scenarios that are built into the page: all of /scenarios but those that are broken on purpose. */
export interface CatalogueEntry {
  id: string;
  name: string;
  note: string;
  /** As read from the file, unchecked: the worker checks it. */
  scenario: unknown;
}

const files = import.meta.glob<unknown>(['../../../scenarios/*.json', '!../../../scenarios/*_broken.json'], {
  eager: true,
  import: 'default',
});

/** The scenario that the page opens with. */
export const openingScenario = 'demo';

export const catalogue: CatalogueEntry[] = Object.entries(files)
  .map(([path, scenario]) => entryOf(path, scenario))
  .sort(
    (a, b) =>
      Number(b.id === openingScenario) - Number(a.id === openingScenario) || (a.name < b.name ? -1 : 1),
  );

function entryOf(path: string, scenario: unknown): CatalogueEntry {
  const id = path.replace(/^.*\/|\.json$/g, '');
  const { name, note } = scenario as { name?: unknown; note?: unknown };
  return {
    id,
    name: typeof name === 'string' ? name : id,
    note: typeof note === 'string' ? note : '',
    scenario,
  };
}
