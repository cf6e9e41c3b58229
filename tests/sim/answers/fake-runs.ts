/** Runs that are not run: figures from rules a test states, so that what an answer makes of them can be said by hand. */
import type { DoJobs, Edit, Job } from '../../../sim/index.ts';
import { edit } from './small.ts';

type Figures = Record<string, number | null>;

/** What a job asks for, as far as answers over months ask. */
export interface Asked {
  /** Month of the first day, 0 = January, and that day’s number in it. */
  month: number;
  dayOfMonth: number;
  days: number;
  /** Hours a day of the daily timetable put in; null where none was. */
  hours: number | null;
  /** Area put in [m2]; 0 where the collector is taken out, null where nothing was. */
  area_m2: number | null;
  edits: readonly Edit[];
}

const clock_h = (text: string) => {
  const [hours, minutes] = text.split(':').map(Number);
  return hours + minutes / 60;
};

function askedOf({ edits }: Job): Asked {
  const [month, dayOfMonth] = String(edit(edits, 'run.from') ?? '01-01')
    .split('-')
    .map(Number);
  const runs = edit(edits, 'engine.runs') as { spans?: { from: string; to: string }[] } | undefined;
  const hours = runs?.spans
    ? runs.spans.reduce((sum, { from, to }) => sum + clock_h(to) - clock_h(from), 0)
    : null;
  const without = edits.some(({ path, value }) => path === 'collector' && value === undefined);
  const area = edit(edits, 'collector.size.area');
  return {
    month: month - 1,
    dayOfMonth,
    days: Number(edit(edits, 'run.days') ?? 1),
    hours,
    area_m2: without ? 0 : area === undefined ? null : Number.parseFloat(String(area)),
    edits,
  };
}

/** Every part of a run, and the whole, comes out with the figures of the rule; parts by their number. */
export function fakeRuns(rule: (asked: Asked, part: number | null) => Figures): DoJobs & { asked: Asked[] } {
  const seen: Asked[] = [];
  const doJobs: DoJobs = async (jobs, onProgress) =>
    jobs.map((job, i) => {
      const asked = askedOf(job);
      seen.push(asked);
      onProgress?.(i + 1, jobs.length);
      const ends = [...(job.parts ?? []), asked.days];
      const parts = job.parts
        ? ends.map((end, part) => {
            const from_day = part === 0 ? 0 : ends[part - 1];
            return { from_day, days: end - from_day, figures: rule(asked, part) };
          })
        : [];
      return { ok: true, figures: rule(asked, null), parts, evaluations: 1, residual_percent: 0 };
    });
  return Object.assign(doJobs, { asked: seen });
}
