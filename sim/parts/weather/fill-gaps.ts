/** Short holes in a year of hours, closed by straight lines; long ones are reported. */

/** A run of missing hours. */
export interface Gap {
  from: number;
  hours: number;
}

/** Missing hours that may be bridged. */
export const LONGEST_BRIDGE = 3;

/**
 * Fills runs of NaN no longer than `LONGEST_BRIDGE` linearly, in place; the year closes on itself.
 *
 * @returns number of hours filled, and the longer gaps, left as they are
 */
export function fillGaps(series: Float64Array): { filled: number; gaps: Gap[] } {
  const n = series.length;
  const start = series.findIndex((x) => !Number.isNaN(x));
  if (start < 0) return { filled: 0, gaps: [{ from: 0, hours: n }] };
  let filled = 0;
  const gaps: Gap[] = [];
  for (let i = 1; i <= n; i++) {
    const from = (start + i) % n;
    if (!Number.isNaN(series[from])) continue;
    let hours = 1;
    while (Number.isNaN(series[(from + hours) % n])) hours++;
    if (hours <= LONGEST_BRIDGE) {
      const before = series[(from - 1 + n) % n];
      const after = series[(from + hours) % n];
      for (let k = 0; k < hours; k++) {
        series[(from + k) % n] = before + ((after - before) * (k + 1)) / (hours + 1);
      }
      filled += hours;
    } else gaps.push({ from, hours });
    i += hours;
  }
  return { filled, gaps };
}
