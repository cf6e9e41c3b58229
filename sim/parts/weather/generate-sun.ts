/** A seeded year of sun from monthly clearness: bright and dull days in the proportions and runs of nature. */
import { power } from '../../numerics/alike.ts';
import type { Uniform } from '../../numerics/random.ts';
import { normalDeviates } from '../../numerics/random.ts';
import { findRoot } from '../../numerics/root.ts';
import { clearnessOverDay } from '../../physics/sky.ts';
import { DAYS, MONTH_START } from './calendar.ts';
import type { SunOfYear } from './sun-of-year.ts';

/** Least clearness of a day in the distribution of Bendt. */
const K_MIN = 0.05;
/** Correlation of a day's clearness (as a normal deviate) with the day before's; from memory, near 0.3. */
const DAY_TO_DAY = 0.29;

/** A month's distribution of daily clearness. */
export interface ClearnessRange {
  k_max: number;
  gamma: number;
}

/**
 * Brightest day and shape of a month's distribution of daily clearness, from the month's mean.
 *
 * Kmax = 0.6313 + 0.267 Kt - 11.9 (Kt - 0.75)^8, xi = (Kmax - Kmin)/(Kmax - Kt),
 * gamma = -1.498 + (1.184 xi - 27.182 exp(-1.5 xi))/(Kmax - Kmin).
 *
 * @param kt mean clearness of the month [-], 0.1..0.8
 * @source Bendt, Collares-Pereira & Rabl 1981; gamma and Kmax after Herzog 1985 and Hollands & Huget 1983
 *   (Duffie & Beckman section 2.9); from memory
 */
export function clearnessRange(kt: number): ClearnessRange {
  const k_max = 0.6313 + 0.267 * kt - 11.9 * power(kt - 0.75, 8);
  const xi = (k_max - K_MIN) / (k_max - kt);
  return { k_max, gamma: -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (k_max - K_MIN) };
}

/**
 * Clearness below which a share of a month's days fall: the inverse of
 * F = (exp(gamma Kmin) - exp(gamma K))/(exp(gamma Kmin) - exp(gamma Kmax)).
 *
 * @param share F [-], 0..1
 * @source as `clearnessRange`
 */
export function clearnessQuantile(range: ClearnessRange, share: number): number {
  const width = range.k_max - K_MIN;
  return K_MIN + Math.log(1 + share * Math.expm1(range.gamma * width)) / range.gamma;
}

/**
 * A year of a first-order autoregressive series, reduced to each day's rank within its month: only the order
 * of the days is left to chance, so that every month has its published distribution and its runs.
 *
 * @param correlation of neighbouring days as normal deviates
 * @param normal next normal deviate
 * @returns for each day its quantile, (rank + 1/2)/(days of the month)
 */
export function runsOfDays(correlation: number, normal: () => number): Float64Array {
  const fresh = Math.sqrt(1 - correlation * correlation);
  let value = normal();
  const series = Array.from({ length: DAYS }, (_, day) => {
    value = correlation * value + fresh * normal();
    return { day, value };
  });
  const quantile = new Float64Array(DAYS);
  for (let month = 0; month < 12; month++) {
    const days = series.slice(MONTH_START[month], MONTH_START[month + 1]);
    days.sort((a, b) => a.value - b.value);
    days.forEach(({ day }, rank) => {
      quantile[day] = (rank + 0.5) / days.length;
    });
  }
  return quantile;
}

/**
 * Clearness of each of 365 days. Within a month the days follow Bendt's distribution in a correlated order;
 * a power of the scaled clearness then brings the month's sum of sun to the asked mean exactly, inside the
 * distribution's bounds.
 *
 * @param kt mean clearness by month
 * @param above_J_m2 daily sums above the air
 */
export function dailyClearness(
  kt: readonly number[],
  above_J_m2: Float64Array,
  uniform: Uniform,
): Float64Array {
  const quantile = runsOfDays(DAY_TO_DAY, normalDeviates(uniform));
  const daily = new Float64Array(DAYS);
  for (let month = 0; month < 12; month++) {
    const [first, end] = [MONTH_START[month], MONTH_START[month + 1]];
    const range = clearnessRange(kt[month]);
    const drawn = quantile.slice(first, end).map((share) => clearnessQuantile(range, share));
    const above = above_J_m2.subarray(first, end);
    daily.set(matchMean(drawn, above, { mean: kt[month], k_max: range.k_max }), first);
  }
  return daily;
}

function matchMean(
  drawn: Float64Array,
  above: Float64Array,
  wanted: { mean: number; k_max: number },
): Float64Array {
  const total = above.reduce((sum, x) => sum + x, 0);
  if (!(total > 0)) return drawn;
  const width = wanted.k_max - K_MIN;
  const bent = (log_power: number) => {
    const bend = Math.exp(log_power);
    return drawn.map((k) => K_MIN + width * power((k - K_MIN) / width, bend));
  };
  const mean = (values: Float64Array) => values.reduce((sum, k, i) => sum + k * above[i], 0) / total;
  const log_power = findRoot((x) => mean(bent(x)) - wanted.mean, {
    low: -4,
    high: 4,
    tolerance: 1e-9,
    name: 'shape of a month of generated days',
    unit: '(logarithm of a power)',
  });
  const fitted = bent(log_power);
  const rest = wanted.mean / mean(fitted);
  return fitted.map((k) => k * rest);
}

/**
 * Hourly global sun on the horizontal from daily clearness: the hours' sums above the air, times the day's
 * clearness, bent over the day after Collares-Pereira & Rabl; each day's sum is kept exactly.
 *
 * @returns hour means [W/m2]
 */
export function hourlyGlobal_W_m2(sun: SunOfYear, daily: Float64Array): Float64Array {
  const global = new Float64Array(sun.up_share.length);
  for (let day = 0; day < DAYS; day++) {
    let plain = 0;
    let shaped = 0;
    for (let h = 24 * day; h < 24 * day + 24; h++) {
      global[h] = sun.horizontal_W_m2[h] * clearnessOverDay(sun.hour_angle_rad[h], sun.sunset_rad[h]);
      plain += sun.horizontal_W_m2[h];
      shaped += global[h];
    }
    const scale = shaped > 0 ? (daily[day] * plain) / shaped : 0;
    for (let h = 24 * day; h < 24 * day + 24; h++) global[h] *= scale;
  }
  return global;
}
