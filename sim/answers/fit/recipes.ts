/** What a small measurement says: numbers, and the inputs it settles, each with its band. */

import { findRoot } from '../../numerics/root.ts';
import type { PlantDescription } from '../../parts/description.ts';
import { storeGeometry, volumeBelow } from '../../parts/store/geometry.ts';
import { waterDensity, waterHeatCapacity, waterLatentHeat } from '../../physics/water.ts';
import { formatQuantity, parseQuantity } from '../../quantity/index.ts';
import type { Banded } from '../answer.ts';
import { coilOf } from '../coil/coil-of.ts';
import type { Edit } from '../edit.ts';
import { householdOf } from '../household.ts';
import { refusal } from '../refusal.ts';
import { type Question, readQuestion } from '../vary.ts';
import { vapourInput } from './inputs.ts';
import { measuredEdits } from './measured.ts';
import { banded, ends, type Found, input, litresAMinute, percent, plain } from './recipe-bands.ts';
import { RECIPES, type Recipe, type RecipeField } from './recipe-fields.ts';
import { type Bench, benchRun, inputFor, type Sought, stirred_C } from './recipe-runs.ts';

export interface RecipeAnswer {
  kind: Recipe['kind'];
  /** What was found, by name; the first is the headline. */
  facts: Record<string, Banded>;
  /** Inputs it settles, as they are shown. */
  inputs: { path: string; value: Banded }[];
  /** What puts them into the design, with their bands. */
  edits: Edit[];
}

/** Two readings of a cheap thermometer, half a kelvin each. */
const DIFFERENCE_K = 0.7;
const READING_K = 0.5;
/** A bucket's mark is good to a thirtieth, a watch and a hand to a second. */
const BUCKET_SHARE = 1 / 30;
const WATCH_S = 1;
/** A stick's mark in a store that is not quite still [m]. */
const MARK_M = 1e-3;
const DAY = 86_400;

type Values = Record<string, number>;

/** @throws RangeError with every problem of what was typed, or where the design cannot give what was measured */
export function recipeAnswer(question: Question & { recipe: Recipe }): RecipeAnswer {
  const { recipe, scenario } = question;
  const { plant } = readQuestion(question);
  const read = valuesOf(recipe);
  const found = FOUND[recipe.kind](question, plant, read);
  const inputs = found.measured.map(({ shown, ...each }) => ({ path: each.path, value: shown }));
  return { kind: recipe.kind, facts: found.facts, inputs, edits: measuredEdits(scenario, found.measured) };
}

/** Everything typed, in SI. @throws RangeError with every problem, a line each */
function valuesOf({ kind, typed }: Recipe): Values {
  const problems: string[] = [];
  const fields: readonly RecipeField[] = RECIPES[kind];
  const values = fields.map(({ key, dimension, range: [least, most], example }) => {
    const text = typed[key] ?? '';
    const read = parseQuantity(text, dimension);
    if (!read.ok) problems.push(`${key} - expected ${read.expected} - got ${read.got} - ${read.fix}`);
    else if (!(read.value >= least && read.value <= most)) {
      const [low, high] = [least, most].map((value) => formatQuantity(value, dimension, 'SI'));
      problems.push(
        `${key} - expected ${low} to ${high} - got "${text}" - check it; it is written as in ${example.US}`,
      );
    }
    return [key, read.ok ? read.value : Number.NaN];
  });
  if (problems.length > 0) throw new RangeError(problems.join('\n'));
  return Object.fromEntries(values);
}

type Find = (question: Question, plant: PlantDescription, values: Values) => Found;

