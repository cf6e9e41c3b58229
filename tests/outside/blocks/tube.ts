import { findTube, type TubeStandard } from '../../../sim/physics/tubes.ts';
import type { Block, Check } from '../checks.ts';

function size(check: Check): string {
  return String(check.inputs.nominal_in ?? check.inputs.size_in);
}

/** Diameters [mm] of a tube, or undefined where the standard has no such size. */
function diameters(standard: TubeStandard, check: Check) {
  const found = findTube(standard, size(check));
  if (!found) return { OD: undefined, ID: undefined, wall: undefined };
  const OD = 1000 * found.outside_diameter_m;
  const ID = 1000 * found.inside_diameter_m;
  return { OD, ID, wall: (OD - ID) / 2 };
}

/** Tubes by standard and size. */
export const tube: Block = {
  name: 'tube',
  atLeast: 73,
  answers: {
    'tube.B88.': (check) => ({
      OD_mm: diameters('plumbing L', check).OD,
      ID_K_mm: diameters('plumbing K', check).ID,
      ID_L_mm: diameters('plumbing L', check).ID,
      ID_M_mm: diameters('plumbing M', check).ID,
    }),
    'tube.B280.': (check) => {
      const { OD, ID, wall } = diameters('refrigeration', check);
      return { OD_mm: OD, wall_mm: wall, ID_mm: ID };
    },
    'tube.PEX.': (check) => {
      const { OD, ID, wall } = diameters('PEX', check);
      return { OD_mm: OD, wall_min_mm: wall, ID_mm: ID };
    },
  },
};
