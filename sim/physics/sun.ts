/**
 * Where the Sun stands and how strong it is above the air. Angles in radians, azimuth from north clockwise,
 * hour angle from noon, afternoon positive. Zenith angles are without refraction unless a name says apparent.
 */
import { cosine, power, sine } from '../numerics/alike.ts';
import { DISTANCE, LATITUDE, LONGITUDE, seriesAt } from './sun-series.ts';

const DEGREE = Math.PI / 180;
const TURN = 2 * Math.PI;

/**
 * Solar constant [W/m2]: Kopp & Lean 2011 give 1361; 1367 is the older value of the World Meteorological
 * Organization, with which the published sky models were fitted, 1366.1 that of ASTM E490 (from memory).
 */
export const SOLAR_CONSTANT = 1361;

/** A direction in the sky. */
export interface SkyDirection {
  zenith_rad: number;
  azimuth_rad: number;
}

/** A plane's tilt from the horizontal and the azimuth its face looks to. */
export interface Plane {
  tilt_rad: number;
  azimuth_rad: number;
}

/** The Sun seen from the Earth's centre. */
export interface Ephemeris {
  declination_rad: number;
  /** Hour angle at longitude 0. */
  greenwich_hour_angle_rad: number;
  /** Distance in astronomical units. */
  distance_au: number;
}

/**
 * Days of universal time since 2000-01-01 12:00 of a date in the Gregorian calendar.
 *
 * JD = floor(365.25 (y + 4716)) + floor(30.6001 (m + 1)) + d + 2 - c + floor(c/4) - 1524.5, January and
 * February counted as months 13 and 14 of the year before, c = floor(y/100).
 *
 * @param date year, month 1..12, day 1..31 (a fraction counts as time of day), 1583 or later
 * @returns days [d]
 * @source Meeus, "Astronomical Algorithms", ch. 7; from memory; tested on published Julian dates
 */
export function daysSinceJ2000(date: { year: number; month: number; day: number }): number {
  const early = date.month <= 2;
  const y = early ? date.year - 1 : date.year;
  const m = early ? date.month + 12 : date.month;
  const c = Math.floor(y / 100);
  const jd =
    Math.floor(365.25 * (y + 4716)) +
    Math.floor(30.6001 * (m + 1)) +
    date.day +
    2 -
    c +
    Math.floor(c / 4) -
    1524.5;
  return jd - 2451545;
}

/**
 * Declination, hour angle and distance of the Sun, apparent (nutation and aberration in), geocentric.
 * Within 0.0002 degree from 1950 to 2050 by the size of the terms left out.
 *
 * @param days_ut days of universal time since J2000.0, from `daysSinceJ2000`
 * @param delta_t_s terrestrial less universal time [s]: 64 in 2000, 69 in 2020
 * @source Reda & Andreas 2008, NREL/TP-560-34302, eq. 9-37 with the series shortened and the four largest
 *   nutation terms of Meeus ch. 22; from memory; its worked example is met to 0.0001 degree
 */
export function sunEphemeris(days_ut: number, delta_t_s = 67): Ephemeris {
  const century = (days_ut + delta_t_s / 86400) / 36525;
  const millennium = century / 10;
  const distance_au = seriesAt(DISTANCE, millennium);
  const latitude = -seriesAt(LATITUDE, millennium);

  const node = (125.04452 - 1934.136261 * century) * DEGREE;
  const sunMean = (280.4665 + 36000.7698 * century) * DEGREE;
  const moonMean = (218.3165 + 481267.8813 * century) * DEGREE;
  const nutation =
    -17.2 * sine(node) - 1.32 * sine(2 * sunMean) - 0.23 * sine(2 * moonMean) + 0.21 * sine(2 * node);
  const tiltShift =
    9.2 * cosine(node) + 0.57 * cosine(2 * sunMean) + 0.1 * cosine(2 * moonMean) - 0.09 * cosine(2 * node);
  const obliquity = (23.4392911 - 0.0130042 * century + tiltShift / 3600) * DEGREE;
  const longitude =
    seriesAt(LONGITUDE, millennium) + Math.PI + ((nutation - 20.4898 / distance_au) / 3600) * DEGREE;

  const sinObliquity = sine(obliquity);
  const cosObliquity = cosine(obliquity);
  const sinLongitude = sine(longitude);
  const ascension = Math.atan2(
    sinLongitude * cosObliquity - Math.tan(latitude) * sinObliquity,
    cosine(longitude),
  );
  const declination_rad = Math.asin(
    sine(latitude) * cosObliquity + cosine(latitude) * sinObliquity * sinLongitude,
  );
  const sidereal =
    (280.46061837 + 360.98564736629 * days_ut + 0.000387933 * century * century) * DEGREE +
    (nutation / 3600) * DEGREE * cosObliquity;
  return { declination_rad, greenwich_hour_angle_rad: wrap(sidereal - ascension), distance_au };
}

/** Angle [rad] brought into -pi up to pi; by definition. */
export function wrap(angle_rad: number): number {
  return angle_rad - TURN * Math.floor((angle_rad + Math.PI) / TURN);
}