const FOUND: Record<Recipe['kind'], Find> = {
  bucket: (_question, _plant, values) => {
    const flow = flowOf(values);
    return { facts: { flow_m3_s: flow }, measured: [flowInput('supply.pump.open_flow', flow)] };
  },
  'shower bucket': ({ scenario }, _plant, values) => {
    const flow = flowOf(values);
    const showers = scenario.taps?.showers ?? [];
    if (showers.length === 0)
      throw refusal(
        'taps.showers',
        'a shower whose flow it is',
        'none',
        'add a shower to the household first',
      );
    return {
      facts: { flow_m3_s: flow },
      measured: showers.map((_, i) => flowInput(`taps.showers[${i}].flow`, flow)),
    };
  },
  'coil outlet': (_question, plant, values) => coilFound(plant, values),
  'cool-down': (question, plant, { from, to, room, time }) => {
    if (!(from > to && to > room))
      throw refusal(
        'to',
        'a store that cooled, and is warmer than the room',
        `${to} C`,
        'check the readings',
      );
    const at = (end_C: number, more: readonly Edit[] = []) => {
      const bench = benchOf(plant, from, room, time, [...stopped(plant), ...more]);
      return inputFor(question, bench, bridges, stirred_C, end_C, { where: 'to', unit: 'C' });
    };
    const stored_J_K = heatOf(plant, (from + to) / 2);
    const loss = (end_C: number) => (stored_J_K / time) * Math.log((from - room) / (end_C - room));
    return {
      facts: { loss_W_K: ends(loss, to, DIFFERENCE_K, 'conductance') },
      measured: [input('store.bridges', wallsOf(question, plant, at, to), plain)],
    };
  },
  'heat-up': (question, plant, values) => heatUpFound(question, plant, values),
  'solar day': (question, plant, { from, to, room }) => {
    const { collector } = plant;
    if (!collector) throw refusal('collector', 'a collector that heats', 'none', 'add a collector first');
    const { figures } = benchRun(question, benchOf(plant, from, room, DAY, stopped(plant)));
    const gained = (end_C: number) => heatOf(plant, (from + to) / 2) * (end_C - from) + (figures.loss_J ?? 0);
    const heat = ends(gained, to, DIFFERENCE_K, 'energy');
    const perArea = (value: number) => value / collector.area_m2;
    return {
      facts: {
        heat_J: heat,
        per_m2_J: { ...heat, value: perArea(heat.value), low: perArea(heat.low), high: perArea(heat.high) },
      },
      measured: [],
    };
  },
  level: (question, plant, { fell, time, store, room }) => {
    const area_m2 = storeGeometry(plant.store.shape, plant.store.water_depth_m, 3).surface_m2;
    const kg_day = (m: number) => (m * area_m2 * waterDensity(store) * DAY) / time;
    const bench = benchOf(plant, store, room, DAY, stopped(plant));
    const at = (m: number) =>
      inputFor(question, bench, vapour, ({ figures }) => figures.evaporated_kg ?? Number.NaN, kg_day(m), {
        where: 'fell',
        unit: 'kg a day',
      });
    const mass = ends(kg_day, fell, MARK_M, 'mass');
    const watts = (kg: number) => (kg * waterLatentHeat(store)) / DAY;
    return {
      facts: {
        kg_a_day: mass,
        vapour_W: banded(watts(mass.value), watts(mass.low), watts(mass.high), 'power'),
      },
      measured: [input('store.vapour_escape', ends(at, fell, MARK_M, 'share', vapour), percent)],
    };
  },
};

/** The loss multiplier that a night shows, its band also for the vapour past the lid, which it cannot part from it. */
function wallsOf(
  question: Question,
  plant: PlantDescription,
  at: (end_C: number, more?: readonly Edit[]) => number,
  end_C: number,
): Banded {
  const walls = ends(at, end_C, DIFFERENCE_K, 'count', bridges);
  const { filled, marks } = readQuestion(question);
  const unmeasured = [...filled, ...marks].some(({ path }) => path === 'store.vapour_escape');
  const past = unmeasured ? vapourInput(plant) : null;
  if (!past) return walls;
  const [low, high] = past.usual;
  // The more gets past the lid, the less goes through the walls: an end that no walls explain lies at their own end.
  const less = orElse(() => at(end_C, past.edits(high)), bridges.least);
  const more = orElse(() => at(end_C, past.edits(low)), bridges.greatest);
  return {
    ...walls,
    low: Math.max(bridges.least, walls.value - Math.hypot(walls.value - walls.low, walls.value - less)),
    high: Math.min(bridges.greatest, walls.value + Math.hypot(walls.high - walls.value, more - walls.value)),
  };
}

function orElse(value: () => number, otherwise: number): number {
  try {
    return value();
  } catch (error) {
    if (error instanceof RangeError) return otherwise;
    throw error;
  }
}

function flowInput(path: string, flow: Banded): Found['measured'][0] {
  return input(path, flow, litresAMinute);
}

function flowOf({ volume, time }: Values): Banded {
  const low = (volume * (1 - BUCKET_SHARE)) / (time + WATCH_S);
  return banded(volume / time, low, (volume * (1 + BUCKET_SHARE)) / (time - WATCH_S), 'flow');
}

/** Heat that the store's water holds by the kelvin [J/K]. */
function heatOf({ store }: PlantDescription, at_C: number): number {
  return volumeBelow(store.shape, store.water_depth_m) * waterDensity(at_C) * waterHeatCapacity(at_C);
}

function stopped({ engine }: PlantDescription): Edit[] {
  return engine ? [{ path: 'engine.runs', value: { kind: 'timetable', spans: [] } }] : [];
}

