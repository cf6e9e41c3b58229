/** How the liquid and metal of a coil come to rest with the water around them once the flow has stopped. */
import { type Liquid, lookUp } from '../liquid.ts';
import type { Films } from './films.ts';

/** Nusselt number of liquid at rest in a tube: weak convection over pure conduction (common practice). */
const STILL_NUSSELT = 5;

export interface Rest {
  /** From the liquid at rest to the water around the tube [m K/W]. */
  resistance_mK_W: number;
  /** How far the metal follows the liquid away from that water, 0..1: the share of the resistance that lies outside it. */
  metal_follows: number;
}

/**
 * Resistances around liquid at rest. The film inside is poor then, so the metal goes nearly to the layers at once
 * and only the liquid takes its time.
 *
 * @param water_C temperature of the layers [C]; @param lead_K how far the liquid is from them [K]
 */
export function restOf(films: Films, inside: Liquid, water_C: number, lead_K: number): Rest {
  const still = 1 / (Math.PI * STILL_NUSSELT * lookUp(inside.conductivity, water_C + lead_K));
  let metal_follows = 0.5;
  let resistance_mK_W = 0;
  // The film outside depends on the wall's lead by its third or fourth root only: this settles at once.
  for (let i = 0; i < 3; i++) {
    const outside = 1 / films.outside(water_C, water_C + metal_follows * lead_K);
    resistance_mK_W = still + films.wall_mK_W + outside;
    metal_follows = outside / resistance_mK_W;
  }
  return { resistance_mK_W, metal_follows };
}
