/** A run's samples laid out over a number of equal columns of time. */

/** Sample i stands for the interval that it closes. */
export interface Samples {
  time_s: ArrayLike<number>;
  interval_s: number;
  values: ArrayLike<number>;
}

/**
 * Mean of the samples over each of `columns` equal parts of 0..`span_s`, weighed by overlap. NaN where no sample
 * falls, or none that is a number (an outlet between draws).
 */
export function meanByColumn(
  { time_s, interval_s, values }: Samples,
  span_s: number,
  columns: number,
): number[] {
  const width_s = span_s / columns;
  const sum = new Array<number>(columns).fill(0);
  const weight = new Array<number>(columns).fill(0);
  for (let i = 0; i < time_s.length; i++) {
    if (Number.isNaN(values[i])) continue;
    const to_s = Math.min(time_s[i], span_s);
    const from_s = Math.max(time_s[i] - interval_s, 0);
    for (let j = Math.floor(from_s / width_s); j < columns && j * width_s < to_s; j++) {
      const overlap_s = Math.min(to_s, (j + 1) * width_s) - Math.max(from_s, j * width_s);
      sum[j] += values[i] * overlap_s;
      weight[j] += overlap_s;
    }
  }
  return sum.map((total, j) => (weight[j] > 0 ? total / weight[j] : Number.NaN));
}

export interface Span {
  from_s: number;
  to_s: number;
}

/** Share of each column that lies within the spans, which do not overlap. */
export function shareByColumn(spans: readonly Span[], span_s: number, columns: number): number[] {
  const width_s = span_s / columns;
  return Array.from({ length: columns }, (_, j) => {
    const within = spans.map(
      ({ from_s, to_s }) => Math.min(to_s, (j + 1) * width_s) - Math.max(from_s, j * width_s),
    );
    return within.reduce((sum, overlap_s) => sum + Math.max(0, overlap_s), 0) / width_s;
  });
}

/** Days that share one label, the fewest that leave it `apart` columns. */
export function daysPerMark(days: number, columns: number, apart: number): number {
  const steps = [1, 2, 3, 7, 14, 28, 56, 91, 182, 365];
  return steps.find((step) => (step * columns) / days >= apart) ?? days;
}

/** First column of each mark, when `columns` span `days`. */
export function markColumns(days: number, columns: number, step: number): number[] {
  const marks: number[] = [];
  for (let day = 0; day < days; day += step) marks.push(Math.round((day * columns) / days));
  return marks;
}
