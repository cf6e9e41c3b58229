/**
 * Heat transfer inside a helical coil and inside a straight tube.
 *
 * A bend throws the fast core outwards and sets up a pair of cross-flow vortices (Dean): in laminar flow they lift
 * the film five- to eightfold above a straight tube's, and they hold turbulence off to about three times the
 * straight tube's critical Reynolds number. A straight-tube rule is wrong here.
 *
 * `r` throughout is the tube's bore over the diameter of the coil's curvature, see `coilCurvature`.
 */
import { power } from '../numerics/alike.ts';

/**
 * Curvature ratio r [-] of a helix: bore inside_m [m] over the diameter of curvature of a helix of mean diameter
 * coil_m [m] and pitch pitch_m [m], coil (1 + (pitch / (pi coil))^2).
 *
 * Source: geometry; Gnielinski, VDI Heat Atlas G3 (from memory).
 */
export function coilCurvature(inside_m: number, coil_m: number, pitch_m: number): number {
  return inside_m / (coil_m * (1 + (pitch_m / (Math.PI * coil_m)) ** 2));
}

/**
 * Reynolds number [-] at which flow in a coil of curvature r [0..0.14] turns turbulent.
 *
 * Re = 2300 (1 + 8.6 r^0.45). Source: Schmidt 1967, shared/physics.md 3.
 */
export function coilCriticalReynolds(r: number): number {
  return 2300 * (1 + 8.6 * power(r, 0.45));
}

/** Reynolds number from which a coil is fully turbulent, whatever its curvature (VDI Heat Atlas G3). */
export const COIL_TURBULENT_REYNOLDS = 22_000;

/**
 * Laminar Nusselt number [-] in a coil, wall as warm as the bulk.
 *
 * Nu = 3.66 + 0.08 (1 + 0.8 r^0.9) Re^m Pr^(1/3), m = 0.5 + 0.2903 r^0.194. 100 < Re < critical.
 * Source: Schmidt 1967, as in VDI Heat Atlas G3 (from memory; value checked in checks.json).
 */
export function coilNusseltLaminar(reynolds: number, prandtl: number, r: number): number {
  const m = 0.5 + 0.2903 * power(r, 0.194);
  return 3.66 + 0.08 * (1 + 0.8 * power(r, 0.9)) * power(reynolds, m) * Math.cbrt(prandtl);
}

/**
 * Turbulent Nusselt number [-] in a coil, wall as warm as the bulk.
 *
 * Nu = (xi/8) Re Pr / (1 + 12.7 sqrt(xi/8) (Pr^(2/3) - 1)), xi = 0.3164 Re^-0.25 + 0.03 sqrt(r). Re > 22000.
 * Source: Gnielinski 1986, as in VDI Heat Atlas G3 (from memory; value checked in checks.json).
 */
function coilNusseltTurbulent(reynolds: number, prandtl: number, r: number): number {
  const xi = 0.3164 * power(reynolds, -0.25) + 0.03 * Math.sqrt(r);
  return gnielinskiCore(reynolds, prandtl, xi);
}

/** Gnielinski's fraction of Re, Pr and the Darcy factor xi. */
function gnielinskiCore(reynolds: number, prandtl: number, xi: number): number {
  const s = xi / 8;
  const root = Math.cbrt(prandtl);
  return (s * reynolds * prandtl) / (1 + 12.7 * Math.sqrt(s) * (root * root - 1));
}

/**
 * Nusselt number [-] inside a coil, over all Re, wall as warm as the bulk; continuous.
 *
 * Laminar below the critical Re; Gnielinski above 22000; between, g Nu_lam(Re_crit) + (1 - g) Nu_turb(22000) with
 * g = (22000 - Re) / (22000 - Re_crit). Spread between published forms: see `coilNusseltSpread`.
 * Source: Gnielinski 1986, VDI Heat Atlas G3 (from memory; values checked in checks.json).
 */
