/** What each failure does, from its runs: when, how hot, how much; and beside it what the same days are without. */
import type { PlantDescription } from '../../parts/description.ts';
import { fluidBoilingPoint } from '../../physics/fluid.ts';
import { burnTime } from '../../physics/scald.ts';
import { standardPressure } from '../../physics/water.ts';
import type { FactKind, Facts } from '../band.ts';
import { COURSE_S, happens, reaches } from '../course.ts';
import type { JobDone } from '../job.ts';
import { coldOf, freezingFacts, trappedCoils } from './by-hand.ts';
import { LEAD_S, OFF_DAYS, type Plan, type RunKey, type Runs } from './runs.ts';

const DAY = 86_400;

export function breaksFacts(plant: PlantDescription, plan: Plan, runs: Runs): Facts {
  const cold_C = coldOf(plant);
  const coils = trappedCoils(plant, cold_C);
  const [trapped] = coils;
  const loops = coils.flatMap(({ household, rated_K }) => (household || rated_K === null ? [] : [rated_K]));
  return {
    ...summerFacts(plant, plan, runs),
    ...winterFacts(plant, runs),
    ...stillFacts(runs),
    ...freezingFacts(plant, cold_C),
    trapped_store_C: hottestOf(runs),
    trapped_per_K_Pa: trapped?.per_K_Pa ?? null,
    trapped_rated_Pa: trapped?.rated_Pa ?? null,
    trapped_rated_K: trapped?.rated_K ?? null,
    trapped_burst_K: trapped?.burst_K ?? null,
    // Where no household comes first, the loop is already told of.
    trapped_loop_K: trapped?.household && loops.length > 0 ? Math.min(...loops) : null,
  };
}

function summerFacts(plant: PlantDescription, { sunny_day }: Plan, runs: Runs): Facts {
  const { collector, site } = plant;
  const noon_s = sunny_day * DAY + DAY / 2;
  const { away, limitless, pump } = runs;
  const stood_C = pump?.course?.collector_C?.slice(
    noon_s / COURSE_S,
    (noon_s + OFF_DAYS * DAY) / COURSE_S + 1,
  );
  const boiling_C = collector && fluidBoilingPoint(collector.fluid, standardPressure(site.altitude_m));
  const tap_C = partOf(runs.mixing, 1)?.outlet_C_max ?? null;
  return {
    pump_collector_C: stood_C ? Math.max(...stood_C) : null,
    pump_steam_s:
      pump?.course?.collector_C && boiling_C !== null
        ? reaches(pump.course.collector_C, boiling_C, noon_s)
        : null,
    away_top_C: partOf(away, 1)?.store_top_C_max ?? null,
    away_plain_C: partOf(runs.summer, 1)?.store_top_C_max ?? null,
    away_limit_s: away?.course ? happens(away.course, 'collector.high_limit', LEAD_S) : null,
    away_stood_s: partOf(away, 1)?.stagnation_s ?? null,
    limitless_top_C: partOf(limitless, 1)?.store_top_C_max ?? null,
    limitless_boils_s: limitless?.course ? happens(limitless.course, 'store.boiling', LEAD_S) : null,
    limitless_boiled_kg: partOf(limitless, 1)?.boiled_kg ?? null,
    mixing_tap_C: tap_C,
    mixing_plain_C: partOf(runs.summer, 1)?.outlet_C_max ?? null,
    mixing_burn_s: tap_C === null ? null : burnTime(tap_C),
  };
}

function winterFacts(plant: PlantDescription, runs: Runs): Facts {
  const plain = partOf(runs.winter, 1);
  const off = partOf(runs.off, 1);
  const power = partOf(runs.power, 1);
  const night = partOf(runs.night, 1);
  const { cistern } = runs;
  const showers = plain?.showers ?? null;
  return {
    plain_mean_C: plain?.store_mean_C_end ?? null,
    plain_cold: plain?.showers_cold ?? null,
    off_mean_C: off?.store_mean_C_end ?? null,
    off_cold: off?.showers_cold ?? null,
    off_first_s: off?.first_cold_s ?? null,
    power_mean_C: power?.store_mean_C_end ?? null,
    power_missed: power && showers !== null ? showers - (power.showers ?? 0) : null,
    power_collector_C: plant.collector ? (power?.collector_C_max ?? null) : null,
    night_collector_C: night?.collector_C_min ?? null,
    night_freezing_s: night?.freezing_s ?? null,
    weak_freezing_s: partOf(runs.weak, 1)?.freezing_s ?? null,
    cistern_ice_s: cistern?.course ? reaches(cistern.course.cold_C, 0.005, 0, -1) : null,
    cistern_frozen_s: cistern?.course ? happens(cistern.course, 'cistern.frozen', 0) : null,
  };
}

