/**
 * Propylene and ethylene glycol with water, by MASS share of glycol.
 *
 * Melinder's polynomials: value = sum C_ij (100 w - w_m)^i (t - t_m)^j, i + j <= 5, j <= 3. Fitted by him from the
 * freezing point to 100 C and w = 0..0.6.
 * Source: Melinder 2010, "Properties of secondary working fluids for indirect systems" (IIR), coefficients as
 * tabulated in an open property library; the tests compare 64 rows of checks.json.
 */
import { waterBoilingPoint } from './water.ts';

export type Glycol = 'propylene glycol' | 'ethylene glycol';

interface Coefficients {
  meanShare_percent: number;
  meanTemperature_C: number;
  freezing: number[];
  density: number[][];
  heatCapacity: number[][];
  conductivity: number[][];
  logViscosity: number[][];
  molarMass_kg_mol: number;
  /** Of the pure glycol at 20 C. */
  pureDensity_kg_m3: number;
}

const PROPYLENE: Coefficients = {
  meanShare_percent: 30.7031,
  meanTemperature_C: 32.7083,
  freezing: [-13.25, -0.6631, -0.01094, -0.0002283, -3.409e-6, 1.465e-8],
  density: [
    [1018, -0.5406, -2.666e-3, 1.347e-5],
    [0.7604, -9.45e-3, 5.541e-5, -1.343e-7],
    [-2.498e-3, 2.7e-5, -4.018e-7, 3.376e-9],
    [-1.55e-4, 2.829e-6, -7.175e-9],
    [-1.131e-6, -2.221e-8],
    [2.342e-8],
  ],
  heatCapacity: [
    [3882, 2.699, -1.659e-3, -1.032e-5],
    [-13.04, 0.0507, -4.752e-5, 1.522e-6],
    [-0.1598, 9.534e-5, 1.167e-5, -4.87e-8],
    [3.539e-4, 3.102e-5, -2.95e-7],
    [5e-5, -7.135e-7],
    [-4.959e-7],
  ],
  conductivity: [
    [0.4513, 7.955e-4, 3.482e-8, -5.966e-9],
    [-4.795e-3, -1.678e-5, 8.941e-8, 1.493e-10],
    [2.076e-5, 1.563e-7, -4.615e-9, 9.897e-12],
    [-9.083e-8, -2.518e-9, 6.543e-11],
    [-5.952e-10, -3.605e-11],
    [2.104e-11],
  ],
  logViscosity: [
    [0.6837, -0.03045, 2.525e-4, -1.399e-6],
    [0.03328, -3.984e-4, 4.332e-6, -1.86e-8],
    [5.453e-5, -8.6e-8, -1.593e-8, -4.465e-11],
    [-3.9e-6, 1.054e-7, -1.589e-9],
    [-1.587e-8, 4.475e-10],
    [3.564e-9],
  ],
  molarMass_kg_mol: 0.07609,
  pureDensity_kg_m3: 1036,
};

const ETHYLENE: Coefficients = {
  meanShare_percent: 30.8462,
  meanTemperature_C: 31.728,
  freezing: [-15.25, -0.808, -0.01334, -7.293e-5, 1.006e-6, 1.14e-9],
  density: [
    [1034, -0.4781, -2.692e-3, 4.725e-6],
    [1.311, -6.876e-3, 4.805e-5, 1.69e-8],
    [7.49e-5, 7.855e-5, -3.995e-7, 4.982e-9],
    [-1.062e-4, 1.229e-6, -1.153e-8],
    [-9.623e-7, -7.211e-8],
    [4.891e-8],
  ],
  heatCapacity: [
    [3737, 2.93, -4.675e-3, -1.389e-5],
    [-17.99, 0.1046, -4.147e-4, 1.847e-7],
    [-0.09933, 3.516e-4, 5.109e-6, -7.138e-8],
    [2.61e-3, -1.189e-6, -1.643e-7],
    [1.537e-5, -4.272e-7],
    [-1.618e-6],
  ],
  conductivity: [
    [0.472, 8.903e-4, -1.058e-6, -2.789e-9],
    [-4.286e-3, -1.473e-5, 1.059e-7, -1.142e-10],
    [1.747e-5, 6.814e-8, -3.612e-9, 2.365e-12],
    [3.017e-8, -2.412e-9, 4.004e-11],
    [-1.322e-9, 2.555e-11],
    [2.678e-11],
  ],
  logViscosity: [
    [0.4705, -0.0255, 1.782e-4, -7.669e-7],
    [0.02471, -1.171e-4, 1.052e-6, -1.634e-8],
    [3.328e-6, 1.086e-6, 1.051e-8, -6.475e-10],
    [1.659e-6, 3.157e-9, 4.063e-10],
    [3.089e-8, 1.831e-10],
    [-1.865e-9],
  ],
  molarMass_kg_mol: 0.06207,
  pureDensity_kg_m3: 1113,
};

const MOLAR_MASS_WATER_KG_MOL = 0.018015;
/** Hottest temperature of the fits. */
const HOTTEST_FITTED_C = 100;
const ZERO_CELSIUS_K = 273.15;

const coefficientsOf = (kind: Glycol): Coefficients => (kind === 'propylene glycol' ? PROPYLENE : ETHYLENE);

