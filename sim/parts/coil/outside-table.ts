/** The outside film of one tube, split so that the innermost loop needs no correlation. */
import { power } from '../../numerics/alike.ts';
import { churchillChuPrandtlFactor, GRAVITY_M_S2 } from '../../physics/coil-outside.ts';
import { type Liquid, TABLE_SIZE } from '../liquid.ts';

/**
 * Coefficients a, b at every film temperature so that h = (a + b |d rho|^(1/6))^2 [W/(m2 K)] is Churchill and
 * Chu's film on a horizontal cylinder, with the Rayleigh number from the density difference d rho [kg/m3]
 * between wall and bulk. Taking the density difference itself, not a coefficient of expansion, keeps it right
 * across 4 C, where water is densest.
 */
export function outsideFilmCoefficients(
  diameter_m: number,
  water: Liquid,
): { a: Float64Array; b: Float64Array } {
  const a = new Float64Array(TABLE_SIZE);
  const b = new Float64Array(TABLE_SIZE);
  for (let i = 0; i < TABLE_SIZE; i++) {
    const k = water.conductivity[i];
    const diffusivity = k / (water.density[i] * water.heat_capacity[i]);
    const root = Math.sqrt(k / diameter_m);
    // Ra = g D^3 d rho / (mu alpha), since rho nu = mu.
    const perDensity = (GRAVITY_M_S2 * power(diameter_m, 3)) / (water.viscosity[i] * diffusivity);
    a[i] = 0.6 * root;
    b[i] = root * churchillChuPrandtlFactor(water.prandtl[i]) * power(perDensity, 1 / 6);
  }
  return { a, b };
}
