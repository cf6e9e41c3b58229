/**
 * From the coil to the taps: on-demand heater, mixing valve, pipe, and each tap's own mixing. What flow the taps call
 * for depends on how warm the coil's water comes, what heater and pipe do to it on the flow itself: `flowFor` finds
 * the flow that agrees with all of them.
 */
import { power } from '../numerics/alike.ts';
import type { BackupDescription, Draw } from './description.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from './liquid.ts';

const WATER = liquid({ kind: 'water', mass_share: 0 });
/** The flow is found to within this share of the most that can flow. */
const FLOW_TOLERANCE = 1e-6;
const MOST_ROUNDS = 60;

/** A tap that is open, and what it is to give. */
export interface Wish {
  draw: Draw;
  flow_kg_s: number;
  /** Enthalpy of the temperature wanted [K]. */
  wanted: number;
}

/**
 * How a coil's outlet depends on its flow about one that was marched: what is left of the lead on the layer at its
 * outlet is exp(-units), and units fall with flow to a power. No units: the outlet stays as it is.
 */
export interface OutletLaw {
  outlet_C: number;
  at_kg_s: number;
  best_C: number;
  cold_C: number;
  units: number;
  power: number;
}

function outletAt(law: OutletLaw, flow_kg_s: number): number {
  if (law.units === 0) return law.outlet_C;
  const units = law.units * power(law.at_kg_s / flow_kg_s, law.power);
  return law.best_C - (law.best_C - law.cold_C) * Math.exp(-units);
}

export class HotLine {
  wishes: Wish[] = [];
  /** The pipe's old content is still being pushed out, at this temperature [C]. */
  plug = false;
  plug_C = 0;
  readonly #backup: BackupDescription | null;
  readonly #limit_C: number | null;
  readonly #pipe_W_K: number;

  constructor(backup: BackupDescription | null, limit_C: number | null, pipe_W_K: number) {
    this.#backup = backup;
    this.#limit_C = limit_C;
    this.#pipe_W_K = pipe_W_K;
  }

  /** Flow of all open taps, mixed [kg/s]. */
  get mixed_kg_s(): number {
    let sum = 0;
    for (const wish of this.wishes) sum += wish.flow_kg_s;
    return sum;
  }

  /** Temperature [C] behind the on-demand heater at a flow through coil and heater [kg/s]. */
  heated_C(coil_C: number, flow_kg_s: number): number {
    const backup = this.#backup;
    if (!backup || coil_C >= backup.set_C || !(flow_kg_s > 0)) return coil_C;
    const most = backup.max_heat_W / (flow_kg_s * lookUp(WATER.heat_capacity, coil_C));
    return Math.min(backup.set_C, coil_C + most);
  }

  /** Flow through coil and heater per flow in the pipe: the valve adds cold to what is too hot. `cold` is an enthalpy [K]. */
  dilution(heated_C: number, cold: number): number {
    if (this.#limit_C === null || heated_C <= this.#limit_C) return 1;
    const heated = lookUp(WATER.enthalpy, heated_C);
    const limit = lookUp(WATER.enthalpy, this.#limit_C);
    return heated > cold ? Math.max(0, (limit - cold) / (heated - cold)) : 1;
  }

  /** Temperature [C] the pipe gives at the taps. */
  delivered_C(entering_C: number, room_C: number, flow_kg_s: number): number {
    if (this.plug) return this.plug_C;
    const capacity = Math.max(flow_kg_s, 1e-4) * REFERENCE_HEAT_CAPACITY;
    return room_C + (entering_C - room_C) * Math.exp(-this.#pipe_W_K / capacity);
  }

  /** Flow drawn from the hot pipe [kg/s] when it gives enthalpy `hot` [K]: each tap mixes to its own wish. */
  drawn_kg_s(hot: number, cold: number): number {
    let sum = 0;
    for (const wish of this.wishes) {
      const share = hot <= wish.wanted || hot <= cold ? 1 : (wish.wanted - cold) / (hot - cold);
      sum += wish.flow_kg_s * Math.max(0, share);
    }
    return sum;
  }

  /**
   * Flow through the coil [kg/s] that gives the taps what they want, if the coil's outlet follows `law`. Between
   * none and all there is one: more flow brings cooler water, which calls for more, but never for as much more.
   */
  flowFor(law: OutletLaw, cold: number, room_C: number): number {
    const most = this.mixed_kg_s;
    const least = FLOW_TOLERANCE * most;
    let low = 0;
    let high = most;
    let fLow = this.#calledFor(outletAt(law, least), least, cold, room_C);
    let fHigh = this.#calledFor(outletAt(law, most), most, cold, room_C) - most;
    if (fHigh >= 0) return most;
    if (fLow <= least) return 0;
    // False position; where one end stays twice its weight is halved, so that both close in.
    for (let round = 0, side = 0; round < MOST_ROUNDS && high - low > least; round++) {
      const flow = (low * fHigh - high * fLow) / (fHigh - fLow);
      const f = this.#calledFor(outletAt(law, flow), flow, cold, room_C) - flow;
      if (Math.abs(f) <= least) return flow;
      if (f > 0) {
        low = flow;
        fLow = f;
        if (side > 0) fHigh /= 2;
        side = 1;
      } else {
        high = flow;
        fHigh = f;
        if (side < 0) fLow /= 2;
        side = -1;
      }
    }
    return (low + high) / 2;
  }

  /** Coil flow the taps call for when the coil gives `coil_C` and `flow_kg_s` passes heater and pipe [kg/s]. */
  #calledFor(coil_C: number, flow_kg_s: number, cold: number, room_C: number): number {
    const heated = this.heated_C(coil_C, flow_kg_s);
    const diluted = this.dilution(heated, cold);
    const pipe = diluted > 0 ? Math.min(this.mixed_kg_s, flow_kg_s / diluted) : this.mixed_kg_s;
    const entering = diluted < 1 && this.#limit_C !== null ? this.#limit_C : heated;
    const delivered = this.delivered_C(entering, room_C, pipe);
    return diluted * this.drawn_kg_s(lookUp(WATER.enthalpy, delivered), cold);
  }
}
