/** The engine: its fuel line, how its heat is shared, its loop and when it runs. */
import type {
  CoilDescription,
  EngineDescription,
  StoreDescription,
  WeekSpan,
} from '../../parts/description.ts';
import { fluidProperties } from '../../physics/fluid.ts';
import type { Desk } from '../desk.ts';
import { engine as field } from '../fields/engine.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { flowAt, fuelLine, fuelNamed } from './fuel.ts';
import { fluidFrom, noteFreezing, percent, pipeConductanceFrom, surroundingsFrom } from './shared.ts';

type EngineRead = NonNullable<ScenarioValues['engine']>;

const STEPS = ['engine'] as const;
const DAY_S = 86_400;

/** The engine's description, or null where something in it is refused. */
export function engineFrom(
  desk: Desk,
  read: EngineRead,
  store: StoreDescription | null,
  coils: readonly CoilDescription[] | null,
): EngineDescription | null {
  const before = desk.problems.length;
  const fuel = fuelNamed(read.fuel);
  const line = fuelLine(desk, read, fuel);
  const load = loadOf(desk, read);
  const coolant = fluidFrom(desk, [...STEPS, 'coolant'], field.fields.coolant, read.coolant, 0.5);
  const runs = runsOf(desk, read, store);
  const thermostat_full_C = desk.complete(field, STEPS, 'thermostat_full', read.thermostat_full, () => ({
    value: read.thermostat + 10,
  }));
  if (thermostat_full_C <= read.thermostat) {
    desk.problem(
      [...STEPS, 'thermostat_full'],
      `hotter than it begins to open, ${desk.temperature(read.thermostat)}`,
      desk.temperature(thermostat_full_C),
      'a wax thermostat needs some 10 K from closed to open',
    );
  }
  const shares = sharesOf(desk, read);
  const radiator = radiatorRange(desk, read.radiator, thermostat_full_C);
  if (desk.problems.length > before || !line || !coolant || !runs || !coils || !store) return null;

  const full_W = flowAt(line, read.rated_output) * fuel.lower_heating_value_J_kg;
  const jacket_W = full_W * (shares.jacket.rated + shares.exhaust);
  const liquid = fluidProperties(coolant, 75);
  const mass_kg = desk.complete(field, STEPS, 'mass', read.mass, () => ({
    value: 25 + 0.006 * read.rated_output,
  }));
  const coolant_m3 = desk.complete(field, STEPS, 'coolant_volume', read.coolant_volume, () => ({
    value: 0.002 + 5e-7 * read.rated_output,
  }));
  return {
    name: read.name,
    coil: read.coil,
    fuel,
    rated_output_W: read.rated_output,
    ...line,
    load,
    jacket_share: shares.jacket,
    exhaust_share: shares.exhaust,
    heat_capacity_J_K:
      mass_kg * ENGINE_J_KGK + coolant_m3 * liquid.density_kg_m3 * liquid.heat_capacity_J_kgK,
    coolant,
    coolant_flow_m3_s: desk.complete(field, STEPS, 'coolant_flow', read.coolant_flow, () => ({
      value: jacket_W / (liquid.density_kg_m3 * liquid.heat_capacity_J_kgK * COOLANT_RISE_K),
    })),
    thermostat_open_C: read.thermostat,
    thermostat_full_C,
    radiator: {
      ...radiator,
      conductance_W_K: radiatorConductance(desk, read.radiator, radiator.full_C, jacket_W),
    },
    block_loss_W_K: desk.complete(field, STEPS, 'block_loss', read.block_loss, () => ({
      value: 8 * Math.cbrt(mass_kg / 55) ** 2,
    })),
    standby_loss_W_K: desk.complete(field, STEPS, 'standby_loss', read.standby_loss, () => ({
      ...(read.check_valve ? { value: 0, band: null } : { value: 4 }),
    })),
    coldest_return_C: read.coldest_return,
    pipes: {
      length_m: read.pipes.length,
      conductance_W_mK: pipeConductanceFrom(
        desk,
        [...STEPS, 'pipes'],
        field.fields.pipes.fields,
        read.pipes,
        read.pipes.outside,
      ),
    },
    surroundings: surroundingsFrom(read.stands),
    runs,
  };
}

/** Notes coolant that would freeze where the engine stands. */
export function noteEngineFreezing(desk: Desk, engine: EngineDescription, coldestOutdoors_C: number): void {
  const { surroundings: place, coolant } = engine;
  const coldest_C = place.kind === 'outdoors' ? coldestOutdoors_C : place.mean_C - place.swing_K / 2;
  noteFreezing(
    desk,
    [...STEPS, 'coolant'],
    coolant,
    coldest_C,
    'the coolant',
    'the coldest air around the engine',
  );
}

/** Heat capacity of an engine's iron, aluminium and what warms with them [J/(kg K)]: 0.9-1.1 measured (from memory). */
const ENGINE_J_KGK = 1000;
/** Rise of the coolant across the engine, the middle of the recommended 10 to 12 F [K]. */
const COOLANT_RISE_K = 11 / 1.8;