/**
 * Zenith angle and azimuth of a body from its declination and hour angle.
 *
 * cos z = sin L sin d + cos L cos d cos w; azimuth from south = atan2(sin w, cos w sin L - tan d cos L).
 *
 * @param at latitude (north positive), declination and hour angle [rad]
 * @source Duffie & Beckman, eq. 1.6.5 and spherical trigonometry (Meeus ch. 13); from memory
 */
export function directionFromEquator(at: {
  latitude_rad: number;
  declination_rad: number;
  hour_angle_rad: number;
}): SkyDirection {
  const sinL = sine(at.latitude_rad);
  const cosL = cosine(at.latitude_rad);
  const cosW = cosine(at.hour_angle_rad);
  const cosZenith = sinL * sine(at.declination_rad) + cosL * cosine(at.declination_rad) * cosW;
  const fromSouth = Math.atan2(sine(at.hour_angle_rad), cosW * sinL - Math.tan(at.declination_rad) * cosL);
  return {
    zenith_rad: Math.acos(Math.min(1, Math.max(-1, cosZenith))),
    azimuth_rad: fromSouth + Math.PI,
  };
}

/**
 * Direction of the Sun from a place, parallax in, refraction not.
 *
 * @param when days of universal time since J2000.0
 * @param place latitude and longitude, north and east positive [rad]
 * @param delta_t_s terrestrial less universal time [s]
 * @source as `sunEphemeris`; parallax 8.794 arc seconds times sin z over the distance (flattening left out,
 *   below 0.00001 degree)
 */
export function sunPosition(
  when_days_ut: number,
  place: { latitude_rad: number; longitude_rad: number },
  delta_t_s = 67,
): SkyDirection & { distance_au: number } {
  const sun = sunEphemeris(when_days_ut, delta_t_s);
  const seen = directionFromEquator({
    latitude_rad: place.latitude_rad,
    declination_rad: sun.declination_rad,
    hour_angle_rad: sun.greenwich_hour_angle_rad + place.longitude_rad,
  });
  const parallax = ((8.794 / 3600) * DEGREE * sine(seen.zenith_rad)) / sun.distance_au;
  return {
    zenith_rad: seen.zenith_rad + parallax,
    azimuth_rad: seen.azimuth_rad,
    distance_au: sun.distance_au,
  };
}

/**
 * How much the air lifts the Sun: (p/1010 mbar)(283/(273 + T)) 1.02/(60 tan(e + 10.3/(e + 5.11))) degrees,
 * e the true elevation in degrees; 0 below -0.83 degree, where the Sun has set.
 *
 * @param elevation_rad true elevation [rad]
 * @param air pressure [Pa] and temperature [C]
 * @returns lift [rad]
 * @source Saemundsson 1986 as in Meeus ch. 16 and Reda & Andreas 2008 eq. 42; from memory, checked by the
 *   latter's worked example
 */
export function refraction_rad(elevation_rad: number, air: { pressure_Pa: number; air_C: number }): number {
  const e = elevation_rad / DEGREE;
  if (e < -0.83337) return 0;
  const lift = (1.02 / (60 * Math.tan((e + 10.3 / (e + 5.11)) * DEGREE))) * DEGREE;
  return (lift * air.pressure_Pa * 283) / (101000 * (273 + air.air_C));
}

/**
 * Cosine of the angle between the Sun and a plane's normal; negative when the Sun is behind it.
 *
 * cos th = cos z cos B + sin z sin B cos(azimuth of Sun - azimuth of plane)
 *
 * @source Duffie & Beckman, eq. 1.6.3; from memory; the same angle as the longer form in hour angle and
 *   declination (eq. 1.6.2), which the checks use
 */
export function incidenceCosine(sun: SkyDirection, plane: Plane): number {
  return (
    cosine(sun.zenith_rad) * cosine(plane.tilt_rad) +
    sine(sun.zenith_rad) * sine(plane.tilt_rad) * cosine(sun.azimuth_rad - plane.azimuth_rad)
  );
}

/**
 * Hour angle at which the Sun crosses an elevation: cos w = (sin e - sin L sin d)/(cos L cos d), held to
 * 0 (never above) and pi (never below).
 *
 * @param at latitude and declination [rad]
 * @param elevation_rad elevation crossed [rad]: 0 for the geometric horizon, -0.0145 (-50') for the upper
 *   limb on a sea horizon with mean refraction
 * @returns 0..pi [rad]
 * @source Duffie & Beckman eq. 1.6.10, widened to any elevation; from memory
 */
export function sunsetHourAngle_rad(
  at: { latitude_rad: number; declination_rad: number },
  elevation_rad = 0,
): number {
  const top = sine(elevation_rad) - sine(at.latitude_rad) * sine(at.declination_rad);
  const across = top / (cosine(at.latitude_rad) * cosine(at.declination_rad));
  return Math.acos(Math.min(1, Math.max(-1, across)));
}

/**
 * Relative optical air mass: 1/(cos z + 0.50572 (96.07995 - z)^-1.6364), z in degrees; held at its value at
 * the horizon (about 38) below it.
 *
 * @param apparent_zenith_rad zenith angle with refraction [rad], 0..pi/2
 * @source Kasten & Young 1989, from memory; checked against a library
 */
export function airMass(apparent_zenith_rad: number): number {
  const z = Math.min(90, apparent_zenith_rad / DEGREE);
  return 1 / (cosine(z * DEGREE) + 0.50572 * power(96.07995 - z, -1.6364));
}
