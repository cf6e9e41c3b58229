/** What a coil's tube weighs. */
import type { CoilDescription } from '../../parts/description.ts';

/** Tube of all rolls, empty [kg]. Source: definition, from the tube's diameters and density. */
export function tubeMass({
  tube,
  rolls,
  roll_length_m,
}: Pick<CoilDescription, 'tube' | 'rolls' | 'roll_length_m'>): number {
  const wall_m2 = (Math.PI / 4) * (tube.outside_diameter_m ** 2 - tube.inside_diameter_m ** 2);
  return wall_m2 * tube.density_kg_m3 * rolls * roll_length_m;
}