/** Kelvin that a still day costs, and what of it the failure adds. */
function stillFacts(runs: Runs): Facts {
  const start = (key: RunKey) => runs[key]?.figures.store_mean_C_end ?? null;
  const ended_C = start('still');
  const more = (key: RunKey) => {
    const end_C = start(key);
    return end_C === null || ended_C === null ? null : ended_C - end_C;
  };
  return {
    lid_more_K: more('lid'),
    lid_vapour_kg: runs.lid?.figures.evaporated_kg ?? null,
    sun_valve_more_K: more('sun_valve'),
    engine_valve_more_K: more('engine_valve'),
  };
}

/** Hottest top of the store with nothing failing. */
function hottestOf({ summer, winter }: Runs): number | null {
  const tops = [summer, winter].flatMap((done) => done?.figures.store_top_C_max ?? []);
  return tops.length > 0 ? Math.max(...tops) : null;
}

function partOf(done: JobDone | null | undefined, part: number): JobDone['figures'] | null {
  return done?.parts[part]?.figures ?? null;
}

const temperature: FactKind = { dimension: 'temperature' };
const time: FactKind = { dimension: 'time', least: 0 };
const pressure: FactKind = { dimension: 'pressure', least: 0 };
const kelvin: FactKind = { dimension: 'temperature_difference' };
const many: FactKind = { dimension: 'count', least: 0 };
const kilograms: FactKind = { dimension: 'mass', least: 0 };

const KINDS: Record<string, FactKind> = {
  pump_collector_C: temperature,
  pump_steam_s: { ...time, numerical: COURSE_S / 2 },
  away_top_C: temperature,
  away_plain_C: temperature,
  away_limit_s: time,
  away_stood_s: time,
  limitless_top_C: temperature,
  limitless_boils_s: time,
  limitless_boiled_kg: kilograms,
  mixing_tap_C: temperature,
  mixing_plain_C: temperature,
  mixing_burn_s: time,
  plain_mean_C: temperature,
  plain_cold: many,
  off_mean_C: temperature,
  off_cold: many,
  off_first_s: time,
  power_mean_C: temperature,
  power_missed: many,
  power_collector_C: temperature,
  night_collector_C: temperature,
  night_freezing_s: time,
  night_freezes_C: temperature,
  weak_freezes_C: temperature,
  weak_freezing_s: time,
  cistern_ice_s: { ...time, numerical: COURSE_S / 2 },
  cistern_frozen_s: time,
  pipe_ice_s: time,
  pipe_solid_s: time,
  lid_more_K: kelvin,
  lid_vapour_kg: kilograms,
  sun_valve_more_K: kelvin,
  engine_valve_more_K: kelvin,
  trapped_store_C: temperature,
  trapped_per_K_Pa: pressure,
  trapped_rated_Pa: pressure,
  trapped_rated_K: kelvin,
  trapped_burst_K: kelvin,
  trapped_loop_K: kelvin,
};

/** How the facts are printed, with what a finer computation moves them by. */
export function breaksKinds(facts: Facts, finer: Facts | null): Record<string, FactKind> {
  return Object.fromEntries(
    Object.entries(KINDS).map(([key, kind]) => {
      const [own, fine] = [facts[key], finer?.[key]];
      const moved = typeof own === 'number' && typeof fine === 'number' ? Math.abs(fine - own) : 0;
      return [key, { ...kind, numerical: Math.max(kind.numerical ?? 0, moved) }];
    }),
  );
}
