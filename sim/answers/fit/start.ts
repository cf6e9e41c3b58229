/** The store as a log finds it: temperatures at the bottom and at the top, from its first readings. */
import type { Log } from './read-log.ts';

/** Readings this soon after the first belong to the start [s]. */
const FIRST_S = 900;

export interface Start {
  bottom_C: number;
  top_C: number;
  /** Whether several heights were read, so that bottom and top may move apart. */
  layered: boolean;
}

/**
 * A straight line through the first readings over the height.
 * @throws RangeError if no probe in the store was read at the beginning
 */
export function startOf(log: Log, depth_m: number): Start {
  const inStore = log.readings.filter(({ place }) => place.kind !== 'outlet');
  const begin_s = inStore[0]?.time_s ?? Number.NaN;
  const first = inStore.filter(({ time_s }) => time_s <= begin_s + FIRST_S);
  if (first.length === 0 || begin_s > log.readings[0].time_s + FIRST_S) {
    throw new RangeError(
      'the log - expected a reading of the store in its first row - got none - begin it with top, middle and bottom',
    );
  }
  const points = first.map(({ place, value_C }) => ({
    h: place.kind === 'height' ? place.height_m : depth_m / 2,
    value_C,
  }));
  const mean = (values: number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;
  const [h0, t0] = [mean(points.map(({ h }) => h)), mean(points.map(({ value_C }) => value_C))];
  const spread = points.reduce((sum, { h }) => sum + (h - h0) ** 2, 0);
  const layered = spread > (0.1 * depth_m) ** 2;
  const slope = layered
    ? points.reduce((sum, { h, value_C }) => sum + (h - h0) * (value_C - t0), 0) / spread
    : 0;
  const at = (h: number) => Math.min(99, Math.max(0.1, t0 + slope * (h - h0)));
  return { bottom_C: at(0), top_C: at(depth_m), layered };
}
