/**
 * The three resistances between the liquid in a tube and the still water around it, per metre of tube.
 * Correlations come from `sim/physics`; here they are tabulated so that a march through the store costs a
 * few multiplications per layer.
 */
import { power } from '../../numerics/alike.ts';
import { coilCurvature, coilNusselt } from '../../physics/coil-inside.ts';
import type { CoilDescription } from '../description.ts';
import { type Liquid, lookUp, placeIn, TABLE_SIZE, valueAt } from '../liquid.ts';
import { outsideFilmCoefficients } from './outside-table.ts';

/** Flow grid of the inside film: mass flow per path, 24 points a decade from 1e-4 kg/s. */
const POINTS_PER_DECADE = 24;
const LOWEST_FLOW = 1e-4;
const FLOW_POINTS = 4 * POINTS_PER_DECADE + 1;
const NO_COLUMN = new Float64Array(TABLE_SIZE);

export class Films {
  /** Wall and fouling [m K/W]. */
  readonly wall_mK_W: number;
  readonly #tube: CoilDescription['tube'];
  /** Bore over the helix's curvature diameter. */
  readonly curvature: number;
  readonly #inside: Liquid;
  /** Density of the still water [kg/m3], by temperature. */
  readonly density: Float64Array;
  /** Inside conductance per metre [W/(m K)] by flow column and temperature; a column is filled when first used. */
  readonly #columns: (Float64Array | undefined)[] = new Array(FLOW_POINTS).fill(undefined);
  /** The two columns around the flow set, and where it lies between them. */
  low: Float64Array = NO_COLUMN;
  high: Float64Array = NO_COLUMN;
  between = 0;
  #flow_kg_s = Number.NaN;
  readonly #insideMultiplier: number;
  /** Outside film: root of the film by film temperature is a + b |d rho|^(1/6), per area that counts [m2 a metre]. */
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly area_m: number;

  constructor(coil: CoilDescription, inside: Liquid, water: Liquid) {
    const { tube } = coil;
    this.#tube = tube;
    this.#inside = inside;
    this.density = water.density;
    this.curvature = coilCurvature(tube.inside_diameter_m, coil.coil_diameter_m, coil.pitch_m);
    this.#insideMultiplier = coil.inside_film;
    this.wall_mK_W =
      Math.log(tube.outside_diameter_m / tube.inside_diameter_m) / (2 * Math.PI * tube.conductivity_W_mK) +
      coil.fouling_m2K_W / (Math.PI * tube.inside_diameter_m);
    this.area_m = Math.PI * tube.outside_diameter_m * coil.bundling * coil.outside_film;
    const table = outsideFilmCoefficients(tube.outside_diameter_m, water);
    this.a = table.a;
    this.b = table.b;
  }

  /** Chooses the flow per path [kg/s] that `inside` speaks of: once per march, not once per section. */
  setFlow(flow_kg_s: number): void {
    if (flow_kg_s === this.#flow_kg_s) return;
    this.#flow_kg_s = flow_kg_s;
    const place = Math.log10(Math.max(flow_kg_s, LOWEST_FLOW) / LOWEST_FLOW) * POINTS_PER_DECADE;
    const i = Math.min(FLOW_POINTS - 2, place | 0);
    this.low = this.#columns[i] ?? this.#fill(i);
    this.high = this.#columns[i + 1] ?? this.#fill(i + 1);
    this.between = Math.min(1, place - i);
  }

  /** Inside film per metre [W/(m K)] at the flow set and a bulk temperature [C], wall as warm as the bulk. */
  inside(t_C: number): number {
    const h = lookUp(this.low, t_C);
    return h + this.between * (lookUp(this.high, t_C) - h);
  }

  /** Correction of the inside film for a wall at another temperature than the bulk (both [C]): (Pr/Pr_wall)^0.14. */
  wallCorrection(bulk_C: number, wall_C: number): number {
    return lookUp(this.#inside.prandtl14, bulk_C) / lookUp(this.#inside.prandtl14, wall_C);
  }

  /** Outside film per metre [W/(m K)] between still water and the tube's outer wall, both [C]. */
  outside(water_C: number, wall_C: number): number {
    const { density } = this;
    const lift = Math.abs(valueAt(density, placeIn(wall_C)) - valueAt(density, placeIn(water_C)));
    const film = placeIn((water_C + wall_C) / 2);
    const root = valueAt(this.a, film) + valueAt(this.b, film) * Math.sqrt(Math.cbrt(lift));
    return root * root * this.area_m;
  }

  #fill(column: number): Float64Array {
    const flow = LOWEST_FLOW * power(10, column / POINTS_PER_DECADE);
    const d = this.#tube.inside_diameter_m;
    const out = new Float64Array(TABLE_SIZE);
    for (let i = 0; i < TABLE_SIZE; i++) {
      const reynolds = (4 * flow) / (Math.PI * d * this.#inside.viscosity[i]);
      const nusselt = coilNusselt(reynolds, this.#inside.prandtl[i], this.curvature);
      // h pi d = Nu k / d * pi d
      out[i] = this.#insideMultiplier * Math.PI * nusselt * this.#inside.conductivity[i];
    }
    this.#columns[column] = out;
    return out;
  }
}
