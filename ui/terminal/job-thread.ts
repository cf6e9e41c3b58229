/** A thread that does runs: what it is started with, and how it answers. */
import { parentPort } from 'node:worker_threads';
import {
  doJob,
  type Job,
  type JobResult,
  type ReadContext,
  type Scenario,
  type WeatherFiles,
  withWeather,
} from '../../sim/index.ts';

const MARK = 'tankful: runs';

/** What a thread is started with; the mark tells it from a thread that somebody else started from this file. */
export interface JobThreadData {
  mark: typeof MARK;
  scenario: Scenario;
  weatherFiles: WeatherFiles;
}

export function jobThreadData(scenario: Scenario, context: ReadContext): JobThreadData {
  return { mark: MARK, scenario, weatherFiles: context.weatherFiles ?? {} };
}

export function isJobThread(data: unknown): data is JobThreadData {
  return typeof data === 'object' && data !== null && 'mark' in data && data.mark === MARK;
}

/** Does one run after the other, as they are asked for. */
export function serveJobs({ scenario, weatherFiles }: JobThreadData): void {
  const context = withWeather(weatherFiles);
  parentPort?.on('message', (job: Job) => {
    const result: JobResult = doJob(scenario, job, context);
    parentPort?.postMessage(result);
  });
}
