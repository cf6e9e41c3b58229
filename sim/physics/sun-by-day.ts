/**
 * The Sun by day of the year: short series good to a fraction of a degree, and daily and hourly sums above
 * the air. For monthly climates, where no year is named. Day 1 is 1 January.
 */
import { cosine, sine } from '../numerics/alike.ts';
import { SOLAR_CONSTANT, sunsetHourAngle_rad } from './sun.ts';

const DEGREE = Math.PI / 180;

/** Days of a 365-day year's months, January first. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Angle of the day in the year: 2 pi (n - 1)/365 [rad]. */
function dayAngle_rad(day: number): number {
  return (2 * Math.PI * (day - 1)) / 365;
}

/**
 * Declination: 23.45 degrees sin(360 degrees (284 + n)/365). Up to 1.2 degrees off near the equinoxes.
 *
 * @param day day of the year [1..365]
 * @returns [rad]
 * @source Cooper 1969 (Duffie & Beckman eq. 1.6.1a); from memory; kept because the printed daily sums use it
 */
export function declinationCooper_rad(day: number): number {
  return 23.45 * DEGREE * sine((2 * Math.PI * (284 + day)) / 365);
}

/**
 * Declination by a Fourier series in the day angle; up to 0.4 degree off in late September, less elsewhere (as
 * compared with `sunEphemeris`).
 *
 * @param day day of the year [1..365]
 * @returns [rad]
 * @source Spencer 1971 (Duffie & Beckman eq. 1.6.1b); from memory; checked against a library
 */
export function declinationSpencer_rad(day: number): number {
  const b = dayAngle_rad(day);
  return (
    0.006918 -
    0.399912 * cosine(b) +
    0.070257 * sine(b) -
    0.006758 * cosine(2 * b) +
    0.000907 * sine(2 * b) -
    0.002697 * cosine(3 * b) +
    0.00148 * sine(3 * b)
  );
}

/**
 * Solar time less mean time; within 50 s of `sunEphemeris`.
 *
 * @param day day of the year [1..365]
 * @returns [s]
 * @source Spencer 1971 (Duffie & Beckman eq. 1.5.3); from memory; checked against a library
 */
export function equationOfTime_s(day: number): number {
  const b = dayAngle_rad(day);
  const angle_rad =
    0.0000075 + 0.001868 * cosine(b) - 0.032077 * sine(b) - 0.014615 * cosine(2 * b) - 0.040849 * sine(2 * b);
  return (angle_rad * 43200) / Math.PI;
}

/**
 * Irradiance above the air on a plane facing the Sun.
 *
 * @param day day of the year [1..365]
 * @param solar_constant_W_m2 at the mean distance [W/m2]
 * @returns [W/m2]
 * @source Spencer 1971 (Duffie & Beckman eq. 1.4.1b); from memory; checked against a library
 */
export function extraterrestrialNormal_W_m2(day: number, solar_constant_W_m2 = SOLAR_CONSTANT): number {
  const b = dayAngle_rad(day);
  return (
    solar_constant_W_m2 *
    (1.00011 + 0.034221 * cosine(b) + 0.00128 * sine(b) + 0.000719 * cosine(2 * b) + 0.000077 * sine(2 * b))
  );
}

/**
 * Energy above the air on a horizontal plane over a whole day:
 * (86400/pi) G_on (cos L cos d sin ws + ws sin L sin d).
 *
 * @param sun latitude and declination [rad], irradiance above the air facing the Sun [W/m2]
 * @returns [J/m2]
 * @source Duffie & Beckman eq. 1.10.3; from memory
 */
export function dailyExtraterrestrial_J_m2(sun: {
  latitude_rad: number;
  declination_rad: number;
  normal_W_m2: number;
}): number {
  const ws = sunsetHourAngle_rad(sun);
  return meanExtraterrestrial_W_m2(sun, -ws, ws) * (ws / Math.PI) * 86400;
}

/**
 * Mean irradiance above the air on a horizontal plane between two hour angles, both while the Sun is up:
 * G_on (cos L cos d (sin w2 - sin w1) + (w2 - w1) sin L sin d)/(w2 - w1); 0 for an empty span.
 *
 * @param sun latitude and declination [rad], irradiance above the air facing the Sun [W/m2]
 * @param from_rad hour angle at the start [rad]
 * @param to_rad hour angle at the end [rad]
 * @returns [W/m2]
 * @source Duffie & Beckman eq. 1.10.4 divided by its duration; from memory
 */
export function meanExtraterrestrial_W_m2(
  sun: { latitude_rad: number; declination_rad: number; normal_W_m2: number },
  from_rad: number,
  to_rad: number,
): number {
  const span = to_rad - from_rad;
  if (!(span > 0)) return 0;
  const level =
    (cosine(sun.latitude_rad) * cosine(sun.declination_rad) * (sine(to_rad) - sine(from_rad))) / span;
  return sun.normal_W_m2 * Math.max(0, level + sine(sun.latitude_rad) * sine(sun.declination_rad));
}
