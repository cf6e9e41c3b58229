/** The facts of the collector's answer, from its runs. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Limit } from '../answer.ts';
import type { FactKind, Facts } from '../band.ts';
import { chargingTime } from '../hours/engine-span.ts';
import type { JobDone } from '../job.ts';
import { fuelPrice_m3 } from '../prices.ts';
import { daysToBoil, type Seasons, type SizeRun } from './runs.ts';
import { sparedTime } from './savings.ts';
import { sizePrice, stopsPaying } from './sizes.ts';

const DAY = 86_400;
const MONTHS = 12;

/** All that was computed. Sizes ascend; the first is no collector. */
export interface Found {
  runs: SizeRun[];
  /** Time a day that keeps the showers warm, by size and month, where the engine has a timetable; else null. */
  need_s: (number | null | undefined)[][] | null;
  /** First day of the dullest week [day of the year, 0 = 1 January]. */
  dull_day: number;
  /** Nobody home: as it is, with the high limit failing, with the pump dead. */
  away: Record<'none' | 'limit' | 'pump', JobDone | null>;
}

export interface Spared {
  /** Of the engine, were it run for hot water alone. */
  engine_s: number | null;
  /** Of the engine, where charging runs it as long as the timetable says anyway. */
  beyond_s: number | null;
  fuel_m3: number | null;
  money: number | null;
  /** With the engine's time beyond charging only. */
  beyond_money: number | null;
}

/** What a size spares in a year (or in a month, 0 = January) against no collector. */
export function sparedBy(plant: PlantDescription, found: Found, index: number, month?: number): Spared {
  const { engine, backup, prices } = plant;
  const none = { engine_s: null, beyond_s: null, fuel_m3: null, money: null, beyond_money: null };
  // A timetable that heats for nobody's draws goes on as it did.
  if (engine?.runs.kind === 'timetable' && !found.need_s) return none;
  if (engine) {
    const [engine_s, beyond_s] = [0, chargingTime(engine)].map((charging_s) =>
      timeSpared(found, index, charging_s, month),
    );
    const flow = fuelFlow(found);
    if (engine_s === null || beyond_s === null || flow === null) return none;
    const price = fuelPrice_m3(prices, engine.fuel);
    const fuel_m3 = flow * engine_s;
    return { engine_s, beyond_s, fuel_m3, money: fuel_m3 * price, beyond_money: flow * beyond_s * price };
  }
  const fuel_m3 = backup ? difference(found, index, 'backup_fuel_m3', month) : null;
  if (!backup || fuel_m3 === null) return none;
  const money = fuel_m3 * fuelPrice_m3(prices, backup.fuel);
  return { ...none, fuel_m3, money, beyond_money: money };
}

function timeSpared(found: Found, index: number, charging_s: number, month?: number): number | null {
  const { need_s } = found;
  if (!need_s) return difference(found, index, 'engine_s', month);
  const months = month === undefined ? Array.from({ length: MONTHS }, (_, each) => each) : [month];
  const spared = months.map((each) => sparedTime(need_s[0][each], need_s[index][each], each, charging_s));
  return spared.includes(null) ? null : spared.reduce<number>((sum, time_s) => sum + (time_s ?? 0), 0);
}

function difference(found: Found, index: number, key: string, month?: number): number | null {
  const [without, present] = [0, index].map((i) => figuresOf(found.runs[i], month)?.[key] ?? null);
  return without === null || present === null ? null : without - present;
}

/** Fuel a second while the engine runs [m3/s]. */
function fuelFlow({ runs }: Found): number | null {
  for (const { year } of runs) {
    const { fuel_m3, engine_s } = year?.figures ?? {};
    if (fuel_m3 && engine_s) return fuel_m3 / engine_s;
  }
  return null;
}

export function figuresOf({ year }: SizeRun, month?: number): JobDone['figures'] | null {
  if (!year) return null;
  return month === undefined ? year.figures : year.parts[month].figures;
}

/** Heat into the store over a year [J]; nothing without a collector. */
export function heatOf({ size, year }: SizeRun): number | null {
  if (size.area_m2 === 0) return 0;
  return year?.figures.solar_heat_J ?? null;
}

