/**
 * How long an engine has to run every day so that the showers stay warm, month by month, found on runs of ten days
 * in the middle of each month: three days for the store to forget how it began, seven that count.
 */
import type { PlantDescription } from '../../parts/description.ts';
import type { Edit } from '../edit.ts';
import type { Job, JobDone } from '../job.ts';
import { drawTime, LEVEL_KEPT, middleOfMonth, stretchEdits } from '../stretch.ts';
import type { Sweep } from '../sweep.ts';
import { type Plan, spanEdits } from './engine-span.ts';
import { LeastEnough, searchAll } from './least-enough.ts';

/** Hours are found to a quarter [s], up to half a day. */
export const STEP_s = 900;
export const MOST_STEPS = 48;
const DAYS = 10;
const FORGETTING_DAYS = 3;
const COUNTED_DAYS = DAYS - FORGETTING_DAYS;
/** Showers count as warm that run cold for less than this share of their time. */
const COLD_SHARE = 0.01;

/** One question: a month, and how the scenario then differs. */
export interface Case {
  /** 0 = January. */
  month: number;
  edits: Edit[];
  /** Steps to try first. */
  guess: number;
  /** Fewer are known not to do. */
  least?: number;
  /** More are not tried. */
  most?: number;
}

export interface Found {
  /** A day [s]; null where the most that was tried, as a rule half a day, is not enough. */
  time_s: number | null;
  /** The counted days at that time, or at the most. */
  week: JobDone['figures'];
}

/** Ten days of a month, the engine running `length_s` a day and no other heater behind the coil. */
export function tenDays(plan: Plan, month: number, length_s: number, edits: readonly Edit[]): Job {
  return {
    edits: [
      ...edits,
      ...stretchEdits(middleOfMonth(month, DAYS)),
      LEVEL_KEPT,
      { path: 'backup', value: undefined },
      ...spanEdits(plan, length_s),
    ],
    parts: [FORGETTING_DAYS],
  };
}

/** Figures of the days that count. */
export function countedWeek({ parts }: JobDone): JobDone['figures'] {
  return parts[parts.length - 1].figures;
}

/** Share of the showers' time in the counted days that ran cold; of all draws, where nobody showers. */
export function coldShare(plant: PlantDescription, week: JobDone['figures']): number {
  const draws = plant.taps?.draws ?? [];
  const showers = draws.some((draw) => draw.shower);
  const all_s = drawTime(draws, FORGETTING_DAYS, COUNTED_DAYS, (draw) => draw.shower === showers);
  const cold_s = (showers ? week.cold_shower_s : week.cold_draw_s) ?? 0;
  return all_s > 0 ? cold_s / all_s : 0;
}

/** The least time a day for each case; null where runs failed or were left undone. */
export async function warmHours(
  sweep: Sweep,
  plant: PlantDescription,
  plan: Plan,
  cases: readonly Case[],
): Promise<(Found | null)[]> {
  const searches = cases.map(({ most = MOST_STEPS, guess, least }) => new LeastEnough(most, guess, least));
  const weeks = cases.map(() => new Map<number, JobDone['figures']>());
  const attempt = async (tries: { search: number; steps: number }[]) => {
    const jobs = tries.map(({ search, steps }) =>
      tenDays(plan, cases[search].month, steps * STEP_s, cases[search].edits),
    );
    const done = await sweep.run(jobs);
    return tries.map(({ search, steps }, i) => {
      const result = done[i];
      if (result === null) return null;
      const week = countedWeek(result);
      weeks[search].set(steps, week);
      return coldShare(plant, week) < COLD_SHARE;
    });
  };
  const ended = await searchAll(searches, attempt);
  return searches.map(({ found }, i) => {
    const week = weeks[i].get(found ?? cases[i].most ?? MOST_STEPS);
    return ended[i] && week ? { time_s: found === null ? null : found * STEP_s, week } : null;
  });
}
