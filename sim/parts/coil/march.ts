/**
 * Steady flow along a coil, section by section: inside film, wall and fouling, outside film, with the wall's
 * temperature solved at each section.
 */
import { type Liquid, lookUp, REFERENCE_HEAT_CAPACITY } from '../liquid.ts';
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
    let t = entry_C;
    let x = lookUp(enthalpy, t);
    // Only first guesses, for the first section; each section then starts from its neighbour's.
    this.#conductance = 10;
    this.outsideShare = 0.45;
    let given = 0;
    for (let j = 0; j < layer.length; j++) {
      const a = Math.max(starts[j], from);
      const b = Math.min(ends[j], to);
      if (b <= a) continue;
      const water = layer_C[layer[j]];
      const lead = t - water;
      if (lead < 1e-9 && lead > -1e-9) continue;
      const length = (b - a) * length_m;
      const capacity = perPath * lookUp(heat_capacity, t);
      const mean = water + lead / (1 + (0.5 * this.#conductance * length) / capacity);
      this.cross(mean, water);
      if (j === 0) this.cross(mean, water);
      t = water + lead * Math.exp((-this.#conductance * length) / capacity);
      const left = lookUp(enthalpy, t);
      if (heat) {
        const part = flow_kg_s * REFERENCE_HEAT_CAPACITY * (x - left);
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
    const lead = liquid_C - water_C;
    const outer = water_C + lead * this.outsideShare;
    const outside = 1 / films.outside(water_C, outer);
    // The bore's wall is warmer than the outer wall by the wall's own share.
    const bore = outer + lead * films.wall_mK_W * this.#conductance;
    const inside = 1 / (films.inside(liquid_C) * films.wallCorrection(liquid_C, bore));
    const total = inside + films.wall_mK_W + outside;
    this.outsideShare = outside / total;
    this.#conductance = 1 / total;
  }
}
