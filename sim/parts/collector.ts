/**
 * Collectors and their loop. The state is the temperature of the fluid leaving them; with flow the mean of
 * inlet and outlet loses heat by the rated quadratic, without flow the whole field sits at one temperature.
 *
 * C A dT/dt = A (eta0 S - loss(Tm - Ta)) - flow (h(T) - h(inlet)), S the light kept by the incidence modifiers.
 * Source: ISO 9806:2017 dynamic form with one capacity (from memory).
 */
import { curveAt, type HourlyCurve, meanPreserving } from '../numerics/interpolation.ts';
import { collectorLoss_W_m2, excessLoss_W_m2K4 } from '../physics/collector.ts';
import { fluidFreezingPoint } from '../physics/fluid.ts';
import type { Air } from './air.ts';
import type { Coil } from './coil/coil.ts';
import type { CollectorDescription } from './description.ts';
import { type Layout, placeOf } from './layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from './liquid.ts';
import type { Store } from './store/store.ts';
import type { PlaneSun } from './weather/plane-of-array.ts';

/** Store top may cool by this much before a loop stopped by its high limit starts again [K] (common practice). */
export const LIMIT_DEAD_BAND = 5;

/** The outlet decides when the pump runs: it is kept closer than the layers. */
const OUTLET_SHARPNESS = 3;

export class Collector {
  readonly description: CollectorDescription;
  readonly coil: Coil;
  readonly freezing_C: number;
  pumping = false;
  /** Stopped by the store's high limit. */
  limited = false;
  /** Not played as failed; set at restarts. */
  mayPump = true;
  inlet_C = 0;
  coil_entry_C = 0;
  readonly flow_kg_s: number;
  readonly #air: Air;
  readonly #absorbed: HourlyCurve;
  readonly #plane: HourlyCurve;
  readonly #outlet: number;
  readonly #fluid;
  readonly #excess: number;
  readonly #capacity_J_K: number;

  constructor(description: CollectorDescription, coil: Coil, sun: PlaneSun, air: Air, layout: Layout) {
    this.description = description;
    this.coil = coil;
    this.#air = air;
    this.#fluid = liquid(description.fluid);
    this.freezing_C = fluidFreezingPoint(description.fluid);
    this.#absorbed = meanPreserving(sun.absorbed_W_m2, true);
    this.#plane = meanPreserving(sun.plane_W_m2, true);
    this.#excess = excessLoss_W_m2K4(description, description.ceiling_C);
    this.#capacity_J_K = description.area_m2 * description.heat_capacity_J_m2K;
    this.flow_kg_s = description.pump_flow_m3_s * lookUp(this.#fluid.density, 40);
    this.#outlet = layout.claim(description.name, 'outlet', [air.outdoors_C(0)], OUTLET_SHARPNESS);
  }

  outlet_C(y: ArrayLike<number>): number {
    return y[this.#outlet];
  }

  energy(y: ArrayLike<number>): number {
    return y[this.#outlet] * this.#capacity_J_K;
  }

  /** Light on the plane [W/m2]. */
  plane_W_m2(t: number): number {
    return curveAt(this.#plane, this.#air.hourAt(t), (t / 3600) % 1);
  }

  /** Height whose temperature the controller compares with [m]: where its coil begins. */
  get probe_m(): number {
    return this.coil.description.bottom_m;
  }

  rates(t: number, y: number[], store: Store, out: number[]): void {
    const { description: d, coil } = this;
    const outlet = y[this.#outlet];
    const outdoors = this.#air.outdoors_C(t);
    const absorbed = curveAt(this.#absorbed, this.#air.hourAt(t), (t / 3600) % 1);
    let carried = 0;
    let mean = outlet;
    if (this.pumping) {
      // The indoor part of the pipes stands by the store; each half of the outdoor part lies on one side.
      const capacity = this.flow_kg_s * lookUp(this.#fluid.heat_capacity, outlet);
      const half = 0.5 * d.pipes.conductance_W_mK * d.pipes.length_m;
      const inside = this.#air.around_C(store.description.surroundings, t);
      const pipeAir = d.pipes.outdoor_share * outdoors + (1 - d.pipes.outdoor_share) * inside;
      const kept = Math.exp(-half / capacity);
      this.coil_entry_C = pipeAir + (outlet - pipeAir) * kept;
      const left = coil.flow(y, this.flow_kg_s, this.coil_entry_C, store.layer_C, store.heat_W, out);
      this.inlet_C = pipeAir + (left - pipeAir) * kept;
      const h = this.#fluid.enthalpy;
      const scale = this.flow_kg_s * REFERENCE_HEAT_CAPACITY;
      out[placeOf.collector_to_store] = coil.heat_W;
      out[placeOf.collector_pipes_to_air] =
        scale *
        (lookUp(h, outlet) - lookUp(h, this.coil_entry_C) + lookUp(h, left) - lookUp(h, this.inlet_C));
      carried = scale * (lookUp(h, outlet) - lookUp(h, this.inlet_C));
      mean = (outlet + this.inlet_C) / 2;
      out[placeOf.pump_electricity_J] += d.pump_power_W;
    } else {
      coil.flow(y, 0, 0, store.layer_C, null, out);
      out[placeOf.collector_to_store] = 0;
      out[placeOf.collector_pipes_to_air] = 0;
    }
    const gain = d.area_m2 * (d.eta0 * absorbed - collectorLoss_W_m2(d, this.#excess, mean - outdoors));
    const night = this.pumping ? 0 : this.#night(outlet, store);
    out[placeOf.sun_to_collector] = gain;
    out[placeOf.night_to_collector] = night;
    out[this.#outlet] = (gain - carried + night) / this.#capacity_J_K;
  }

  /** Heat drawn back to a cold collector past a missing check valve [W]. */
  #night(outlet: number, store: Store): number {
    if (this.description.night_loss_W_K === 0) return 0;
    const { layer, from, to } = this.coil.course;
    let total = 0;
    for (let j = 0; j < layer.length; j++) {
      const drawn =
        this.description.night_loss_W_K * (to[j] - from[j]) * Math.max(0, store.layer_C[layer[j]] - outlet);
      store.heat_W[layer[j]] -= drawn;
      total += drawn;
    }
    return total;
  }

  start(t: number, y: number[], store: Store): void {
    this.pumping = true;
    this.coil.start(t, y, store.layer_C, resting(y, store));
  }

  stop(t: number, y: number[], store: Store): void {
    this.pumping = false;
    this.coil.stop(t, y, this.flow_kg_s, this.coil_entry_C, store.layer_C, resting(y, store));
  }
}

/** Heat between the coil's content and a layer as they come to rest: booked like what it gives while it flows. */
function resting(y: number[], store: Store) {
  return (layer: number, energy_J: number): void => {
    store.exchange(y, layer, energy_J);
    y[placeOf.collector_to_store] += energy_J;
  };
}
