/** A tube as it is sold, by the words of a file. */
import { findTube, TUBE_STANDARDS } from '../../physics/tubes.ts';

export interface NamedTube {
  label: string;
  outside_m: number;
  inside_m: number;
}

/** Null where there is no such standard, or no such size in it. */
export function tubeNamed(kind: unknown, size: string): NamedTube | null {
  const standard = TUBE_STANDARDS.find((each) => each === kind);
  const found = standard && findTube(standard, size);
  if (!found) return null;
  return { label: found.label, outside_m: found.outside_diameter_m, inside_m: found.inside_diameter_m };
}
