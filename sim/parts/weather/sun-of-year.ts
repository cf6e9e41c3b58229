/** The Sun over the weather year at one site, hour by hour, as every irradiance in this folder needs it. */
import { cosine, sine } from '../../numerics/alike.ts';
import {
  daysSinceJ2000,
  directionFromEquator,
  SOLAR_CONSTANT,
  sunEphemeris,
  sunsetHourAngle_rad,
  wrap,
} from '../../physics/sun.ts';
import type { PlantDescription } from '../description.ts';
import { DAYS, HOURS } from './calendar.ts';

/**
 * The Sun of a year without a name is that of 2002: a common year in the middle of the leap cycle, so that
 * its declinations are nobody's worst (within 0.2 degree of any year's).
 */
export const NOMINAL_START_DAYS = daysSinceJ2000({ year: 2002, month: 1, day: 1 });

/** Entry h is about hour h..h+1; directions are those at the middle of the hour's sun-up part. */
export interface SunOfYear {
  /** Share of the hour the Sun's centre is above the level horizon. */
  up_share: Float64Array;
  zenith_rad: Float64Array;
  azimuth_rad: Float64Array;
  hour_angle_rad: Float64Array;
  sunset_rad: Float64Array;
  /** Above the air, facing the Sun. */
  normal_W_m2: Float64Array;
  /** Above the air on the horizontal, exact mean over the whole hour. */
  horizontal_W_m2: Float64Array;
}

/** Width of an hour in hour angle. */
const HOUR_RAD = Math.PI / 12;

/**
 * The Sun's course. The ephemeris is computed once a day and interpolated linearly: its second difference
 * over a day costs at most 0.001 degree; parallax, 0.002 degree, is left out. The result is shared by all who
 * ask for the same site: nobody may write to it.
 */
export function sunOfYear(site: PlantDescription['site']): SunOfYear {
  const { latitude_rad, longitude_rad, time_zone_s } = site;
  const key = `${latitude_rad} ${longitude_rad} ${time_zone_s}`;
  if (last?.key !== key) last = { key, sun: courseOver(site) };
  return last.sun;
}

/** The last site's course: its weather, its collectors and every variant of its plant ask for the same. */
let last: { key: string; sun: SunOfYear } | null = null;

function courseOver(site: PlantDescription['site']): SunOfYear {
  const zone_days = site.time_zone_s / 86400;
  const declination = new Float64Array(DAYS + 2);
  const offset = new Float64Array(DAYS + 2);
  const distance = new Float64Array(DAYS + 2);
  for (let d = 0; d < DAYS + 2; d++) {
    // Clock noon of the day before the year's first day is entry 0.
    const sun = sunEphemeris(NOMINAL_START_DAYS + d - 0.5 - zone_days);
    declination[d] = sun.declination_rad;
    offset[d] = wrap(sun.greenwich_hour_angle_rad + site.longitude_rad);
    distance[d] = sun.distance_au;
  }
  const year = emptyYear();
  for (let h = 0; h < HOURS; h++) {
    const sinceNoon = (h + 0.5 + 12) / 24;
    const d = Math.floor(sinceNoon);
    const u = sinceNoon - d;
    fillHour(year, h, site.latitude_rad, {
      declination_rad: declination[d] + u * (declination[d + 1] - declination[d]),
      middle_rad: offset[d] + u * (2 * Math.PI + wrap(offset[d + 1] - offset[d])),
      normal_W_m2: SOLAR_CONSTANT / (distance[d] + u * (distance[d + 1] - distance[d])) ** 2,
    });
  }
  return year;
}

function emptyYear(): SunOfYear {
  return {
    up_share: new Float64Array(HOURS),
    zenith_rad: new Float64Array(HOURS).fill(Math.PI),
    azimuth_rad: new Float64Array(HOURS),
    hour_angle_rad: new Float64Array(HOURS),
    sunset_rad: new Float64Array(HOURS),
    normal_W_m2: new Float64Array(HOURS),
    horizontal_W_m2: new Float64Array(HOURS),
  };
}

function fillHour(
  year: SunOfYear,
  h: number,
  latitude_rad: number,
  sun: { declination_rad: number; middle_rad: number; normal_W_m2: number },
): void {
  const at = { latitude_rad, declination_rad: sun.declination_rad };
  const sunset = sunsetHourAngle_rad(at);
  year.sunset_rad[h] = sunset;
  year.normal_W_m2[h] = sun.normal_W_m2;
  const { up, middle_rad } = sunUpPart(wrap(sun.middle_rad), sunset);
  year.hour_angle_rad[h] = middle_rad;
  if (!(up > 0)) return;
  const direction = directionFromEquator({ ...at, hour_angle_rad: middle_rad });
  year.up_share[h] = up / HOUR_RAD;
  year.zenith_rad[h] = direction.zenith_rad;
  year.azimuth_rad[h] = direction.azimuth_rad;
  const spread = sine(up / 2) / (up / 2);
  const mean =
    sine(latitude_rad) * sine(sun.declination_rad) +
    cosine(latitude_rad) * cosine(sun.declination_rad) * cosine(middle_rad) * spread;
  year.horizontal_W_m2[h] = sun.normal_W_m2 * Math.max(0, mean) * year.up_share[h];
}

/**
 * Width and middle of the part of an hour in which the Sun is up [rad]. Near midnight of a polar summer an
 * hour may hold a sunset and a sunrise; the larger part then stands for both.
 */
function sunUpPart(middle: number, sunset: number): { up: number; middle_rad: number } {
  const wholly = Math.abs(middle) + HOUR_RAD / 2 <= sunset;
  if (wholly || sunset >= Math.PI) return { up: HOUR_RAD, middle_rad: middle };
  let best = { up: 0, middle_rad: middle };
  for (const noon of [0, 2 * Math.PI, -2 * Math.PI]) {
    const from = Math.max(middle - HOUR_RAD / 2, noon - sunset);
    const to = Math.min(middle + HOUR_RAD / 2, noon + sunset);
    if (to - from > best.up) best = { up: to - from, middle_rad: wrap((from + to) / 2) };
  }
  return best;
}
