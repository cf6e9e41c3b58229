/**
 * A coil as many short lengths, to hold the tool's coil against: each length has its own water and its own metal, water
 * moves on one length at a time without blurring, and nothing is booked ahead. Explicit, slow, and not stiff for
 * lengths this short. It shares the films with the tool's coil (they are tested apart) and nothing else: how the
 * content moves, warms and comes to rest is its own.
 */
import { Films } from '../../../sim/parts/coil/films.ts';
import type { CoilDescription } from '../../../sim/parts/description.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../../../sim/parts/liquid.ts';

const WATER = liquid({ kind: 'water', mass_share: 0 });
/** Nusselt number of water at rest in the tube: weak convection over pure conduction (common practice). */
const AT_REST = 5;
/** Longest explicit step while it flows and while it stands [s]: metal and water come together in about 1 s and 4 s. */
const STEP = 0.05;
const STILL_STEP = 0.5;

export class FineCoil {
  readonly water_C: Float64Array;
  readonly metal_C: Float64Array;
  /** Heat taken from the layers since the beginning [J]. */
  taken_J = 0;
  readonly #films: Films;
  readonly #layer_C: Float64Array;
  readonly #length_m: number;
  readonly #water_kg: number;
  readonly #metal_J_K: number;
  readonly #paths: number;
  #moved_kg = 0;
  /** Time since water, metal and layers last exchanged [s]: several short lengths may pass meanwhile. */
  #due_s = 0;

  /** @param layer_C temperature of the store along the tube, by share of its length from the inlet */
  constructor(coil: CoilDescription, lengths: number, layer_C: (share: number) => number) {
    const { tube } = coil;
    this.#paths = coil.join === 'parallel' ? coil.rolls : 1;
    const path_m = coil.join === 'parallel' ? coil.roll_length_m : coil.rolls * coil.roll_length_m;
    this.#length_m = path_m / lengths;
    const bore = (Math.PI / 4) * tube.inside_diameter_m ** 2;
    const wall = (Math.PI / 4) * tube.outside_diameter_m ** 2 - bore;
    this.#water_kg = bore * this.#length_m * lookUp(WATER.density, 40);
    this.#metal_J_K = wall * this.#length_m * tube.density_kg_m3 * tube.heat_capacity_J_kgK;
    this.#films = new Films(coil, WATER, WATER);
    this.#layer_C = Float64Array.from({ length: lengths }, (_, i) => layer_C((i + 0.5) / lengths));
    this.water_C = this.#layer_C.slice();
    this.metal_C = this.#layer_C.slice();
  }

  /** Heat held above 0 C by water and metal of all paths [J]. */
  get energy_J(): number {
    let sum = 0;
    for (let i = 0; i < this.water_C.length; i++) {
      sum += this.#water_kg * REFERENCE_HEAT_CAPACITY * lookUp(WATER.enthalpy, this.water_C[i]);
      sum += this.#metal_J_K * this.metal_C[i];
    }
    return sum * this.#paths;
  }

  /**
   * Lets `flow_kg_s` of all paths enter at `entry_C` for `seconds`; 0 lets it stand.
   * @returns mean enthalpy of what came out [J/kg], NaN if nothing flowed
   */
  pass(seconds: number, flow_kg_s: number, entry_C: number): number {
    const flow = flow_kg_s / this.#paths;
    this.#films.setFlow(flow);
    let out_J = 0;
    let out_kg = 0;
    for (let left = seconds; left > 1e-9; ) {
      const untilNext = flow > 0 ? (this.#water_kg - this.#moved_kg) / flow : Number.POSITIVE_INFINITY;
      const dt = Math.min(left, flow > 0 ? STEP : STILL_STEP, untilNext);
      this.#due_s += dt;
      if (flow === 0 || this.#due_s >= STEP) this.#exchange(flow > 0);
      this.#moved_kg += flow * dt;
      out_kg += flow * dt;
      const last = this.water_C.length - 1;
      out_J += flow * dt * REFERENCE_HEAT_CAPACITY * lookUp(WATER.enthalpy, this.water_C[last]);
      if (this.#moved_kg >= this.#water_kg * (1 - 1e-9)) {
        this.water_C.copyWithin(1, 0, last);
        this.water_C[0] = entry_C;
        this.#moved_kg = 0;
      }
      left -= dt;
    }
    return out_J / out_kg;
  }

  #exchange(flowing: boolean): void {
    const dt = this.#due_s;
    this.#due_s = 0;
    const films = this.#films;
    const { water_C, metal_C } = this;
    const layers = this.#layer_C;
    for (let i = 0; i < water_C.length; i++) {
      const water = water_C[i];
      const metal = metal_C[i];
      const inside = flowing
        ? films.inside(water) * films.wallCorrection(water, metal)
        : Math.PI * AT_REST * lookUp(WATER.conductivity, water);
      const outside = 1 / (films.wall_mK_W + 1 / Math.max(1e-6, films.outside(layers[i], metal)));
      const toMetal = inside * this.#length_m * (water - metal) * dt;
      const toLayer = outside * this.#length_m * (metal - layers[i]) * dt;
      water_C[i] -= toMetal / (this.#water_kg * lookUp(WATER.heat_capacity, water));
      metal_C[i] += (toMetal - toLayer) / this.#metal_J_K;
      this.taken_J -= toLayer * this.#paths;
    }
  }
}
