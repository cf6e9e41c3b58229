/**
 * Other published correlations for coils, beside the ones the tool computes with. Their disagreement is the honest
 * band of the main ones; nothing here is used inside a run.
 */

import { power } from '../numerics/alike.ts';
import { coilCriticalReynolds, coilNusselt } from './coil-inside.ts';
import { churchillChuNusselt } from './coil-outside.ts';
import { coilFriction } from './friction.ts';

/** Least and most that published forms give, as multiples of the main form. */
export interface Spread {
  low: number;
  high: number;
}

function spreadOf(main: number, others: number[]): Spread {
  return {
    low: Math.min(1, ...others.map((o) => o / main)),
    high: Math.max(1, ...others.map((o) => o / main)),
  };
}

/**
 * Critical Reynolds number [-] of a coil of curvature r by five other authors.
 *
 * Ito 20000 r^0.32; Srinivasan 2100 (1 + 12 sqrt r); Seth & Stahel 1900 (1 + 8 sqrt r), the low outlier; Kubair & Kuloor
 * 12730 r^0.2; Kutateladze & Borishanskii 2300 + 10500 r^0.3. 0.004 < r < 0.07. Source: shared/physics.md 3.
 */
export function otherCriticalReynolds(r: number) {
  return {
    ito: 20000 * power(r, 0.32),
    srinivasan: 2100 * (1 + 12 * Math.sqrt(r)),
    sethStahel: 1900 * (1 + 8 * Math.sqrt(r)),
    kubairKuloor: 12730 * power(r, 0.2),
    kutateladzeBorishanskii: 2300 + 10500 * power(r, 0.3),
  };
}

/**
 * Laminar Nusselt number [-] in a coil with constant wall temperature.
 *
 * Nu = ((3.657 + 4.343/x1)^3 + 1.158 (De/x2)^1.5)^(1/3), x1 = (1 + 957/(De^2 Pr))^2, x2 = 1 + 0.477/Pr.
 * Source: Manlapaz & Churchill 1981 (from memory).
 */
export function manlapazChurchillNusselt(reynolds: number, prandtl: number, r: number): number {
  const dean = reynolds * Math.sqrt(r);
  const x1 = (1 + 957 / (dean * dean * prandtl)) ** 2;
  const x2 = 1 + 0.477 / prandtl;
  return Math.cbrt(power(3.657 + 4.343 / x1, 3) + 1.158 * power(dean / x2, 1.5));
}

/**
 * Laminar Nusselt number [-] in a coil: (0.76 + 0.65 sqrt De) Pr^0.175, 50 < De < 2000, 5 < Pr < 175.
 *
 * Source: Dravid et al. 1971 (from memory).
 */
export function dravidNusselt(reynolds: number, prandtl: number, r: number): number {
  return (0.76 + 0.65 * Math.sqrt(reynolds * Math.sqrt(r))) * power(prandtl, 0.175);
}

/**
 * Laminar Nusselt number [-] in a coil: (2.153 + 0.318 De^0.643) Pr^0.177, 20 < De < 2000, 0.7 < Pr < 175.
 *
 * Source: Xin & Ebadian 1997 (from memory).
 */
export function xinEbadianLaminarNusselt(reynolds: number, prandtl: number, r: number): number {
  return (2.153 + 0.318 * power(reynolds * Math.sqrt(r), 0.643)) * power(prandtl, 0.177);
}

/**
 * Turbulent Nusselt number [-] in a coil: 0.00619 Re^0.92 Pr^0.4 (1 + 3.455 r), 5e3 < Re < 1e5, 0.7 < Pr < 5.
 *
 * Source: Xin & Ebadian 1997, shared/physics.md 3.
 */
export function xinEbadianTurbulentNusselt(reynolds: number, prandtl: number, r: number): number {
  return 0.00619 * power(reynolds, 0.92) * power(prandtl, 0.4) * (1 + 3.455 * r);
}

/**
 * Turbulent Nusselt number [-] in a coil, 0.023 [...] Re^n Pr^(1/3): below Re 22000 1 + 14.8 (1 + r) r^(1/3) and
 * n = 0.8 - 0.22 r^0.1; above, 1 + 3.6 (1 - r) r^0.8 and n = 0.8.
 *
 * Source: Schmidt 1967, shared/physics.md 3.
 */
