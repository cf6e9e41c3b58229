/**
 * The store: a stack of layers whose state is enthalpy, so that every energy flow into a layer is linear in
 * the state and the ledger closes to rounding. Temperatures come from the density-ordered profile.
 *
 * Energy of layer i: dE_i/dt = coils - walls + conduction up and down - vapour, radiation and convection from
 * the surface (top layer) - steam. Source of the form: one-dimensional multi-node store (Duffie & Beckman 8.4,
 * from memory), with mixing by `ordering.ts` in place of a turbulent conductivity.
 */
import { LazyGrid } from '../../numerics/lazy-grid.ts';
import { levelFaceFilm, shahEvaporation, waterRadiation } from '../../physics/evaporation.ts';
import { verticalConductivity } from '../../physics/insulation.ts';
import { waterBoilingPoint, waterLatentHeat } from '../../physics/water.ts';
import { Air } from '../air.ts';
import type { StoreDescription } from '../description.ts';
import { type Layout, placeOf } from '../layout.ts';
import { liquid, lookUp, REFERENCE_HEAT_CAPACITY, temperatureOf } from '../liquid.ts';
import { depthOf, type StoreGeometry, storeGeometry } from './geometry.ts';
import { Ordering } from './ordering.ts';
import { recut } from './recut.ts';
import { type Walls, wallsOf } from './walls.ts';

/** Steam forms over the last kelvin below boiling, as it does at a hot surface in nearly boiling water [K]. */
const STEAMING_RANGE = 1;
/** A fall of the level smaller than this share of the depth is left for a later restart. */
const LEVEL_STEP = 2e-4;
/** Heavier than any water [kg/m3]. */
const HEAVY = 1001;

/** Fine enough that evaporation between knots is right to 0.01 %. */
const WATER_KNOTS = { first: -20, step: 0.5, count: 281 };
const AIR_KNOTS = { first: -60, step: 0.5, count: 241 };

const CONDUCTED = placeOf.store_conducted;
const SURFACE = placeOf.store_surface_air;
const VAPOUR = placeOf.store_lid_vapour;
const STEAM = placeOf.store_boiled;
const MAKE_UP = placeOf.make_up_water;
const EVAPORATED = placeOf.evaporated_kg;
const BOILED = placeOf.boiled_kg;

export class Store {
  readonly description: StoreDescription;
  readonly layers: number;
  readonly boiling_C: number;
  readonly water = liquid({ kind: 'water', mass_share: 0 });
  geometry: StoreGeometry;
  walls: Walls;
  /** Temperature of each layer of the ordered profile, set by `prepare` [C]. */
  readonly layer_C: Float64Array;
  /** Heat each layer receives from the coils, filled by them between `prepare` and `finish` [W]. */
  readonly heat_W: Float64Array;
  /** Water in each layer [kg]. */
  readonly mass_kg: Float64Array;
  depth_m: number;
  readonly first: number;
  readonly #air: Air;
  readonly #ordered: Float64Array;
  readonly #ordering: Ordering;
  readonly #density: (x: number) => number;
  /** Conductance between neighbouring layers over the water's conductivity, and the wall's share [W/K]. */
  readonly #through_m: Float64Array;
  readonly #alongWall_W_K: Float64Array;
  /** Warming of each layer by a joule. */
  readonly #perHeat_K_J: Float64Array;
  /** Evaporation [kg/(m2 s)] by temperatures of water and air. */
  readonly #evaporation: LazyGrid;
  readonly #fullDensity: number;
  #settledLoss_kg = 0;

