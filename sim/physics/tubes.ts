/**
 * Tubes as they are sold: outside diameter and wall by standard and size, and what they are made of.
 *
 * The trap this table is for: a plumbing "1/2 in" tube (B88, PEX) measures 5/8 in across, nominal plus 1/8; a
 * refrigeration "1/2 in" tube (B280) measures 1/2 in. Taken for one another, the pressure loss is off threefold.
 *
 * Grades: A standard seen quoted in a published text; C standard from memory.
 */

import { TUBE_MATERIALS, TUBE_TABLES, type TubeStandard } from './tube-tables.ts';

export { TUBE_MATERIALS, type TubeStandard };

/** Numbers of one tube; the same fields as a description's tube. */
export interface TubeGeometry {
  label: string;
  material: string;
  outside_diameter_m: number;
  inside_diameter_m: number;
  conductivity_W_mK: number;
  density_kg_m3: number;
  heat_capacity_J_kgK: number;
}

/** Every standard, for choice lists. */
export const TUBE_STANDARDS = Object.keys(TUBE_TABLES) as TubeStandard[];

/**
 * Sizes a standard has, with their unit: `3/8 in`, `15x1 mm`; thinnest first. Source: the standard's own.
 */
export function tubeSizes(standard: TubeStandard): string[] {
  const { sizes, unit } = TUBE_TABLES[standard];
  // Sorted, because an object puts integer-like keys ('1', '2') ahead of the fractions.
  const byDiameter = Object.entries(sizes).sort(([, a], [, b]) => a[0] - b[0] || a[1] - b[1]);
  return byDiameter.map(([size]) => `${size} ${unit}`);
}

/**
 * Where a standard's numbers come from. Source: the standard's own.
 */
export function tubeSource(standard: TubeStandard): { source: string; grade: 'A' | 'C' } {
  const { source, grade } = TUBE_TABLES[standard];
  return { source, grade };
}

/** Size as a table's key: "1 1/4 in." and "1-1/4" are one, "15 x 1.0 mm" is "15x1". */
function sizeKey(size: string): string {
  const bare = size
    .trim()
    .toLowerCase()
    .replace(/\s*(inches|inch|in|mm|")\.?$/, '');
  return bare
    .replace(/\s*[x×]\s*/, 'x')
    .replace(/(x\d+)\.0$/, '$1')
    .replace(/^(\d+)\s+(\d)/, '$1-$2');
}

/**
 * The tube of a standard and size, with its material's properties; null if the standard has no such size (see
 * `tubeSizes`). A metric size with no wall takes the thickest listed.
 *
 * Source: the standard's own, see `tubeSource`; materials see `TUBE_MATERIALS`.
 */
export function findTube(standard: TubeStandard, size: string): TubeGeometry | null {
  const table = TUBE_TABLES[standard];
  const key = sizeKey(size);
  const found = Object.entries(table.sizes)
    .filter(([name]) => name === key || name.startsWith(`${key}x`))
    .at(-1);
  if (!found) return null;
  const [name, [outside, wall]] = found;
  const words = `${name} ${table.unit} ${table.words}`;
  return ownTube(words, table.material, outside * table.unit_m, (outside - 2 * wall) * table.unit_m);
}

/** Share by which a wall may be thicker or thinner than its table's. */
const WALL_TOLERANCE = 0.1;

/**
 * Least and greatest bore of a standard's tube, as multiples of its table's [-]: the wall is a tenth thicker or thinner;
 * PEX is listed with its least wall and is never thinner.
 *
 * Source: ASTM B88, B280, A269, F876 and EN 1057, tolerances of the wall (from memory; outside diameters are closer).
 */
export function boreTolerance(
  standard: TubeStandard,
  { outside_diameter_m, inside_diameter_m }: Pick<TubeGeometry, 'outside_diameter_m' | 'inside_diameter_m'>,
): [low: number, high: number] {
  const share = (WALL_TOLERANCE * (outside_diameter_m - inside_diameter_m)) / inside_diameter_m;
  return [1 - share, standard === 'PEX' ? 1 : 1 + share];
}

/**
 * A tube by its own diameters [m] and a material of `TUBE_MATERIALS`.
 *
 * Source: the caller's measure; material as there.
 * @throws RangeError for an unknown material or diameters that leave no wall
 */
export function ownTube(label: string, material: string, outside_m: number, inside_m: number): TubeGeometry {
  const m = Object.hasOwn(TUBE_MATERIALS, material) ? TUBE_MATERIALS[material] : null;
  if (!m) {
    throw new RangeError(
      `tube.material - expected one of ${Object.keys(TUBE_MATERIALS).join(', ')} - got ${material} - choose the nearest`,
    );
  }
  if (!(inside_m > 0 && outside_m > inside_m)) {
    throw new RangeError(
      `tube - expected an inside diameter above 0 and below the outside diameter [m] - got ${inside_m} inside ${outside_m} - measure both`,
    );
  }
  return {
    label,
    material,
    outside_diameter_m: outside_m,
    inside_diameter_m: inside_m,
    conductivity_W_mK: m.conductivity_W_mK,
    density_kg_m3: m.density_kg_m3,
    heat_capacity_J_kgK: m.heat_capacity_J_kgK,
  };
}
