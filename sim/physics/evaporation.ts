/**
 * Water and heat lost from an open water surface.
 *
 * Above 40 C evaporation is nearly all of it. Published forms agree within a fifth on hot water and scatter by more on
 * warm; the tool uses Shah's for the store (smallest mean deviation over eleven data sources, 7-94 C).
 */
import { power } from '../numerics/alike.ts';
import { airSaturationPressure, GAS_CONSTANT_AIR, moistAirDensity } from './moist-air.ts';
import { waterLatentHeat, waterSaturationPressure } from './water.ts';

const ZERO_CELSIUS_K = 273.15;
const GAS_CONSTANT_VAPOUR = 461.526;
/** Stefan-Boltzmann constant [W/(m2 K4)]. */
const STEFAN_BOLTZMANN = 5.670374e-8;
/** Emissivity of a water surface (handbooks, from memory). */
const WATER_EMISSIVITY = 0.95;

/** Air over a surface. */
export interface AirAbove {
  air_C: number;
  /** Share, 0..1. */
  relative_humidity: number;
  pressure_Pa: number;
}

/**
 * Evaporation [kg/(m2 s)] by vapour pressures [Pa] and air speed wind_m_s [m/s] along the surface; 0 where it would
 * condense.
 *
 * E = (pw - pa)[kPa] (0.089 + 0.0782 V) / r[kJ/kg]. An active pool; still water evaporates 0.74-0.76 of it.
 * Source: Carrier 1918, ASHRAE HVAC Applications, pools (from memory; values in checks.json evap.*).
 */
export function carrierEvaporation(
  water_Pa: number,
  vapour_Pa: number,
  wind_m_s: number,
  latent_J_kg: number,
): number {
  return (Math.max(0, water_Pa - vapour_Pa) * (0.089 + 0.0782 * wind_m_s)) / latent_J_kg;
}

/** Measured evaporation of still water as a share of Carrier's. Source: Smith, Lof & Jones 1994 (from memory). */
export const STILL_WATER_SHARE = 0.76;

/**
 * Evaporation [kg/(m2 s)] of still water at water_C [C] into still air; 0 where it would condense.
 *
 * The larger of natural convection, C rho_w (rho_a - rho_w)^(1/3) (W_w - W_a) [kg/(m2 h)], C = 35, or 40 for a density
 * difference below 0.02 kg/m3, and forced convection by room air, 5e-5 (pw - pa)[Pa] [kg/(m2 h)]. rho_w outside the
 * root is dry air per volume; rho_w (W_w - W_a) is evaluated as a difference of vapour densities, which stays finite
 * at boiling. The step of C is bridged between 0.015 and 0.025 kg/m3. Water 7..94 C, mean deviation 18 %.
 * Source: Shah 2002, 2012, 2014 (from memory; values in checks.json evap.*).
 */
export function shahEvaporation(water_C: number, air: AirAbove): number {
  const { air_C, pressure_Pa } = air;
  // At and above boiling the surface's vapour fills the air beside it.
  const water_Pa = Math.min(waterSaturationPressure(water_C), pressure_Pa);
  const vapour_Pa = air.relative_humidity * airSaturationPressure(air_C);
  if (water_Pa <= vapour_Pa) return 0;
  const forced = 5e-5 * (water_Pa - vapour_Pa);
  const lift =
    moistAirDensity(air_C, vapour_Pa, pressure_Pa) - moistAirDensity(water_C, water_Pa, pressure_Pa);
  if (lift <= 0) return forced / 3600;
  const water_K = water_C + ZERO_CELSIUS_K;
  const vapourAtSurface = water_Pa / (GAS_CONSTANT_VAPOUR * water_K);
  const dryAtSurface = (pressure_Pa - water_Pa) / (GAS_CONSTANT_AIR * water_K);
  const ratioInAir = ((GAS_CONSTANT_AIR / GAS_CONSTANT_VAPOUR) * vapour_Pa) / (pressure_Pa - vapour_Pa);
  const factor = 40 - 5 * Math.max(0, Math.min(1, (lift - 0.015) / 0.01));
  const natural = factor * Math.cbrt(lift) * (vapourAtSurface - dryAtSurface * ratioInAir);
  return Math.max(natural, forced) / 3600;
}

/**
 * Heat carried off [W/m2] by evaporation [kg/(m2 s)] from water at water_C [C]: E r.
 *
 * The water's own warmth leaves with it besides. Source: definition.
 */
export function evaporativeHeat(evaporation_kg_m2s: number, water_C: number): number {
  return evaporation_kg_m2s * waterLatentHeat(water_C);
}

/**
 * Convective film [W/(m2 K)] of a level face at face_C [C] under still air at air_C [C].
 *
 * Warmer than the air: 1.52 |dT|^(1/3); cooler: the air lies still on it, 0.59 (|dT|/L)^(1/4), L the face's side [m].
 * Source: McAdams 1954 (from memory).
 */
export function levelFaceFilm(face_C: number, air_C: number, side_m: number): number {
  const d = face_C - air_C;
  return d >= 0 ? 1.52 * Math.cbrt(d) : 0.59 * power(-d / side_m, 0.25);
}

/**
 * Net heat radiated [W/m2] by water at water_C [C] to surroundings at around_C [C], 0.95 sigma (Tw^4 - Ts^4).
 *
 * Source: Stefan-Boltzmann; emissivity from memory.
 */
export function waterRadiation(water_C: number, around_C: number): number {
  const water = (water_C + ZERO_CELSIUS_K) * (water_C + ZERO_CELSIUS_K);
  const around = (around_C + ZERO_CELSIUS_K) * (around_C + ZERO_CELSIUS_K);
  return WATER_EMISSIVITY * STEFAN_BOLTZMANN * (water * water - around * around);
}