function loadOf(desk: Desk, read: EngineRead): EngineDescription['load'] {
  const tooMuch = (steps: readonly PropertyKey[], output: number) => {
    if (output > 1.1 * read.rated_output) {
      desk.problem(
        [...STEPS, ...steps],
        `at most the rated ${read.rated_output} W and a tenth`,
        `${Math.round(output)} W`,
        'check the load or the rated output',
      );
    }
  };
  if (read.load_by_hour === null) {
    const output_W = desk.complete(field, STEPS, 'typical_load', read.typical_load, () => ({
      value: read.rated_output / 2,
    }));
    tooMuch(['typical_load'], output_W);
    return [{ from_s: 0, output_W }];
  }
  if (read.typical_load !== null) {
    desk.problem(
      [...STEPS, 'typical_load'],
      'either a typical load or a load by the clock',
      'both',
      'remove one',
    );
  }
  read.load_by_hour.forEach((step, i) => void tooMuch(['load_by_hour', i, 'output'], step.output));
  const steps = read.load_by_hour
    .map(({ from, output }) => ({ from_s: from, output_W: output }))
    .sort((a, b) => a.from_s - b.from_s);
  const twice = steps.find((step, i) => i > 0 && step.from_s === steps[i - 1].from_s);
  if (twice)
    desk.problem(
      [...STEPS, 'load_by_hour'],
      'each clock time once',
      'the same time twice',
      'remove one of the two steps',
    );
  // The last step of the day holds on past midnight until the first.
  const last = steps[steps.length - 1];
  return steps[0].from_s > 0 ? [{ from_s: 0, output_W: last.output_W }, ...steps] : steps;
}

function sharesOf(desk: Desk, read: EngineRead) {
  const rated = desk.complete(field, STEPS, 'jacket_share', read.jacket_share, () => ({
    value: read.fuel === 'diesel' ? 0.25 : 0.28,
  }));
  const quarter = desk.complete(field, STEPS, 'jacket_share_light', read.jacket_share_light, () => ({
    value: Math.min(0.6, 1.2 * rated),
  }));
  const exhaust = desk.complete(field, STEPS, 'exhaust_share', read.exhaust_share, () => ({
    ...(read.exhaust_exchanger ? { value: 0.1 } : { value: 0, band: null }),
  }));
  if (exhaust > 0 && !read.exhaust_exchanger) {
    desk.problem(
      [...STEPS, 'exhaust_share'],
      'nothing without an exhaust exchanger',
      percent(exhaust),
      'set "exhaust_exchanger" to true if one is fitted, or remove the share',
    );
  }
  return { jacket: { rated, quarter }, exhaust };
}

/** Between which coolant temperatures the radiator takes over. */
function radiatorRange(desk: Desk, read: EngineRead['radiator'], thermostat_full_C: number) {
  const { radiator } = field.fields;
  const steps = [...STEPS, 'radiator'];
  const starts_C = desk.complete(radiator, steps, 'starts', read.starts, () => ({
    value: thermostat_full_C + 2,
  }));
  const full_C = desk.complete(radiator, steps, 'full', read.full, () => ({ value: starts_C + 8 }));
  if (full_C <= starts_C) {
    desk.problem(
      [...steps, 'full'],
      `hotter than it begins, ${desk.temperature(starts_C)}`,
      desk.temperature(full_C),
      'leave a few degrees between',
    );
  }
  return { starts_C, full_C };
}

/** What a radiator sized for hot air carries [W/K]: 1.3 times the rated jacket heat in air of 40 C. */
function radiatorConductance(
  desk: Desk,
  read: EngineRead['radiator'],
  full_C: number,
  jacket_W: number,
): number {
  return desk.complete(
    field.fields.radiator,
    [...STEPS, 'radiator'],
    'conductance',
    read.conductance,
    () => ({
      value: (1.3 * jacket_W) / Math.max(10, full_C - 40),
    }),
  );
}

function runsOf(
  desk: Desk,
  read: EngineRead,
  store: StoreDescription | null,
): EngineDescription['runs'] | null {
  const { runs } = read;
  if (runs.kind === 'timetable')
    return { kind: 'timetable', spans: spansOf(desk, ['runs', 'spans'], runs.spans) };
  if (runs.until - runs.below < 1) {
    desk.problem(
      [...STEPS, 'runs', 'until'],
      `at least 1 K above "below", ${desk.temperature(runs.below)}`,
      desk.temperature(runs.until),
      'widen the gap: the engine would start and stop without end',
    );
  }
  if (!store) return null;
  const probe_m = desk.complete(
    { fields: field.fields.runs.cases['call for heat'] },
    [...STEPS, 'runs'],
    'probe',
    runs.probe,
    () => ({ value: (2 / 3) * store.water_depth_m }),
  );
  if (probe_m > store.water_depth_m) {
    desk.problem(
      [...STEPS, 'runs', 'probe'],
      `under the water, ${store.water_depth_m.toFixed(2)} m deep`,
      `${probe_m.toFixed(2)} m`,
      'hang it lower',
    );
  }
  return {
    kind: 'call for heat',
    below_C: runs.below,
    until_C: runs.until,
    probe_m,
    spans: spansOf(desk, ['runs', 'allowed'], runs.allowed),
  };
}

/** Spans of the week; one that passes midnight is cut in two, one that ends at 0:00 ends with its day. */
function spansOf(
  desk: Desk,
  steps: readonly PropertyKey[],
  reads: readonly { days: number[]; from: number; to: number }[],
): WeekSpan[] {
  return reads.flatMap(({ days, from, to }, i) => {
    if (from === to || from === DAY_S) {
      desk.problem(
        [...STEPS, ...steps, i, 'to'],
        'a later time than "from"',
        'the same time',
        'for the whole day write "0:00" to "24:00"',
      );
      return [];
    }
    if (to > from) return [{ days, from_s: from, to_s: to }];
    const evening = { days, from_s: from, to_s: DAY_S };
    const next = days.map((day) => (day + 1) % 7).sort((a, b) => a - b);
    return to > 0 ? [evening, { days: next, from_s: 0, to_s: to }] : [evening];
  });
}
