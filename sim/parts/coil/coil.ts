/**
 * A coil in the store. Steady flow is marched section by section (`march.ts`). What the coil holds is one state, the energy of its
 * liquid and metal (in - out + heat from the layers), so that the ledger closes whatever the profile; a second
 * state is how far the liquid that entered since the start has come.
 *
 *  - filling: the front is inside. Behind it the steady march holds; ahead of it liquid that stood at its
 *    layers' temperature is pushed out, exchanging over the rest of its way.
 *  - steady: the front has passed.
 *  - still: content and layers have come to rest together. The exchange after a stop takes a minute or two; it
 *    is booked at once at the stop, and what had not yet been exchanged is booked back if flow starts again
 *    before, which is what makes the cold-hot-cold of a paused shower.
 *
 * The metal stands between liquid and layers, so only a share of its heat goes with the liquid: most of it while
 * the liquid flows and the film outside is the poorer one, less than half once it stands.
 */
import { MINOR_LOSS, pressureLoss, tubeVelocity } from '../../physics/friction.ts';
import type { CoilDescription } from '../description.ts';
import type { Layout } from '../layout.ts';
import { type Liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../liquid.ts';
import type { StoreGeometry } from '../store/geometry.ts';
import { type Course, courseOf } from './course.ts';
import { Films } from './films.ts';
import { March } from './march.ts';
import { restOf } from './rest.ts';

/** Below this flow [kg/s] a coil counts as still. */
const STILL_FLOW = 1e-7;

/** Share of the path that stands for the way in. */
const WAY_IN = 1e-6;

/** Roughness of drawn tube [m] (handbooks: 0.0015 mm). */
const DRAWN_ROUGHNESS = 1.5e-6;

export class Coil {
  readonly description: CoilDescription;
  readonly films: Films;
  readonly inside: Liquid;
  course: Course;
  mode: 'still' | 'filling' | 'steady' = 'still';
  /** Reference capacity of liquid and metal [J/K]; the content state is energy over this. */
  readonly capacity_J_K: number;
  /** Liquid held [kg]. */
  readonly held_kg: number;
  /** Heat to the layers by the marches since `heat_W` was last cleared [W]. */
  heat_W = 0;
  readonly #march: March;
  readonly #content: number;
  readonly #front: number;
  readonly #liquid_J_K: number;
  readonly #metal_J_K: number;
  /** How far the metal follows the flowing liquid away from the layers, 0..1, as the front last met it. */
  #metalFollows = 0.8;
  /** Deviation of the liquid from its layer at the last stop, by section [K], and when that was. */
  #deviation = new Float64Array(0);
  #stopped_s = Number.NEGATIVE_INFINITY;
  /** How each section comes to rest from there: time constant [s], and how far its metal follows. */
  #settling_s = new Float64Array(0);
  #metalFollowsStill = new Float64Array(0);
  /** Deviation left at the present start, by section [K]. */
  #left = new Float64Array(0);

  constructor(
    description: CoilDescription,
    inside: Liquid,
    water: Liquid,
    store: StoreGeometry,
    layerTemperature_C: ArrayLike<number>,
    layout: Layout,
  ) {
    this.description = description;
    this.inside = inside;
    this.films = new Films(description, inside, water);
    this.#march = new March(this.films, inside);
    this.course = courseOf(description, store);
    this.#makeRoom();
    const { tube } = description;
    const total = this.course.length_m * this.course.paths;
    const bore = (Math.PI / 4) * tube.inside_diameter_m ** 2;
    const wall = (Math.PI / 4) * (tube.outside_diameter_m ** 2 - tube.inside_diameter_m ** 2);
    const reference = 50;
    this.held_kg = total * bore * lookUp(inside.density, reference);
    this.#metal_J_K = total * wall * tube.density_kg_m3 * tube.heat_capacity_J_kgK;
    this.#liquid_J_K = this.held_kg * lookUp(inside.heat_capacity, reference);
    this.capacity_J_K = this.#liquid_J_K + this.#metal_J_K;
    this.#content = layout.claim(description.name, 'content', [
      this.restEnergy(layerTemperature_C) / this.capacity_J_K,
    ]);
    this.#front = layout.claim(description.name, 'front', [0]);
  }

  /** Lays the coil anew when the water level has moved. */
  layAnew(store: StoreGeometry): void {
    const before = this.course.layer.length;
    this.course = courseOf(this.description, store);
    if (this.course.layer.length !== before) this.#makeRoom();
  }

  /** A place for what is kept by section, all at nought. */
  #makeRoom(): void {
    const sections = () => new Float64Array(this.course.layer.length);
    this.#deviation = sections();
    this.#left = sections();
    this.#settling_s = sections();
    this.#metalFollowsStill = sections();
  }

  /** Energy of content and metal [J, 0 at 0 C] when at rest with the layers. */
  restEnergy(layer_C: ArrayLike<number>): number {
    const { layer, from, to, dry } = this.course;
    let energy = 0;
    for (let j = 0; j < layer.length; j++) energy += (to[j] - from[j]) * this.#energyAt(layer_C[layer[j]]);
    // Dry turns hang above the water in its vapour: they follow the top layer.
    if (dry > 0) energy += dry * this.#energyAt(layer_C[layer_C.length - 1]);
    return energy;
  }

  #energyAt(t_C: number): number {
    return this.held_kg * REFERENCE_HEAT_CAPACITY * lookUp(this.inside.enthalpy, t_C) + this.#metal_J_K * t_C;
  }

  /** Energy held [J, 0 at 0 C]. */
  energy(y: ArrayLike<number>): number {
    return y[this.#content] * this.capacity_J_K;
  }

  /** How far the front has come: 0 at the start, 1 at the outlet. */
  front(y: ArrayLike<number>): number {
    return y[this.#front];
  }

  /** Speed of the front [1/s] at a flow [kg/s]: it carries the metal's share with it. */
  frontSpeed(flow_kg_s: number, t_C: number): number {
    return (flow_kg_s * lookUp(this.inside.heat_capacity, t_C)) / this.#moving_J_K;
  }

  /** Capacity of the liquid and of the metal's share that goes with it while it flows [J/K]. */
  get #moving_J_K(): number {
    return this.#liquid_J_K + this.#metalFollows * this.#metal_J_K;
  }

  /** Outlet temperature [C] of a march from share `from` to `to` of the path; adds to `heat_W` what it gave, if `heat` is given. */
  #along(
    flow_kg_s: number,
    entry_C: number,
    from: number,
    to: number,
    layer_C: Float64Array,
    heat: Float64Array | null,
  ): number {
    const outlet = this.#march.along(this.course, flow_kg_s, entry_C, from, to, layer_C, heat);
    this.heat_W += this.#march.given_W;
    return outlet;
  }

  /** Temperature [C] of the liquid pushed out while filling, before the rest of its way: what stood at `share` of the path. */
  standing(share: number, layer_C: Float64Array): number {
    const { layer, from, to } = this.course;
    const last = layer.length - 1;
    if (last < 0) return layer_C[layer_C.length - 1];
    if ((from[last] + to[last]) / 2 <= share) return this.#stood(last, layer_C);
    let below = -1;
    for (let j = 0; j < last; j++) if ((from[j] + to[j]) / 2 <= share) below = j;
    if (below < 0) return this.#stood(0, layer_C);
    const p = (from[below] + to[below]) / 2;
    const q = (from[below + 1] + to[below + 1]) / 2;
    const u = (share - p) / (q - p);
    return this.#stood(below, layer_C) * (1 - u) + this.#stood(below + 1, layer_C) * u;
  }

  #stood(section: number, layer_C: Float64Array): number {
    return layer_C[this.course.layer[section]] + this.#left[section];
  }

  /**
   * One flow condition: outlet temperature [C] at a flow [kg/s] and entry temperature [C]. With `heat` given
   * the layers are charged and the coil's own rates written to `out`; without, nothing is changed.
   */
  flow(
    y: ArrayLike<number>,
    flow_kg_s: number,
    entry_C: number,
    layer_C: Float64Array,
    heat: Float64Array | null,
    out: number[] | null,
  ): number {
    if (flow_kg_s < STILL_FLOW) {
      if (out) {
        out[this.#content] = 0;
        out[this.#front] = 0;
      }
      return this.standing(1, layer_C);
    }
    this.heat_W = 0;
    let outlet: number;
    if (this.mode === 'filling') {
      const front = Math.min(1, y[this.#front]);
      outlet = this.#along(flow_kg_s, this.standing(1 - front, layer_C), 1 - front, 1, layer_C, heat);
      if (heat) {
        this.#along(flow_kg_s, entry_C, 0, front, layer_C, heat);
        // Before the front has moved, the way in stands for what it has passed.
        if (front === 0) this.#march.along(this.course, flow_kg_s, entry_C, 0, WAY_IN, layer_C, null);
        this.#metalFollows = this.#march.outsideShare;
      }
    } else {
      outlet = this.#along(flow_kg_s, entry_C, 0, 1, layer_C, heat);
    }
    if (out) {
      const carried =
        flow_kg_s *
        REFERENCE_HEAT_CAPACITY *
        (lookUp(this.inside.enthalpy, entry_C) - lookUp(this.inside.enthalpy, outlet));
      out[this.#content] = (carried - this.heat_W) / this.capacity_J_K;
      out[this.#front] = this.mode === 'filling' ? this.frontSpeed(flow_kg_s, entry_C) : 0;
    }
    return outlet;
  }

  /** Flow starts at time t [s]: content and layers come to rest first, less what an early restart leaves undone. */
  start(
    t: number,
    y: number[],
    layer_C: Float64Array,
    exchange: (layer: number, energy_J: number) => void,
  ): void {
    // Liquid that starts to move takes up the metal's share anew.
    const moving = this.#moving_J_K;
    let held_J = 0;
    for (let j = 0; j < this.#left.length; j++) {
      const undone = Math.exp(-(t - this.#stopped_s) / this.#settling_s[j]);
      const still = this.#liquid_J_K + this.#metalFollowsStill[j] * this.#metal_J_K;
      const kept = undone > 0.01 ? undone * Math.min(1, still / moving) : 0;
      this.#left[j] = kept * this.#deviation[j];
      held_J += this.#share(j) * this.#left[j] * moving;
    }
    this.#settle(y, this.restEnergy(layer_C) + held_J, this.#left, -moving, exchange);
    y[this.#front] = 0;
    this.mode = 'filling';
  }

  /** Flow stops at time t [s]; `flow_kg_s` and `entry_C` are what it last was. */
  stop(
    t: number,
    y: number[],
    flow_kg_s: number,
    entry_C: number,
    layer_C: Float64Array,
    exchange: (layer: number, energy_J: number) => void,
  ): void {
    this.#profile(y, flow_kg_s, entry_C, layer_C);
    this.#foreseeRest(layer_C);
    this.#settle(y, this.restEnergy(layer_C), this.#deviation, this.#moving_J_K, exchange);
    this.#stopped_s = t;
    this.mode = 'still';
  }

  /** Deviation of the liquid from its layer along the coil, by section [K], for the flow it last had. */
  #profile(y: number[], flow_kg_s: number, entry_C: number, layer_C: Float64Array): void {
    const { layer, from, to } = this.course;
    const reached = this.mode === 'filling' ? Math.min(1, y[this.#front]) : 1;
    let t = entry_C;
    for (let j = 0; j < layer.length; j++) {
      if (flow_kg_s < STILL_FLOW) {
        this.#deviation[j] = 0;
        continue;
      }
      let sum = 0;
      const end = Math.min(to[j], reached);
      if (end > from[j]) {
        const next = this.#along(flow_kg_s, t, from[j], end, layer_C, null);
        sum += ((t + next) / 2) * (end - from[j]);
        t = next;
      }
      const begin = Math.max(from[j], reached);
      if (begin < to[j]) {
        // Ahead of the front stands what was pushed on from further back.
        const middle = (begin + to[j]) / 2;
        const stood = this.standing(middle - reached, layer_C);
        sum += this.#along(flow_kg_s, stood, middle - reached, middle, layer_C, null) * (to[j] - begin);
      }
      this.#deviation[j] = sum / this.#share(j) - layer_C[layer[j]];
    }
  }

  /** How each section's present deviation will come to rest, by the films halfway there. */
  #foreseeRest(layer_C: Float64Array): void {
    const { layer, length_m, paths } = this.course;
    for (let j = 0; j < layer.length; j++) {
      const rest = restOf(this.films, this.inside, layer_C[layer[j]], this.#deviation[j] / 2);
      const capacity = this.#liquid_J_K + rest.metal_follows * this.#metal_J_K;
      this.#metalFollowsStill[j] = rest.metal_follows;
      this.#settling_s[j] = (capacity / (length_m * paths)) * rest.resistance_mK_W;
    }
  }

  #share(section: number): number {
    return this.course.to[section] - this.course.from[section];
  }

  /**
   * Brings the content to `target_J` by exchange with the layers: to each layer `lead` [K] times `capacity_J_K` by
   * section, and what the ledger has over or lacks evenly along the coil.
   */
  #settle(
    y: number[],
    target_J: number,
    lead: Float64Array,
    capacity_J_K: number,
    exchange: (layer: number, energy_J: number) => void,
  ): void {
    const wet = 1 - this.course.dry;
    if (!(wet > 0)) return;
    let rest = this.energy(y) - target_J;
    for (let j = 0; j < lead.length; j++) rest -= this.#share(j) * lead[j] * capacity_J_K;
    for (let j = 0; j < lead.length; j++) {
      exchange(this.course.layer[j], this.#share(j) * (lead[j] * capacity_J_K + rest / wet));
    }
    y[this.#content] = target_J / this.capacity_J_K;
  }

  /** Pressure lost [Pa] at a flow of all paths [kg/s] and a mean temperature [C]. */
  pressureLoss(flow_kg_s: number, mean_C: number): number {
    const { tube } = this.description;
    const density_kg_m3 = lookUp(this.inside.density, mean_C);
    return pressureLoss(
      {
        // What longer tube would lose: the way in and out stays.
        length_m: this.description.friction * this.course.length_m,
        inside_diameter_m: tube.inside_diameter_m,
        curvature: this.films.curvature,
        roughness_m: DRAWN_ROUGHNESS,
        minor: MINOR_LOSS.entrance + MINOR_LOSS.exit + 2 * MINOR_LOSS.threadedElbow,
      },
      flow_kg_s / this.course.paths / density_kg_m3,
      { density_kg_m3, viscosity_Pa_s: lookUp(this.inside.viscosity, mean_C) },
    );
  }

  /** Speed of the liquid in the tube [m/s] at a flow of all paths [kg/s]. */
  velocity(flow_kg_s: number, mean_C: number): number {
    const volume = flow_kg_s / this.course.paths / lookUp(this.inside.density, mean_C);
    return tubeVelocity(volume, this.description.tube.inside_diameter_m);
  }

  /** Volume held [m3] at 50 C. */
  get volume_m3(): number {
    return this.held_kg / lookUp(this.inside.density, 50);
  }
}
