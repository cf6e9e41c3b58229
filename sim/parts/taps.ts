/**
 * The household: draws, the coil's flow, the pipe to the taps with its cold plug. Heater, valve and mixing at the
 * taps are in `hot-line.ts`.
 *
 * The hot flow follows from the outlet temperature and the outlet temperature from the hot flow: both are
 * found together. A march at the flow of the last restart gives the coil's effectiveness; its dependence on flow, found
 * at that restart, gives the flow that mixes to what is wanted, and the march that charges the layers is at this flow.
 * The remaining error of the mixed temperature is below 0.1 K (tested), and every energy is booked from the flows used.
 */
import { MINOR_LOSS, pressureLoss } from '../physics/friction.ts';
import type { Air } from './air.ts';
import type { Coil } from './coil/coil.ts';
import type { BackupDescription, Draw, TapsDescription } from './description.ts';
import type { Opening } from './draw-calendar.ts';
import { HotLine, type OutletLaw } from './hot-line.ts';
import { type Layout, placeOf } from './layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY, temperatureOf } from './liquid.ts';
import type { Store } from './store/store.ts';
import type { Supply } from './supply.ts';

/** Heat transfer units of a coil fall with flow to this power: the inside film rises with it, the outside hardly. */
const UNITS_EXPONENT = 0.65;
const DRAWN_ROUGHNESS = 1.5e-6;
/** A tap at the store still has this much pipe [m]. */
const SHORTEST_PIPE = 0.05;
/** Bends on the way to the taps (common practice). */
const ELBOWS = 8;

/** Marches to find the coil's flow from nothing, at a restart; afterwards one, from the flow and by the law found there. */
const ROUNDS_AT_RESTART = 5;
/** Two flows this close, as a share of the most, are the same. */
const SAME_FLOW = 2e-4;

export class Taps {
  readonly description: TapsDescription;
  readonly coil: Coil;
  readonly backup: BackupDescription | null;
  /** Draws open now. */
  open: Opening[] = [];
  /** Pressure at the taps while drawing [Pa]. */
  pressure_Pa = 0;
  /** At the last evaluation: flows [kg/s] and temperatures [C]. */
  mixed_kg_s = 0;
  coil_kg_s = 0;
  coil_outlet_C = 0;
  hot_line_C = 0;
  outlet_C = 0;
  readonly #supply: Supply;
  readonly #store: Store;
  readonly #air: Air;
  readonly #water = liquid({ kind: 'water', mass_share: 0 });
  readonly #pipe: number;
  readonly #pipeFront: number;
  readonly #pipe_J_K: number;
  readonly #pipe_W_K: number;
  readonly #line: HotLine;
  /** Flow in the hot pipe at the last evaluation, and through the coil at the last restart [kg/s]. */
  #pipe_kg_s = 0;
  #guess_kg_s = 0;
  readonly #law: OutletLaw = { outlet_C: 0, at_kg_s: 1, best_C: 0, cold_C: 0, units: 0, power: 0 };

