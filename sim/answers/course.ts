/** The course of a run closely enough to say when something happened in it. */
import type { Result, RunEvent } from '../run/result.ts';

/** A run whose course is told is sampled this often [s]. */
export const COURSE_S = 600;

export interface Course {
  /** A sample every `COURSE_S` from the run's start on. */
  top_C: number[];
  /** Mean over the layers, which are of one height. */
  mean_C: number[];
  cold_C: number[];
  /** Null without a collector. */
  collector_C: number[] | null;
  events: RunEvent[];
}

export function courseOf({ series, events }: Result): Course {
  const { time_s, layers, layer_C, channels } = series;
  const samples = Array.from(time_s, (_, i) => layer_C.subarray(i * layers, (i + 1) * layers));
  return {
    top_C: samples.map((layer) => layer[layers - 1]),
    mean_C: samples.map((layer) => layer.reduce((sum, each) => sum + each, 0) / layers),
    cold_C: Array.from(channels.cold_C),
    collector_C: channels.collector_C ? Array.from(channels.collector_C) : null,
    events,
  };
}

/**
 * Time after `from_s` at which samples first reach a limit from below [s], a straight line between two of them; null
 * if they never do. `sign` -1: from above.
 */
export function reaches(
  values: readonly number[],
  limit: number,
  from_s: number,
  sign: 1 | -1 = 1,
): number | null {
  const past = (i: number) => sign * (values[i] - limit);
  const first = Math.ceil(from_s / COURSE_S);
  for (let i = first; i < values.length; i++) {
    if (past(i) < 0) continue;
    const share = i === first ? 1 : past(i - 1) / (past(i - 1) - past(i));
    return Math.max(0, (i - 1 + share) * COURSE_S - from_s);
  }
  return null;
}

/** Time after `from_s` of the first event of a name [s]; null if there is none. */
export function happens({ events }: Course, name: string, from_s: number): number | null {
  const found = events.find((each) => each.name === name && each.time_s >= from_s);
  return found ? found.time_s - from_s : null;
}
