/**
 * How a collector turns light into heat, per square metre of the area its rating is stated on, and how
 * slanting light is weakened on the way in.
 */
import { cosine, power, sine } from '../numerics/alike.ts';
import { linearTable } from '../numerics/interpolation.ts';
import type { Plane, SkyDirection } from './sun.ts';

const QUARTER_TURN = Math.PI / 2;

/** The three numbers of a collector's rating sheet, all on one area basis. */
export interface Rating {
  /** Share of the light kept at no temperature difference [-]. */
  eta0: number;
  a1_W_m2K: number;
  a2_W_m2K2: number;
}

/**
 * Efficiency at a temperature difference: eta0 - a1 dT/G - a2 dT^2/G.
 *
 * @param rating of the collector
 * @param rise_K mean fluid less air temperature [K], 0 or more
 * @param light_W_m2 light on the plane [W/m2], above 0
 * @returns share of the light that becomes heat [-]; negative past stagnation
 * @source ISO 9806:2017, steady state without wind and long-wave terms; from memory
 */
export function collectorEfficiency(rating: Rating, rise_K: number, light_W_m2: number): number {
  return rating.eta0 - (rating.a1_W_m2K * rise_K + rating.a2_W_m2K2 * rise_K * rise_K) / light_W_m2;
}

/**
 * Heat loss at a temperature difference: a1 dT + a2 dT |dT| + e dT^3 |dT|, odd in dT, so that a collector
 * colder than the air gains what a warmer one would lose.
 *
 * @param rating of the collector
 * @param excess_W_m2K4 e, from `excessLoss_W_m2K4`; 0 for the bare quadratic
 * @param rise_K mean collector less air temperature [K]
 * @returns [W/m2]
 * @source ISO 9806:2017 for the quadratic; the fourth power is ours, see `excessLoss_W_m2K4`
 */
export function collectorLoss_W_m2(rating: Rating, excess_W_m2K4: number, rise_K: number): number {
  const size = Math.abs(rise_K);
  return rise_K * (rating.a1_W_m2K + size * (rating.a2_W_m2K2 + excess_W_m2K4 * size * size));
}

/**
 * Temperature difference at which all the light kept is lost again: the positive root of
 * eta0 G = a1 dT + a2 dT^2, written so that it also holds for a2 = 0.
 *
 * @param rating of the collector
 * @param kept_W_m2 light on the plane after incidence modifiers, before eta0 [W/m2], 0 or more
 * @returns [K]
 * @source ISO 9806 quadratic set to zero; exact
 */
export function stagnationRise_K(rating: Rating, kept_W_m2: number): number {
  const { a1_W_m2K: a1, a2_W_m2K2: a2 } = rating;
  const gain = rating.eta0 * kept_W_m2;
  return gain > 0 ? (2 * gain) / (a1 + Math.sqrt(a1 * a1 + 4 * a2 * gain)) : 0;
}

/**
 * Temperature of a dry or stopped collector in the sun, never above its ceiling: a quadratic fitted below
 * 100 C must not be carried to 300 C, where losses grow as the fourth power.
 *
 * @param rating of the collector
 * @param at light kept [W/m2] and air temperature [C]
 * @param ceiling_C hottest the collector is known to get [C]
 * @returns [C]
 * @source ISO 9806 quadratic; ceiling from measured stagnation (evacuated tubes 220-300 C; from memory)
 */
export function stagnationTemperature_C(
  rating: Rating,
  at: { kept_W_m2: number; air_C: number },
  ceiling_C = Number.POSITIVE_INFINITY,
): number {
  return Math.min(ceiling_C, at.air_C + stagnationRise_K(rating, at.kept_W_m2));
}

/** The light and air at which stagnation is stated (ISO 9806, from memory). */
const FULL_SUN_W_M2 = 1000;
const WARM_AIR_C = 30;

/**
 * Coefficient of a fourth-power loss that brings stagnation in full sun (1000 W/m2, 30 C) down to the
 * ceiling; 0 where the quadratic stays below it anyway. At working temperatures the term is negligible
 * (0.3 W/m2 at 50 K for a good evacuated tube with a ceiling of 280 C).
 *
 * @param rating of the collector
 * @param ceiling_C stagnation temperature in full sun [C], above 30
 * @returns e of `collectorLoss_W_m2` [W/(m2 K4)]
 * @source own closure: radiation is what the quadratic lacks, so the lack is put on the fourth power
 */
export function excessLoss_W_m2K4(rating: Rating, ceiling_C: number): number {
  const rise = ceiling_C - WARM_AIR_C;
  const lack = rating.eta0 * FULL_SUN_W_M2 - collectorLoss_W_m2(rating, 0, rise);
  return Math.max(0, lack) / power(rise, 4);
}

