/**
 * What measuring leaves of a doubt. Four recipes of the site (cool-down, coil outlet, heat-up, a reading), each with
 * the doubt of cheap probes, buckets and tapes; the value is taken to be found where the scenario has it.
 */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import { volumeBelow } from '../../parts/store/geometry.ts';
import { evaporativeHeat } from '../../physics/evaporation.ts';
import { coilOf } from '../coil/coil-of.ts';
import { ShowerBench } from '../coil/shower-bench.ts';
import { READING_DOUBT_K } from '../fit/misfit.ts';
import { householdOf, showerOf } from '../household.ts';
import type { JobDone } from '../job.ts';
import type { Varied } from './varied.ts';

export type Recipe = 'cool_down' | 'outlet_test' | 'heat_up' | 'reading';

export interface Measurement {
  /** The input that it is for. */
  path: string;
  recipe: Recipe;
  /** Ends that remain, SI, by path: the test of a coil tells all that hinders its heat at once. */
  leaves: Map<string, { low: number; high: number }>;
}

/** A store that cools by itself for a day from its usual temperature. */
export interface Cooling {
  drop_K: number;
  /** Of what it loses, through walls and lid and not as vapour. */
  conducted_share: number;
}

/** Bands hold nine in ten: so many deviations of a normal spread lie to either side. */
const DEVIATIONS = 1.645;
/** A bucket, a jug or a mark on a fuel tank [share of it]: common practice. */
const BUCKET = 0.05;
/** A tape [share], a thermometer of its own [K] and a kitchen clock [s]: common practice. */
const TAPE = 0.02;
const THERMOMETER_K = 0.5;
const CLOCK_S = 60;
/** Hours of the tests. A night that cools the store by less than this wants two days instead. */
const NIGHT_H = 10;
const LONG_H = 48;
const LEAST_DROP_K = 1.7;
const HEAT_UP_S = 1.5 * 3600;
/** Of water between 20 and 80 C [J/(kg K)], within 0.3 %. */
const HEAT_CAPACITY = 4186;

/**
 * Relative doubt of the conducted loss after an overnight cool-down: the doubt of a difference of two readings over
 * the drop, sqrt(2) 0.25 K / drop, in the loss as a whole; a night that drops less than 1.7 K counts as 48 hours.
 */
export function coolDownDoubt({ drop_K, conducted_share }: Cooling): number {
  const night_K = (drop_K * NIGHT_H) / 24;
  const seen_K = night_K >= LEAST_DROP_K ? night_K : (drop_K * LONG_H) / 24;
  return (Math.SQRT2 * READING_DOUBT_K) / seen_K / conducted_share;
}

/** Relative doubt of the jacket's heat after an hour and a half at a steady load: rise of the stirred store, fuel to a mark. */
export function heatUpDoubt(rise_K: number): number {
  return Math.hypot((Math.SQRT2 * READING_DOUBT_K) / rise_K, BUCKET);
}

/**
 * Relative doubt of a coil's outside film after an outlet test: three readings and a bucket, by how much each moves
 * the outlet. @param slopes change of the outlet [K] per relative change of the film and of the flow
 */
export function outletDoubt(effectiveness: number, slopes: { film_K: number; flow_K: number }): number {
  const readings_K = READING_DOUBT_K * Math.hypot(1, effectiveness, 1 - effectiveness);
  return Math.hypot(readings_K, slopes.flow_K * BUCKET) / Math.abs(slopes.film_K);
}

/** Doubt that a single reading of a value leaves, in its own unit. */
export function readingDoubt({ field, value }: Pick<Varied, 'field' | 'value'>): number {
  if (field.kind === 'number') return field.whole ? 0 : BUCKET * Math.abs(value);
  switch (field.dimension) {
    case 'temperature':
    case 'temperature_difference':
      return THERMOMETER_K;
    case 'clock':
      return CLOCK_S;
    case 'length':
    case 'area':
      return TAPE * Math.abs(value);
    default:
      return BUCKET * Math.abs(value);
  }
}

/** What can be measured of inputs that are varied, each once. @param tank_C the store's usual temperature */
export function measurementsOf(
  plant: PlantDescription,
  varied: readonly Varied[],
  tank_C: number,
  cooling: Cooling | null,
): Measurement[] {
  const measurable = varied.filter(({ measure }) => measure !== null);
  return measurable.flatMap((each) => measurementOf(plant, varied, each, tank_C, cooling) ?? []);
}

