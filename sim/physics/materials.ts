/**
 * What a store's walls, insulation and liners are made of.
 *
 * Conductivity is at 24 C mean temperature and rises by `slope` of itself per kelvin of mean temperature. `max_C` is the
 * service limit of the warm face, null where heat is no limit here.
 * Grades: A seen in a library or published table; C from memory; D common practice.
 */
import { TUBE_MATERIALS } from './tubes.ts';

export interface Material {
  conductivity_W_mK: number;
  slope_1_K: number;
  max_C: number | null;
  use: 'insulation' | 'wall' | 'liner';
  source: string;
  grade: 'A' | 'C' | 'D';
}

const TABLE = 'ASHRAE table as carried by an open library (shared/physics.md 6)';
const MEMORY = 'handbook ranges, from memory (shared/physics.md 6 and 10)';
const TRADE = 'trade practice (shared/trade.md)';

/** Insulations, walls and liners by the trade's names. */
export const MATERIALS: Record<string, Material> = {
  polyiso: {
    conductivity_W_mK: 0.026,
    slope_1_K: 0.003,
    max_C: 120,
    use: 'insulation',
    source: `${TRADE}: R-5.5 an inch in service`,
    grade: 'D',
  },
  'spray foam': {
    conductivity_W_mK: 0.026,
    slope_1_K: 0.003,
    max_C: 95,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  XPS: {
    conductivity_W_mK: 0.029,
    slope_1_K: 0.004,
    max_C: 74,
    use: 'insulation',
    source: `${TRADE}: R-5 an inch, 165 F`,
    grade: 'A',
  },
  EPS: {
    conductivity_W_mK: 0.038,
    slope_1_K: 0.004,
    max_C: 75,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  'mineral wool': {
    conductivity_W_mK: 0.036,
    slope_1_K: 0.005,
    max_C: 250,
    use: 'insulation',
    source: TABLE,
    grade: 'A',
  },
  fibreglass: {
    conductivity_W_mK: 0.045,
    slope_1_K: 0.006,
    max_C: 200,
    use: 'insulation',
    source: `${TRADE}: R-3.1 to 3.2 an inch`,
    grade: 'D',
  },
  cellulose: {
    conductivity_W_mK: 0.04,
    slope_1_K: 0.005,
    max_C: 80,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  'sheep wool': {
    conductivity_W_mK: 0.04,
    slope_1_K: 0.005,
    max_C: 100,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  'straw bale': {
    conductivity_W_mK: 0.06,
    slope_1_K: 0.005,
    max_C: 80,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  'perlite board': {
    conductivity_W_mK: 0.052,
    slope_1_K: 0.003,
    max_C: 200,
    use: 'insulation',
    source: TABLE,
    grade: 'A',
  },
  'cellular glass': {
    conductivity_W_mK: 0.048,
    slope_1_K: 0.003,
    max_C: 400,
    use: 'insulation',
    source: TABLE,
    grade: 'A',
  },
  aerogel: {
    conductivity_W_mK: 0.018,
    slope_1_K: 0.003,
    max_C: 200,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  'pipe foam': {
    conductivity_W_mK: 0.038,
    slope_1_K: 0.004,
    max_C: 105,
    use: 'insulation',
    source: MEMORY,
    grade: 'C',
  },
  plywood: { conductivity_W_mK: 0.1, slope_1_K: 0, max_C: 100, use: 'wall', source: TABLE, grade: 'A' },
  steel: {
    conductivity_W_mK: TUBE_MATERIALS.steel.conductivity_W_mK,
    slope_1_K: 0,
    max_C: null,
    use: 'wall',
    source: TUBE_MATERIALS.steel.source,
    grade: TUBE_MATERIALS.steel.grade,
  },
  'stainless steel': {
    conductivity_W_mK: TUBE_MATERIALS['stainless steel'].conductivity_W_mK,
    slope_1_K: 0,
    max_C: null,
    use: 'wall',
    source: TUBE_MATERIALS['stainless steel'].source,
    grade: TUBE_MATERIALS['stainless steel'].grade,
  },
  copper: {
    conductivity_W_mK: TUBE_MATERIALS.copper.conductivity_W_mK,
    slope_1_K: 0,
    max_C: null,
    use: 'wall',
    source: TUBE_MATERIALS.copper.source,
    grade: TUBE_MATERIALS.copper.grade,
  },
  aluminium: {
    conductivity_W_mK: TUBE_MATERIALS.aluminium.conductivity_W_mK,
    slope_1_K: 0,
    max_C: null,
    use: 'wall',
    source: TUBE_MATERIALS.aluminium.source,
    grade: TUBE_MATERIALS.aluminium.grade,
  },
  concrete: { conductivity_W_mK: 1.4, slope_1_K: 0, max_C: null, use: 'wall', source: MEMORY, grade: 'C' },
  polyethylene: {
    conductivity_W_mK: 0.45,
    slope_1_K: 0,
    max_C: 49,
    use: 'wall',
    source: `${TRADE}: 120 F continuous for farm tanks; 60 C for HDPE by memory`,
    grade: 'C',
  },
  polypropylene: {
    conductivity_W_mK: 0.22,
    slope_1_K: 0,
    max_C: 80,
    use: 'wall',
    source: MEMORY,
    grade: 'C',
  },
  'glass-fibre resin': {
    conductivity_W_mK: 0.3,
    slope_1_K: 0,
    max_C: 80,
    use: 'wall',
    source: MEMORY,
    grade: 'C',
  },
  EPDM: {
    conductivity_W_mK: 0.25,
    slope_1_K: 0,
    max_C: 82,
    use: 'liner',
    source: `${TRADE}: 180 F, longer life below 160 F`,
    grade: 'C',
  },
  'PVC sheet': { conductivity_W_mK: 0.17, slope_1_K: 0, max_C: 60, use: 'liner', source: MEMORY, grade: 'C' },
};

const REFERENCE_MEAN_C = 24;

/**
 * Conductivity [W/(m K)] of a material at a mean temperature mean_C [C]: k24 (1 + slope (t - 24)).
 *
 * Source: shared/physics.md 6 (fibres 0.4-0.6 % a kelvin, foams less; from memory).
 */
export function conductivityAt(material: Material, mean_C: number): number {
  return material.conductivity_W_mK * (1 + material.slope_1_K * (mean_C - REFERENCE_MEAN_C));
}

/**
 * R-value per inch [h ft2 F/Btu] of a conductivity [W/(m K)]: 0.1442 / k.
 *
 * Source: definition (1 Btu in/(h ft2 F) = 0.144228 W/(m K), NIST SP 811).
 */
export function rPerInch(k_W_mK: number): number {
  return 0.144228 / k_W_mK;
}
