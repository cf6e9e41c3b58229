/**
 * The engine: fuel to coolant heat, block and coolant as one warm mass, a thermostat that opens the way to the
 * coil in the store, a radiator that takes what the store does not.
 *
 * C dT/dt = jacket + exhaust - flow (h(T) - h(return)) - radiator, and - block loss when it stands. Source of the form: energy
 * balance of a cooled block (shared practice); shares and fuel line from the description.
 */
import { altitudeDerating } from '../physics/combustion.ts';
import type { Air } from './air.ts';
import type { Coil } from './coil/coil.ts';
import type { EngineDescription, WeekSpan } from './description.ts';
import { type Layout, placeOf } from './layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY } from './liquid.ts';
import type { Store } from './store/store.ts';

const DAY = 86_400;

/**
 * The thermostat opens over a few kelvin: an error of 0.1 K in the block is some hundred watts into the store.
 * With 10 the heat of a week varies by 0.02 % with the tolerance instead of 0.5 %; with 30 no sample of five minutes is
 * off by more than 60 W instead of 700 (measured on the demo, for one evaluation in twenty).
 */
const BLOCK_SHARPNESS = 30;

export class Engine {
  readonly description: EngineDescription;
  readonly coil: Coil;
  running = false;
  /** Inside its timetable, or the hours in which it may answer a call for heat; set at restarts. */
  mayRun = false;
  /** Electrical output since the last restart [W]: it steps, and a rate at a span's end must not see the next step. */
  load_W: number;
  /** Temperature of the coolant coming back, flow and heat into the store at the last evaluation. */
  return_C = 0;
  flow_kg_s = 0;
  coil_entry_C = 0;
  readonly #air: Air;
  readonly #block: number;
  readonly #coolant;
  readonly #full_kg_s: number;
  readonly #most_W: number;
  readonly #firstWeekday: number;

