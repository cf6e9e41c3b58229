import { Integrator } from '../../../sim/numerics/integrator.ts';
import { Air } from '../../../sim/parts/air.ts';
import type { CoilDescription, PlantDescription, Tube } from '../../../sim/parts/description.ts';
import { Layout } from '../../../sim/parts/layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../../../sim/parts/liquid.ts';
import { Store } from '../../../sim/parts/store/store.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import {
  coilOf,
  drawOf,
  heaterOf,
  plantOf,
  roomAt,
  SEALED,
  sheet,
  storeOf,
  supplyOf,
  tapsOf,
} from '../../sim/support/plant.ts';
import { steadyWeather } from '../../sim/support/weather.ts';
import { type Block, type Check, input } from '../checks.ts';

/**
 * Exact solutions against whole runs, not against a formula typed again.
 *
 * The solutions take one heat capacity; the tool's water has its own at each temperature. Where that matters the
 * store's mass is chosen so that its capacity over the temperatures passed is the check's M cp; what remains is the
 * capacity's change within them, 0.1 % at most, second order here.
 */
export const exact: Block = {
  name: 'exact',
  atLeast: 8,
  answers: {
    'an.cool': cooling,
    'an.heat': heating,
    'an.charge': charge,
    'an.discharge.': discharge,
    'an.erf.': diffusion,
  },
};

const water = liquid({ kind: 'water', mass_share: 0 });
const enthalpy = (t: number) => REFERENCE_HEAT_CAPACITY * lookUp(water.enthalpy, t);
/** Mean heat capacity between two temperatures [J/(kg K)]. */
const between = (a: number, b: number) => (enthalpy(b) - enthalpy(a)) / (b - a);
const INSIDE_FILM = 300;
const OUTSIDE_FILM = 8;

/** A box of `mass` [kg] at `start_C` that loses `ua` [W/K] through its sides only; no bridges. */
function box(mass: number, start_C: number, ua: number, around_C: number) {
  const depth = 0.6;
  const side = Math.sqrt(mass / lookUp(water.density, start_C) / depth);
  // U A = A / (1/hi + R + 1/ho)
  const resistance = (4 * side * depth) / ua - 1 / INSIDE_FILM - 1 / OUTSIDE_FILM;
  return storeOf({
    shape: { kind: 'box', length_m: side, width_m: side, height_m: 1 },
    water_depth_m: depth,
    wall: { material: 'none', thickness_m: 1e-9, conductivity_W_mK: 1, max_C: null },
    insulation: { sides: ua > 0 ? [sheet(resistance)] : SEALED, bottom: SEALED, lid: SEALED },
    surroundings: roomAt(around_C),
    bridges: 1,
  });
}

function run(check: Check, plant: Parameters<typeof plantOf>[0], start_C: number) {
  const interval_s = input(check, 't_s');
  const description: PlantDescription = plantOf({
    ...plant,
    run: { interval_s, layers: 40, tolerance: 1e-7, start: { bottom_C: start_C, top_C: start_C } },
  });
  const { series } = simulate(description);
  const layers = series.layer_C.slice(series.layers, 2 * series.layers);
  return {
    mean_C: layers.reduce((sum, t) => sum + t, 0) / series.layers,
    outlet_C: series.channels.coil_outlet_C?.[1] ?? Number.NaN,
  };
}

function cooling(check: Check): number {
  const start = input(check, 'T0');
  const capacity = input(check, 'M') * input(check, 'cp');
  const mass = capacity / between(start - 10, start);
  return run(check, { store: box(mass, start, input(check, 'UA'), input(check, 'Ta')) }, start).mean_C;
}

/** A tube that holds next to nothing and whose wall alone resists, so that its UA [W/K] is constant. */
function wallOnly(ua: number): Partial<CoilDescription> {
  const length = 0.1;
  const tube: Tube = {
    label: 'resistance',
    material: 'none',
    outside_diameter_m: 0.02,
    inside_diameter_m: 0.01,
    conductivity_W_mK: (ua * Math.log(2)) / (2 * Math.PI * length),
    density_kg_m3: 1e-3,
    heat_capacity_J_kgK: 1,
  };
  return {
    tube,
    roll_length_m: length,
    bottom_m: 0,
    top_m: 0.6,
    inside_film: 1e7,
    outside_film: 1e7,
    bundling: 1,
  };
}

/** A run in which the tap takes all the coil gives, from the first second on. */
function drawn(check: Check, store: PlantDescription['store'], coil: CoilDescription, flow_kg_s: number) {
  const start = input(check, 'T0');
  const cold = typeof check.inputs.Tin === 'number' ? check.inputs.Tin : input(check, 'Tc');
  const flow_m3_s = flow_kg_s / lookUp(water.density, 40);
  return run(
    check,
    {
      store,
      coils: [coil],
      supply: supplyOf({
        cold: { kind: 'fixed', temperature_C: cold },
        pump: { open_flow_m3_s: 1, cut_out_Pa: 1e6, power_W: 0 },
      }),
      taps: tapsOf(coil.name, {
        draws: [drawOf({ at_s: 0, duration_s: 2 * input(check, 't_s'), flow_m3_s, wanted_C: 95 })],
      }),
    },
    start,
  );
}