  constructor(
    description: TapsDescription,
    backup: BackupDescription | null,
    coil: Coil,
    parts: { supply: Supply; store: Store; air: Air },
    layout: Layout,
  ) {
    this.description = description;
    this.backup = backup;
    this.coil = coil;
    this.#supply = parts.supply;
    this.#store = parts.store;
    this.#air = parts.air;
    const { tube, length_m, conductance_W_mK, surroundings } = description.pipe;
    const bore = (Math.PI / 4) * tube.inside_diameter_m ** 2;
    const wall = (Math.PI / 4) * (tube.outside_diameter_m ** 2 - tube.inside_diameter_m ** 2);
    const perMetre =
      bore * lookUp(this.#water.density, 40) * lookUp(this.#water.heat_capacity, 40) +
      wall * tube.density_kg_m3 * tube.heat_capacity_J_kgK;
    this.#pipe_J_K = Math.max(SHORTEST_PIPE, length_m) * perMetre;
    this.#pipe_W_K = length_m * conductance_W_mK;
    this.#line = new HotLine(backup, description.mixing_valve_C, this.#pipe_W_K);
    this.#pipe = layout.claim('tap pipe', 'content', [this.#air.around_C(surroundings, 0)]);
    this.#pipeFront = layout.claim('tap pipe', 'front', [0]);
  }

  energy(y: ArrayLike<number>): number {
    return y[this.#pipe] * this.#pipe_J_K;
  }

  get drawing(): boolean {
    return this.#line.wishes.length > 0;
  }

  /** The pipe's old content is still being pushed out. */
  get plug(): boolean {
    return this.#line.plug;
  }

  set plug(standing: boolean) {
    this.#line.plug = standing;
  }

  /** Flow given to a draw that is open now [m3/s]. */
  flowOf(draw: Draw): number {
    const wish = this.#line.wishes.find((w) => w.draw === draw);
    return wish ? wish.flow_kg_s / lookUp(this.#water.density, 40) : 0;
  }

  /** The household's rates and the ledger's; charges the layers. */
  rates(t: number, y: number[], out: number[]): void {
    const { description: d } = this;
    const room = this.#air.around_C(d.pipe.surroundings, t);
    if (!this.drawing) {
      const lost = this.#pipe_W_K * (y[this.#pipe] - room);
      out[placeOf.tap_pipe_to_air] = lost;
      out[this.#pipe] = -lost / this.#pipe_J_K;
      this.mixed_kg_s = 0;
      this.coil_kg_s = 0;
      this.#pipe_kg_s = 0;
      this.coil.flow(y, 0, 0, this.#store.layer_C, null, out);
      this.#supply.rates(t, y, 0, out);
      return;
    }
    const cold_C = this.#supply.cold_C(t, y);
    const cold = lookUp(this.#water.enthalpy, cold_C);
    const coil_kg_s = this.#coilFlow(y, cold_C, room, 1);
    const outlet = this.coil.flow(y, coil_kg_s, cold_C, this.#store.layer_C, this.#store.heat_W, out);
    this.#deliver(y, coil_kg_s, outlet, cold, room, out);
    out[placeOf.pump_electricity_J] += this.#supply.description.pump.power_W;
    this.#supply.rates(t, y, this.mixed_kg_s, out);
  }

  /** Flow through the coil that mixes to what is wanted [kg/s]. */
  #coilFlow(y: number[], cold_C: number, room: number, rounds: number): number {
    const most = this.#line.mixed_kg_s;
    const cold = lookUp(this.#water.enthalpy, cold_C);
    let flow = Math.max(this.#guess_kg_s, 0.02 * most);
    this.#law.units = 0;
    for (let round = 0; round < rounds; round++) {
      this.#learn(y, flow, cold_C);
      const next = this.#line.flowFor(this.#law, cold, room);
      if (!(next > 0) || Math.abs(next - flow) < SAME_FLOW * most) return next;
      flow = next;
    }
    return flow;
  }

  /** Marches the coil at a flow [kg/s] and draws the law of its outlet through it, and through the flow before. */
  #learn(y: number[], flow: number, cold_C: number): void {
    const layers = this.#store.layer_C;
    const { layer } = this.coil.course;
    const law = this.#law;
    // The best the coil can do: the layer its outlet lies in.
    const best = layer.length > 0 ? layers[layer[layer.length - 1]] : cold_C;
    const outlet = this.coil.flow(y, flow, cold_C, layers, null, null);
    const gap = (best - outlet) / (best - cold_C);
    // While filling, what comes stood in the coil: the flow hardly matters.
    const units = this.coil.mode !== 'filling' && gap > 1e-9 && gap < 1 ? -Math.log(gap) : 0;
    const known = law.units > 0 && units > 0 && Math.abs(flow - law.at_kg_s) > 1e-3 * flow;
    if (known) {
      const power = Math.log(units / law.units) / Math.log(law.at_kg_s / flow);
      law.power = Math.min(1, Math.max(0.1, power));
    }
    law.units = units;
    law.at_kg_s = flow;
    law.outlet_C = outlet;
    law.best_C = best;
    law.cold_C = cold_C;
  }

  /** Books heater, valve, pipe and taps for the coil's flow and outlet temperature. */
  #deliver(
    y: number[],
    coil_kg_s: number,
    outlet_C: number,
    cold: number,
    room: number,
    out: number[],
  ): void {
    const h = this.#water.enthalpy;
    const c = REFERENCE_HEAT_CAPACITY;
    const line = this.#line;
    const mixed = line.mixed_kg_s;
    const heated = lookUp(h, line.heated_C(outlet_C, coil_kg_s));
    const diluted = line.dilution(line.heated_C(outlet_C, coil_kg_s), cold);
    const pipe = Math.min(mixed, diluted > 0 ? coil_kg_s / diluted : coil_kg_s);
    // Enthalpy as booked, so that what enters the pipe is what left the coil, the heater and the cold side.
    const entering = pipe > 0 ? (coil_kg_s * heated + (pipe - coil_kg_s) * cold) / pipe : cold;
    const leaving_C = line.delivered_C(temperatureOf(this.#water, entering), room, pipe);
    const leaving = lookUp(h, leaving_C);
    const lost = this.plug ? this.#pipe_W_K * (y[this.#pipe] - room) : pipe * c * (entering - leaving);
    const atTap = (pipe * leaving + (mixed - pipe) * cold) / mixed;
    out[placeOf.backup_to_water] = coil_kg_s * c * (heated - lookUp(h, outlet_C));
    out[placeOf.tap_pipe_to_air] = lost;
    out[placeOf.household_cold_in] = mixed * c * cold;
    out[placeOf.household_to_taps] = mixed * c * atTap;
    out[placeOf.household_heat] = coil_kg_s > 0 ? -this.coil.heat_W : 0;
    out[placeOf.mixed_kg] = mixed;
    out[placeOf.coil_kg] = coil_kg_s;
    if (this.backup) {
      out[placeOf.backup_fuel_kg] =
        out[placeOf.backup_to_water] / (this.backup.efficiency * this.backup.fuel.lower_heating_value_J_kg);
    }
    out[this.#pipe] = (pipe * c * (entering - leaving) - lost) / this.#pipe_J_K;
    out[this.#pipeFront] = this.plug ? (pipe * c) / this.#pipe_J_K : 0;
    this.mixed_kg_s = mixed;
    this.coil_kg_s = coil_kg_s;
    this.#pipe_kg_s = pipe;
    this.coil_outlet_C = outlet_C;
    this.hot_line_C = leaving_C;
    this.outlet_C = temperatureOf(this.#water, atTap);
  }

  /** Time until the front in coil or pipe arrives, if one is on its way [s]; Infinity if none. */
  nextFront(y: ArrayLike<number>): number {
    if (!this.drawing || this.coil_kg_s <= 0) return Number.POSITIVE_INFINITY;
    let soonest = Number.POSITIVE_INFINITY;
    if (this.coil.mode === 'filling') {
      soonest = Math.max(0, 1 - this.coil.front(y)) / this.coil.frontSpeed(this.coil_kg_s, 20);
    }
    if (this.plug) {
      const hot = Math.max(this.#pipe_kg_s, 1e-6) * REFERENCE_HEAT_CAPACITY;
      soonest = Math.min(soonest, (Math.max(0, 1 - y[this.#pipeFront]) * this.#pipe_J_K) / hot);
    }
    return Math.max(soonest, 0.05);
  }

  /** Lets fronts that have arrived arrive (at a restart). */
  arrive(y: ArrayLike<number>): void {
    if (this.coil.mode === 'filling' && this.coil.front(y) > ARRIVED) this.coil.mode = 'steady';
    if (this.plug && y[this.#pipeFront] > ARRIVED) this.plug = false;
  }

  /** Opens and closes taps (at a restart) and finds where pump and pipes cross. */
  change(t: number, y: number[], open: Opening[], temperatures: { room: number }): void {
    const was = this.drawing;
    this.open = open;
    const flowing = open.length > 0 && this.#supply.ice(y) < 0.5;
    if (was && !flowing) {
      const cold = this.#supply.cold_C(t, y);
      this.coil.stop(t, y, this.coil_kg_s, cold, this.#store.layer_C, this.#resting(y));
      this.plug = false;
    }
    if (!flowing) {
      this.#line.wishes = [];
      return;
    }
    if (!was) {
      this.coil.start(t, y, this.#store.layer_C, this.#resting(y));
      this.plug = true;
      this.#line.plug_C = y[this.#pipe];
      this.#guess_kg_s = 0;
      y[this.#pipeFront] = 0;
    }
    this.#cross(t, y, temperatures.room);
  }

  /** Heat between the coil's content and a layer as they come to rest: booked like what it takes while it flows. */
  #resting(y: number[]) {
    return (layer: number, energy_J: number): void => {
      this.#store.exchange(y, layer, energy_J);
      y[placeOf.household_heat] -= energy_J;
    };
  }

  #cross(t: number, y: number[], room: number): void {
    const density = lookUp(this.#water.density, 40);
    const cold_C = this.#supply.cold_C(t, y);
    const draws = this.open.map((o) => o.draw);
    let share = 0.7;
    this.#law.power = UNITS_EXPONENT;
    for (let pass = 0; pass < 2; pass++) {
      const crossing = this.#supply.crossing(draws, (flow) => this.#lossTo(flow, share, cold_C));
      this.pressure_Pa = crossing.pressure_Pa;
      this.#line.wishes = draws
        .map((draw, i) => ({
          draw,
          flow_kg_s: crossing.flows_m3_s[i] * density,
          wanted: lookUp(this.#water.enthalpy, draw.wanted_C),
        }))
        .filter((wish) => wish.flow_kg_s > 0);
      const total = this.#line.mixed_kg_s;
      if (total <= 0) break;
      this.#guess_kg_s = this.#coilFlow(y, cold_C, room, ROUNDS_AT_RESTART);
      share = Math.min(1, this.#guess_kg_s / total);
    }
  }

  /** Pressure lost [Pa] through coil and pipe at a mixed flow [m3/s]. */
  #lossTo(flow_m3_s: number, share: number, cold_C: number): number {
    if (flow_m3_s <= 0) return 0;
    const mean = (cold_C + 50) / 2;
    const density_kg_m3 = lookUp(this.#water.density, mean);
    const { tube, length_m } = this.description.pipe;
    const pipe = {
      length_m,
      inside_diameter_m: tube.inside_diameter_m,
      curvature: 0,
      roughness_m: DRAWN_ROUGHNESS,
      minor: ELBOWS * MINOR_LOSS.threadedElbow,
    };
    return (
      this.coil.pressureLoss(share * flow_m3_s * density_kg_m3, mean) +
      pressureLoss(pipe, flow_m3_s, { density_kg_m3, viscosity_Pa_s: lookUp(this.#water.viscosity, mean) })
    );
  }
}

/** A front this far along has arrived: its time was foreseen at the flow of an earlier restart. */
const ARRIVED = 0.995;
