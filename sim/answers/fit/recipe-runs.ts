/** Recipes that a run is held against: the input at which the run does what was measured. */
import { findRoot } from '../../numerics/root.ts';
import type { Edit } from '../edit.ts';
import { doJob, type Job, type JobDone } from '../job.ts';
import { refusal } from '../refusal.ts';
import type { Question } from '../vary.ts';
import { celsius } from './log-edits.ts';

const DAY = 86_400;

/** A stirred store at a temperature in a room that does not swing, nothing drawn and no sun; and when it is looked at. */
export interface Bench {
  from_C: number;
  room_C: number;
  time_s: number;
  more: readonly Edit[];
}

/** The run of a bench, with an input's edits. */
export function benchJob({ from_C, room_C, time_s, more }: Bench, edits: readonly Edit[]): Job {
  const days = Math.max(1, Math.ceil(time_s / DAY));
  return {
    edits: [
      { path: 'run.days', value: days },
      { path: 'run.interval', value: '5 min' },
      { path: 'run.start', value: { bottom: celsius(from_C), top: celsius(from_C) } },
      { path: 'store.stands', value: { where: 'room', temperature: celsius(room_C), swing: '0 K' } },
      { path: 'run.faults', value: [{ kind: 'household' }, { kind: 'collector pump' }] },
      ...more,
      ...edits,
    ],
    log: { begins_s: 0, points: [{ time_s, place: { kind: 'stirred' } }] },
  };
}

export function benchRun(
  { scenario, context }: Question,
  bench: Bench,
  edits: readonly Edit[] = [],
): JobDone {
  const done = doJob(scenario, benchJob(bench, edits), context);
  if (!done.ok) throw new RangeError(done.problem);
  return done;
}

/** Stirred temperature when the bench is looked at [C]. */
export function stirred_C({ modelled_C }: JobDone): number {
  return modelled_C?.[0] ?? Number.NaN;
}

/** An input and where to look for it. */
export interface Sought {
  path: string;
  least: number;
  greatest: number;
  tolerance: number;
  edits: (value: number) => Edit[];
}

/**
 * The input at which a bench's run gives what was measured.
 *
 * @param given what a run gives, of the kind that was measured; @param what in words, for a refusal
 * @throws RangeError where no value of the input gives it
 */
export function inputFor(
  question: Question,
  bench: Bench,
  sought: Sought,
  given: (done: JobDone) => number,
  measured: number,
  what: { where: string; unit: string },
): number {
  const { path, least, greatest, tolerance, edits } = sought;
  const at = (value: number) => given(benchRun(question, bench, edits(value)));
  const ends = [at(least), at(greatest)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  if (!(measured > low && measured < high)) {
    const expected = `${low.toFixed(2)} to ${high.toFixed(2)} ${what.unit}, which the design can give with any ${path}`;
    const fix = 'check the readings, and what else of the design is not as built';
    throw refusal(what.where, expected, `${measured.toFixed(2)} ${what.unit}`, fix);
  }
  const search = { low: least, high: greatest, tolerance, name: path, unit: '-' };
  return findRoot((value) => at(value) - measured, search);
}