function benchOf(
  plant: PlantDescription,
  from_C: number,
  room_C: number,
  time_s: number,
  more: readonly Edit[],
): Bench {
  return { from_C, room_C, time_s, more: more.length > 0 ? more : stopped(plant) };
}

const bridges: Sought = {
  path: 'store.bridges',
  least: 1,
  greatest: 6,
  tolerance: 2e-3,
  edits: (value) => [{ path: 'store.bridges', value }],
};
const vapour: Sought = {
  path: 'store.vapour_escape',
  least: 0,
  greatest: 1,
  tolerance: 5e-4,
  edits: (share) => [{ path: 'store.vapour_escape', value: percent(share) }],
};

/** UA and effectiveness as the recipe defines them, and the outside film at which the computed coil gives the same. */
function coilFound(plant: PlantDescription, { flow, tank, cold, outlet }: Values): Found {
  if (!(cold < outlet && outlet < tank))
    throw refusal(
      'outlet',
      'warmer than the cold water and cooler than the tank',
      `${outlet} C`,
      'check the readings',
    );
  const { coil, index } = householdOf(plant);
  const capacity_W_K = flow * waterDensity(20) * waterHeatCapacity((cold + outlet) / 2);
  const share = (out: number) => Math.min(0.9999, (out - cold) / (tank - cold));
  const UA = (out: number) => -capacity_W_K * Math.log(1 - share(out));
  const film = (out: number): number => {
    const at = (outside_film: number) =>
      coilOf({ ...coil, outside_film, flow_m3_s: flow, tank_C: tank, cold_C: cold }).outlet_C;
    const [low, high] = [at(LEAST_FILM), at(MOST_FILM)];
    if (!(out > low && out < high)) {
      const expected = `${low.toFixed(1)} to ${high.toFixed(1)} C, which this coil can give`;
      throw refusal(
        'outlet',
        expected,
        `${out.toFixed(1)} C`,
        'raise the flow, or check the coil’s tube and length',
      );
    }
    const search = { low: LEAST_FILM, high: MOST_FILM, tolerance: 1e-3, name: 'outside film', unit: '-' };
    return findRoot((value) => at(value) - out, search);
  };
  const sought = { path: '', least: LEAST_FILM, greatest: MOST_FILM, tolerance: 0, edits: () => [] };
  return {
    facts: {
      effectiveness: ends(share, outlet, READING_K, 'share'),
      UA_W_K: ends(UA, outlet, READING_K, 'conductance'),
    },
    measured: [input(`coils[${index}].outside_film`, ends(film, outlet, READING_K, 'count', sought), plain)],
  };
}

/** Of the outside film's multiplier, as a file may have it. */
const LEAST_FILM = 0.2;
const MOST_FILM = 2;

function heatUpFound(question: Question, plant: PlantDescription, values: Values): Found {
  const { engine } = plant;
  if (!engine) throw refusal('engine', 'an engine that heats', 'none', 'add an engine first');
  const { from, to, room, time, load } = values;
  if (!(to > from)) throw refusal('to', 'a store that warmed', `${to} C`, 'check the readings');
  const end = `${Math.floor(time / 3600)}:${String(Math.floor((time % 3600) / 60)).padStart(2, '0')}`;
  const runs: Edit[] = [
    { path: 'engine.runs', value: { kind: 'timetable', spans: [{ from: '0:00', to: end }] } },
    { path: 'engine.typical_load', value: `${load} W` },
    { path: 'engine.load_by_hour', value: undefined },
  ];
  const { rated, quarter } = engine.jacket_share;
  const shares = (share: number): Edit[] => [
    { path: 'engine.jacket_share', value: percent(share) },
    { path: 'engine.jacket_share_light', value: percent(Math.min(0.6, (share * quarter) / rated)) },
  ];
  const jacket: Sought = {
    path: 'engine.jacket_share',
    least: 0.05,
    greatest: 0.5,
    tolerance: 1e-4,
    edits: shares,
  };
  const bench = benchOf(plant, from, room, time, runs);
  const at = (end_C: number) =>
    inputFor(question, bench, jacket, stirred_C, end_C, { where: 'to', unit: 'C' });
  const found = ends(at, to, DIFFERENCE_K, 'share', jacket);
  const watts = (end_C: number) => (heatOf(plant, (from + to) / 2) * (end_C - from)) / time;
  const light = (share: number) => Math.min(0.6, (share * quarter) / rated);
  const shown = banded(light(found.value), light(found.low), light(found.high), 'share');
  return {
    facts: { gain_W: ends(watts, to, DIFFERENCE_K, 'power') },
    measured: [
      input('engine.jacket_share', found, percent),
      input('engine.jacket_share_light', shown, percent),
    ],
  };
}