/** Water hotter than the store runs through the coil: most of its heat is given at the bottom, rises and mixes all of it. */
function charge(check: Check) {
  const start = input(check, 'T0');
  const hot = input(check, 'Tin');
  const end = 56;
  const mass = (input(check, 'M') * input(check, 'cp')) / between(start, end);
  const coil = coilOf('loop', wallOnly(input(check, 'UA')));
  const flow = (input(check, 'm_c') * input(check, 'cp_c')) / between(end, hot);
  const { mean_C, outlet_C } = drawn(check, box(mass, start, 0, start), coil, flow);
  return { eps: (hot - outlet_C) / (hot - mean_C), T: mean_C };
}

/** Cold water enters the coil at the top: it cools the top first, which sinks and mixes all of the store. */
function discharge(check: Check) {
  const start = input(check, 'T0');
  const cold = input(check, 'Tc');
  const flow = input(check, 'm');
  // UA = -ln(1 - eps) m cp; the check states capacities as masses of one liquid.
  const cp = between(cold, 43);
  const coil = coilOf('loop', {
    ...wallOnly(-Math.log(1 - input(check, 'eps')) * flow * cp),
    fed_from: 'top',
  });
  const mass = (input(check, 'M') * cp) / between(52, start);
  const { mean_C, outlet_C } = drawn(check, box(mass, start, 0, start), coil, flow);
  return { T_tank: mean_C, T_out: outlet_C };
}

/**
 * The engine as a heater: a steady load, its thermostat always open, no radiator, a block that holds little. It stops
 * at the end, so that the coil's content is in the store; the block's own few kilojoules count as the store's.
 */
function heating(check: Check): number {
  const start = input(check, 'T0');
  const power = input(check, 'Q');
  const engine = { ...heaterOf('heater', power, input(check, 't_s')), surroundings: roomAt(start) };
  const capacity = input(check, 'M') * input(check, 'cp') - engine.heat_capacity_J_K;
  const mass = capacity / between(start, 48);
  const store = box(mass, start, input(check, 'UA'), input(check, 'Ta'));
  const coil = coilOf('heater', { ...wallOnly(1e5), top_m: 0.05 });
  return run(check, { store, coils: [coil], engine }, start).mean_C;
}

/**
 * A step between two halves of a tall sealed store. The layers' own error falls with the square of their height, so
 * layers of a third the height cancel it; what is left then is the model's.
 */
function diffusion(check: Check): number {
  const coarse = Math.round((80 * input(check, 'x')) / reachOf(check));
  // x is the middle of a layer in both: 3 (n + 1/2) = (3 n + 1) + 1/2.
  return (9 * diffused(check, 3 * coarse + 1) - diffused(check, coarse)) / 8;
}

/**
 * Share of the step's height at x, and what is missing from it at -x: their mean is free of the conductivity's change
 * with temperature in first order.
 *
 * @param before layers between the step and the one whose middle is x
 */
function diffused(check: Check, before: number): number {
  const x = input(check, 'x');
  const middle = temperatureOfDiffusivity(input(check, 'alpha'));
  const height = x / (before + 0.5);
  const layers = 2 * Math.ceil(reachOf(check) / height);
  const depth = layers * height;
  const layout = new Layout();
  const store = new Store(
    { ...box(depth, middle, 0, middle), water_depth_m: depth, shape: tall(depth) },
    layers,
    { bottom_C: middle, top_C: middle },
    new Air(steadyWeather(middle), 0, 0),
    layout,
  );
  const half = 1;
  const y = layout.initial();
  for (let i = 0; i < layers; i++) {
    y[store.first + i] = lookUp(water.enthalpy, middle + (i < layers / 2 ? -half : half));
  }
  const integrator = new Integrator(
    {
      size: layout.size,
      rates: (t, state, out) => {
        out.fill(0);
        store.prepare(state);
        store.finish(t, out);
      },
      nameOf: (i) => layout.nameOf(i),
      absoluteTolerance: layout.tolerances(1e-7),
    },
    1e-8,
    1e6,
  );
  integrator.advance(0, y, input(check, 't_s'), 1, () => undefined);
  store.prepare(y);
  const share = (layer: number) => (store.layer_C[layer] - middle + half) / (2 * half);
  return (share(layers / 2 + before) + 1 - share(layers / 2 - 1 - before)) / 2;
}

/** Six widths of the blurred step: further away nothing has been felt yet [m]. */
function reachOf(check: Check): number {
  return 6 * Math.sqrt(2 * input(check, 'alpha') * input(check, 't_s'));
}

function tall(depth: number): PlantDescription['store']['shape'] {
  return { kind: 'box', length_m: 1, width_m: 1, height_m: depth };
}

/** Temperature [C] at which still water's k/(rho cp) is `alpha` [m2/s]: it rises throughout. */
function temperatureOfDiffusivity(alpha: number): number {
  let low = 0;
  let high = 90;
  for (let i = 0; i < 50; i++) {
    const t = (low + high) / 2;
    const got = lookUp(water.conductivity, t) / (lookUp(water.density, t) * lookUp(water.heat_capacity, t));
    if (got < alpha) low = t;
    else high = t;
  }
  return low;
}
