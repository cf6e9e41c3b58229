/** The Days panels as rows of numbers: each sample, or one an hour or a day where samples are too many to read. */
import type { Series } from '../../../sim/index.ts';
import type { TimeSpan } from '../charts/frame.ts';
import { type HeatKey, heatStreams, heatValues, layerAt } from './days-data.ts';

export interface DaysRow {
  /** End of the row's interval, hour or day. */
  time_s: number;
  /** Samples that the row is made of; temperatures are those of the last. */
  first: number;
  last: number;
  top_C: number;
  middle_C: number;
  bottom_C: number;
  /** Means over the row. */
  heat_W: Record<HeatKey, number>;
  flow_m3_s: number;
  sun_W_m2: number;
  /** Warmest water at the tap in the row; not a number where none was drawn. */
  outlet_C: number;
  /** Time in the row for which draws ran colder than wanted. */
  cold_s: number;
}

/** More rows than this nobody reads. */
const most = 200;

/** Hours or days where samples are more than `rowsAtMost`. */
export function daysTable(
  series: Series,
  { from_s, to_s }: TimeSpan,
  rowsAtMost = most,
): { step_s: number; rows: DaysRow[] } {
  const { time_s, interval_s } = series;
  const steps = [interval_s, 3600, 86_400].filter((step) => step >= interval_s);
  const step_s = steps.find((step) => (to_s - from_s) / step <= rowsAtMost) ?? steps[steps.length - 1];
  const rows: DaysRow[] = [];
  // A sample at the start of the window, or of the run, closes an interval that is not in it.
  let first = time_s.findIndex((at_s) => at_s > from_s);
  if (first < 0) return { step_s, rows };
  let end_s = (Math.floor(from_s / step_s) + 1) * step_s;
  for (; first < time_s.length && time_s[first] <= to_s; end_s += step_s) {
    let next = first;
    while (next < time_s.length && time_s[next] <= Math.min(end_s, to_s)) next++;
    if (next > first) rows.push(rowOf(series, first, next));
    first = next;
  }
  return { step_s, rows };
}

function rowOf(series: Series, first: number, next: number): DaysRow {
  const { channels } = series;
  const last = next - 1;
  const sum = (values: ArrayLike<number> | undefined) => {
    let total = 0;
    for (let i = first; values && i < next; i++) total += values[i];
    return total;
  };
  const mean = (values: ArrayLike<number> | undefined) => sum(values) / (next - first);
  const outlets =
    channels.outlet_C?.slice(first, next).filter((value) => value > Number.NEGATIVE_INFINITY) ?? [];
  return {
    time_s: series.time_s[last],
    first,
    last,
    top_C: layerAt(series, 1, last),
    middle_C: layerAt(series, 0.5, last),
    bottom_C: layerAt(series, 0, last),
    heat_W: Object.fromEntries(heatStreams.map(({ key }) => [key, mean(heatValues(series, key))])) as Record<
      HeatKey,
      number
    >,
    flow_m3_s: mean(channels.mixed_flow_m3_s),
    sun_W_m2: mean(channels.sun_W_m2),
    outlet_C: outlets.length > 0 ? Math.max(...outlets) : Number.NaN,
    cold_s: sum(channels.ran_cold_s),
  };
}
