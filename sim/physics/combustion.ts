/** Fuels, what burning them makes, and how an engine's use follows its load and altitude. */
import { power } from '../numerics/alike.ts';
import { waterBoilingPoint } from './water.ts';

/** A fuel as sold. `lower_heating_value_J_kg` and `density_kg_m3` are what a description carries. */
export interface FuelProperties {
  name: string;
  lower_heating_value_J_kg: number;
  /** Liquid, 15 C. */
  density_kg_m3: number;
  /** Atoms in a typical molecule. */
  carbon: number;
  hydrogen: number;
  source: string;
  grade: 'A' | 'C';
}

/**
 * Fuels of small engines. Source: each row's own; shared/physics.md 7.
 */
export const FUELS: Record<'gasoline' | 'diesel' | 'propane', FuelProperties> = {
  gasoline: {
    name: 'gasoline',
    lower_heating_value_J_kg: 41.8e6,
    density_kg_m3: 745,
    carbon: 8,
    hydrogen: 15,
    source: 'with a tenth of ethanol, 31.1 MJ/L; government fuel tables, from memory',
    grade: 'C',
  },
  diesel: {
    name: 'diesel',
    lower_heating_value_J_kg: 42.8e6,
    density_kg_m3: 840,
    carbon: 12,
    hydrogen: 23,
    source: '35.9 MJ/L; government fuel tables, from memory',
    grade: 'C',
  },
  propane: {
    name: 'propane',
    lower_heating_value_J_kg: 46.33e6,
    density_kg_m3: 507,
    carbon: 3,
    hydrogen: 8,
    source: 'heats of formation; liquid density at 15 C from memory',
    grade: 'A',
  },
};

/** Molar masses [kg/mol] and heats of formation at 25 C [J/mol] (CODATA, NIST; from memory). */
const CARBON_KG_MOL = 0.012011;
const HYDROGEN_KG_MOL = 0.001008;
const FORMATION_CO2 = -393_510;
const FORMATION_WATER = -285_830;
const FORMATION_STEAM = -241_826;
/** Moles of nitrogen (and argon) that come with a mole of oxygen in air. */
const NITROGEN_PER_OXYGEN = 3.76;

/**
 * Higher and lower heating value [J/kg] of a hydrocarbon C_c H_h from its heat of formation [J/mol] at 25 C.
 *
 * (H_f - c H_f(CO2) - h/2 H_f(H2O, liquid or vapour)) / M. Source: Hess; checks.json fuel.
 */
export function heatingValues(
  carbon: number,
  hydrogen: number,
  formation_J_mol: number,
): { higher_J_kg: number; lower_J_kg: number } {
  const mass = carbon * CARBON_KG_MOL + hydrogen * HYDROGEN_KG_MOL;
  const oxides = formation_J_mol - carbon * FORMATION_CO2;
  return {
    higher_J_kg: (oxides - (hydrogen / 2) * FORMATION_WATER) / mass,
    lower_J_kg: (oxides - (hydrogen / 2) * FORMATION_STEAM) / mass,
  };
}

/**
 * Mole share [-] of water in the exhaust of C_c H_h burnt in dry air, lambda [>= 1] times the air it needs.
 *
 * h/2 / (c + h/2 + a (lambda - 1) + 3.76 a lambda), a = c + h/4. Source: stoichiometry; checks.json engine.dew.
 */
export function exhaustWaterShare(carbon: number, hydrogen: number, lambda: number): number {
  const oxygen = carbon + hydrogen / 4;
  const water = hydrogen / 2;
  return water / (carbon + water + oxygen * (lambda - 1) + NITROGEN_PER_OXYGEN * oxygen * lambda);
}

/**
 * Temperature [C] at which water condenses out of exhaust with water share [-] at p_Pa [Pa].
 *
 * Sulphuric acid condenses at 110-140 C already (from memory). Source: Dalton; IAPWS saturation.
 */
export function exhaustDewPoint(waterShare: number, p_Pa: number): number {
  return waterBoilingPoint(waterShare * p_Pa);
}

/**
 * Share [-] of its sea-level output that a naturally aspirated engine keeps at altitude z_m [m]: 1 - 0.035 z / 304.8 m.
 *
 * Near the standard atmosphere's pressure ratio; 0..4000 m, never below 0. Source: common manual practice, 3.5 % a
 * thousand feet (from memory).
 */
export function altitudeDerating(z_m: number): number {
  return Math.max(0, Math.min(1, 1 - (0.035 * z_m) / 304.8));
}

/**
 * Air density over sea level's [-] at altitude z_m [m]: (1 - 2.25577e-5 z)^4.25588.
 *
 * What the engine breathes; losses make its output fall a little faster, see `altitudeDerating`.
 * Source: ICAO standard atmosphere; checks.json engine.derate.
 */
export function airDensityRatio(z_m: number): number {
  return power(1 - 2.25577e-5 * z_m, 4.25588);
}

/** A straight line of fuel over output: flow = no_load_kg_s + slope_kg_J x output. */
export interface FuelLine {
  no_load_kg_s: number;
  slope_kg_J: number;
}

/**
 * Fuel line through two readings of output [W] and fuel [kg/s].
 *
 * Source: Willans' line, linear within 5 % for engines at one speed.
 * @throws RangeError if the outputs are equal or more output takes less fuel
 */
export function fuelLineThrough(
  low: { output_W: number; fuel_kg_s: number },
  high: { output_W: number; fuel_kg_s: number },
): FuelLine {
  const slope_kg_J = (high.fuel_kg_s - low.fuel_kg_s) / (high.output_W - low.output_W);
  const no_load_kg_s = low.fuel_kg_s - slope_kg_J * low.output_W;
  if (!(slope_kg_J > 0 && no_load_kg_s >= 0)) {
    throw new RangeError(
      `engine.fuel_use - expected more fuel at more output, and some at none - got ${low.fuel_kg_s} kg/s at ${low.output_W} W, ${high.fuel_kg_s} kg/s at ${high.output_W} W - check both readings`,
    );
  }
  return { no_load_kg_s, slope_kg_J };
}

/** What small sets do when nothing is measured. `efficiency`: electrical output over fuel at rated load. */
const USUAL_SET = {
  /** Gasoline and propane, spark ignition. */
  spark: { efficiency: 0.21, noLoadShare: 0.3 },
  diesel: { efficiency: 0.29, noLoadShare: 0.17 },
} as const;

/**
 * Fuel line of an unmeasured liquid-cooled set of rated output [W] on a fuel of lower heating value [J/kg]: rated fuel from a usual efficiency (21 % spark, 29 % diesel), of which
 * a usual share (30 %, 17 %) burns at no load.
 *
 * Bands: spark 18-24 % and 25-35 %, diesel 25-32 % and 13-20 %. Source: Willans' line; shares and efficiencies from
 * memory of small-engine reports, shared/physics.md 7; diesel also shared/trade.md 2 (8-20 kW sets).
 */
export function usualFuelLine(
  ignition: keyof typeof USUAL_SET,
  rated_output_W: number,
  lower_heating_value_J_kg: number,
): FuelLine {
  const { efficiency, noLoadShare } = USUAL_SET[ignition];
  const rated_kg_s = rated_output_W / efficiency / lower_heating_value_J_kg;
  return {
    no_load_kg_s: noLoadShare * rated_kg_s,
    slope_kg_J: ((1 - noLoadShare) * rated_kg_s) / rated_output_W,
  };
}
