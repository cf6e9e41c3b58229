/** How many showers in a row stay warm, read off a run's figures. */
import type { Draw, PlantDescription } from '../../parts/description.ts';
import { volumeBelow } from '../../parts/store/geometry.ts';
import type { Result } from '../../run/result.ts';
import type { Job, JobDone } from '../job.ts';
import type { ShowerRow } from './row.ts';

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

/** The row as a job; figures of its own day come back as the last part. */
export function rowJob(edits: Job['edits'], row: ShowerRow): Job {
  return row.day > 0 ? { edits, row, parts: [row.day] } : { edits, row };
}

/** Figures of the row's own day. */
export function dayOf({ figures, parts }: JobDone): Result['figures'] {
  return parts.at(-1)?.figures ?? figures;
}

/**
 * What a row came to. A shower counts as warm as a run counts it: no more than 20 s under the wanted temperature
 * once the pipe's cold plug is through. The first that does not is warm until the day's first cold moment.
 *
 * @param figures of the row's day, in which nothing else was drawn
 */
export function warmRow(figures: Result['figures'], plan: RowPlan): WarmRow {
  const { duration_s } = plan.shower;
  const whole = (figures.showers ?? 0) - (figures.showers_cold ?? 0);
  if (whole >= plan.count) {
    return { whole, showers: whole, warm_s: whole * duration_s, into_s: null };
  }
  const start_s = startsOf(plan)[whole];
  const until_s = Math.min(duration_s, (figures.first_cold_s ?? 0) - start_s);
  const into_s = until_s > NEVER_WARM_S ? until_s : 0;
  return { whole, showers: whole + into_s / duration_s, warm_s: whole * duration_s + into_s, into_s };
}
