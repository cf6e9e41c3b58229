/** A seeded year of air temperature, dew point and wind from monthly means. */
import { cosine } from '../../numerics/alike.ts';
import { curveAt, meanPreserving } from '../../numerics/interpolation.ts';
import { normalDeviates, type Uniform } from '../../numerics/random.ts';
import { waterBoilingPoint, waterSaturationPressure } from '../../physics/water.ts';
import { DAYS, HOURS, MONTH_START, monthOfDay } from './calendar.ts';
import { runsOfDays } from './generate-sun.ts';
import type { MonthlyWeather } from './types.ts';

/** Correlation of a day's mean temperature with the day before's: 0.7-0.8 in most climates; from memory. */
const AIR_MEMORY = 0.75;
/** The same for wind; judgement. */
const WIND_MEMORY = 0.4;

/**
 * Air temperature through a day as a share of the day's swing about its mean: highest at half past three in
 * the afternoon, lowest about five in the morning.
 * 0.4632 cos(x - 3.805) + 0.0984 cos(2x - 0.360) + 0.0168 cos(3x - 0.822) + 0.0138 cos(4x - 3.513),
 * x = 2 pi (t - 1)/24.
 *
 * @param time_h hours after midnight [h]
 * @returns share of the swing [-]; mean 0 over 24 even steps
 * @source Erbs, Klein & Beckman 1983; physics notes, from memory
 */
export function hourlyShape(time_h: number): number {
  const x = (2 * Math.PI * (time_h - 1)) / 24;
  return (
    0.4632 * cosine(x - 3.805) +
    0.0984 * cosine(2 * x - 0.36) +
    0.0168 * cosine(3 * x - 0.822) +
    0.0138 * cosine(4 * x - 3.513)
  );
}

/** Width of the range of `hourlyShape` over the 24 half hours it is read at, so that a swing is a swing. */
const SHAPE_RANGE = (() => {
  const values = Array.from({ length: 24 }, (_, h) => hourlyShape(h + 0.5));
  return Math.max(...values) - Math.min(...values);
})();

/**
 * Swing of a mean day from the month's clearness: 25.8 Kt - 5.21 K, not below 2 K.
 *
 * @source Erbs, Klein & Beckman 1983; physics notes, from memory
 */
export function swingFromClearness_K(kt: number): number {
  return Math.max(2, 25.8 * kt - 5.21);
}

/** Monthly means as a smooth value for each day, every month's mean kept exactly. */
export function smoothDays(monthly: readonly number[]): Float64Array {
  const curve = meanPreserving(Float64Array.from(monthly), false);
  const days = Float64Array.from({ length: DAYS }, (_, day) => {
    const month = monthOfDay(day);
    const length = MONTH_START[month + 1] - MONTH_START[month];
    return curveAt(curve, month, (day - MONTH_START[month] + 0.5) / length);
  });
  return holdMonthlyMeans(days, 1, monthly);
}

/** Shifts each month of a series with `perDay` values a day to the mean asked. */
function holdMonthlyMeans(series: Float64Array, perDay: number, monthly: readonly number[]): Float64Array {
  for (let month = 0; month < 12; month++) {
    const part = series.subarray(MONTH_START[month] * perDay, MONTH_START[month + 1] * perDay);
    const shift = monthly[month] - part.reduce((sum, x) => sum + x, 0) / part.length;
    for (let i = 0; i < part.length; i++) part[i] += shift;
  }
  return series;
}

/**
 * Daily means: the season, plus a first-order autoregressive deviation whose own monthly means are taken out
 * smoothly, so that no step shows where the months meet.
 */
export function dailyAir_C(monthly: MonthlyWeather, uniform: Uniform): Float64Array {
  const normal = normalDeviates(uniform);
  const spread = smoothDays(monthly.day_to_day_K);
  const fresh = Math.sqrt(1 - AIR_MEMORY * AIR_MEMORY);
  let deviate = normal();
  const deviation = Float64Array.from({ length: DAYS }, (_, day) => {
    deviate = AIR_MEMORY * deviate + fresh * normal();
    return deviate * Math.max(0, spread[day]);
  });
  const drift = smoothDays(monthlyMeans(deviation));
  const season = smoothDays(monthly.air_C);
  return season.map((t, day) => t + deviation[day] - drift[day]);
}

