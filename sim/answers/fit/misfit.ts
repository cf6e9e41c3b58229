/** What is left between readings and run: how large, how much of it hangs together, which probe wanders. */
import type { Reading } from './read-log.ts';

/** Doubt of one reading of a cheap probe before a log has shown its own [K]. */
export const READING_DOUBT_K = 0.25;

/** Root of the mean square. */
export function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / Math.max(1, values.length));
}

/** Neighbours alike this much count as no more alike: a log of any length tells something. */
const MOST_ALIKE = 0.9;

/**
 * How many times the doubt of a reading grows because neighbouring errors are alike: sqrt((1 + c) / (1 - c))
 * for an error of first order with correlation c between neighbours, pooled over probes; 1 for fewer than ten
 * readings.
 * @source the variance of a mean of such a series (textbook, from memory)
 */
export function alikeness(errors_K: readonly number[], readings: readonly Reading[]): number {
  let [products, squares] = [0, 0];
  const before = new Map<number, number>();
  readings.forEach(({ probe }, i) => {
    const last = before.get(probe);
    if (last !== undefined) products += last * errors_K[i];
    squares += errors_K[i] ** 2;
    before.set(probe, errors_K[i]);
  });
  if (errors_K.length < 10 || squares === 0) return 1;
  const c = Math.min(MOST_ALIKE, Math.max(0, products / squares));
  return Math.sqrt((1 + c) / (1 - c));
}

/** A drift is told of beyond this [K] over the log, and three times its own doubt. */
const LEAST_DRIFT_K = 0.5;

/** Wandering of a probe against run and offset [K a day], or null where there is none worth telling. */
export function driftOf(errors_K: readonly number[], time_s: readonly number[]): number | null {
  const n = errors_K.length;
  if (n < 6) return null;
  const [t0, e0] = [time_s, errors_K].map((values) => values.reduce((sum, each) => sum + each, 0) / n);
  const tt = time_s.reduce((sum, t) => sum + (t - t0) ** 2, 0);
  if (tt === 0) return null;
  const slope = time_s.reduce((sum, t, i) => sum + (t - t0) * (errors_K[i] - e0), 0) / tt;
  const left = rms(errors_K.map((e, i) => e - e0 - slope * (time_s[i] - t0)));
  const over = Math.abs(slope) * (time_s[n - 1] - time_s[0]);
  const doubt = (left / Math.sqrt(tt)) * (time_s[n - 1] - time_s[0]);
  return over > LEAST_DRIFT_K && over > 3 * doubt ? slope * 86_400 : null;
}
