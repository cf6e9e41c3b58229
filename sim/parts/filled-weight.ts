/** What a filled store weighs: one figure for the drawing, the cautions and the build sheet. */
import { waterDensity } from '../physics/water.ts';
import type { CoilDescription, StoreDescription } from './description.ts';
import { volumeBelow } from './store/geometry.ts';

export interface FilledWeight {
  /** Up to the water line, coils and all [m3]. */
  to_line_m3: number;
  /** Around the coils. */
  water_kg: number;
  /** Tube with what it holds. */
  coils_kg: number;
  /** Without box, insulation and lid, of which no weights are known here. */
  filled_kg: number;
}

/** Water is heaviest at 4 C [kg/m3]. */
export const HEAVIEST_WATER_kg_m3 = waterDensity(4);

type Tubing = Pick<CoilDescription, 'tube' | 'rolls' | 'roll_length_m'>;

/**
 * Water [kg] as heavy as it gets, at 4 C, less what the coils displace; coils with their liquid counted as water.
 * Source: definitions.
 */
export function filledWeight(
  { shape, water_depth_m }: Pick<StoreDescription, 'shape' | 'water_depth_m'>,
  coils: readonly Tubing[],
): FilledWeight {
  const rho = HEAVIEST_WATER_kg_m3;
  const round = (diameter_m: number) => (Math.PI / 4) * diameter_m ** 2;
  const to_line_m3 = volumeBelow(shape, water_depth_m);
  let [displaced_m3, coils_kg] = [0, 0];
  for (const coil of coils) {
    const length_m = coil.rolls * coil.roll_length_m;
    displaced_m3 += round(coil.tube.outside_diameter_m) * length_m;
    coils_kg += tubeMass(coil) + round(coil.tube.inside_diameter_m) * length_m * rho;
  }
  const water_kg = Math.max(0, to_line_m3 - displaced_m3) * rho;
  return { to_line_m3, water_kg, coils_kg, filled_kg: water_kg + coils_kg };
}

/** Tube of all rolls, empty [kg]. Source: definition, from the tube's diameters and density. */
export function tubeMass({ tube, rolls, roll_length_m }: Tubing): number {
  const wall_m2 = (Math.PI / 4) * (tube.outside_diameter_m ** 2 - tube.inside_diameter_m ** 2);
  return wall_m2 * tube.density_kg_m3 * rolls * roll_length_m;
}
