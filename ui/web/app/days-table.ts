/** The Days panel as rows of numbers: one an hour for up to a week, else one a day. */
import type { Series } from '../../../sim/index.ts';
import { type HeatKey, heatAt, heatStreams, layerAt } from './days-data.ts';

export interface DaysRow {
  /** End of the row's hour or day. */
  time_s: number;
  top_C: number;
  middle_C: number;
  bottom_C: number;
  /** Means over the row. */
  heat_W: Record<HeatKey, number>;
  /** Time in the row for which draws ran colder than wanted. */
  cold_s: number;
}

const hourly_days = 7;

export function daysTable(series: Series, days: number): { step_s: number; rows: DaysRow[] } {
  const step_s = Math.max(series.interval_s, days <= hourly_days ? 3600 : 86_400);
  const rows: DaysRow[] = [];
  // A sample at the very start closes no interval.
  let first = series.time_s[0] === 0 ? 1 : 0;
  for (let end_s = step_s; first < series.time_s.length; end_s += step_s) {
    let next = first;
    while (next < series.time_s.length && series.time_s[next] <= end_s) next++;
    if (next > first) rows.push(rowOf(series, first, next));
    first = next;
  }
  return { step_s, rows };
}

function rowOf(series: Series, first: number, next: number): DaysRow {
  const last = next - 1;
  const sum = (of: (sample: number) => number) => {
    let total = 0;
    for (let i = first; i < next; i++) total += of(i);
    return total;
  };
  const mean_W = (key: HeatKey) => sum((i) => heatAt(series, key, i)) / (next - first);
  return {
    time_s: series.time_s[last],
    top_C: layerAt(series, 1, last),
    middle_C: layerAt(series, 0.5, last),
    bottom_C: layerAt(series, 0, last),
    heat_W: Object.fromEntries(heatStreams.map(({ key }) => [key, mean_W(key)])) as Record<HeatKey, number>,
    cold_s: sum((i) => series.channels.ran_cold_s?.[i] ?? 0),
  };
}
