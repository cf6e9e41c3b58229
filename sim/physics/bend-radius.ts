/** How tightly tube bends before it kinks. */

const INCH_M = 0.0254;

/** Annealed copper: outside diameter and least radius of a bend [in], thinnest first. */
const ANNEALED_COPPER_IN: readonly (readonly [outside: number, radius: number])[] = [
  [0.375, 0.75],
  [0.5, 1.5],
  [0.625, 2.25],
  [0.875, 3],
  [1.125, 4],
  [1.375, 9],
];
/** Rounding of metric sizes that are an inch size but for a hair [m]. */
const HAIR_M = 2e-4;
const PEX_DIAMETERS = 8;

/**
 * Least radius of a bend [m] of tube of an outside diameter [m]: annealed copper by the table, a size between two
 * lines as the thicker of them; PEX cold, eight of its own diameters. Null for other materials and for copper thicker
 * than the table, of which nothing is known here. The copper's radii hold for a bender: by hand they are not reached.
 *
 * Source: Copper Tube Handbook (CDA A4015, 2020), table 4.1, types K and L annealed, seen in a published text (grade
 * A); PEX a rule of the trade seen in a plumbing textbook (grade B).
 */
export function leastBendRadius(material: string, outside_m: number): number | null {
  if (material === 'PEX') return PEX_DIAMETERS * outside_m;
  if (material !== 'copper') return null;
  const line = ANNEALED_COPPER_IN.find(([outside]) => outside_m <= outside * INCH_M + HAIR_M);
  return line ? line[1] * INCH_M : null;
}