/** Time over the liner's limit, or over the wall's where there is no liner. */
export function overKey({ store }: PlantDescription): 'liner_over_s' | 'wall_over_s' {
  return store.liner ? 'liner_over_s' : 'wall_over_s';
}

export function presentOf(runs: readonly SizeRun[]): number {
  return runs.findIndex(({ size }) => size.present);
}

/**
 * The facts, where the collector brings `seasons` instead of `base` over the four stretches: the year's heat and
 * what it spares go with the stretches' heat, its share with theirs.
 */
export function factsOf(
  plant: PlantDescription,
  found: Found,
  base: Seasons | null,
  seasons: Seasons | null,
): Facts {
  const index = presentOf(found.runs);
  const run = found.runs[index];
  const figures = figuresOf(run);
  const heat_J = heatOf(run);
  const stretch = base && seasons && base.solar_J > 0 ? seasons.solar_J / base.solar_J : 1;
  const share = (sums: Seasons | null) =>
    sums ? sums.solar_J / Math.max(1, sums.solar_J + sums.engine_J) : 1;
  const times = (value: number | null | undefined) =>
    value === null || value === undefined ? null : value * stretch;
  const spared = sparedBy(plant, found, index);
  const price = sizePrice(run.size, plant.prices);
  const years = (money: number | null) => (money !== null && money > 0 ? price / (money * stretch) : null);
  const boils = found.away.limit ? daysToBoil(found.away.limit) : null;
  return {
    heat_J: times(heat_J),
    share: figures?.solar_share == null ? null : (figures.solar_share * share(seasons)) / share(base),
    dull_day_J: run.dull ? times((run.dull.solar_heat_J ?? 0) / 7) : null,
    dull_from_day: found.dull_day,
    spared_s: times(spared.engine_s),
    spared_beyond_s: times(spared.beyond_s),
    spared_fuel_m3: times(spared.fuel_m3),
    spared_money: times(spared.money),
    payback_years: years(spared.money),
    payback_beyond_years: years(spared.beyond_money),
    over_s: figures?.[overKey(plant)] ?? null,
    boils_s: boils === null ? null : boils * DAY,
    away_top_C: found.away.none?.figures.store_top_C_max ?? null,
    away_limitless_C: found.away.limit?.figures.store_top_C_max ?? null,
    dead_collector_C: found.away.pump?.figures.collector_C_max ?? null,
    area_m2: run.size.area_m2,
    stops_paying_m2: stopsPaying(
      found.runs.map(({ size }) => size.area_m2),
      found.runs.map(heatOf),
    ),
  };
}

/** `error`: share by which finer runs of the stretches differ. */
export function kindsOf(facts: Facts, error: number): Record<string, FactKind> {
  const of = (key: string) => Math.abs(facts[key] ?? 0) * error;
  return {
    heat_J: { dimension: 'energy', numerical: of('heat_J') },
    share: { dimension: 'share', least: 0, greatest: 1, numerical: of('share') },
    dull_day_J: { dimension: 'energy', numerical: of('dull_day_J') },
    dull_from_day: { dimension: 'count' },
    spared_s: { dimension: 'time', least: 0 },
    spared_beyond_s: { dimension: 'time', least: 0 },
    spared_fuel_m3: { dimension: 'volume', least: 0 },
    spared_money: { dimension: 'money', least: 0 },
    payback_years: { dimension: 'count', least: 0 },
    payback_beyond_years: { dimension: 'count', least: 0 },
    over_s: { dimension: 'time' },
    boils_s: { dimension: 'time', numerical: DAY / 2 },
    away_top_C: { dimension: 'temperature' },
    away_limitless_C: { dimension: 'temperature' },
    dead_collector_C: { dimension: 'temperature' },
    area_m2: { dimension: 'area' },
    stops_paying_m2: { dimension: 'area' },
  };
}

/** A collector that stands hot this long in a year is held back by the store [s] (judgement: a day in all). */
const LONG_STOOD_S = DAY;

/** The high limit stops the pump for long, or the sun is all there is. */
export function limitOf({ runs }: Found): Limit {
  const stood_s = runs[presentOf(runs)].year?.figures.stagnation_s ?? 0;
  return stood_s > LONG_STOOD_S ? 'store' : 'sun';
}
