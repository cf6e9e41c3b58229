/** What every run must satisfy, whatever was simulated: used by the fuzz tests here and in tests/nightly. */

import { type Result, readScenario, type Scenario, simulate } from '../../../sim/index.ts';
import type { PlantDescription, Surroundings } from '../../../sim/parts/description.ts';
import { drawCalendar } from '../../../sim/parts/draw-calendar.ts';
import { airSaturationPressure, dewPoint } from '../../../sim/physics/moist-air.ts';
import { standardPressure, waterBoilingPoint, waterDensity } from '../../../sim/physics/water.ts';

/** Ledger residual allowed, as a share of the throughput. */
const LEDGER = 1e-6;
/** A layer may pass a source or a sink by this much: samples are single precision, events are late by 10 ms [K]. */
const SLACK = 0.05;
/**
 * Water that boils may be this much hotter than its boiling point [K]: steam follows temperature within a minute's step, and
 * water that a draw cools lower down holds it back meanwhile (0.37 K for a minute, the most of 10,000 plants).
 */
const SUPERHEAT = 0.5;
/** Density may rise upwards by this much: tables are linear between whole degrees, which shows near 4 C [kg/m3]. */
const DENSITY_SLACK = 0.003;
/** Humidity the simulation takes outdoors; here only as the driest case for the dew point. */
const DRY_AIR = 0.7;
/** Less than this is rounding, not flow [m3/s]. */
const STILL_M3_S = 1e-11;
/** Integrals do not steer the step: one that has just begun may be this much below nothing [kg, m3, s ...]. */
const INTEGRAL_SLACK = 0.05;
/** Figures of heat that may go either way: a store colder than its room gains. */
const EITHER_WAY = /^(household_heat_J|loss_J|engine_heat_J|solar_heat_J|solar_share|radiator_J|.*_C(_.*)?)$/;

/** A random scenario cut to 1-3 days and a coarse interval, so that many fit into a test. */
export function shortened(scenario: Scenario, seed: number): Scenario {
  return { ...scenario, run: { ...scenario.run, days: 1 + (seed % 3), interval: '10 min' } };
}

/** Runs a scenario and returns what is wrong with the run, in words; nothing if it is sound. */
export function faultsOf(scenario: Scenario): string[] {
  const read = readScenario(scenario);
  if (!read.ok) return read.problems.map((p) => `${p.path} - expected ${p.expected} - got ${p.got}`);
  try {
    return faultsOfResult(read.plant, simulate(read.plant));
  } catch (error) {
    return [`threw ${String(error)}`];
  }
}

export function faultsOfResult(plant: PlantDescription, result: Result): string[] {
  return [
    ...notNumbers(plant, result),
    ...openLedger(result),
    ...outOfBounds(plant, result),
    ...heavyAboveLight(result),
    ...impossibleFigures(result),
    ...disorder(result),
  ];
}

function notNumbers(plant: PlantDescription, result: Result): string[] {
  const faults: string[] = [];
  for (const [key, value] of Object.entries(result.figures)) {
    if (value !== null && !Number.isFinite(value)) faults.push(`figure ${key} is ${value}`);
  }
  const { series } = result;
  const silent = silentAt(plant, result);
  for (const [key, values] of Object.entries({ ...series.channels, layer_C: series.layer_C })) {
    const at = values.findIndex((v, i) => !Number.isFinite(v) && !silent(key, i));
    if (at >= 0) faults.push(`series ${key} is ${values[at]} at sample ${at}`);
  }
  for (const path of result.ledger.paths) {
    if (!Number.isFinite(path.energy_J)) faults.push(`ledger ${path.key} is ${path.energy_J}`);
  }
  return faults;
}

/**
 * Where a channel may say nothing: the outlet's temperature is a mean over its interval and silent where nothing
 * flowed in it, as is what
 * was wanted where no draw was open in it; coil outlet and hot line are read at the instant and silent between draws.
 */
function silentAt(plant: PlantDescription, result: Result): (key: string, sample: number) => boolean {
  const { run, taps } = plant;
  const openings = drawCalendar(taps?.draws ?? [], run.days, run.first_weekday);
  const { time_s, channels } = result.series;
  const open = (t: number) => openings.some((o) => o.from_s <= t && t < o.to_s);
  const openWithin = (a: number, b: number) => openings.some((o) => o.from_s < b && o.to_s > a);
  const dry = (sample: number) => channels.mixed_flow_m3_s[sample] < STILL_M3_S;
  return (key, sample) => {
    if (key === 'outlet_C') return dry(sample);
    if (key === 'wanted_C') return !openWithin(time_s[sample] - run.interval_s, time_s[sample]);
    if (key === 'coil_outlet_C' || key === 'hot_line_C') return dry(sample) || !open(time_s[sample]);
    return false;
  };
}

function openLedger(result: Result): string[] {
  const { residual_J, throughput_J } = result.ledger;
  if (Math.abs(residual_J) <= LEDGER * throughput_J) return [];
  return [`ledger is open by ${residual_J} J of ${throughput_J} J`];
}

/**
 * No layer above the hottest source or boiling, none below the coldest sink. Sources and sinks are what can give or
 * take heat: the water at the start, cold and make-up water, air and ground around the store, engine and collector
 * with what stands around them. Past the lid evaporation can cool down to the dew point of the air.
 */
