/** What a change gains: warm water where some is missing, else fuel where heat is asked for, else heat. */
import type { PlantDescription } from '../../parts/description.ts';
import { volumeBelow } from '../../parts/store/geometry.ts';
import type { Banded } from '../answer.ts';
import type { JobDone } from '../job.ts';
import { fuelPrice_m3 } from '../prices.ts';

export type GainKey = 'warm_m3_day' | 'spared_money_year' | 'heat_J_day';

const YEAR_DAYS = 365;
/** Of water between 20 and 80 C [J/(kg K)], within 0.3 %. */
const HEAT_CAPACITY = 4186;
/** Less of the water wanted than this came cold: nothing is missing. */
const MISSING = 0.002;

/** The figure that people who have this design want more of. */
export function gainOf({ engine, backup }: PlantDescription, { figures }: JobDone): GainKey {
  const { cold_m3, wanted_m3 } = figures;
  if ((cold_m3 ?? 0) > MISSING * (wanted_m3 ?? 0)) return 'warm_m3_day';
  return engine?.runs.kind === 'call for heat' || backup ? 'spared_money_year' : 'heat_J_day';
}

export const GAIN_DIMENSIONS: Record<GainKey, Banded['dimension']> = {
  warm_m3_day: 'volume',
  spared_money_year: 'money',
  heat_J_day: 'energy',
};

/** Fuel of engine and backup heater over a year that goes on as these days, at the plant's prices. */
export function fuelMoney({ engine, backup, prices, run }: PlantDescription, { figures }: JobDone): number {
  const own = engine ? (figures.fuel_m3 ?? 0) * fuelPrice_m3(prices, engine.fuel) : 0;
  const other = backup ? (figures.backup_fuel_m3 ?? 0) * fuelPrice_m3(prices, backup.fuel) : 0;
  return ((own + other) * YEAR_DAYS) / run.days;
}

/** A figure of one run that more of is better; the difference of two is a gain. */
export function goodOf(key: GainKey, plant: PlantDescription, done: JobDone): number {
  const { figures } = done;
  const { days } = plant.run;
  switch (key) {
    case 'warm_m3_day':
      return (figures.delivered_m3 ?? 0) / days;
    case 'spared_money_year':
      return -fuelMoney(plant, done);
    case 'heat_J_day': {
      // What was taken out warm and what is there still.
      const mass_kg = 1000 * volumeBelow(plant.store.shape, plant.store.water_depth_m);
      const held_J = mass_kg * HEAT_CAPACITY * (figures.store_mean_C_end ?? 0);
      return ((figures.household_heat_J ?? 0) + held_J) / days;
    }
  }
}

export type Harm = 'boils' | 'too_hot' | '';

/** Whether a run boils, or is too hot for its own walls. */
export function harmIn({ figures }: JobDone): Harm {
  const { boiled_kg, liner_over_s, foam_over_s, wall_over_s } = figures;
  if ((boiled_kg ?? 0) > BOILED_KG) return 'boils';
  return (liner_over_s ?? 0) + (foam_over_s ?? 0) + (wall_over_s ?? 0) > OVER_S ? 'too_hot' : '';
}

/** Harm that the design as it stands does not do. */
export function harmOf(base: JobDone, changed: JobDone): Harm {
  const harm = harmIn(changed);
  return harm === harmIn(base) ? '' : harm;
}

const BOILED_KG = 0.01;
const OVER_S = 60;
