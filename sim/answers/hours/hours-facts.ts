/** The facts of the hours answer, from the months as found. */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import type { Limit } from '../answer.ts';
import type { FactKind, Facts } from '../band.ts';
import { backupPrice_kWh, fuelPrice_m3, perKWh } from '../prices.ts';
import { daysOfMonth } from '../stretch.ts';
import { type Found, MOST_STEPS, STEP_s } from './warm-hours.ts';

export const MONTHS = 12;
export const MOST_s = MOST_STEPS * STEP_s;

/** A month as found, beside what the hours that charging needs do. */
export interface Month {
  /** 0 = January. */
  month: number;
  found: Found;
  charging: Found['week'];
}

/** Hours that are never enough count as more than any. */
const lasting = ({ time_s }: Found): number => time_s ?? Number.POSITIVE_INFINITY;

export function worstOf(months: readonly Month[]): Month | null {
  return months.reduce<Month | null>(
    (worst, month) => (worst && lasting(worst.found) >= lasting(month.found) ? worst : month),
    null,
  );
}

/**
 * The facts, where the worst month comes out as `end`: every month is taken to need as many times what it needs as
 * the scenario stands.
 */
export function factsOf(
  { engine, prices, backup }: PlantDescription,
  months: readonly Month[],
  worst: Month,
  end: Found,
  charging_s: number,
): Facts {
  if (!engine) return {};
  const stretch = stepsOf(end) / stepsOf(worst.found);
  const need_s = ({ found }: Month) => Math.min(MOST_s, (found.time_s ?? MOST_s) * stretch);
  const sum = (of: (month: Month) => number) =>
    months.reduce((total, month) => total + of(month) * daysOfMonth(month.month), 0);
  const extra_s = (month: Month) => Math.max(0, need_s(month) - charging_s);
  const price = fuelPrice_m3(prices, engine.fuel);
  const year = months.length === MONTHS;
  const extra_m3 = fuelFlow(engine, months) * sum(extra_s);
  const week = end.week.engine_heat_J ? end.week : worst.charging;
  return {
    worst_s: end.time_s,
    mean_s: year ? sum(need_s) / 365 : null,
    extra_year_s: year ? sum(extra_s) : null,
    extra_fuel_m3: year ? extra_m3 : null,
    extra_money: year ? extra_m3 * price : null,
    // An hour run for hot water alone: all its fuel over the heat it brings into the store.
    engine_kWh_money: perKWh((week.fuel_m3 ?? 0) * price, week.engine_heat_J ?? 0),
    backup_kWh_money: backupPrice_kWh(prices, backup),
  };
}

/** Half a step stands for a month that needs nothing: nothing has no multiples. */
function stepsOf({ time_s }: Found): number {
  return Math.max(0.5, (time_s ?? MOST_s) / STEP_s);
}

/** Fuel by the second while it runs [m3/s], from any run in which it did. */
export function fuelFlow(engine: EngineDescription, months: readonly Month[]): number {
  for (const { found, charging } of months) {
    for (const { fuel_m3, engine_s } of [found.week, charging]) {
      if (fuel_m3 && engine_s) return fuel_m3 / engine_s;
    }
  }
  return engine.no_load_kg_s / engine.fuel.density_kg_m3;
}

export function kindsOf(numerical_s: number): Record<string, FactKind> {
  return {
    worst_s: {
      dimension: 'time',
      least: 0,
      greatest: MOST_s,
      numerical: Math.max(STEP_s / 2, numerical_s),
      none: MOST_s,
    },
    mean_s: { dimension: 'time', least: 0, greatest: MOST_s, numerical: STEP_s / 2 },
    extra_year_s: { dimension: 'time', least: 0 },
    extra_fuel_m3: { dimension: 'volume', least: 0 },
    extra_money: { dimension: 'money', least: 0 },
    engine_kWh_money: { dimension: 'money', least: 0 },
    backup_kWh_money: { dimension: 'money', least: 0 },
  };
}

/** Radiated this share of what the store gets, the store no longer takes the engine's heat. */
const MUCH_RADIATED = 0.25;
/** A top this hot serves a shower through any coil worth its name [C] (common practice). */
const HOT_ENOUGH_C = 60;

/** Where not even half a day does and the store is hot, its water comes out cold for want of coil. */
export function limitOf({ found: { time_s, week } }: Month): Limit {
  if (time_s === null) return (week.store_top_C_min ?? 0) > HOT_ENOUGH_C ? 'coil' : 'engine';
  return (week.radiator_J ?? 0) > MUCH_RADIATED * (week.engine_heat_J ?? 0) ? 'coil' : 'engine';
}