/**
 * Incidence modifier from one coefficient: 1 - b0 (1/cos th - 1), not below 0; 0 from behind. Meant for flat
 * glass to about 60 degrees; beyond it falls faster than measured, which errs on the dim side.
 *
 * @param b0 coefficient [-], 0..0.3
 * @param cos_incidence cosine of the angle from the normal [-]
 * @returns share of the light at normal incidence [-]
 * @source Souka & Safwat 1966, as in ISO 9806; from memory; checked against a library
 */
export function singleModifier(b0: number, cos_incidence: number): number {
  return cos_incidence > 0 ? Math.max(0, 1 - b0 * (1 / cos_incidence - 1)) : 0;
}

/**
 * Incidence modifier of one sheet of glass: what passes a pane at an angle over what passes it at none, from
 * refraction, reflection at both polarisations and absorption along the slanted way.
 * tau(th) = exp(-K L/cos tr) (1 - (sin^2(tr - th)/sin^2(tr + th) + tan^2(tr - th)/tan^2(tr + th))/2).
 * A default curve for a collector without a measured one.
 *
 * @param incidence_rad angle from the normal [rad], 0..pi/2
 * @param glass refractive index [-], extinction K [1/m], thickness L [m]
 * @source De Soto, Klein & Beckman 2006 (Duffie & Beckman section 5.1); from memory; checked against a library
 */
export function glassModifier(
  incidence_rad: number,
  glass = { index: 1.526, extinction_1_m: 4, thickness_m: 0.002 },
): number {
  const th = Math.abs(incidence_rad);
  if (th >= QUARTER_TURN) return 0;
  const depth = glass.extinction_1_m * glass.thickness_m;
  const normal = Math.exp(-depth) * (1 - ((glass.index - 1) / (glass.index + 1)) ** 2);
  if (th < 1e-6) return 1;
  const tr = Math.asin(sine(th) / glass.index);
  const across = (sine(tr - th) / sine(tr + th)) ** 2;
  const along = (Math.tan(tr - th) / Math.tan(tr + th)) ** 2;
  return (Math.exp(-depth / cosine(tr)) * (1 - (across + along) / 2)) / normal;
}

/** A light's angle from the normal, seen in the two planes of a row of tubes running up the slope. */
export interface TubeAngles {
  /** Projected on the plane of normal and tubes [rad], 0..pi/2. */
  lengthwise_rad: number;
  /** Projected on the plane across the tubes [rad], 0..pi/2. */
  crosswise_rad: number;
}

/**
 * Angles of the Sun in the planes along and across tubes that run up the slope. With n, u, s the parts of the
 * Sun's direction along the normal, up the slope and sideways: tan lengthwise = |u|/n, tan crosswise = |s|/n.
 *
 * @param sun direction, in front of the plane
 * @param plane of the collector
 * @source geometry, as McIntire & Reed 1983 define the angles; from memory
 */
export function tubeAngles(sun: SkyDirection, plane: Plane): TubeAngles {
  const ahead = sine(sun.zenith_rad) * cosine(sun.azimuth_rad - plane.azimuth_rad);
  const up = cosine(sun.zenith_rad);
  const sideways = sine(sun.zenith_rad) * sine(sun.azimuth_rad - plane.azimuth_rad);
  const normal = up * cosine(plane.tilt_rad) + ahead * sine(plane.tilt_rad);
  const slope = up * sine(plane.tilt_rad) - ahead * cosine(plane.tilt_rad);
  const angle = (part: number) => Math.min(QUARTER_TURN, Math.atan2(Math.abs(part), normal));
  return { lengthwise_rad: angle(slope), crosswise_rad: angle(sideways) };
}

/** A measured pair of incidence curves; angles ascending from 0. */
export interface TubeCurves {
  angle_rad: readonly number[];
  lengthwise: readonly number[];
  crosswise: readonly number[];
}

/**
 * Incidence modifier of a row of tubes: the product K_lengthwise(angle) K_crosswise(angle), each linear in
 * its table and from its last angle on straight to 0 at 90 degrees.
 *
 * @param curves measured pair
 * @param angles from `tubeAngles`
 * @returns share of the light at normal incidence [-]; may exceed 1, as round absorbers turn to the Sun
 * @source McIntire 1982 (product rule); from memory
 */
export function tubeModifier(curves: TubeCurves, angles: TubeAngles): number {
  return (
    readCurve(curves.angle_rad, curves.lengthwise, angles.lengthwise_rad) *
    readCurve(curves.angle_rad, curves.crosswise, angles.crosswise_rad)
  );
}

function readCurve(angle_rad: readonly number[], factor: readonly number[], at_rad: number): number {
  const last = angle_rad.length - 1;
  if (at_rad <= angle_rad[last]) return linearTable(angle_rad, factor, at_rad);
  return (factor[last] * Math.max(0, QUARTER_TURN - at_rad)) / (QUARTER_TURN - angle_rad[last]);
}
