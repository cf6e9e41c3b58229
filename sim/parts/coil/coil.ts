/**
 * A coil in the store. Steady flow is marched section by section: inside film, wall and fouling, outside film
 * with the wall's temperature solved at each section. What the coil holds is one state, the energy of its
 * liquid and metal (in - out + heat from the layers), so that the ledger closes whatever the profile; a second
 * state is how far the liquid that entered since the start has come.
 *
 *  - filling: the front is inside. Behind it the steady march holds; ahead of it liquid that stood at its
 *    layers' temperature is pushed out, exchanging over the rest of its way.
 *  - steady: the front has passed.
 *  - still: content and layers have come to rest together. The exchange after a stop takes a minute or two
 *    (`settling_s`); it is booked at once at the stop, and what had not yet been exchanged is booked back if
 *    flow starts again before, which is what makes the cold-hot-cold of a paused shower.
 */
import { MINOR_LOSS, pressureLoss, tubeVelocity } from '../../physics/friction.ts';
import type { CoilDescription } from '../description.ts';
import type { Layout } from '../layout.ts';
import { type Liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../liquid.ts';
import type { StoreGeometry } from '../store/geometry.ts';
import { type Course, courseOf } from './course.ts';
import { Films } from './films.ts';

/** Below this flow [kg/s] a coil counts as still. */
export const STILL_FLOW = 1e-7;

/** Roughness of drawn tube [m] (handbooks: 0.0015 mm). */
const DRAWN_ROUGHNESS = 1.5e-6;

/** Nusselt number of liquid at rest in a tube while it settles: weak convection over pure conduction (common practice). */
const STILL_NUSSELT = 5;

export class Coil {
  readonly description: CoilDescription;
  readonly films: Films;
  readonly inside: Liquid;
  course: Course;
  mode: 'still' | 'filling' | 'steady' = 'still';
  /** Time the liquid and metal take to come to rest with the layers after a stop [s]. */
  readonly settling_s: number;
  /** Reference capacity of liquid and metal [J/K]; the content state is energy over this. */
  readonly capacity_J_K: number;
  /** Liquid held [kg]. */
  readonly held_kg: number;
  /** Heat to the layers by the marches since `heat_W` was last cleared [W]. */
  heat_W = 0;
  readonly #content: number;
  readonly #front: number;
  readonly #metal_J_K: number;
  /** Deviation of the content from its layer at the last stop, by section [K], and when that was. */
  #deviation: Float64Array;
  #stopped_s = Number.NEGATIVE_INFINITY;
  /** Deviation left at the present start, by section [K]. */
  #left: Float64Array;

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
    this.course = courseOf(description, store);
    this.#deviation = new Float64Array(this.course.layer.length);
    this.#left = new Float64Array(this.course.layer.length);
    const { tube } = description;
    const total = this.course.length_m * this.course.paths;
    const bore = (Math.PI / 4) * tube.inside_diameter_m ** 2;
    const wall = (Math.PI / 4) * (tube.outside_diameter_m ** 2 - tube.inside_diameter_m ** 2);
    const reference = 50;
    this.held_kg = total * bore * lookUp(inside.density, reference);
    this.#metal_J_K = total * wall * tube.density_kg_m3 * tube.heat_capacity_J_kgK;
    const liquid_J_K = this.held_kg * lookUp(inside.heat_capacity, reference);
    this.capacity_J_K = liquid_J_K + this.#metal_J_K;
    const still = 1 / (Math.PI * STILL_NUSSELT * lookUp(inside.conductivity, reference));
    const resistance = still + this.films.wall_mK_W + 1 / this.films.outside(reference, reference - 5);
    this.settling_s = (this.capacity_J_K / total) * resistance;
    this.#content = layout.claim(description.name, 'content', [
      this.restEnergy(layerTemperature_C) / this.capacity_J_K,
    ]);
    this.#front = layout.claim(description.name, 'front', [0]);
  }

  /** Lays the coil anew when the water level has moved. */
  layAnew(store: StoreGeometry): void {
    this.course = courseOf(this.description, store);
    this.#deviation = new Float64Array(this.course.layer.length);
    this.#left = new Float64Array(this.course.layer.length);
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

  /** Speed of the front [1/s] at a flow [kg/s]: it carries the metal with it. */
  frontSpeed(flow_kg_s: number, t_C: number): number {
    return (flow_kg_s * lookUp(this.inside.heat_capacity, t_C)) / this.capacity_J_K;
  }

  /**
   * Outlet temperature [C] of liquid entering the stretch `from`..`to` (shares of the path) at `entry_C` with
   * a flow of all paths [kg/s]. Adds the heat each layer receives to `heat` [W], if given.
   */
  march(
    flow_kg_s: number,
    entry_C: number,
    from: number,
    to: number,
    layer_C: Float64Array,
    heat: Float64Array | null,
  ): number {
    const { layer, from: starts, to: ends, length_m, paths } = this.course;
    const { inside, films } = this;
    const perPath = flow_kg_s / paths;
    const enthalpy = inside.enthalpy;
    films.setFlow(perPath);
    let t = entry_C;
    let x = lookUp(enthalpy, t);
    // Only first guesses, for the first section; each section then starts from its neighbour's.
    this.#conductance = 10;
    this.#outsideShare = 0.45;
    let given = 0;
    for (let j = 0; j < layer.length; j++) {
      const a = starts[j] > from ? starts[j] : from;
      const b = ends[j] < to ? ends[j] : to;
      if (b <= a) continue;
      const water = layer_C[layer[j]];
      const lead = t - water;
      if (lead < 1e-9 && lead > -1e-9) continue;
      const length = (b - a) * length_m;
      const capacity = perPath * lookUp(inside.heat_capacity, t);
      const mean = water + lead / (1 + (0.5 * this.#conductance * length) / capacity);
      this.#cross(mean, water);
      if (j === 0) this.#cross(mean, water);
      t = water + lead * Math.exp((-this.#conductance * length) / capacity);
      const left = lookUp(enthalpy, t);
      if (heat) {
        const part = flow_kg_s * REFERENCE_HEAT_CAPACITY * (x - left);
        heat[layer[j]] += part;
        given += part;
      }
      x = left;
    }
    this.heat_W += given;
    return t;
  }

  #conductance = 0;
  #outsideShare = 0;

  /**
   * Conductance per metre [W/(m K)] from liquid to still water. The wall's temperature enters the outside film
   * only by its third or fourth root, so one correction from the neighbouring section's is enough.
   */
  #cross(liquid_C: number, water_C: number): void {
    const { films } = this;
    const lead = liquid_C - water_C;
    const outer = water_C + lead * this.#outsideShare;
    const outside = 1 / films.outside(water_C, outer);
    // The bore's wall is warmer than the outer wall by the wall's own share.
    const bore = outer + lead * films.wall_mK_W * this.#conductance;
    const inside = 1 / (films.inside(liquid_C) * films.wallCorrection(liquid_C, bore));
    const total = inside + films.wall_mK_W + outside;
    this.#outsideShare = outside / total;
    this.#conductance = 1 / total;
  }

  /** Temperature [C] of the liquid pushed out while filling, before the rest of its way: what stood at `share` of the path. */
  standing(share: number, layer_C: Float64Array): number {
    const { layer, from, to } = this.course;
    const last = layer.length - 1;
    if (last < 0) return layer_C[layer_C.length - 1];
    let below = -1;
    for (let j = 0; j <= last; j++) if ((from[j] + to[j]) / 2 <= share) below = j;
    if (below < 0) return this.#stood(0, layer_C);
    if (below === last) return this.#stood(last, layer_C);
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
      outlet = this.march(flow_kg_s, this.standing(1 - front, layer_C), 1 - front, 1, layer_C, heat);
      if (heat) this.march(flow_kg_s, entry_C, 0, front, layer_C, heat);
    } else {
      outlet = this.march(flow_kg_s, entry_C, 0, 1, layer_C, heat);
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
    const undone = Math.exp(-(t - this.#stopped_s) / this.settling_s);
    let held = 0;
    for (let j = 0; j < this.#left.length; j++) {
      this.#left[j] = undone > 0.01 ? undone * this.#deviation[j] : 0;
      held += this.#share(j) * this.#left[j];
    }
    const target = this.restEnergy(layer_C) + held * this.capacity_J_K;
    this.#settle(y, target, this.#left, exchange);
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
    const rest = this.restEnergy(layer_C);
    const missing = (this.energy(y) - rest) / this.capacity_J_K;
    let shape = 0;
    for (let j = 0; j < this.#deviation.length; j++) shape += this.#share(j) * this.#deviation[j];
    // The profile gives the shape of what is to be exchanged, the ledger its amount.
    const scale = Math.abs(shape) > 1e-6 && shape * missing > 0 ? missing / shape : 0;
    for (let j = 0; j < this.#deviation.length; j++) {
      this.#deviation[j] = scale > 0 ? this.#deviation[j] * scale : missing;
    }
    this.#settle(y, rest, this.#deviation, exchange);
    this.#stopped_s = t;
    this.mode = 'still';
  }

  /** Deviation of the liquid from its layer along the coil, by section [K], for the flow it last had. */
  #profile(y: number[], flow_kg_s: number, entry_C: number, layer_C: Float64Array): void {
    const { layer, from, to } = this.course;
    const reached = this.mode === 'filling' ? Math.min(1, y[this.#front]) : 1;
    let t = entry_C;
    for (let j = 0; j < layer.length; j++) {
      const end = Math.min(to[j], reached);
      if (end <= from[j] || flow_kg_s < STILL_FLOW) {
        this.#deviation[j] = 0;
        continue;
      }
      const next = this.march(flow_kg_s, t, from[j], end, layer_C, null);
      this.#deviation[j] = (((t + next) / 2 - layer_C[layer[j]]) * (end - from[j])) / (to[j] - from[j]);
      t = next;
    }
  }

  #share(section: number): number {
    return this.course.to[section] - this.course.from[section];
  }

  /** Brings the content to `target_J` by exchange with the layers, in proportion to `shape` (or to length). */
  #settle(
    y: number[],
    target_J: number,
    shape: Float64Array,
    exchange: (layer: number, energy_J: number) => void,
  ): void {
    const surplus = this.energy(y) - target_J;
    let total = 0;
    for (let j = 0; j < shape.length; j++) total += this.#share(j) * shape[j];
    const even = Math.abs(total) < 1e-9;
    const wet = 1 - this.course.dry;
    if (!(wet > 0)) return;
    for (let j = 0; j < shape.length; j++) {
      const part = even ? this.#share(j) / wet : (this.#share(j) * shape[j]) / total;
      exchange(this.course.layer[j], surplus * part);
    }
    y[this.#content] = target_J / this.capacity_J_K;
  }

  /** Pressure lost [Pa] at a flow of all paths [kg/s] and a mean temperature [C]. */
  pressureLoss(flow_kg_s: number, mean_C: number): number {
    const { tube } = this.description;
    const density_kg_m3 = lookUp(this.inside.density, mean_C);
    return pressureLoss(
      {
        length_m: this.course.length_m,
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
