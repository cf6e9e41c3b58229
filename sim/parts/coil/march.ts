/**
 * Steady flow along a coil, section by section: inside film, wall and fouling, outside film, with the wall's
 * temperature solved at each section.
 */
import { type Liquid, placeIn, REFERENCE_HEAT_CAPACITY, valueAt } from '../liquid.ts';
import type { Course } from './course.ts';
import type { Films } from './films.ts';

export class March {
  /** Heat the last march gave to the layers, if it was told to charge them [W]. */
  given_W = 0;
  /** Share of the resistance that lay outside the tube in the last section. */
  outsideShare = 0;
  #conductance = 0;
  readonly #films: Films;
  readonly #inside: Liquid;

  constructor(films: Films, inside: Liquid) {
    this.#films = films;
    this.#inside = inside;
  }

  /**
   * Outlet temperature [C] of liquid entering the stretch `from`..`to` (shares of the path) at `entry_C` with
   * a flow of all paths [kg/s]. Adds the heat each layer receives to `heat` [W], if given.
   */
  along(
    course: Course,
    flow_kg_s: number,
    entry_C: number,
    from: number,
    to: number,
    layer_C: Float64Array,
    heat: Float64Array | null,
  ): number {
    const { layer, from: starts, to: ends, length_m, paths } = course;
    const { heat_capacity, enthalpy } = this.#inside;
    const perPath = flow_kg_s / paths;
    this.#films.setFlow(perPath);
    const charge = flow_kg_s * REFERENCE_HEAT_CAPACITY;
    let t = entry_C;
    let place = placeIn(t);
    let x = valueAt(enthalpy, place);
    // Only first guesses, for the first section; each section then starts from its neighbour's.
    this.#conductance = 10;
    this.outsideShare = 0.45;
    let given = 0;
    for (let j = 0; j < layer.length; j++) {
      const a = starts[j] > from ? starts[j] : from;
      const b = ends[j] < to ? ends[j] : to;
      if (b <= a) continue;
      const water = layer_C[layer[j]];
      const lead = t - water;
      if (lead < 1e-9 && lead > -1e-9) continue;
      const perCapacity = ((b - a) * length_m) / (perPath * valueAt(heat_capacity, place));
      const mean = water + lead / (1 + 0.5 * this.#conductance * perCapacity);
      this.cross(mean, water);
      if (j === 0) this.cross(mean, water);
      t = water + lead * Math.exp(-this.#conductance * perCapacity);
      place = placeIn(t);
      const left = valueAt(enthalpy, place);
      if (heat) {
        const part = charge * (x - left);
        heat[layer[j]] += part;
        given += part;
      }
      x = left;
    }
    this.given_W = given;
    return t;
  }

  /**
   * Conductance per metre [W/(m K)] from liquid to still water at the flow last marched. The wall's temperature
   * enters the outside film only by its third or fourth root, so one correction from the neighbouring section's
   * is enough.
   */
  cross(liquid_C: number, water_C: number): void {
    const films = this.#films;
    const wall = films.wall_mK_W;
    const lead = liquid_C - water_C;
    const outer = water_C + lead * this.outsideShare;
    const outside = films.outside(water_C, outer);
    // The bore's wall is warmer than the outer wall by the wall's own share.
    const bore = outer + lead * wall * this.#conductance;
    const inside = films.corrected(liquid_C, bore);
    // Series of 1/inside, wall and 1/outside, with one division.
    const share = inside / (inside + outside + wall * inside * outside);
    this.outsideShare = share;
    this.#conductance = share * outside;
  }
}
