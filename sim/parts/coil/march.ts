/**
 * Steady flow along a coil, section by section: inside film, wall and fouling, outside film, with the wall's
 * temperature solved at each section. This is the innermost loop of every run: it reads the films' tables itself,
 * finds each temperature's place in them once, and calls nothing that would box a number.
 */
import { decay, sixthRoot } from '../../numerics/quick.ts';
import { type Liquid, placeIn, REFERENCE_HEAT_CAPACITY, valueAt } from '../liquid.ts';
import type { Course } from './course.ts';
import type { Films } from './films.ts';

export class March {
  /** Heat the last march gave to the layers, if it was told to charge them [W]. */
  given_W = 0;
  /** Share of the resistance that lay outside the tube in the last section. */
  outsideShare = 0;
  readonly #films: Films;
  readonly #inside: Liquid;

  constructor(films: Films, inside: Liquid) {
    this.#films = films;
    this.#inside = inside;
  }

  /**
   * Outlet temperature [C] of liquid entering the stretch `from`..`to` (shares of the path) at `entry_C` with
   * a flow of all paths [kg/s]. Adds the heat each layer receives to `heat` [W], if given.
   *
   * The wall's temperature enters the outside film only by its third or fourth root, so one correction from the
   * neighbouring section's is enough; the first section has no neighbour and is corrected twice.
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
    const { per_heat_capacity, enthalpy, prandtl14 } = this.#inside;
    const films = this.#films;
    const perPath = flow_kg_s / paths;
    films.setFlow(perPath);
    const { low, high, between, wall_mK_W, density, a, b, area_m } = films;
    const perFlow = length_m / perPath;
    const charge = flow_kg_s * REFERENCE_HEAT_CAPACITY;
    // The plus tells the compiler that this is a number from the start.
    let t = +entry_C;
    let place = placeIn(t);
    let x = valueAt(enthalpy, place);
    // Conductance per metre [W/(m K)] and the share of the resistance outside: only first guesses here.
    let conductance = 10;
    let share = 0.45;
    let given = 0;
    for (let j = 0; j < layer.length; j++) {
      const begin = Math.max(starts[j], from);
      const end = Math.min(ends[j], to);
      if (end <= begin) continue;
      const water = layer_C[layer[j]];
      const lead = t - water;
      if (lead < 1e-9 && lead > -1e-9) continue;
      const perCapacity = (end - begin) * perFlow * valueAt(per_heat_capacity, place);
      const meanLead = lead / (1 + 0.5 * conductance * perCapacity);
      const bulk = placeIn(water + meanLead);
      const slow = valueAt(low, bulk);
      // Inside film per metre for a wall of Prandtl number 1; divided by the wall's below.
      const film = (slow + between * (valueAt(high, bulk) - slow)) * valueAt(prandtl14, bulk);
      const still = placeIn(water);
      const dense = valueAt(density, still);
      for (let pass = j === 0 ? 2 : 1; pass > 0; pass--) {
        const rise = meanLead * share;
        const outer = water + rise;
        const wall = placeIn(outer);
        const lift = Math.abs(valueAt(density, wall) - dense);
        const mean = 0.5 * (still + wall);
        const root = valueAt(a, mean) + valueAt(b, mean) * sixthRoot(lift);
        const outside = root * root * area_m;
        // The bore's wall is warmer than the outer wall by the wall's own share.
        const bore = valueAt(prandtl14, placeIn(outer + meanLead * wall_mK_W * conductance));
        // Series of bore / film, wall and 1 / outside, with one division.
        share = film / (film + (bore + wall_mK_W * film) * outside);
        conductance = share * outside;
      }
      t = water + lead * decay(conductance * perCapacity);
      place = placeIn(t);
      const left = valueAt(enthalpy, place);
      if (heat) {
        const part = charge * (x - left);
        heat[layer[j]] += part;
        given += part;
      }
      x = left;
    }
    this.outsideShare = share;
    this.given_W = given;
    return t;
  }
}
