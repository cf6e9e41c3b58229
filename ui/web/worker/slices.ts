/** Results of a run that is still going on. */
import type { Result, Series } from '../../../sim/index.ts';

/** A copy of what was sampled so far: the run keeps its own arrays and goes on. */
export function upTo(result: Result): Result {
  const { series, days } = result;
  // The sample at the midnight that is reached comes with the next day.
  const samples = Math.ceil((days * 86_400) / series.interval_s - 1e-9);
  const channels = Object.entries(series.channels).map(([key, values]) => [key, values.slice(0, samples)]);
  return {
    ...result,
    series: {
      ...series,
      time_s: series.time_s.slice(0, samples),
      height_m: series.height_m.slice(),
      layer_C: series.layer_C.slice(0, samples * series.layers),
      channels: Object.fromEntries(channels) as Series['channels'],
    },
  };
}

/** What can be handed over instead of copied. */
export function buffersOf({ time_s, height_m, layer_C, channels }: Series): ArrayBuffer[] {
  const arrays = [time_s, height_m, layer_C, ...Object.values(channels)];
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}
