/** The runs that the collector's answer is made of: years, the dullest week, and July with nobody home. */
import type { Edit } from '../edit.ts';
import type { Job, JobDone } from '../job.ts';
import { LEVEL_KEPT, MONTH_BEGINS, type Stretch, stretchEdits, YEAR } from '../stretch.ts';
import type { Size } from './sizes.ts';

type Figures = JobDone['figures'];

/** A year by months. */
export function yearJob(edits: readonly Edit[]): Job {
  return { edits: [...edits, ...stretchEdits(YEAR), LEVEL_KEPT], parts: MONTH_BEGINS };
}

const WEEK = 7;

/** Seven days, and as many before them for the store to forget how it began. */
export function weekJob(from_day: number, edits: readonly Edit[]): Job {
  const stretch: Stretch = { from_day: from_day - WEEK, days: 2 * WEEK };
  return { edits: [...edits, ...stretchEdits(stretch), LEVEL_KEPT], parts: [WEEK] };
}

/** The last part of a run. */
export function lastPart({ parts }: JobDone): Figures {
  return parts[parts.length - 1].figures;
}

const JULY: Stretch = { from_day: 181, days: 31 };
/** North of the equator the sun stands high in July, south of it in January. */
const JANUARY: Stretch = { from_day: 0, days: 31 };

export type Failing = 'none' | 'limit' | 'pump';

/**
 * A midsummer month in which nobody draws and the engine stands. `failing`: the high limit never stops the pump, or
 * the pump never runs. @param start_C of the whole store
 */
export function awayJob(north: boolean, start_C: number, failing: Failing): Job {
  const start = `${start_C.toFixed(2)} C`;
  const limit: Record<Failing, Edit[]> = {
    none: [],
    limit: [{ path: 'collector.high_limit', value: '100 C' }],
    pump: [{ path: 'collector.high_limit', value: '0 C' }],
  };
  const gone = ['taps', 'backup', 'engine'].map((path) => ({ path, value: undefined }));
  const stretch = north ? JULY : JANUARY;
  return {
    edits: [
      ...gone,
      ...stretchEdits(stretch),
      LEVEL_KEPT,
      { path: 'run.start', value: { bottom: start, top: start } },
      ...limit[failing],
    ],
    parts: Array.from({ length: stretch.days - 1 }, (_, day) => day + 1),
  };
}

/** Less than this is the steam of a run just below boiling [kg]. */
const BOILS_FROM_KG = 0.01;

/** Days until the store boils, counted in whole ones; null where it does not. */
export function daysToBoil({ parts }: JobDone): number | null {
  const day = parts.findIndex(({ figures }) => (figures.boiled_kg ?? 0) > BOILS_FROM_KG);
  return day < 0 ? null : day + 1;
}

/** Four stretches that stand for the year where a whole one for each doubt would take too long. */
const SEASONS = [14, 105, 196, 288];
const SEASON_DAYS = 6;
const FORGETTING_DAYS = 2;

export function seasonJobs(edits: readonly Edit[]): Job[] {
  return SEASONS.map((from_day) => ({
    edits: [...edits, ...stretchEdits({ from_day, days: SEASON_DAYS }), LEVEL_KEPT],
    parts: [FORGETTING_DAYS],
  }));
}

export interface Seasons {
  solar_J: number;
  engine_J: number;
}

/** Heat of the days that count, summed over the four; null where one is missing. */
export function seasonSums(done: readonly (JobDone | null)[]): Seasons | null {
  const sums = { solar_J: 0, engine_J: 0 };
  for (const each of done) {
    if (!each) return null;
    const { solar_heat_J, engine_heat_J } = lastPart(each);
    sums.solar_J += solar_heat_J ?? 0;
    sums.engine_J += engine_heat_J ?? 0;
  }
  return sums;
}

export const SEASON_COUNT = SEASONS.length;

/** A size as computed: its year by months and in all, and its dullest week. Null where it was left undone. */
export interface SizeRun {
  size: Size;
  year: JobDone | null;
  dull: Figures | null;
}
