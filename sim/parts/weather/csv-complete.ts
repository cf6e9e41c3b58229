/** Makes a whole year of weather out of the hourly measures a table held, saying what was filled in. */
import { cosine } from '../../numerics/alike.ts';
import type { HourlyWeather } from '../description.ts';
import { DAYS, HOURS, nameOfHour } from './calendar.ts';
import type { Measure } from './csv-head.ts';
import { fillGaps, LONGEST_BRIDGE } from './fill-gaps.ts';
import { dewPoint_C } from './generate-air.ts';
import type { ProblemList } from './problems.ts';
import { splitGlobal } from './split-global.ts';
import type { SunOfYear } from './sun-of-year.ts';
import type { WeatherSite } from './types.ts';

/** Measures as hourly means; NaN where an hour has no value. */
export type HourlyMeasures = Partial<Record<Measure, Float64Array>>;

/** Where a year is completed from. */
export interface Surround {
  site: WeatherSite;
  sun: SunOfYear;
  fallback: HourlyWeather | undefined;
}

/** Taken where a file has no such column and no other weather stands behind it. */
const PLAIN = { wind_m_s: 3, albedo: 0.2 };

/**
 * Bridges short gaps; hours without air or sun are taken whole from the fallback, so that they stay one
 * weather; other columns are filled for themselves. What cannot be filled is a problem.
 */
export function completeYear(
  measures: HourlyMeasures,
  around: Surround,
  problems: ProblemList,
  notes: string[],
): HourlyWeather {
  const { site, fallback } = around;
  const bridge = (measure: Measure) => bridged(measures, measure, fallback !== undefined, problems, notes);
  const air_C = bridge('air') ?? new Float64Array(HOURS);
  const global = nightIsDark(bridge('sun') ?? new Float64Array(HOURS));
  const lacking = air_C.map((t, h) => (Number.isNaN(t) || Number.isNaN(global[h]) ? 1 : 0));
  if (fallback) takeWhole(lacking, { air_C, global }, fallback, notes);
  const dew = bridge('dew point') ?? dewFromHumidity(bridge('humidity'), air_C);
  const dew_point_C = dew
    ? filled(dew, fallback?.dew_point_C, lacking)
    : (fallback?.dew_point_C.slice() ?? dewFromNights(air_C, notes));
  const weather: HourlyWeather = {
    place: site.place,
    latitude_rad: site.latitude_rad,
    longitude_rad: site.longitude_rad,
    altitude_m: site.altitude_m,
    time_zone_s: site.time_zone_s,
    global_horizontal_W_m2: global,
    ...directAndDiffuse(measures, global, lacking, around, notes),
    air_C,
    dew_point_C: dew_point_C.map((t, h) => Math.min(t, air_C[h])),
    wind_m_s: plainColumn('wind', 'wind_m_s', bridge('wind'), lacking, fallback, notes),
    albedo: plainColumn('albedo', 'albedo', bridge('albedo'), lacking, fallback, notes),
  };
  if (!dew && fallback) notes.push('no column of dew point or humidity: taken from the other weather');
  return weather;
}

/** A measure with its short gaps closed, or undefined when the file has none. Long gaps stay NaN. */
function bridged(
  measures: HourlyMeasures,
  measure: Measure,
  backed: boolean,
  problems: ProblemList,
  notes: string[],
): Float64Array | undefined {
  const series = measures[measure];
  if (!series) return undefined;
  const { filled: hours, gaps } = fillGaps(series);
  if (hours > 0) notes.push(`${measure}: ${hours} missing hours bridged by straight lines`);
  if (!backed) {
    for (const gap of gaps) {
      problems.add(
        measure,
        `no gap over ${LONGEST_BRIDGE} hours`,
        `${gap.hours} hours from ${nameOfHour(gap.from)}`,
        'give a whole year, or monthly means beside the file to fill it with generated weather',
      );
    }
  }
  return series;
}

/** Instruments read a little below zero at night. */
function nightIsDark(series: Float64Array): Float64Array {
  return series.map((x) => Math.max(0, x));
}

