/** How long after the row ran cold the next shower is warm again. */
import { COLD_SHOWER_FROM } from '../../run/tally.ts';
import type { Job, JobDone } from '../job.ts';
import type { ShowerRow } from './row.ts';

const MINUTE = 60;
/** Waits tried [s]: a shower apart, then by the hour; after two days nobody waits any more. */
export const WAITS_S = [
  5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720, 1080, 1440, 2160, 2880,
].map((minutes) => minutes * MINUTE);

export type Heating = 'none' | 'engine' | 'planned';

export interface SpentRow {
  duration_s: number;
  gap_s: number;
  /** Showers of the row, the last of which ran cold. */
  spent: number;
  /** First start [s]: now, or for the plan of the day the household's own hour. */
  begins_s: number;
}

/** When the spent row ends [s]. */
function endOf({ duration_s, gap_s, spent, begins_s }: SpentRow): number {
  return begins_s + spent * (duration_s + gap_s) - gap_s;
}

/** The spent row and one more shower after each wait, as jobs. */
export function recoveryJobs(row: SpentRow, heating: Heating, waits_s: readonly number[]): Job[] {
  const end_s = endOf(row);
  const starts = Array.from({ length: row.spent }, (_, i) => row.begins_s + i * (row.duration_s + row.gap_s));
  const sources: ShowerRow['sources'] = heating === 'engine' ? { engine_from_s: end_s } : heating;
  return waits_s.map((wait_s) => ({
    edits: [],
    row: { day: 0, starts_s: [...starts, end_s + wait_s], sources },
  }));
}

/** Whether the shower after each wait stayed warm, as a run counts it; null where the run is missing. */
export function recovered(results: readonly (JobDone | null)[]): (boolean | null)[] {
  return results.map((done) => (done?.cold_s ? (done.cold_s.at(-1) ?? 0) <= COLD_SHOWER_FROM : null));
}

/** First wait after which it was warm [s]; null where none was, or a run failed before. */
export function firstWarm(warm: readonly (boolean | null)[], waits_s: readonly number[]): number | null {
  const at = warm.indexOf(true);
  return at < 0 || warm.slice(0, at).includes(null) ? null : waits_s[at];
}
