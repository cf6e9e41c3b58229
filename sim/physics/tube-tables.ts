/** Tube dimensions by standard, and tube materials: data only. See tubes.ts. */

export interface TubeMaterial {
  conductivity_W_mK: number;
  density_kg_m3: number;
  heat_capacity_J_kgK: number;
  /** Absolute roughness of the bore. */
  roughness_m: number;
  /** Hottest the wall may be in service under household pressure, or null where heat is no limit here. */
  max_C: number | null;
  source: string;
  grade: 'A' | 'C' | 'D';
}

const HANDBOOK =
  'handbook values, from memory (copper trade handbook, metals handbook, heat-transfer textbooks)';

/**
 * Wall materials at about 50 C. Copper is phosphorus-deoxidised (C12200): 339 W/(m K), not pure copper's 390-400.
 * Source: shared/physics.md 2; roughness from memory (Crane TP-410 and plastic-pipe handbooks).
 */
export const TUBE_MATERIALS: Record<string, TubeMaterial> = {
  copper: material(339, 8940, 385, 1.5e-6, null, 'C'),
  'stainless steel': material(15.5, 8000, 490, 1.5e-6, null, 'C'),
  steel: material(50, 7850, 465, 45e-6, null, 'C'),
  aluminium: material(180, 2700, 900, 1.5e-6, null, 'C'),
  brass: material(115, 8500, 380, 1.5e-6, null, 'C'),
  PEX: material(0.41, 940, 2300, 7e-6, 93, 'C'),
  HDPE: material(0.47, 950, 2200, 7e-6, 60, 'C'),
  PP: material(0.22, 905, 1900, 7e-6, 80, 'C'),
};

function material(
  conductivity_W_mK: number,
  density_kg_m3: number,
  heat_capacity_J_kgK: number,
  roughness_m: number,
  max_C: number | null,
  grade: TubeMaterial['grade'],
): TubeMaterial {
  return {
    conductivity_W_mK,
    density_kg_m3,
    heat_capacity_J_kgK,
    roughness_m,
    max_C,
    source: HANDBOOK,
    grade,
  };
}

const INCH_M = 0.0254;

export type TubeStandard =
  | 'plumbing K'
  | 'plumbing L'
  | 'plumbing M'
  | 'refrigeration'
  | 'PEX'
  | 'stainless'
  | 'metric copper';

export interface StandardTable {
  material: string;
  /** Ends the label: "3/8 in refrigeration tube". */
  words: string;
  source: string;
  grade: 'A' | 'C';
  /** Length of one unit of `sizes` [m]. */
  unit_m: number;
  unit: 'in' | 'mm';
  /** By size: outside diameter and wall, in the table's unit. */
  sizes: Record<string, [outside: number, wall: number]>;
}

/** Plumbing tube is 1/8 in thicker outside than its name. */
const PLUMBING_OUTSIDE: Record<string, number> = {
  '1/4': 0.375,
  '3/8': 0.5,
  '1/2': 0.625,
  '5/8': 0.75,
  '3/4': 0.875,
  '1': 1.125,
  '1-1/4': 1.375,
  '1-1/2': 1.625,
  '2': 2.125,
};

const plumbing = (walls: Record<string, number>): StandardTable['sizes'] =>
  Object.fromEntries(Object.entries(walls).map(([size, wall]) => [size, [PLUMBING_OUTSIDE[size], wall]]));

const B88 = 'ASTM B88 table 1, types K and L seen in a published text';
const B88M = 'ASTM B88 table 1, type M from memory';

/** Every standard's sizes. Source: each table's own. */
export const TUBE_TABLES: Record<TubeStandard, StandardTable> = {
  'plumbing K': {
    material: 'copper',
    words: 'plumbing tube, type K',
    source: B88,
    grade: 'A',
    unit_m: INCH_M,
    unit: 'in',
    sizes: plumbing({
      '1/4': 0.035,
      '3/8': 0.049,
      '1/2': 0.049,
      '5/8': 0.049,
      '3/4': 0.065,
      '1': 0.065,
      '1-1/4': 0.065,
      '1-1/2': 0.072,
      '2': 0.083,
    }),
  },
  'plumbing L': {
    material: 'copper',
    words: 'plumbing tube, type L',
    source: B88,
    grade: 'A',
    unit_m: INCH_M,
    unit: 'in',
    sizes: plumbing({
      '1/4': 0.03,
      '3/8': 0.035,
      '1/2': 0.04,
      '5/8': 0.042,
      '3/4': 0.045,
      '1': 0.05,
      '1-1/4': 0.055,
      '1-1/2': 0.06,
      '2': 0.07,
    }),
  },
  'plumbing M': {
    material: 'copper',
    words: 'plumbing tube, type M',
    source: B88M,
    grade: 'C',
    unit_m: INCH_M,
    unit: 'in',
    sizes: plumbing({
      '3/8': 0.025,
      '1/2': 0.028,
      '3/4': 0.032,
      '1': 0.035,
      '1-1/4': 0.042,
      '1-1/2': 0.049,
      '2': 0.058,
    }),
  },
  refrigeration: {
    material: 'copper',
    words: 'refrigeration tube',
    source: 'ASTM B280 soft coils, from memory; the 3/4 in wall is 0.035 or 0.042 in by edition',
    grade: 'C',
    unit_m: INCH_M,
    unit: 'in',
    sizes: {
      '1/4': [0.25, 0.03],
      '5/16': [0.3125, 0.032],
      '3/8': [0.375, 0.032],
      '1/2': [0.5, 0.032],
      '5/8': [0.625, 0.035],
      '3/4': [0.75, 0.035],
      '7/8': [0.875, 0.045],
      '1-1/8': [1.125, 0.05],
    },
  },
  PEX: {
    material: 'PEX',
    words: 'PEX tube',
    source: 'ASTM F876, SDR 9, least wall, seen in a published text; the bore may be up to 6 % smaller',
    grade: 'A',
    unit_m: INCH_M,
    unit: 'in',
    sizes: plumbing({ '3/8': 0.07, '1/2': 0.07, '5/8': 0.083, '3/4': 0.097, '1': 0.125 }),
  },
  stainless: {
    material: 'stainless steel',
    words: 'plain stainless tube',
    source: 'ASTM A269, the commonest wall of each size, from memory; give other walls as own numbers',
    grade: 'C',
    unit_m: INCH_M,
    unit: 'in',
    sizes: {
      '1/4': [0.25, 0.035],
      '3/8': [0.375, 0.035],
      '1/2': [0.5, 0.035],
      '5/8': [0.625, 0.049],
      '3/4': [0.75, 0.049],
      '1': [1, 0.065],
    },
  },
  'metric copper': {
    material: 'copper',
    words: 'copper tube',
    source: 'EN 1057 common sizes, from memory',
    grade: 'C',
    unit_m: 0.001,
    unit: 'mm',
    sizes: {
      '10x0.8': [10, 0.8],
      '10x1': [10, 1],
      '12x0.8': [12, 0.8],
      '12x1': [12, 1],
      '15x0.7': [15, 0.7],
      '15x1': [15, 1],
      '18x0.8': [18, 0.8],
      '18x1': [18, 1],
      '22x0.9': [22, 0.9],
      '22x1': [22, 1],
      '28x0.9': [28, 0.9],
      '28x1': [28, 1],
      '35x1.2': [35, 1.2],
    },
  },
};
