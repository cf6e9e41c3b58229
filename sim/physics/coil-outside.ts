/**
 * Natural convection from the outside of a tube lying in still water.
 *
 * The buoyancy comes from the difference in density itself, not from a coefficient of expansion: across 4 C, where
 * water is densest, the coefficient changes sign and the product would be wrong.
 */
import { power } from '../numerics/alike.ts';

/** Standard gravity [m/s2]. */
export const GRAVITY_M_S2 = 9.80665;

/**
 * Rayleigh number [-] of a body of size size_m [m] whose wall and bulk water differ in density by
 * densityDifference_kg_m3 [kg/m3, either sign].
 *
 * Ra = g |d rho| L^3 / (mu alpha), alpha = k / (rho cp), properties at the film temperature (mean of wall and bulk).
 * Equals g beta dT L^3 / (nu alpha) away from 4 C. Source: definition.
 */
export function rayleigh(
  densityDifference_kg_m3: number,
  size_m: number,
  film: {
    density_kg_m3: number;
    heat_capacity_J_kgK: number;
    conductivity_W_mK: number;
    viscosity_Pa_s: number;
  },
): number {
  const diffusivity = film.conductivity_W_mK / (film.density_kg_m3 * film.heat_capacity_J_kgK);
  return (
    (GRAVITY_M_S2 * Math.abs(densityDifference_kg_m3) * power(size_m, 3)) /
    (film.viscosity_Pa_s * diffusivity)
  );
}

/**
 * Factor of Ra^(1/6) in Churchill and Chu's equation [-]: 0.387 / (1 + (0.559/Pr)^(9/16))^(8/27).
 *
 * With it h = (k/d) (0.60 + factor Ra^(1/6))^2, so h = (a + b |d rho|^(1/6))^2 where a = 0.60 sqrt(k/d) and
 * b = factor sqrt(k/d) (g d^3 / (mu alpha))^(1/6) depend on the film temperature only: two tables replace the
 * correlation in an inner loop. Source: Churchill & Chu 1975 (from memory; value checked in checks.json).
 */
export function churchillChuPrandtlFactor(prandtl: number): number {
  return 0.387 / power(1 + power(0.559 / prandtl, 9 / 16), 8 / 27);
}

/**
 * Nusselt number [-] on a horizontal cylinder's diameter, still liquid; the tool's main form.
 *
 * Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2, Ra < 1e12.
 * Source: Churchill & Chu 1975 (from memory; value checked in checks.json and ex.som8.8).
 */
export function churchillChuNusselt(ra: number, prandtl: number): number {
  const root = 0.6 + churchillChuPrandtlFactor(prandtl) * Math.cbrt(Math.sqrt(ra));
  return root * root;
}

/** How the turns of a coil lie against each other. */
export type Spacing = 'touching' | 'finger gap' | 'spread';

/** A multiplier with the least and most it may be. */
export interface Band {
  low: number;
  value: number;
  high: number;
}

/**
 * Multiplier on the outside film for turns that shade each other: touching turns lose half their surface and share
 * a plume; from two tube diameters apart each turn is nearly alone.
 *
 * Source: shared/trade.md (grade D, common practice) for the values; bands from physics.md 4: 0.5-0.6 touching,
 * 0.7-0.9 at 1.2-1.5 diameters, 0.9-1.0 from 1.5-2 (from memory of Lieberman & Gebhart, Marsters, Corcione).
 */
export const BUNDLING: Record<Spacing, Band> = {
  touching: { low: 0.35, value: 0.5, high: 0.65 },
  'finger gap': { low: 0.6, value: 0.75, high: 0.9 },
  spread: { low: 0.8, value: 0.9, high: 1 },
};

/** Gap between neighbouring turns by what a builder says of them [m]: a finger is 3/4 in, spread is 2 in (common practice). */
export const CLEAR_M: Record<Spacing, number> = { touching: 0, 'finger gap': 0.019, spread: 0.051 };