  constructor(
    description: StoreDescription,
    layers: number,
    start: { bottom_C: number; top_C: number },
    air: Air,
    layout: Layout,
  ) {
    this.description = description;
    this.layers = layers;
    this.#air = air;
    this.boiling_C = waterBoilingPoint(air.pressure_Pa);
    this.depth_m = description.water_depth_m;
    this.geometry = storeGeometry(description.shape, this.depth_m, layers);
    this.walls = wallsOf(description, this.geometry);
    this.layer_C = new Float64Array(layers);
    this.heat_W = new Float64Array(layers);
    this.mass_kg = new Float64Array(layers);
    this.#ordered = new Float64Array(layers);
    this.#ordering = new Ordering(layers);
    // Between restarts a layer is charged with what its whole pool loses and may stand far below freezing: it is to
    // mix back, so it counts as the heavier the colder it is. Real water there is ice, which is not modelled.
    this.#density = (x) => (x < 0 ? HEAVY - x : lookUp(this.water.density, temperatureOf(this.water, x)));
    this.#through_m = new Float64Array(layers);
    this.#alongWall_W_K = new Float64Array(layers);
    this.#perHeat_K_J = new Float64Array(layers);
    const above = { relative_humidity: Air.humidity(description.surroundings), pressure_Pa: air.pressure_Pa };
    this.#evaporation = new LazyGrid(
      (water_C, around_C) =>
        description.evaporation * shahEvaporation(water_C, { ...above, air_C: around_C }),
      WATER_KNOTS,
      AIR_KNOTS,
    );
    this.#fullDensity = lookUp(this.water.density, (start.bottom_C + start.top_C) / 2);
    this.#fit();
    const initial = new Float64Array(layers);
    for (let i = 0; i < layers; i++) {
      const t = start.bottom_C + ((start.top_C - start.bottom_C) * (i + 0.5)) / layers;
      this.layer_C[i] = Math.min(t, this.boiling_C);
      initial[i] = lookUp(this.water.enthalpy, this.layer_C[i]);
    }
    this.first = layout.claim('store', 'layer', initial);
  }

  #fit(): void {
    const { description, geometry } = this;
    const wall = description.wall;
    for (let i = 0; i < this.layers; i++) {
      this.#hold(i, geometry.volume_m3[i] * this.#fullDensity);
      if (i === 0) continue;
      const area = geometry.section_m2[i];
      this.#through_m[i] = area / geometry.layer_height_m;
      const alongWall = verticalConductivity(
        0,
        wall.conductivity_W_mK,
        (geometry.perimeter_m[i] * wall.thickness_m) / area,
      );
      this.#alongWall_W_K[i] = alongWall * this.#through_m[i];
    }
  }

  #hold(layer: number, mass_kg: number): void {
    this.mass_kg[layer] = mass_kg;
    this.#perHeat_K_J[layer] = 1 / (mass_kg * REFERENCE_HEAT_CAPACITY);
  }

  /** Orders the profile by density, continuously, and sets `layer_C`; clears `heat_W`. */
  prepare(y: ArrayLike<number>): void {
    this.#ordering.orderSmoothly(y, this.first, this.mass_kg, this.#ordered);
    const { water, layer_C } = this;
    for (let i = 0; i < this.layers; i++) {
      const x = this.#ordered[i];
      // Pools share one value: looked up once.
      layer_C[i] = i > 0 && x === this.#ordered[i - 1] ? layer_C[i - 1] : temperatureOf(water, x);
      this.heat_W[i] = 0;
    }
  }

  /** Whether the top is so near boiling that steam may form; as of the last `prepare`. */
  get steaming(): boolean {
    return this.layer_C[this.layers - 1] > this.boiling_C - STEAMING_RANGE;
  }

  /** Writes the temperature of each layer [C], in strict order of density, to `out` from place `from`: for the record. */
  record(y: ArrayLike<number>, out: Float32Array, from: number): void {
    this.#ordering.order(y, this.first, this.mass_kg, this.#ordered, this.#density);
    for (let i = 0; i < this.layers; i++) out[from + i] = temperatureOf(this.water, this.#ordered[i]);
  }

  /** Makes the ordered profile the state (at restarts), and boils off what a coil that came to rest left superheated. */
  settle(y: number[]): void {
    this.#ordering.order(y, this.first, this.mass_kg, this.#ordered, this.#density);
    for (let i = 0; i < this.layers; i++) y[this.first + i] = this.#ordered[i];
    this.#flash(y);
    this.prepare(y);
  }

  /** Adds energy [J] to a layer of the state (a coil's content coming to rest). */
  exchange(y: number[], layer: number, energy_J: number): void {
    y[this.first + layer] += energy_J / (this.mass_kg[layer] * REFERENCE_HEAT_CAPACITY);
  }

  /** Walls, surface and steam; writes the layers' rates and the ledger's. */
  finish(t: number, out: number[]): void {
    const { layer_C, heat_W, layers, description } = this;
    const around = this.#air.around_C(description.surroundings, t);
    const { side_W_K } = this.walls;
    let conducted = 0;
    for (let i = 0; i < layers; i++) {
      const lost = side_W_K[i] * (layer_C[i] - around);
      heat_W[i] -= lost;
      conducted += lost;
      if (i > 0 && layer_C[i] !== layer_C[i - 1]) {
        const k = lookUp(this.water.conductivity, layer_C[i]);
        const down = (k * this.#through_m[i] + this.#alongWall_W_K[i]) * (layer_C[i] - layer_C[i - 1]);
        heat_W[i] -= down;
        heat_W[i - 1] += down;
      }
    }
    const below = this.walls.bottom_W_K * (layer_C[0] - (description.ground_C ?? around));
    heat_W[0] -= below;
    const open = description.vapour_share;
    const top = layer_C[layers - 1];
    const lid = (1 - open) * this.walls.lid_W_K * (top - around);
    heat_W[layers - 1] -= lid;
    out[CONDUCTED] = conducted + below + lid;
    this.#surface(top, around, open, out);
    this.#steam(out);
    for (let i = 0; i < layers; i++) {
      out[this.first + i] = heat_W[i] * this.#perHeat_K_J[i];
    }
  }

  /** Evaporation, convection and radiation past the lid. */
  #surface(top: number, around: number, open: number, out: number[]): void {
    const area = open * this.geometry.surface_m2;
    const side = Math.sqrt(this.geometry.surface_m2);
    const bare = area * (levelFaceFilm(top, around, side) * (top - around) + waterRadiation(top, around));
    const vapour_kg_s = area * this.#evaporation.at(top, around);
    const carried = this.#leave(vapour_kg_s, top, out, true);
    this.heat_W[this.layers - 1] -= bare;
    out[SURFACE] = bare;
    out[VAPOUR] = carried;
    out[EVAPORATED] = vapour_kg_s;
  }

  /** Books vapour leaving the top; with a float valve the water it takes is replaced. Returns the heat it carries off [W]. */
  #leave(vapour_kg_s: number, from_C: number, out: number[], first: boolean): number {
    const latent = vapour_kg_s * waterLatentHeat(from_C);
    const top = this.layers - 1;
    this.heat_W[top] -= latent;
    if (first) out[MAKE_UP] = 0;
    if (this.description.make_up === 'by hand') return latent;
    const gone = vapour_kg_s * REFERENCE_HEAT_CAPACITY * lookUp(this.water.enthalpy, from_C);
    const added =
      vapour_kg_s * REFERENCE_HEAT_CAPACITY * lookUp(this.water.enthalpy, this.description.make_up_C);
    this.heat_W[top] += added - gone;
    out[MAKE_UP] += added;
    return latent + gone;
  }

  /** Heat that would carry a layer past boiling leaves as steam instead. */
  #steam(out: number[]): void {
    const { layer_C, heat_W, layers, boiling_C } = this;
    // The water near boiling is taken together: what its lower layers receive may boil off its top or make good what
    // the top loses. Taken pool by pool, steam would jump whenever two pools meet.
    const from = boiling_C - STEAMING_RANGE;
    let net = 0;
    let given = 0;
    for (let i = layers - 1; i >= 0 && layer_C[i] > from; i--) {
      const part = steamShare(layer_C[i] - from) * heat_W[i];
      net += part;
      if (part > 0) given += part;
    }
    const steam_W = Math.max(0, net);
    for (let i = layers - 1; steam_W > 0 && i >= 0 && layer_C[i] > from; i--) {
      const part = steamShare(layer_C[i] - from) * heat_W[i];
      if (part > 0) heat_W[i] -= (steam_W * part) / given;
    }
    const steam_kg_s = steam_W / waterLatentHeat(boiling_C);
    out[BOILED] = steam_kg_s;
    if (steam_kg_s === 0) {
      out[STEAM] = 0;
      return;
    }
    // The latent heat was taken above; only the water's own warmth and its replacement remain.
    const top = layers - 1;
    heat_W[top] += steam_W;
    out[STEAM] = this.#leave(steam_kg_s, boiling_C, out, false);
  }

  /**
   * At restarts, where the level is kept by hand: takes the water that left since the last time out of the
   * stack and cuts the layers anew. Returns true if the level moved.
   */
  lowerLevel(y: number[]): boolean {
    if (this.description.make_up === 'float') return false;
    const gone = y[EVAPORATED] + y[BOILED] - this.#settledLoss_kg;
    const held = this.mass_kg.reduce((sum, m) => sum + m, 0);
    if (gone < LEVEL_STEP * held) return false;
    const evaporated = y[EVAPORATED] / (y[EVAPORATED] + y[BOILED]);
    const before = Float64Array.from({ length: this.layers }, (_, i) => y[this.first + i]);
    const masses = this.mass_kg.slice();
    this.#settledLoss_kg += gone;
    this.depth_m = depthOf(this.description.shape, (held - gone) / this.#fullDensity, this.depth_m);
    this.geometry = storeGeometry(this.description.shape, this.depth_m, this.layers);
    this.walls = wallsOf(this.description, this.geometry);
    this.#fit();
    // Rounding of the depth is spread, so that the mass is exactly what is left.
    const fitted = this.mass_kg.reduce((sum, m) => sum + m, 0);
    for (let i = 0; i < this.layers; i++) this.#hold(i, (this.mass_kg[i] * (held - gone)) / fitted);
    const taken = recut(before, masses, this.mass_kg, y, this.first) * REFERENCE_HEAT_CAPACITY;
    y[VAPOUR] += taken * evaporated;
    y[STEAM] += taken * (1 - evaporated);
    return true;
  }

  /** Depth of the water at a state [m], what has left since the layers were last cut included. */
  level_m(y: ArrayLike<number>): number {
    if (this.description.make_up === 'float') return this.depth_m;
    const gone = y[EVAPORATED] + y[BOILED] - this.#settledLoss_kg;
    const held = this.mass_kg.reduce((sum, m) => sum + m, 0);
    if (!(gone > 0)) return this.depth_m;
    return depthOf(this.description.shape, (held - gone) / this.#fullDensity, this.depth_m);
  }

  /** Takes the state down to boiling; books the steam as `#leave` does. */
  #flash(y: number[]): void {
    const h = this.water.enthalpy;
    const boiling = lookUp(h, this.boiling_C);
    const kept = this.description.make_up === 'by hand';
    const added = kept ? 0 : REFERENCE_HEAT_CAPACITY * lookUp(h, this.description.make_up_C);
    const gone = kept ? 0 : REFERENCE_HEAT_CAPACITY * boiling;
    const latent = waterLatentHeat(this.boiling_C);
    for (let i = this.layers - 1; i >= 0 && y[this.first + i] > boiling; i--) {
      const heat = (y[this.first + i] - boiling) * this.mass_kg[i] * REFERENCE_HEAT_CAPACITY;
      const steam_kg = heat / (latent + gone - added);
      y[this.first + i] = boiling;
      y[BOILED] += steam_kg;
      y[STEAM] += steam_kg * (latent + gone);
      y[MAKE_UP] += steam_kg * added;
    }
  }

  /** Mean temperature by mass [C] of the profile prepared last. */
  get mean_C(): number {
    let mass = 0;
    let sum = 0;
    for (let i = 0; i < this.layers; i++) {
      mass += this.mass_kg[i];
      sum += this.mass_kg[i] * this.layer_C[i];
    }
    return sum / mass;
  }

  /** Energy of the water [J, 0 at 0 C]. */
  energy(y: ArrayLike<number>): number {
    let energy = 0;
    for (let i = 0; i < this.layers; i++) energy += this.mass_kg[i] * y[this.first + i];
    return energy * REFERENCE_HEAT_CAPACITY;
  }

  /**
   * Temperature at a height above the bottom [m] of the profile prepared last: a straight line between the
   * middles of layers. A probe that read its whole layer would make controls depend on how thick layers are
   * (20 against 160: a month's solar heat off by 19 %; with the line by nothing but the nights it decides).
   */
  at_C(height_m: number): number {
    const { layer_C } = this;
    const place = Math.min(this.layers - 1, Math.max(0, height_m / this.geometry.layer_height_m - 0.5));
    const below = Math.min(this.layers - 2, Math.floor(place));
    return layer_C[below] + (place - below) * (layer_C[below + 1] - layer_C[below]);
  }
}

/**
 * Share of its heat that a layer gives to steam, by how far [K] it is into the steaming range: rising to 1 at boiling, and
 * on to 2, so that water which a step carried past boiling gives off more than it receives, and comes back.
 */
function steamShare(into_K: number): number {
  return Math.min(2, into_K / STEAMING_RANGE);
}
