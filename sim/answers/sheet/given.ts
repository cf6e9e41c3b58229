/** Inputs whose values are worth more, or less, than what else is typed in: measured ones, and those one is unsure of. */
import { type FilledDefault, pathSteps, type Scenario, valueAt } from '../../scenario/index.ts';

export interface GivenInput {
  path: string;
  /** As in the file. */
  value: string | number;
  /** How unsure its author is; null where nothing says so. */
  unsure: 'a little' | 'a lot' | { from: string; to: string } | null;
  /** One that a measurement gives, and nobody knows otherwise: what a fit to a log writes into the file. */
  measured: boolean;
}

/** What `tankful fit` finds. */
const MEASURED = /^(store\.bridges|coils\[\d+\]\.outside_film|engine\.jacket_share)$/;

/** Measured inputs first, then those marked as unsure, in the file's order; a default is none unless it is marked. */
export function givenInputs(scenario: Scenario, filled: readonly FilledDefault[]): GivenInput[] {
  const doubts = scenario.doubts ?? [];
  const fitted = [
    'store.bridges',
    ...(scenario.coils ?? []).map((_, i) => `coils[${i}].outside_film`),
    'engine.jacket_share',
  ];
  const paths = new Set([...fitted, ...doubts.map(({ input }) => input)]);
  return [...paths].flatMap((path): GivenInput[] => {
    const doubt = doubts.find(({ input }) => input === path);
    const written = valueAt(scenario, pathSteps(path));
    const value = written ?? (doubt && filled.find((each) => each.path === path)?.value);
    if (typeof value !== 'string' && typeof value !== 'number') return [];
    const unsure =
      doubt === undefined
        ? null
        : doubt.unsure === 'between'
          ? { from: doubt.from, to: doubt.to }
          : doubt.unsure;
    return [{ path, value, unsure, measured: written !== undefined && MEASURED.test(path) }];
  });
}
