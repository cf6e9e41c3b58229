/** The Days panel as rows of numbers: one an hour for up to a week, else one a day. */
import type { Series } from '../../../sim/index.ts';
import { coldSpans, type HeatKey, heatAt, heatStreams, layerAt } from './days-data.ts';

export interface DaysRow {
  /** End of the row's hour or day. */
  time_s: number;
  top_C: number;
  middle_C: number;
  bottom_C: number;
  /** Means over the row. */
  heat_W: Record<HeatKey, number>;
  /** Time in the row during which water arrived colder than wanted. */
  cold_s: number;
}

const hourly_days = 7;

export function daysTable(series: Series, days: number): { step_s: number; rows: DaysRow[] } {
  const step_s = Math.max(series.interval_s, days <= hourly_days ? 3600 : 86_400);
  const cold = coldSpans(series);
  const rows: DaysRow[] = [];
  let first = 0;
  for (let end_s = step_s; first < series.time_s.length; end_s += step_s) {
    let next = first;
    while (next < series.time_s.length && series.time_s[next] <= end_s) next++;
    if (next > first) rows.push(rowOf(series, first, next, cold, end_s - step_s));
    first = next;
  }
  return { step_s, rows };
}

function rowOf(
  series: Series,
  first: number,
  next: number,
  cold: { from_s: number; to_s: number }[],
  start_s: number,
): DaysRow {
  const last = next - 1;
  const time_s = series.time_s[last];
  const mean = (key: HeatKey) => {
    let sum = 0;
    for (let i = first; i < next; i++) sum += heatAt(series, key, i);
    return sum / (next - first);
  };
  return {
    time_s,
    top_C: layerAt(series, 1, last),
    middle_C: layerAt(series, 0.5, last),
    bottom_C: layerAt(series, 0, last),
    heat_W: Object.fromEntries(heatStreams.map(({ key }) => [key, mean(key)])) as Record<HeatKey, number>,
    cold_s: cold.reduce(
      (sum, { from_s, to_s }) => sum + Math.max(0, Math.min(to_s, time_s) - Math.max(from_s, start_s)),
      0,
    ),
  };
}