function takeWhole(
  lacking: Float64Array,
  series: { air_C: Float64Array; global: Float64Array },
  fallback: HourlyWeather,
  notes: string[],
): void {
  const hours = lacking.reduce((sum, x) => sum + x, 0);
  if (hours === 0) return;
  for (let h = 0; h < HOURS; h++) {
    if (!lacking[h]) continue;
    series.air_C[h] = fallback.air_C[h];
    series.global[h] = fallback.global_horizontal_W_m2[h];
  }
  notes.push(
    `${hours} hours without air or sun, the first ${nameOfHour(lacking.indexOf(1))}, are taken from the other weather`,
  );
}

/** Values of a column, those of the fallback where they or the whole hour are lacking. */
function filled(
  series: Float64Array,
  fallback: Float64Array | undefined,
  lacking: Float64Array,
): Float64Array {
  if (!fallback) return series;
  return series.map((x, h) => (lacking[h] || Number.isNaN(x) ? fallback[h] : x));
}

function dewFromHumidity(humidity: Float64Array | undefined, air_C: Float64Array): Float64Array | undefined {
  return humidity?.map((share, h) =>
    Number.isNaN(share) ? share : dewPoint_C(air_C[h], Math.min(1, share)),
  );
}

/** Air often cools at night until it is nearly saturated: the day's lowest temperature is its dew point. */
function dewFromNights(air_C: Float64Array, notes: string[]): Float64Array {
  const dew = new Float64Array(HOURS);
  for (let day = 0; day < DAYS; day++) {
    const hours = air_C.subarray(24 * day, 24 * day + 24);
    dew.fill(Math.min(...hours), 24 * day, 24 * day + 24);
  }
  notes.push(
    'no column of dew point or humidity: each day’s lowest air temperature is taken as its dew point',
  );
  return dew;
}

function plainColumn(
  measure: Measure,
  key: keyof typeof PLAIN,
  series: Float64Array | undefined,
  lacking: Float64Array,
  fallback: HourlyWeather | undefined,
  notes: string[],
): Float64Array {
  if (series) return filled(series, fallback?.[key], lacking);
  const from = fallback
    ? 'taken from the other weather'
    : `taken as ${PLAIN[key]}${key === 'albedo' ? '' : ' m/s'}`;
  notes.push(`no column of ${measure}: ${from}`);
  return fallback ? fallback[key].slice() : new Float64Array(HOURS).fill(PLAIN[key]);
}

/** Direct and diffuse as measured where they are, else out of the global. */
function directAndDiffuse(
  measures: HourlyMeasures,
  global: Float64Array,
  lacking: Float64Array,
  { site, sun, fallback }: Surround,
  notes: string[],
): Pick<HourlyWeather, 'direct_normal_W_m2' | 'diffuse_horizontal_W_m2'> {
  const direct = new Float64Array(HOURS);
  const diffuse = new Float64Array(HOURS);
  let split = 0;
  for (let h = 0; h < HOURS; h++) {
    const measured = measures.direct?.[h] ?? Number.NaN;
    const scattered = measures.diffuse?.[h] ?? Number.NaN;
    if (lacking[h] && fallback) {
      direct[h] = fallback.direct_normal_W_m2[h];
      diffuse[h] = fallback.diffuse_horizontal_W_m2[h];
    } else if (!Number.isNaN(measured)) {
      direct[h] = sun.up_share[h] > 0 ? Math.max(0, measured) : 0;
      const rest = Math.max(0, global[h] - direct[h] * Math.max(0, cosine(sun.zenith_rad[h])));
      diffuse[h] = Number.isNaN(scattered) ? rest : Math.max(0, scattered);
    } else {
      const diffuse_W_m2 = Number.isNaN(scattered) ? undefined : Math.max(0, scattered);
      const parts = splitGlobal(sun, h, { global_W_m2: global[h], diffuse_W_m2 }, site.altitude_m);
      direct[h] = parts.direct_normal_W_m2;
      diffuse[h] = parts.diffuse_horizontal_W_m2;
      if (diffuse_W_m2 === undefined && global[h] > 0) split++;
    }
  }
  if (split > 0) notes.push(`${split} hours: direct and diffuse sun estimated from the global (Erbs)`);
  return { direct_normal_W_m2: direct, diffuse_horizontal_W_m2: diffuse };
}