  constructor(
    description: EngineDescription,
    coil: Coil,
    air: Air,
    altitude_m: number,
    firstWeekday: number,
    layout: Layout,
  ) {
    this.description = description;
    this.coil = coil;
    this.#air = air;
    this.#coolant = liquid(description.coolant);
    this.#full_kg_s =
      description.coolant_flow_m3_s * lookUp(this.#coolant.density, description.thermostat_full_C);
    this.#most_W = description.rated_output_W * Math.min(1, altitudeDerating(altitude_m));
    this.#firstWeekday = firstWeekday;
    this.load_W = this.output_W(0);
    const start = [air.around_C(description.surroundings, 0)];
    this.#block = layout.claim(description.name, 'block', start, BLOCK_SHARPNESS);
  }

  block_C(y: ArrayLike<number>): number {
    return y[this.#block];
  }

  energy(y: ArrayLike<number>): number {
    return y[this.#block] * this.description.heat_capacity_J_K;
  }

  /** Electrical output at a time of the run [W], no more than the altitude leaves of the rating. */
  output_W(t: number): number {
    const second = t % DAY;
    let output = 0;
    for (const step of this.description.load) if (second >= step.from_s) output = step.output_W;
    return Math.min(output, this.#most_W);
  }

  fuel_kg_s(output_W: number): number {
    return this.description.no_load_kg_s + this.description.slope_kg_J * output_W;
  }

  /** Share of the fuel's heat that reaches the coolant at an output [W]: linear in load between quarter and rated. */
  jacketShare(output_W: number): number {
    const { jacket_share, rated_output_W } = this.description;
    const load = Math.min(1, Math.max(0.25, output_W / rated_output_W));
    return jacket_share.quarter + ((jacket_share.rated - jacket_share.quarter) * (load - 0.25)) / 0.75;
  }

  /** Opening of the thermostat, 0..1, smooth between start and full. */
  opening(t_C: number): number {
    const { thermostat_open_C: open, thermostat_full_C: full } = this.description;
    const u = Math.min(1, Math.max(0, (t_C - open) / (full - open)));
    return u * u * (3 - 2 * u);
  }

  /** Writes the block's and coil's rates and the ledger's; charges the layers. */
  rates(t: number, y: number[], store: Store, out: number[]): void {
    const { description: d } = this;
    const block = y[this.#block];
    const around = this.#air.around_C(d.surroundings, t);
    let heat = 0;
    this.flow_kg_s = 0;
    this.return_C = block;
    if (this.running) {
      const output = this.load_W;
      const fuel = this.fuel_kg_s(output);
      heat = (this.jacketShare(output) + d.exhaust_share) * fuel * d.fuel.lower_heating_value_J_kg;
      out[placeOf.fuel_kg] = fuel;
      out[placeOf.engine_electricity_J] = output;
      this.flow_kg_s = this.opening(block) * this.#full_kg_s;
    } else {
      out[placeOf.fuel_kg] = 0;
      out[placeOf.engine_electricity_J] = 0;
    }
    out[placeOf.fuel_to_coolant] = heat;
    heat -= this.#loop(y, block, around, store, out);
    const excess = Math.min(
      1,
      Math.max(0, (block - d.radiator.starts_C) / (d.radiator.full_C - d.radiator.starts_C)),
    );
    const radiated = this.running ? excess * d.radiator.conductance_W_K * (block - around) : 0;
    // The jacket share is what reaches the coolant of a warm running engine: its block's loss is already outside it.
    const lost = this.running ? 0 : d.block_loss_W_K * (block - around);
    const standby = this.running ? 0 : this.#standby(block, store);
    out[placeOf.radiator_to_air] = radiated;
    out[placeOf.block_to_air] = lost;
    out[placeOf.standby_to_engine] = standby;
    out[this.#block] = (heat - radiated - lost + standby) / d.heat_capacity_J_K;
  }

  /** Heat the coolant carries off the block [W]: into the store, and along the pipes to the air. */
  #loop(y: number[], block: number, around: number, store: Store, out: number[]): number {
    const { description: d, coil } = this;
    const flow = this.flow_kg_s;
    const capacity = flow * lookUp(this.#coolant.heat_capacity, block);
    // Half the pipe lies before the coil, half behind it; below a trickle it has no heat to lose.
    const kept = capacity > 1 ? Math.exp((-0.5 * d.pipes.conductance_W_mK * d.pipes.length_m) / capacity) : 1;
    this.coil_entry_C = around + (block - around) * kept;
    const left = coil.flow(y, flow, this.coil_entry_C, store.layer_C, store.heat_W, out);
    this.return_C = flow > 0 ? around + (left - around) * kept : block;
    const h = this.#coolant.enthalpy;
    const scale = flow * REFERENCE_HEAT_CAPACITY;
    out[placeOf.engine_to_store] = flow > 0 ? coil.heat_W : 0;
    out[placeOf.engine_pipes_to_air] =
      scale * (lookUp(h, block) - lookUp(h, this.coil_entry_C) + lookUp(h, left) - lookUp(h, this.return_C));
    return scale * (lookUp(h, block) - lookUp(h, this.return_C));
  }

  /** Heat the stopped engine draws out of the store by thermosiphon [W]. */
  #standby(block: number, store: Store): number {
    if (this.description.standby_loss_W_K === 0) return 0;
    const { layer, from, to } = this.coil.course;
    let total = 0;
    for (let j = 0; j < layer.length; j++) {
      const drawn =
        this.description.standby_loss_W_K * (to[j] - from[j]) * Math.max(0, store.layer_C[layer[j]] - block);
      store.heat_W[layer[j]] -= drawn;
      total += drawn;
    }
    return total;
  }

  /** Takes up the load and the leave to run of a time of the run (at restarts). */
  atRestart(t: number): void {
    this.mayRun = this.allowed(t);
    this.load_W = this.output_W(t);
  }

  /** Whether the timetable, or the hours in which it may answer a call for heat, hold at a time of the run. */
  allowed(t: number): boolean {
    return inSpans(this.description.runs.spans, t, this.#firstWeekday);
  }

  start(t: number, y: number[], store: Store): void {
    this.running = true;
    this.coil.start(t, y, store.layer_C, resting(y, store));
  }

  stop(t: number, y: number[], store: Store): void {
    this.running = false;
    this.coil.stop(t, y, this.flow_kg_s, this.coil_entry_C, store.layer_C, resting(y, store));
  }
}

/** True if second t of the run lies in one of the spans of the week. */
export function inSpans(spans: readonly WeekSpan[], t: number, firstWeekday: number): boolean {
  const weekday = (firstWeekday + Math.floor(t / DAY)) % 7;
  const second = t % DAY;
  return spans.some((s) => s.days.includes(weekday) && second >= s.from_s && second < s.to_s);
}

/** Heat between the coil's content and a layer as they come to rest: booked like what it gives while it flows. */
function resting(y: number[], store: Store) {
  return (layer: number, energy_J: number): void => {
    store.exchange(y, layer, energy_J);
    y[placeOf.engine_to_store] += energy_J;
  };
}