export function schmidtTurbulentNusselt(reynolds: number, prandtl: number, r: number): number {
  const root = Math.cbrt(prandtl);
  return reynolds <= 22000
    ? 0.023 * (1 + 14.8 * (1 + r) * Math.cbrt(r)) * power(reynolds, 0.8 - 0.22 * power(r, 0.1)) * root
    : 0.023 * (1 + 3.6 * (1 - r) * power(r, 0.8)) * power(reynolds, 0.8) * root;
}

/**
 * Turbulent Nusselt number [-] in a coil, Pr > 1: Pr^0.4/41 Re^(5/6) r^(1/12) (1 + 0.061 (Re r^2.5)^(-1/6)).
 *
 * Source: Mori & Nakayama 1967, shared/physics.md 3.
 */
export function moriNakayamaNusselt(reynolds: number, prandtl: number, r: number): number {
  return (
    (power(prandtl, 0.4) / 41) *
    power(reynolds, 5 / 6) *
    power(r, 1 / 12) *
    (1 + 0.061 / power(reynolds * power(r, 2.5), 1 / 6))
  );
}

/**
 * How far other forms lie from `coilNusselt` at this flow [multiples of it, -]. In laminar flow the main form is the highest of four.
 *
 * Source: the functions above, each within its own range of Re.
 */
export function coilNusseltSpread(reynolds: number, prandtl: number, r: number): Spread {
  const others =
    reynolds < coilCriticalReynolds(r)
      ? [manlapazChurchillNusselt, dravidNusselt, xinEbadianLaminarNusselt]
      : [schmidtTurbulentNusselt, moriNakayamaNusselt, xinEbadianTurbulentNusselt];
  return spreadOf(
    coilNusselt(reynolds, prandtl, r),
    others.map((form) => form(reynolds, prandtl, r)),
  );
}

/**
 * Friction factor [-] of a straight tube, turbulent: 1/sqrt f = -2 log10(e/(3.7 D) + 2.51/(Re sqrt f)), Re > 2300.
 *
 * Solved by substitution, which shrinks the error tenfold a round. Source: Colebrook 1939; checks.json pipe.f.
 */
export function colebrookFriction(reynolds: number, relativeRoughness: number): number {
  let inverseRoot = 7;
  for (let i = 0; i < 14; i++) {
    inverseRoot = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * inverseRoot) / reynolds);
  }
  return 1 / (inverseRoot * inverseRoot);
}

/**
 * Laminar friction factor [-] in a coil: (64/Re) / (1 - (1 - (11.6/De)^0.45)^(1/0.45)), 11.6 < De < 2000.
 *
 * Source: White 1929, shared/physics.md 3.
 */
export function whiteFriction(reynolds: number, r: number): number {
  const dean = reynolds * Math.sqrt(r);
  return 64 / reynolds / (1 - power(1 - power(11.6 / dean, 0.45), 1 / 0.45));
}

/**
 * Friction factor [-] in a coil. Laminar, Re > 100: (64/Re)(1 + 0.14 r^0.97 Re^(1 - 0.644 r^0.312)); turbulent, on the
 * straight tube's f: 1 + 28800 r^0.62 / Re to 22000, then 1 + 0.0823 (1 + r) r^0.53 Re^0.25 to 150000.
 *
 * Source: Schmidt 1967, shared/physics.md 3.
 */
export function schmidtFriction(reynolds: number, r: number): number {
  if (reynolds < coilCriticalReynolds(r)) {
    return (64 / reynolds) * (1 + 0.14 * power(r, 0.97) * power(reynolds, 1 - 0.644 * power(r, 0.312)));
  }
  const straight = colebrookFriction(reynolds, 0);
  return reynolds < 22000
    ? straight * (1 + (28800 / reynolds) * power(r, 0.62))
    : straight * (1 + 0.0823 * (1 + r) * power(r, 0.53) * power(reynolds, 0.25));
}

/**
 * Friction factor [-] in a coil. Laminar: (64/Re) 0.108 sqrt De / (1 - 3.253 / sqrt De), 100 < De < 2000; turbulent:
 * 0.3 sqrt r x (1 + 0.112 x), x = (Re r^2)^-0.2.
 *
 * Source: Mori & Nakayama 1965, 1967, shared/physics.md 3.
 */