export function coilNusselt(reynolds: number, prandtl: number, r: number): number {
  if (reynolds >= COIL_TURBULENT_REYNOLDS) return coilNusseltTurbulent(reynolds, prandtl, r);
  const critical = coilCriticalReynolds(r);
  if (reynolds <= critical) return coilNusseltLaminar(reynolds, prandtl, r);
  const g = (COIL_TURBULENT_REYNOLDS - reynolds) / (COIL_TURBULENT_REYNOLDS - critical);
  return (
    g * coilNusseltLaminar(critical, prandtl, r) +
    (1 - g) * coilNusseltTurbulent(COIL_TURBULENT_REYNOLDS, prandtl, r)
  );
}

/**
 * Multiplier [-] on an inside film for a wall at another temperature than the bulk: (Pr / Pr_wall)^0.14, liquids.
 *
 * Source: VDI Heat Atlas G3 (from memory).
 */
export function wallCorrection(prandtl: number, prandtlAtWall: number): number {
  return power(prandtl / prandtlAtWall, 0.14);
}

/**
 * Petukhov's friction factor (Darcy) [-] of a smooth straight tube: (0.79 ln Re - 1.64)^-2, 3000 < Re < 5e6.
 *
 * Source: Petukhov 1970; checks.json pipe.Nu.
 */
export function petukhovFriction(reynolds: number): number {
  return power(0.79 * Math.log(reynolds) - 1.64, -2);
}

/**
 * Laminar Nusselt number [-] of a straight tube with a developing thermal layer, constant wall temperature.
 *
 * Nu = 3.66 + 0.0668 Gz / (1 + 0.04 Gz^(2/3)), Gz = Re Pr d / L. Source: Hausen 1943; checks.json pipe.Nu.lam.
 */
export function hausenNusselt(reynolds: number, prandtl: number, diameterOverLength: number): number {
  const graetz = reynolds * prandtl * diameterOverLength;
  return 3.66 + (0.0668 * graetz) / (1 + 0.04 * power(graetz, 2 / 3));
}

/**
 * Turbulent Nusselt number [-] of a smooth straight tube.
 *
 * Nu = (f/8)(Re - 1000) Pr / (1 + 12.7 sqrt(f/8)(Pr^(2/3) - 1)), f by Petukhov; 3000 < Re < 5e6, 0.5 < Pr < 2000.
 * Source: Gnielinski 1976; checks.json pipe.Nu.
 */
export function gnielinskiNusselt(reynolds: number, prandtl: number): number {
  return gnielinskiCore(reynolds, prandtl, petukhovFriction(reynolds)) * (1 - 1000 / reynolds);
}

/** Between these a straight tube's film is blended. */
const STRAIGHT_LAMINAR_REYNOLDS = 2300;
const STRAIGHT_TURBULENT_REYNOLDS = 4000;

/**
 * Nusselt number [-] inside a straight tube, over all Re, continuous: Hausen below 2300, Gnielinski above 4000,
 * linear in Re between.
 *
 * Source: Hausen 1943, Gnielinski 1976; the blend is Gnielinski's 2013 form with its ends at 2300 and 4000 (from
 * memory).
 */
export function straightNusselt(reynolds: number, prandtl: number, diameterOverLength: number): number {
  if (reynolds <= STRAIGHT_LAMINAR_REYNOLDS) return hausenNusselt(reynolds, prandtl, diameterOverLength);
  if (reynolds >= STRAIGHT_TURBULENT_REYNOLDS) return gnielinskiNusselt(reynolds, prandtl);
  const g =
    (reynolds - STRAIGHT_LAMINAR_REYNOLDS) / (STRAIGHT_TURBULENT_REYNOLDS - STRAIGHT_LAMINAR_REYNOLDS);
  return (
    (1 - g) * hausenNusselt(STRAIGHT_LAMINAR_REYNOLDS, prandtl, diameterOverLength) +
    g * gnielinskiNusselt(STRAIGHT_TURBULENT_REYNOLDS, prandtl)
  );
}
