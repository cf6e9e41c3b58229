/**
 * One run of a varied scenario, as a message that any thread can do: the scenario as JSON, the edits to it,
 * and back only figures. Page, terminal and tests share this one path.
 */
import type { PartFigures } from '../run/parts.ts';
import type { Result } from '../run/result.ts';
import { Simulation } from '../run/simulation.ts';
import { problemLine, type ReadContext, readScenario, type Scenario } from '../scenario/index.ts';
import { COURSE_S, type Course, courseOf } from './course.ts';
import { type Watched, watched } from './doubts/watched.ts';
import { type Edit, edited } from './edit.ts';
import { type LogPoints, modelled } from './fit/modelled.ts';
import { coldOfRow, rowPlant, type ShowerRow } from './showers/row.ts';

export interface Job {
  edits: Edit[];
  /** Days of the run on which a new part begins, as its months: figures by part come back too. */
  parts?: number[];
  /** A row of showers takes the place of the household's last day. */
  row?: ShowerRow;
  /** Where and when an owner's log was read: what the run has there comes back too. */
  log?: LogPoints;
  /** How often to look at the run for a picture of many [s]: what was seen comes back too. */
  watched_s?: number;
  /** Closely enough to say when something happened: the course of the run comes back too. */
  course?: true;
  /** The run ends with the day on which the store runs dry. */
  untilDry?: true;
}

export interface JobDone {
  ok: true;
  figures: Result['figures'];
  /** By part, if parts were asked for. */
  parts: readonly PartFigures[];
  /** How long each shower of the row ran cold [s], if a row was asked for. */
  cold_s?: number[];
  /** At the log's points [C], if they were asked for; null where the run has nothing there. */
  modelled_C?: (number | null)[];
  watched?: Watched;
  course?: Course;
  evaluations: number;
  residual_percent: number;
}

const DAY = 86_400;

export type JobResult = JobDone | { ok: false; problem: string };

/** Does jobs, in any order and on any number of threads; results come back in the order of the jobs. */
export type DoJobs = (
  jobs: Job[],
  onProgress?: (done: number, of: number) => void,
) => Promise<(JobResult | null)[]>;

/** Reads, simulates and reports one job, pausing after each day: a thread may hear what else it is asked. */
export function* jobByDays(
  scenario: Scenario,
  job: Job,
  context: ReadContext,
): Generator<undefined, JobResult, undefined> {
  try {
    const read = readScenario(edited(scenario, job.edits), context);
    if (!read.ok) return { ok: false, problem: read.problems.map(problemLine).join('\n') };
    const whole = job.row ? rowPlant(read.plant, job.row) : read.plant;
    // Only a log, a picture and a course look at the series. Sampling moves nothing in a run, but a year at five minutes costs a
    // third of it.
    const interval_s = job.watched_s ?? (job.course ? COURSE_S : DAY);
    const plant = job.log ? whole : { ...whole, run: { ...whole.run, interval_s } };
    const simulation = new Simulation(plant, job.parts, job.log?.begins_s, job.log?.begins_s);
    while (simulation.day < plant.run.days && !(job.untilDry && simulation.dry)) {
      simulation.advance(simulation.day + 1);
      yield;
    }
    const result = simulation.result();
    const { figures, run, ledger, series } = result;
    return {
      ok: true,
      figures,
      parts: simulation.parts,
      ...(job.row ? { cold_s: coldOfRow(simulation.closedDraws, job.row) } : {}),
      ...(job.watched_s ? { watched: watched(series, simulation.closedDraws) } : {}),
      ...(job.course ? { course: courseOf(result) } : {}),
      ...(job.log ? { modelled_C: modelled(series, job.log.points) } : {}),
      evaluations: run.evaluations,
      residual_percent: ledger.residual_percent,
    };
  } catch (error) {
    return { ok: false, problem: error instanceof Error ? error.message : String(error) };
  }
}

/** Reads, simulates and reports one job; never throws. */
export function doJob(scenario: Scenario, job: Job, context: ReadContext): JobResult {
  const days = jobByDays(scenario, job, context);
  let next = days.next();
  while (!next.done) next = days.next();
  return next.value;
}

/** Does jobs one after the other on this thread. */
export function doHere(scenario: Scenario, context: ReadContext): DoJobs {
  return async (jobs, onProgress) =>
    jobs.map((job, i) => {
      const result = doJob(scenario, job, context);
      onProgress?.(i + 1, jobs.length);
      return result;
    });
}
