/**
 * A year of samples does not fit a screen. Samples are taken together in groups that start at sample 0 whatever is
 * in view, so that a curve does not shimmer while it is panned, and a group's lowest, highest and sum are worked out
 * once: no peak or trough is lost, areas are kept, and panning costs no more than drawing.
 */
import type { TimeSpan } from './frame.ts';

/** Samples g x step to (g + 1) x step, less one, of each group g. Not a number where it holds none; sums skip those. */
export interface Groups {
  low: ArrayLike<number>;
  high: ArrayLike<number>;
  sum: ArrayLike<number>;
}

/** First sample at or after a time; the last one for a time after all. */
export function sampleAt(time_s: ArrayLike<number>, wanted_s: number): number {
  let low = 0;
  let high = Math.max(0, time_s.length - 1);
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time_s[middle] < wanted_s) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Samples in a group, a power of two, such that the groups in view are no fewer than the pixel columns. */
export function stepFor(time_s: ArrayLike<number>, { from_s, to_s }: TimeSpan, columns: number): number {
  const samples = sampleAt(time_s, to_s) - sampleAt(time_s, from_s);
  return 2 ** Math.max(0, Math.floor(Math.log2(samples / Math.max(1, columns))));
}

/** First and last group in view, their neighbours just outside included. */
export function groupsInView(time_s: ArrayLike<number>, span: TimeSpan, step: number): [number, number] {
  const first = Math.floor(sampleAt(time_s, span.from_s) / step) - 1;
  const last = Math.floor(sampleAt(time_s, span.to_s) / step) + 1;
  return [Math.max(0, first), Math.min(last, Math.ceil(time_s.length / step) - 1)];
}

/** Middle of a group's samples. */
export function groupTime(time_s: ArrayLike<number>, group: number, step: number): number {
  return (time_s[group * step] + time_s[Math.min(time_s.length, (group + 1) * step) - 1]) / 2;
}

/** How many samples a group has: the last one may be short. */
export function groupSize(count: number, group: number, step: number): number {
  return Math.min(count, (group + 1) * step) - group * step;
}

const known = new WeakMap<object, Map<string, unknown>>();

/** Works out what belongs to an array once, for as long as the array is there. The array must not change after. */
export function once<T>(of: object, key: string, work: () => T): T {
  const all = known.get(of) ?? new Map<string, unknown>();
  known.set(of, all);
  if (!all.has(key)) all.set(key, work());
  return all.get(key) as T;
}

export function groupsOf(values: ArrayLike<number>, step: number): Groups {
  if (step === 1) return { low: values, high: values, sum: values };
  return once(values, `groups ${step}`, () => {
    const groups = Math.ceil(values.length / step);
    const low = new Float32Array(groups).fill(Number.NaN);
    const high = low.slice();
    const sum = new Float64Array(groups);
    for (let group = 0, i = 0; group < groups; group++) {
      let least = Number.POSITIVE_INFINITY;
      let most = Number.NEGATIVE_INFINITY;
      let total = 0;
      for (const end = Math.min(values.length, i + step); i < end; i++) {
        const value = values[i];
        if (value < least) least = value;
        if (value > most) most = value;
        if (!Number.isNaN(value)) total += value;
      }
      if (least > most) continue;
      low[group] = least;
      high[group] = most;
      sum[group] = total;
    }
    return { low, high, sum };
  });
}

const block = 256;

/** Sum of samples `first` up to, not including, `end`; what is not a number counts as nothing. */
export function sumBetween(values: ArrayLike<number>, first: number, end: number): number {
  const { sum } = groupsOf(values, block);
  let total = 0;
  for (let i = first; i < end; ) {
    if (i % block === 0 && i + block <= end) {
      total += sum[i / block];
      i += block;
    } else total += values[i++] || 0;
  }
  return total;
}

/** Means of each group for values that stand `layers` side by side: layer k of group g at g x layers + k. */
export function layerMeans(values: ArrayLike<number>, layers: number, step: number): ArrayLike<number> {
  if (step === 1) return values;
  return once(values, `layers ${step}`, () => {
    const count = values.length / layers;
    const groups = Math.ceil(count / step);
    const means = new Float32Array(groups * layers);
    const total = new Float64Array(layers);
    for (let group = 0, at = 0; group < groups; group++) {
      const size = groupSize(count, group, step);
      total.fill(0);
      for (let i = 0; i < size; i++) for (let k = 0; k < layers; k++) total[k] += values[at++];
      for (let k = 0; k < layers; k++) means[group * layers + k] = total[k] / size;
    }
    return means;
  });
}

/** Lowest and highest of all numbers in the arrays; null where there is none. */
export function extent(...arrays: ArrayLike<number>[]): [number, number] | null {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const values of arrays) {
    const { low: lows, high: highs } = groupsOf(values, 4096);
    for (let i = 0; i < lows.length; i++) {
      if (lows[i] < low) low = lows[i];
      if (highs[i] > high) high = highs[i];
    }
  }
  return low > high ? null : [low, high];
}
