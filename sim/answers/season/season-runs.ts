/** The runs of the season: one whole year by months, the same with nobody keeping the level, and four stretches for the bands. */
import type { StoreDescription } from '../../parts/description.ts';
import type { Job, JobDone } from '../job.ts';
import { stretchEdits, YEAR } from '../stretch.ts';
import { lastPart, yearJob } from '../sun/runs.ts';

type Figures = JobDone['figures'];

/** The year with the level kept, and where the scenario leaves it to a hand, with no hand. */
export function yearJobs({ make_up }: StoreDescription): Job[] {
  const kept = yearJob([]);
  return make_up === 'float' ? [kept] : [kept, { edits: stretchEdits(YEAR), untilDry: true }];
}

/** Sums over the four stretches of figures that add up. */
export type Sums = Record<string, number>;

/** Figures that add up over days, and with the four stretches' sums go the year's. */
const ADDING = [
  'engine_s',
  'fuel_m3',
  'engine_heat_J',
  'solar_heat_J',
  'loss_J',
  'make_up_kg',
  'cold_shower_s',
  'showers',
  'showers_cold',
] as const;

/** Null where one of the four is missing. */
export function stretchSums(done: readonly (JobDone | null)[]): Sums | null {
  const parts = done.map((each) => each && lastPart(each));
  if (parts.some((part) => part === null)) return null;
  return Object.fromEntries(
    ADDING.map((key) => [key, parts.reduce((sum, part) => sum + (part?.[key] ?? 0), 0)]),
  );
}

/** Figures of each month; null where the year was left undone. */
export function monthsOf(year: JobDone | null): (Figures | null)[] {
  return Array.from({ length: 12 }, (_, month) => year?.parts[month]?.figures ?? null);
}