export function moriNakayamaFriction(reynolds: number, r: number): number {
  if (reynolds < coilCriticalReynolds(r)) {
    const root = Math.sqrt(reynolds * Math.sqrt(r));
    return ((64 / reynolds) * 0.108 * root) / (1 - 3.253 / root);
  }
  const x = power(reynolds * r * r, -0.2);
  return 0.3 * Math.sqrt(r) * x * (1 + 0.112 * x);
}

/**
 * Turbulent friction factor [-] in a coil: sqrt r (0.029 + 0.304 (Re r^2)^-0.25), 0.034 < Re r^2 < 300.
 *
 * Source: Ito 1959 (from memory).
 */
export function itoFriction(reynolds: number, r: number): number {
  return Math.sqrt(r) * (0.029 + 0.304 * power(reynolds * r * r, -0.25));
}

/**
 * Turbulent friction factor [-] in a coil: the straight tube's times 1 + 0.18 (Re r^2)^0.25.
 *
 * Source: Prasad 1989, shared/physics.md 3.
 */
export function prasadFriction(reynolds: number, r: number): number {
  return colebrookFriction(reynolds, 0) * (1 + 0.18 * power(reynolds * r * r, 0.25));
}

/**
 * How far other forms lie from `coilFriction` of a smooth coil at this flow [multiples of it, -].
 *
 * Source: the functions above, each within its own range of Re.
 */
export function coilFrictionSpread(reynolds: number, r: number): Spread {
  const others =
    reynolds < coilCriticalReynolds(r)
      ? [whiteFriction, schmidtFriction, moriNakayamaFriction]
      : [schmidtFriction, moriNakayamaFriction, itoFriction, prasadFriction];
  return spreadOf(
    coilFriction(reynolds, r, 0),
    others.map((form) => form(reynolds, r)),
  );
}

/**
 * Nusselt number [-] on a horizontal cylinder's diameter: 0.480 Ra^(1/4) below Ra 1e7, 0.125 Ra^(1/3) above; Ra > 1e4.
 *
 * Source: Morgan 1975, shared/physics.md 4.
 */
export function morganNusselt(ra: number): number {
  return ra < 1e7 ? 0.48 * power(ra, 0.25) : 0.125 * Math.cbrt(ra);
}

/**
 * Nusselt number [-] on a horizontal cylinder's diameter: 2 / ln(1 + 2 / ((laminar)^15 + (turbulent)^15)^(1/15)),
 * laminar 0.518 Ra^(1/4) (1 + (0.559/Pr)^(3/5))^(-5/12), turbulent 0.1 Ra^(1/3).
 *
 * Source: Kuehn & Goldstein 1976 (from memory; value checked in checks.json).
 */
export function kuehnGoldsteinNusselt(ra: number, prandtl: number): number {
  const laminar = 0.518 * power(ra, 0.25) * power(1 + power(0.559 / prandtl, 0.6), -5 / 12);
  const turbulent = 0.1 * Math.cbrt(ra);
  return 2 / Math.log(1 + 2 / power(power(laminar, 15) + power(turbulent, 15), 1 / 15));
}

/**
 * Nusselt number [-] on a coil's HEIGHT, measured on coils in water: 0.0749 Ra_H^0.3421, 9e9 < Ra_H < 4e11.
 *
 * Gives about half of the horizontal cylinder's film. Source: Prabhanjan, Rennie & Raghavan 2004, shared/physics.md 4.
 */
export function prabhanjanNusselt(raOnHeight: number): number {
  return 0.0749 * power(raOnHeight, 0.3421);
}

/**
 * How far other forms lie from Churchill and Chu's film on a tube of diameter diameter_m [m] wound to a coil
 * height_m [m] tall, at ra on the diameter.
 *
 * The low end is the one water-coil measurement within its range; the high end also covers coils measured at 1.0 to
 * 1.2 times the cylinder (Ali 1994, 1998, from memory), which no form here computes because no coil of a household
 * store falls in their range. Source: the functions above, shared/physics.md 4.
 */
export function coilOutsideSpread(ra: number, prandtl: number, diameter_m: number, height_m: number): Spread {
  const raOnHeight = ra * power(height_m / diameter_m, 3);
  const coil = (prabhanjanNusselt(raOnHeight) * diameter_m) / height_m;
  const spread = spreadOf(churchillChuNusselt(ra, prandtl), [
    morganNusselt(ra),
    kuehnGoldsteinNusselt(ra, prandtl),
    coil,
  ]);
  return { low: spread.low, high: Math.max(spread.high, 1.2) };
}
