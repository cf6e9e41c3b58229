/**
 * A liquid's properties tabulated every kelvin, for the innermost loop: one multiplication per value instead
 * of a correlation. Linear between points; the error against the correlation is below 0.02 %.
 */
import { power } from '../numerics/alike.ts';
import { fluidProperties } from '../physics/fluid.ts';
import type { Fluid } from './description.ts';

/** Reference heat capacity [J/(kg K)] that scales enthalpies to kelvin; any constant would do. */
export const REFERENCE_HEAT_CAPACITY = 4186;

/** First temperature of every table [C]. */
const TABLE_START = -50;
const TABLE_END = 260;
export const TABLE_SIZE = TABLE_END - TABLE_START + 1;

export interface Liquid {
  fluid: Fluid;
  /** [kg/m3] */
  density: Float64Array;
  /** [J/(kg K)] */
  heat_capacity: Float64Array;
  /** Its inverse [kg K/J]. */
  per_heat_capacity: Float64Array;
  /** [W/(m K)] */
  conductivity: Float64Array;
  /** [Pa s] */
  viscosity: Float64Array;
  prandtl: Float64Array;
  /** Prandtl number to the power 0.14, for the wall correction. */
  prandtl14: Float64Array;
  /** Specific enthalpy over the reference heat capacity [K], 0 at 0 C; the integral of the heat capacity. */
  enthalpy: Float64Array;
  /** Warming per enthalpy from each entry to the next. */
  warming: Float64Array;
}

const known = new Map<string, Liquid>();

/** The tables of a liquid; built once and shared (they are never written again). */
export function liquid(fluid: Fluid): Liquid {
  const key = `${fluid.kind} ${fluid.mass_share}`;
  let tables = known.get(key);
  if (!tables) {
    tables = tabulate(fluid);
    known.set(key, tables);
  }
  return tables;
}

function tabulate(fluid: Fluid): Liquid {
  const column = () => new Float64Array(TABLE_SIZE);
  const tables: Liquid = {
    fluid,
    density: column(),
    heat_capacity: column(),
    per_heat_capacity: column(),
    conductivity: column(),
    viscosity: column(),
    prandtl: column(),
    prandtl14: column(),
    enthalpy: column(),
    warming: column(),
  };
  for (let i = 0; i < TABLE_SIZE; i++) {
    const p = fluidProperties(fluid, TABLE_START + i);
    tables.density[i] = p.density_kg_m3;
    tables.heat_capacity[i] = p.heat_capacity_J_kgK;
    tables.per_heat_capacity[i] = 1 / p.heat_capacity_J_kgK;
    tables.conductivity[i] = p.conductivity_W_mK;
    tables.viscosity[i] = p.viscosity_Pa_s;
    tables.prandtl[i] = (p.viscosity_Pa_s * p.heat_capacity_J_kgK) / p.conductivity_W_mK;
    tables.prandtl14[i] = power(tables.prandtl[i], 0.14);
    if (i > 0) {
      const mean = (tables.heat_capacity[i] + tables.heat_capacity[i - 1]) / 2;
      tables.enthalpy[i] = tables.enthalpy[i - 1] + mean / REFERENCE_HEAT_CAPACITY;
    }
  }
  const zero = tables.enthalpy[-TABLE_START];
  for (let i = 0; i < TABLE_SIZE; i++) tables.enthalpy[i] -= zero;
  for (let i = 1; i < TABLE_SIZE; i++)
    tables.warming[i - 1] = 1 / (tables.enthalpy[i] - tables.enthalpy[i - 1]);
  return tables;
}

/** Value of a table at temperature t [C]; held at the ends. */
export function lookUp(table: Float64Array, t: number): number {
  return valueAt(table, placeIn(t));
}

/** The last place a value can be read between two entries. */
const LAST_PLACE = TABLE_SIZE - 1 - 1e-9;

/** Place of a temperature [C] in every table, held at the ends: found once where several values are read. */
export function placeIn(t: number): number {
  return Math.min(Math.max(t - TABLE_START, 0), LAST_PLACE);
}

/** Value of a table at a place from `placeIn`. */
export function valueAt(table: Float64Array, place: number): number {
  const i = place | 0;
  const v = table[i];
  return v + (place - i) * (table[i + 1] - v);
}

/**
 * Temperature [C] at which the enthalpy over the reference heat capacity is `x` [K]: the exact inverse of
 * `lookUp(liquid.enthalpy, t)` within the table.
 */
export function temperatureOf(tables: Liquid, x: number): number {
  const e = tables.enthalpy;
  // cp stays within 15 % of the reference, so the first guess is at most a few places off.
  let i = Math.min(TABLE_SIZE - 2, Math.max(0, (x - TABLE_START) | 0));
  while (i > 0 && e[i] > x) i--;
  while (i < TABLE_SIZE - 2 && e[i + 1] < x) i++;
  return TABLE_START + i + (x - e[i]) * tables.warming[i];
}