function outOfBounds(plant: PlantDescription, result: Result): string[] {
  const { low_C, high_C } = limitsOf(plant, result);
  const faults: string[] = [];
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (const t of result.series.layer_C) {
    lowest = Math.min(lowest, t);
    highest = Math.max(highest, t);
  }
  lowest = Math.min(lowest, result.figures.store_top_C_min ?? lowest);
  highest = Math.max(highest, result.figures.store_top_C_max ?? highest);
  if (lowest < low_C - SLACK) faults.push(`a layer is at ${lowest} C, below the coldest sink at ${low_C} C`);
  if (highest > high_C + SLACK)
    faults.push(`a layer is at ${highest} C, above the hottest source or boiling at ${high_C} C`);
  return faults;
}

function limitsOf(plant: PlantDescription, result: Result): { low_C: number; high_C: number } {
  const { store, engine, collector, supply, run, site } = plant;
  const days = plant.weather.air_C.length / 24;
  const hours = plant.weather.air_C.map((_, h, all) => all[(24 * (run.first_day % days) + h) % all.length]);
  const air = hours.slice(0, 24 * run.days + 1);
  // The curve through hourly means swings past them by no more than they do between neighbours.
  const outdoors = { low: Math.min(...air) - 5, high: Math.max(...air) + 5 };
  const around = (place: Surroundings) =>
    place.kind === 'outdoors'
      ? outdoors
      : { low: place.mean_C - place.swing_K / 2, high: place.mean_C + place.swing_K / 2 };
  const { cold } = supply;
  const colds =
    cold.kind === 'fixed' || cold.kind === 'by month'
      ? [cold.temperature_C].flat()
      : [cold.start_C, cold.refill_C, around(cold.surroundings).low, around(cold.surroundings).high].map(
          (t) => Math.max(0, t),
        );
  const place = around(store.surroundings);
  const all = [
    run.start.bottom_C,
    run.start.top_C,
    store.make_up_C,
    place.low,
    place.high,
    ...(plant.taps ? colds : []),
  ];
  if (store.ground_C !== null) all.push(store.ground_C);
  if (engine) {
    const { low, high } = around(engine.surroundings);
    all.push(low, high, hottestBlock(plant, high));
  }
  if (collector)
    all.push(
      outdoors.low,
      outdoors.high,
      result.figures.collector_C_max ?? 0,
      result.figures.collector_C_min ?? 0,
    );
  let low_C = Math.min(...all);
  if (store.vapour_share > 0) {
    const humidity = store.surroundings.kind === 'room' ? store.surroundings.relative_humidity : DRY_AIR;
    low_C = Math.min(low_C, dewPoint(humidity * airSaturationPressure(place.low)));
  }
  const boiling_C = waterBoilingPoint(standardPressure(site.altitude_m));
  return { low_C, high_C: Math.min(boiling_C + SUPERHEAT, Math.max(...all)) };
}

/** A block is warmest where its full radiator carries all the heat it is given. */
function hottestBlock(plant: PlantDescription, around_C: number): number {
  const { engine } = plant;
  if (!engine) return Number.NEGATIVE_INFINITY;
  const share = Math.max(engine.jacket_share.rated, engine.jacket_share.quarter) + engine.exhaust_share;
  const fuel_kg_s = engine.no_load_kg_s + engine.slope_kg_J * engine.rated_output_W;
  const heat_W = share * fuel_kg_s * engine.fuel.lower_heating_value_J_kg;
  return Math.max(engine.radiator.full_C, around_C + heat_W / engine.radiator.conductance_W_K);
}

function heavyAboveLight(result: Result): string[] {
  const { layer_C, layers, time_s } = result.series;
  for (let i = 0; i < time_s.length; i++) {
    for (let k = 1; k < layers; k++) {
      const below = layer_C[i * layers + k - 1];
      const above = layer_C[i * layers + k];
      // Ice is not modelled: water below freezing counts as heavy, and says nothing about what lies on it.
      if (below < 0) continue;
      if (above < 0 || waterDensity(above) > waterDensity(below) + DENSITY_SLACK) {
        return [`layer ${k} at ${above} C lies on lighter water at ${below} C, ${time_s[i]} s`];
      }
    }
  }
  return [];
}

function impossibleFigures(result: Result): string[] {
  const { figures } = result;
  const faults = Object.entries(figures)
    .filter(([key, value]) => value !== null && value < -INTEGRAL_SLACK && !EITHER_WAY.test(key))
    .map(([key, value]) => `figure ${key} is negative: ${value}`);
  const atMost = (less: string, more: number | null | undefined, what: string) => {
    const value = figures[less];
    if (typeof value === 'number' && typeof more === 'number' && value > more * (1 + 1e-9) + 1e-9)
      faults.push(`figure ${less} is ${value}, more than ${what} ${more}`);
  };
  atMost('delivered_m3', figures.wanted_m3, 'was wanted:');
  atMost('cold_m3', figures.wanted_m3, 'was wanted:');
  atMost('showers_cold', figures.showers, 'the showers:');
  for (const duration of ['engine_s', 'collector_s', 'stagnation_s', 'freezing_s', 'liner_over_s'])
    atMost(duration, result.days * 86_400, 'the length of the run in seconds:');
  return faults;
}

function disorder(result: Result): string[] {
  const { events, series, days } = result;
  const end = days * 86_400;
  const faults: string[] = [];
  if (events.some((e, i) => e.time_s < 0 || e.time_s > end || (i > 0 && e.time_s < events[i - 1].time_s)))
    faults.push('events are not in order of time within the run');
  const last = series.time_s[series.time_s.length - 1];
  if (last !== end) faults.push(`the last sample is at ${last} s, not at the end, ${end} s`);
  return faults;
}
