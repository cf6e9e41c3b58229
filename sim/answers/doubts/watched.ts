/** What a run is looked at for, to be drawn beside many others: its top, and how each of its showers went. */
import type { Series } from '../../run/result.ts';
import type { ClosedDraw } from '../../run/tally.ts';

const DAY = 86_400;

export interface Watched {
  /** Since the run's first midnight. */
  time_s: number[];
  /** Top of the store at those times. */
  top_C: number[];
  /** Showers in the order in which they began: when, and how long each ran cold. */
  showers: { from_s: number; cold_s: number }[];
}

export function watched(series: Series, closed: readonly ClosedDraw[]): Watched {
  const { layers, layer_C, time_s } = series;
  return {
    time_s: Array.from(time_s),
    top_C: Array.from(time_s, (_, i) => layer_C[(i + 1) * layers - 1]),
    showers: closed
      .filter(({ shower }) => shower)
      .sort((a, b) => a.from_s - b.from_s)
      .map(({ from_s, cold_s }) => ({ from_s, cold_s })),
  };
}

/** A sample every hour of a week or two, seldom enough of a year: a line of some hundred points at the most [s]. */
export function watchedEvery(days: number): number {
  return days <= 14 ? 3600 : days <= 60 ? 6 * 3600 : DAY;
}