function measurementOf(
  plant: PlantDescription,
  varied: readonly Varied[],
  each: Varied,
  tank_C: number,
  cooling: Cooling | null,
): Measurement | null {
  const { path } = each;
  const leaves = new Map<string, { low: number; high: number }>();
  const narrow = (input: Varied | undefined, doubt: number) => {
    if (!input) return;
    const half = DEVIATIONS * doubt;
    const low = Math.max(input.low, input.value - half);
    const high = Math.min(input.high, input.value + half);
    if (high - low < input.high - input.low) leaves.set(input.path, { low, high });
  };
  const of = (other: string) => varied.find((input) => input.path === other);
  const found = (recipe: Recipe) => (leaves.has(path) ? { path, recipe, leaves } : null);
  if (path === 'store.bridges') {
    if (!cooling || !(cooling.drop_K > 0) || !(cooling.conducted_share > 0)) return null;
    narrow(each, coolDownDoubt(cooling) * each.value);
    return found('cool_down');
  }
  if (path === 'engine.jacket_share' && plant.engine) {
    const doubt = heatUpDoubt(riseOf(plant, plant.engine));
    // One load tells the share there; it moves at every load alike.
    narrow(each, doubt * each.value);
    const light = of('engine.jacket_share_light');
    narrow(light, doubt * (light?.value ?? 0));
    return found('heat_up');
  }
  const coil = /^coils\[(\d+)\]\.outside_film$/.exec(path);
  if (coil) {
    const doubt = outletTest(plant, Number(coil[1]), tank_C);
    if (doubt === null) return null;
    narrow(each, doubt * each.value);
    for (const key of ['bundling', 'inside_film', 'fouling']) narrow(of(`coils[${coil[1]}].${key}`), 0);
    return found('outlet_test');
  }
  // The share at a light load comes with the heat-up at any.
  if (path === 'engine.jacket_share_light') return null;
  narrow(each, readingDoubt(each));
  return found('reading');
}

/** Rise of the store over the heat-up at the engine's own load and its rated share, without losses [K]. */
function riseOf({ store }: PlantDescription, engine: EngineDescription): number {
  const [{ output_W }] = engine.load;
  const fuel_kg_s = engine.no_load_kg_s + engine.slope_kg_J * output_W;
  const heat_W = fuel_kg_s * engine.fuel.lower_heating_value_J_kg * engine.jacket_share.rated;
  const mass_kg = 1000 * volumeBelow(store.shape, store.water_depth_m);
  return (heat_W * HEAT_UP_S) / (mass_kg * HEAT_CAPACITY);
}

/** A little more, for slopes. */
const STEP = 0.05;

/** Doubt of the household's own coil after its test; other coils cannot be tested so. */
function outletTest(plant: PlantDescription, index: number, tank_C: number): number | null {
  if (!plant.taps || householdOf(plant).index !== index) return null;
  const { taps, coil } = householdOf(plant);
  const shower = showerOf(taps);
  const { cold_C } = new ShowerBench(plant, shower);
  if (!(Math.abs(tank_C - cold_C) > 1)) return null;
  const at = (film: number, flow: number) =>
    coilOf({
      ...coil,
      outside_film: coil.outside_film * film,
      flow_m3_s: shower.flow_m3_s * flow,
      tank_C,
      cold_C,
    });
  const base = at(1, 1);
  const slope = (film: number, flow: number) => (at(film, flow).outlet_C - base.outlet_C) / STEP;
  return outletDoubt(base.effectiveness, { film_K: slope(1 + STEP, 1), flow_K: slope(1, 1 + STEP) });
}

/** How a store cools in a day by itself, from the run of it; null where it does not. */
export function coolingOf(cool: JobDone | null, usual_C: number): Cooling | null {
  const { store_mean_C_end, loss_J, evaporated_kg } = cool?.figures ?? {};
  const drop_K = usual_C - (store_mean_C_end ?? usual_C);
  if (!(drop_K > 0) || !loss_J || !(loss_J > 0)) return null;
  const vapour_J = evaporativeHeat(evaporated_kg ?? 0, usual_C);
  return { drop_K, conducted_share: Math.max(0, 1 - vapour_J / loss_J) };
}