function monthlyMeans(days: Float64Array): number[] {
  return Array.from({ length: 12 }, (_, month) => {
    const part = days.subarray(MONTH_START[month], MONTH_START[month + 1]);
    return part.reduce((sum, x) => sum + x, 0) / part.length;
  });
}

/** A daily series as hours that run on smoothly from day to day. */
function smoothHours(days: Float64Array): Float64Array {
  const curve = meanPreserving(days, false);
  return Float64Array.from({ length: HOURS }, (_, h) =>
    curveAt(curve, Math.floor(h / 24), ((h % 24) + 0.5) / 24),
  );
}

/**
 * Hourly air temperature: the daily means joined smoothly, plus the hourly shape times the day's swing.
 *
 * @param swing_K swing of each day
 * @param monthly_C monthly means, kept exactly
 */
export function hourlyAir_C(
  daily_C: Float64Array,
  swing_K: Float64Array,
  monthly_C: readonly number[],
): Float64Array {
  const air = smoothHours(daily_C);
  for (let h = 0; h < HOURS; h++) {
    air[h] += (swing_K[Math.floor(h / 24)] * hourlyShape((h % 24) + 0.5)) / SHAPE_RANGE;
  }
  return holdMonthlyMeans(air, 24, monthly_C);
}

/**
 * Swing of each day: the month's mean swing, wider on clear days and narrower on dull ones in the proportion
 * the formula of `swingFromClearness_K` gives; the month's mean swing is kept.
 */
export function dailySwing_K(swing_K: readonly number[], clearness: Float64Array): Float64Array {
  const raw = clearness.map(swingFromClearness_K);
  const mean = monthlyMeans(raw);
  return raw.map((x, day) => (swing_K[monthOfDay(day)] * x) / mean[monthOfDay(day)]);
}

/**
 * Temperature at which air would be saturated, over liquid water as hygrometers report it.
 *
 * @param air_C air temperature [C]
 * @param relative_humidity share [-], 0..1; held to 0.01 and above
 * @returns [C], not above the air temperature
 * @source definition: saturation pressure at the dew point = vapour pressure
 */
export function dewPoint_C(air_C: number, relative_humidity: number): number {
  const vapour_Pa = Math.max(0.01, relative_humidity) * waterSaturationPressure(air_C);
  return Math.min(air_C, waterBoilingPoint(vapour_Pa));
}

/** Hourly dew point: the day's vapour stays through the day, and saturates the air on cold nights. */
export function hourlyDewPoint_C(
  daily_C: Float64Array,
  air_C: Float64Array,
  relative_humidity: readonly number[],
): Float64Array {
  const dew = smoothHours(daily_C.map((t, day) => dewPoint_C(t, relative_humidity[monthOfDay(day)])));
  return dew.map((t, h) => Math.min(t, air_C[h]));
}

/**
 * Hourly wind: days spread as Rayleigh's distribution about the month's mean, stronger in the afternoon by a
 * quarter; the month's mean is kept exactly. Judgement: wind touches the store little.
 */
export function hourlyWind_m_s(monthly_m_s: readonly number[], uniform: Uniform): Float64Array {
  const days = runsOfDays(WIND_MEMORY, normalDeviates(uniform)).map((share) =>
    Math.sqrt(-Math.log(1 - share)),
  );
  const mean = monthlyMeans(days);
  return Float64Array.from({ length: HOURS }, (_, h) => {
    const day = Math.floor(h / 24);
    const month = monthOfDay(day);
    const afternoon = 1 + 0.25 * cosine((2 * Math.PI * ((h % 24) + 0.5 - 14)) / 24);
    return (monthly_m_s[month] * afternoon * days[day]) / mean[month];
  });
}
