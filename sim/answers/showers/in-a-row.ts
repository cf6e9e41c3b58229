/** How many showers in a row stay warm, read off a run's figures. */
import type { Draw, PlantDescription } from '../../parts/description.ts';
import { volumeBelow } from '../../parts/store/geometry.ts';
import { COLD_SHOWER_FROM } from '../../run/tally.ts';

/** A row begins this long after its midnight [s]. */
export const ROW_BEGINS_S = 60;
const DAY = 86_400;
const MOST_SHOWERS = 100;
/** Warm for no longer than this, pipe's plug and all, a shower was never warm [s]. */
const NEVER_WARM_S = 30;

export interface RowPlan {
  shower: Pick<Draw, 'duration_s'>;
  gap_s: number;
  /** Showers tried. */
  count: number;
}

export interface WarmRow {
  /** Showers warm to the end. */
  whole: number;
  /** The same with the warm share of the first that was not. */
  showers: number;
  /** Running water until it fell under the wanted temperature [s]. */
  warm_s: number;
  /** Into the first shower that was not warm to the end [s]; null where all tried were. */
  into_s: number | null;
}

/** Starts of a row's showers [s]. */
export function startsOf({ shower, gap_s, count }: RowPlan): number[] {
  return Array.from({ length: count }, (_, i) => ROW_BEGINS_S + i * (shower.duration_s + gap_s));
}

/**
 * Showers worth trying: half as many again as the heat above the wanted temperature could ever feed, since a doubt's
 * end may hold more, and a few.
 */
export function countToTry(plant: PlantDescription, shower: Draw, cold_C: number, gap_s: number): number {
  const { store, run } = plant;
  const hottest_C = Math.max(run.start.bottom_C, run.start.top_C);
  const store_m3K = volumeBelow(store.shape, store.water_depth_m) * Math.max(0, hottest_C - cold_C);
  const each_m3K = shower.flow_m3_s * shower.duration_s * Math.max(1, shower.wanted_C - cold_C);
  const inADay = Math.floor((DAY - ROW_BEGINS_S) / (shower.duration_s + gap_s));
  return Math.max(2, Math.min(MOST_SHOWERS, inADay, Math.ceil((1.5 * store_m3K) / each_m3K) + 3));
}

/**
 * What a row came to. A shower counts as warm as a run counts it: no more than 20 s under the wanted temperature
 * once the pipe's cold plug is through. The first that does not was warm for the rest of its time.
 *
 * @param cold_s how long each shower of the row ran cold
 */
export function warmRow(cold_s: readonly number[], { shower }: Pick<RowPlan, 'shower'>): WarmRow {
  const { duration_s } = shower;
  const first = cold_s.findIndex((cold) => cold > COLD_SHOWER_FROM);
  if (first < 0) {
    return { whole: cold_s.length, showers: cold_s.length, warm_s: cold_s.length * duration_s, into_s: null };
  }
  const until_s = Math.max(0, duration_s - cold_s[first]);
  const into_s = until_s > NEVER_WARM_S ? until_s : 0;
  return { whole: first, showers: first + into_s / duration_s, warm_s: first * duration_s + into_s, into_s };
}
