/** The store's temperatures at the cursor, for the drawing of its section. */
import type { Result } from '../../../sim/index.ts';

export interface WaterAt {
  /** Bottom layer first. */
  layer_C: Float32Array;
  /** Depth of the water; null where the run did not follow it. */
  level_m: number | null;
  time_s: number;
}

/** The sample at or next after a time, the last one past the end. */
export function waterAt({ series }: Result, wanted_s: number): WaterAt {
  const { time_s, interval_s, layers, layer_C, channels } = series;
  const last = time_s.length - 1;
  const sample = Math.min(last, Math.max(0, Math.ceil((wanted_s - time_s[0]) / interval_s - 1e-9)));
  return {
    layer_C: layer_C.subarray(sample * layers, (sample + 1) * layers),
    level_m: channels.level_m?.[sample] ?? null,
    time_s: time_s[sample],
  };
}

/** Coldest and hottest water of a run: the ends of its colours. */
export function waterRange({ series: { layer_C } }: Result): readonly [low_C: number, high_C: number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of layer_C) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}