function polynomial(terms: number[], x: number): number {
  let value = 0;
  for (let i = terms.length - 1; i >= 0; i--) value = value * x + terms[i];
  return value;
}

/** The double polynomial at share w and temperature t_C, straight above 100 C and held below freezing. */
function evaluate(kind: Glycol, table: 'density' | 'heatCapacity' | 'conductivity', w: number, t_C: number) {
  const t = Math.max(t_C, glycolFreezingPoint(kind, w));
  if (t <= HOTTEST_FITTED_C) return double(kind, table, w, t);
  const end = double(kind, table, w, HOTTEST_FITTED_C);
  return end + (end - double(kind, table, w, HOTTEST_FITTED_C - 1)) * (t - HOTTEST_FITTED_C);
}

function double(
  kind: Glycol,
  table: 'density' | 'heatCapacity' | 'conductivity' | 'logViscosity',
  w: number,
  t_C: number,
): number {
  const c = coefficientsOf(kind);
  const rows = c[table];
  const dt = t_C - c.meanTemperature_C;
  const dw = 100 * w - c.meanShare_percent;
  let value = 0;
  for (let i = rows.length - 1; i >= 0; i--) value = value * dw + polynomial(rows[i], dt);
  return value;
}

/**
 * Temperature [C] at which the first crystals form in a mixture of mass share w [0..0.6].
 *
 * Slush, not burst: pipes survive roughly 10-20 K more. Within 0.2 K of Melinder's table.
 * Source: Melinder 2010, see the head of this file.
 */
export function glycolFreezingPoint(kind: Glycol, w: number): number {
  const c = coefficientsOf(kind);
  return polynomial(c.freezing, 100 * w - c.meanShare_percent);
}

/**
 * Density of glycol and water [kg/m3] at mass share w [0..0.6] and t_C [C].
 *
 * Freezing point..100 C; straight to 130 C, held below freezing. Source: Melinder 2010, see the head.
 */
export function glycolDensity(kind: Glycol, w: number, t_C: number): number {
  return evaluate(kind, 'density', w, t_C);
}

/**
 * Specific heat of glycol and water [J/(kg K)] at mass share w [0..0.6] and t_C [C].
 *
 * Freezing point..100 C; straight to 130 C, held below freezing. Source: Melinder 2010, see the head.
 */
export function glycolHeatCapacity(kind: Glycol, w: number, t_C: number): number {
  return evaluate(kind, 'heatCapacity', w, t_C);
}

/**
 * Conductivity of glycol and water [W/(m K)] at mass share w [0..0.6] and t_C [C].
 *
 * Freezing point..100 C; straight to 130 C, held below freezing. Source: Melinder 2010, see the head.
 */
export function glycolConductivity(kind: Glycol, w: number, t_C: number): number {
  return evaluate(kind, 'conductivity', w, t_C);
}

/**
 * Dynamic viscosity of glycol and water [Pa s] at mass share w [0..0.6] and t_C [C].
 *
 * Freezing point..100 C. Above, ln(mu) goes on straight in 1/T with its last slope (Andrade's law), because the
 * cubic steepens there; below freezing it is held. Source: Melinder 2010, see the head.
 */
export function glycolViscosity(kind: Glycol, w: number, t_C: number): number {
  const t = Math.max(t_C, glycolFreezingPoint(kind, w));
  if (t <= HOTTEST_FITTED_C) return 1e-3 * Math.exp(double(kind, 'logViscosity', w, t));
  const end_K = HOTTEST_FITTED_C + ZERO_CELSIUS_K;
  const end = double(kind, 'logViscosity', w, HOTTEST_FITTED_C);
  const slope = end - double(kind, 'logViscosity', w, HOTTEST_FITTED_C - 1);
  return 1e-3 * Math.exp(end + slope * end_K * (1 - end_K / (t + ZERO_CELSIUS_K)));
}

/**
 * Mass share [-] of a mixture sold or mixed by volume share v [0..1].
 *
 * w = v rho_g / (v rho_g + (1 - v) 998.2), both measured apart at 20 C; pure propylene glycol 1036 kg/m3,
 * ethylene glycol 1113 kg/m3. Source: definition; densities from memory (chemical data sheets).
 */
export function massShareFromVolumeShare(kind: Glycol, v: number): number {
  const glycol = v * coefficientsOf(kind).pureDensity_kg_m3;
  return glycol / (glycol + (1 - v) * 998.2);
}

/**
 * Boiling point [C] of glycol and water at mass share w [0..0.6] under p_Pa [Pa].
 *
 * Raoult's law with the glycol's own vapour left out: water boils at p / (its mole share). Gives 105.9 C for half
 * propylene and 107.2 C for half ethylene glycol at one atmosphere (data sheets: 105-106 and 107-108).
 * Source: Raoult; shared/physics.md 1.2 (data-sheet values from memory).
 */
export function glycolBoilingPoint(kind: Glycol, w: number, p_Pa: number): number {
  const water = (1 - w) / MOLAR_MASS_WATER_KG_MOL;
  const glycol = w / coefficientsOf(kind).molarMass_kg_mol;
  return waterBoilingPoint((p_Pa * (water + glycol)) / water);
}
