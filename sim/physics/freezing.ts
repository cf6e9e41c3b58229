/** How long still water in a pipe takes to freeze. */
import { waterDensity, waterHeatCapacity } from './water.ts';

/** Latent heat of freezing [J/kg] and conductivity of ice at 0 C [W/(m K)] (handbook values, from memory). */
const FREEZING_J_KG = 333_550;
const ICE_W_MK = 2.22;

/** A pipe full of still water; `conductance_W_mK` is its loss per metre and kelvin, insulation and air film in it. */
export interface StillPipe {
  inside_diameter_m: number;
  conductance_W_mK: number;
}

/**
 * Time until still water in a pipe has cooled from from_C to 0 C in air at air_C [s].
 *
 * t = rho c A / K ln((from - air) / (0 - air)): water alone, the pipe's own heat left out, air below 0 C; Infinity in
 * warmer air, 0 for water at or below 0 C.
 * Source: ASHRAE Handbook of Fundamentals 2009, chapter 23, equation 1 (as quoted by several public calculators).
 */
export function timeToIce(pipe: StillPipe, from_C: number, air_C: number): number {
  if (from_C <= 0) return 0;
  if (air_C >= 0) return Number.POSITIVE_INFINITY;
  const mean_C = from_C / 2;
  const held_J_mK = waterDensity(mean_C) * waterHeatCapacity(mean_C) * boreOf(pipe);
  return (held_J_mK / pipe.conductance_W_mK) * Math.log((from_C - air_C) / -air_C);
}

/**
 * Time from the first ice until still water at 0 C in a pipe is ice throughout [s], air at air_C.
 *
 * t = rho L A / (0 - air) (1 / K + 1 / (4 pi k)): Plank's equation for the cylinder, t = rho L / dT (D / (4 h) + D^2 /
 * (16 k)), with K = pi D h. Infinity in air that is not below 0 C.
 * Source: Plank 1913 (textbook, shape factors 1/4 and 1/16 from memory).
 */
export function timeToSolid(pipe: StillPipe, air_C: number): number {
  if (air_C >= 0) return Number.POSITIVE_INFINITY;
  const latent_J_m = waterDensity(0) * FREEZING_J_KG * boreOf(pipe);
  return (latent_J_m / -air_C) * (1 / pipe.conductance_W_mK + 1 / (4 * Math.PI * ICE_W_MK));
}

function boreOf({ inside_diameter_m }: StillPipe): number {
  return (Math.PI / 4) * inside_diameter_m ** 2;
}
