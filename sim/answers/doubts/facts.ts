/** What is told of each run of an ensemble, and over all of them. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Banded } from '../answer.ts';
import type { FactKind, Facts } from '../band.ts';
import type { JobDone } from '../job.ts';

/** Figures of one run. */
export function runFacts({ taps, engine, backup }: PlantDescription, { figures }: JobDone): Facts {
  const { cold_shower_s, cold_draw_s, showers_cold, store_mean_C, store_top_C_min, store_top_C_max } =
    figures;
  const draws = (taps?.draws.length ?? 0) > 0;
  return {
    ...(draws ? { cold_s: (cold_shower_s ?? 0) + (cold_draw_s ?? 0) } : {}),
    ...(figures.showers ? { showers_cold } : {}),
    store_mean_C,
    store_top_C_min,
    store_top_C_max,
    ...(engine?.runs.kind === 'call for heat' ? { fuel_m3: figures.fuel_m3 } : {}),
    ...(backup ? { backup_fuel_m3: figures.backup_fuel_m3 } : {}),
  };
}

const DIMENSIONS: Readonly<Record<string, FactKind['dimension']>> = {
  cold_s: 'time',
  showers_cold: 'count',
  store_mean_C: 'temperature',
  store_top_C_min: 'temperature',
  store_top_C_max: 'temperature',
  fuel_m3: 'volume',
  backup_fuel_m3: 'volume',
};

export function dimensionOf(key: string): FactKind['dimension'] {
  return DIMENSIONS[key];
}

/** A fact as the scenario stands, and from the least to the most that any run had. */
export function overRuns(key: string, base: Facts, finer: Facts, runs: readonly Facts[]): Banded | null {
  const value = base[key];
  if (value === null || value === undefined) return null;
  const [low, high] = reach(runs, key) ?? [value, value];
  const numerical = Math.abs((finer[key] ?? value) - value);
  return { value, low, high, numerical, dimension: dimensionOf(key) };
}

/** Least and most of a fact; null where no run has it. */
function reach(runs: readonly Facts[], key: string): [low: number, high: number] | null {
  const values = runs.flatMap((run) => run[key] ?? []);
  return values.length === 0 ? null : [Math.min(...values), Math.max(...values)];
}

/** Of runs in order this share is left out at either end, where one odd run would say too much. */
const ODD = 0.1;

/** Ends of a fact over the middle runs; null where none has it. */
export function middle(runs: readonly Facts[], key: string): [low: number, high: number] | null {
  const values = runs.flatMap((run) => run[key] ?? []).sort((a, b) => a - b);
  const odd = Math.floor(ODD * values.length);
  return values.length === 0 ? null : [values[odd], values[values.length - 1 - odd]];
}

/** Cold water comes first where it comes in this share of the runs at the least. */
const OFTEN = 0.25;

/** What the runs are told apart by: the time that water ran cold where it often does, else how warm the store is. */
export function headlineOf(runs: readonly Facts[]): string {
  const cold = runs.filter(({ cold_s }) => (cold_s ?? 0) > 0).length;
  return cold > 0 && cold >= OFTEN * runs.length ? 'cold_s' : 'store_mean_C';
}
