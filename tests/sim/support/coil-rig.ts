/** One coil of the tool in a store whose layers are held, stepped by hand. */
import { Coil } from '../../../sim/parts/coil/coil.ts';
import type { CoilDescription, Fluid } from '../../../sim/parts/description.ts';
import { Layout } from '../../../sim/parts/layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../../../sim/parts/liquid.ts';
import { type StoreGeometry, storeGeometry } from '../../../sim/parts/store/geometry.ts';

export const WATER: Fluid = { kind: 'water', mass_share: 0 };
export const LAYERS = 20;
export const DEPTH = 0.8;
/** Step of the hand-made integration [s]; the outlet depends on the front alone, which moves evenly. */
const STEP = 0.1;

/** Enthalpy of a liquid [J/kg]. */
export function enthalpy(t_C: number, fluid: Fluid = WATER): number {
  return REFERENCE_HEAT_CAPACITY * lookUp(liquid(fluid).enthalpy, t_C);
}

export class CoilRig {
  readonly coil: Coil;
  readonly geometry: StoreGeometry;
  readonly layer_C: Float64Array;
  readonly heat_W = new Float64Array(LAYERS);
  readonly y: number[];
  readonly rates: number[];
  /** Heat taken from the layers since the beginning [J]; by layer, what was exchanged at starts and stops. */
  taken_J = 0;
  readonly exchanged_J = new Float64Array(LAYERS);
  time_s = 0;
  /** When fronts arrived [s]. */
  readonly arrivals: number[] = [];

  /** @param profile temperature of the store at a height above its bottom [m] */
  constructor(description: CoilDescription, profile: (height_m: number) => number, fluid: Fluid = WATER) {
    this.geometry = storeGeometry({ kind: 'box', length_m: 1, width_m: 0.8, height_m: 1 }, DEPTH, LAYERS);
    this.layer_C = Float64Array.from(this.geometry.middle_m, profile);
    const layout = new Layout();
    this.coil = new Coil(description, liquid(fluid), liquid(WATER), this.geometry, this.layer_C, layout);
    this.y = layout.initial();
    this.rates = this.y.map(() => 0);
  }

  readonly #exchange = (layer: number, energy_J: number): void => {
    this.taken_J -= energy_J;
    this.exchanged_J[layer] += energy_J;
  };

  start(): void {
    this.coil.start(this.time_s, this.y, this.layer_C, this.#exchange);
  }

  stop(flow_kg_s: number, entry_C: number): void {
    this.coil.stop(this.time_s, this.y, flow_kg_s, entry_C, this.layer_C, this.#exchange);
  }

  /** Evaluates once at a flow [kg/s] and an entry temperature: outlet temperature [C]; rates and heat are left to read. */
  at(flow_kg_s: number, entry_C: number): number {
    this.heat_W.fill(0);
    this.rates.fill(0);
    return this.coil.flow(this.y, flow_kg_s, entry_C, this.layer_C, this.heat_W, this.rates);
  }

  /** Lets it flow for `seconds`; returns the mean enthalpy of what came out [J/kg]. */
  pass(seconds: number, flow_kg_s: number, entry_C: number): number {
    let out = 0;
    const steps = Math.round(seconds / STEP);
    for (let i = 0; i < steps; i++) {
      if (this.coil.mode === 'filling' && this.coil.front(this.y) >= 1) {
        this.coil.mode = 'steady';
        this.arrivals.push(this.time_s);
      }
      out += enthalpy(this.at(flow_kg_s, entry_C), this.coil.inside.fluid) / steps;
      for (let k = 0; k < this.y.length; k++) this.y[k] += this.rates[k] * STEP;
      this.taken_J -= this.heat_W.reduce((sum, w) => sum + w, 0) * STEP;
      this.time_s += STEP;
    }
    return out;
  }
}
