/**
 * Pressure lost in tubes and coils. Every friction factor is Darcy's: dp = f (L/d) rho v^2 / 2.
 * `r` is the coil's curvature ratio, see `coilCurvature`.
 */
import { power } from '../numerics/alike.ts';
import { coilCriticalReynolds } from './coil-inside.ts';

/**
 * Friction factor [-] of a straight tube over all Re > 0, continuous through transition.
 *
 * f = 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12), A = (2.457 ln(1/((7/Re)^0.9 + 0.27 e/D)))^16, B = (37530/Re)^16.
 * Within 2 % of Colebrook when turbulent. Source: Churchill 1977; checks.json pipe.f.
 */
export function straightFriction(reynolds: number, relativeRoughness: number): number {
  // Below Re 1 the twelfth power would overflow long before the law changes.
  if (reynolds < 1) return 64 / reynolds;
  const a = power(2.457 * Math.log(1 / (power(7 / reynolds, 0.9) + 0.27 * relativeRoughness)), 16);
  const b = power(37530 / reynolds, 16);
  return 8 * power(power(8 / reynolds, 12) + power(a + b, -1.5), 1 / 12);
}

/**
 * Laminar friction factor [-] in a coil: (64/Re)(1 + 0.033 (log10 He)^4), He = Re sqrt(r), 1 < He < 3000; a straight
 * tube's below. The pitch's share of He is in r.
 *
 * Source: Mishra & Gupta 1979 (from memory; value checked in checks.json).
 */
export function coilFrictionLaminar(reynolds: number, r: number): number {
  const helical = reynolds * Math.sqrt(r);
  const straight = 64 / reynolds;
  return helical <= 1 ? straight : straight * (1 + 0.033 * power(Math.log10(helical), 4));
}

/**
 * Turbulent friction factor [-] in a smooth coil: 0.3164 Re^-0.25 + 0.03 sqrt(r), 4500 < Re < 1e5, 0.003 < r < 0.15.
 *
 * Source: Mishra & Gupta 1979, also VDI Heat Atlas L1 (from memory; value checked in checks.json).
 */
export function coilFrictionTurbulent(reynolds: number, r: number): number {
  return 0.3164 * power(reynolds, -0.25) + 0.03 * Math.sqrt(r);
}

/** Turbulence is taken as full at this multiple of the critical Reynolds number. */
const TURBULENT_FROM = 1.2;

/**
 * Friction factor [-] in a coil of curvature r over all Re > 0, continuous: laminar to the critical Re, turbulent from
 * 1.2 times it, a smooth blend between (the two differ there by 2-5 %). Roughness adds what it adds in a straight
 * tube at the same Re.
 *
 * Source: Mishra & Gupta 1979, Schmidt 1967, Churchill 1977; the blend is ours.
 */
export function coilFriction(reynolds: number, r: number, relativeRoughness: number): number {
  const critical = coilCriticalReynolds(r);
  const full = TURBULENT_FROM * critical;
  if (reynolds <= critical) return coilFrictionLaminar(reynolds, r);
  const rough =
    relativeRoughness > 0 ? straightFriction(reynolds, relativeRoughness) - straightFriction(reynolds, 0) : 0;
  const turbulent = coilFrictionTurbulent(reynolds, r) + rough;
  if (reynolds >= full) return turbulent;
  const x = (reynolds - critical) / (full - critical);
  const g = x * x * (3 - 2 * x);
  return (1 - g) * coilFrictionLaminar(reynolds, r) + g * turbulent;
}

/** A run of tube. `curvature` is 0 for a straight one; `minor` is the sum of fittings' loss coefficients. */
export interface TubeRun {
  length_m: number;
  inside_diameter_m: number;
  curvature: number;
  roughness_m: number;
  minor: number;
}

/**
 * Mean velocity [m/s] of a volume flow [m3/s] in a bore [m]: q / (pi d^2 / 4). Source: definition.
 */
export function tubeVelocity(flow_m3_s: number, inside_diameter_m: number): number {
  return (4 * flow_m3_s) / (Math.PI * inside_diameter_m * inside_diameter_m);
}

/**
 * Reynolds number [-] of a volume flow [m3/s] in a bore [m]: rho v d / mu. Source: definition.
 */
function tubeReynolds(
  flow_m3_s: number,
  inside_diameter_m: number,
  density_kg_m3: number,
  viscosity_Pa_s: number,
): number {
  return (4 * density_kg_m3 * flow_m3_s) / (Math.PI * inside_diameter_m * viscosity_Pa_s);
}

/**
 * Pressure lost [Pa] by a volume flow [m3/s] through a run: (f L/d + sum K) rho v^2 / 2; 0 at no flow.
 *
 * Source: Darcy-Weisbach; f by `coilFriction` or `straightFriction`.
 */
export function pressureLoss(
  run: TubeRun,
  flow_m3_s: number,
  liquid: { density_kg_m3: number; viscosity_Pa_s: number },
): number {
  if (!(flow_m3_s > 0)) return 0;
  const d = run.inside_diameter_m;
  const v = tubeVelocity(flow_m3_s, d);
  const re = tubeReynolds(flow_m3_s, d, liquid.density_kg_m3, liquid.viscosity_Pa_s);
  const f =
    run.curvature > 0
      ? coilFriction(re, run.curvature, run.roughness_m / d)
      : straightFriction(re, run.roughness_m / d);
  return ((f * run.length_m) / d + run.minor) * ((liquid.density_kg_m3 * v * v) / 2);
}

/**
 * Loss coefficients K [-] of fittings, on the velocity head of the bore.
 *
 * Source: Crane TP-410, ASHRAE (from memory; shared/physics.md 5 gives the ranges). `longElbow` is a bend of radius
 * 1.5 bores: 0.294 at Re 2e4 in checks.json pipe.K.bend90.
 */
export const MINOR_LOSS = {
  entrance: 0.5,
  exit: 1,
  threadedElbow: 1.2,
  longElbow: 0.3,
  teeBranch: 1.4,
  ballValve: 0.1,
  checkValve: 2.5,
} as const;
