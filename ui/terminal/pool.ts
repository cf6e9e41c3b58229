/**
 * Runs on threads of their own, each started from this very file once it is built. One thread does one run at a
 * time; which thread does which makes no difference to what comes back, nor does their number.
 */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { DoJobs, Job, JobResult, ReadContext, Scenario } from '../../sim/index.ts';
import { refusalWords } from '../words/index.ts';
import { type JobThreadData, jobThreadData } from './job-thread.ts';
import { refuse } from './refusal.ts';

/** Does the runs of one command, until it is closed. */
export interface Pool {
  doJobs: DoJobs;
  /** Somebody asked to stop: what was not done stays undone. */
  readonly stopped: boolean;
  close: () => Promise<void>;
}

const MOST_WORKERS = 64;

/** As many threads as there are cores, or as TANKFUL_WORKERS says. */
export function workersIn(env: Record<string, string | undefined>): number {
  const said = env.TANKFUL_WORKERS;
  if (!said) return availableParallelism();
  const workers = Number(said);
  if (Number.isInteger(workers) && workers >= 1 && workers <= MOST_WORKERS) return workers;
  throw refuse(
    'TANKFUL_WORKERS',
    refusalWords.threads.expected(MOST_WORKERS),
    `"${said}"`,
    refusalWords.threads.fix,
  );
}

/** The pool of one command. The first interrupt leaves what is not done undone; the next one ends the program. */
export function openPool(scenario: Scenario, context: ReadContext, workers: number): Pool {
  const data = jobThreadData(scenario, context);
  const threads = Array.from({ length: workers }, () => new Thread(data));
  let stopped = false;
  const end = () => Promise.all(threads.map((thread) => thread.end()));
  const stop = () => {
    stopped = true;
    void end();
  };
  process.once('SIGINT', stop);
  return {
    get stopped() {
      return stopped;
    },
    async doJobs(jobs, onProgress) {
      const results: (JobResult | null)[] = jobs.map(() => null);
      let next = 0;
      let done = 0;
      const work = async (thread: Thread) => {
        while (!stopped && next < jobs.length) {
          const i = next++;
          results[i] = await thread.run(jobs[i]);
          if (results[i]) onProgress?.(++done, jobs.length);
        }
      };
      await Promise.all(threads.map(work));
      return results;
    },
    async close() {
      process.off('SIGINT', stop);
      await end();
    },
  };
}

/** One thread, started when it is first needed, and anew after a failure that took it down. */
class Thread {
  readonly #data: JobThreadData;
  #worker: Worker | null = null;
  #tell: (result: JobResult | null) => void = () => {};

  constructor(data: JobThreadData) {
    this.#data = data;
  }

  /** The result of a run; null where the thread was ended before it. */
  run(job: Job): Promise<JobResult | null> {
    return new Promise((resolve) => {
      this.#tell = resolve;
      this.#worker ??= this.#start();
      this.#worker.postMessage(job);
    });
  }

  #start(): Worker {
    const worker = new Worker(new URL(import.meta.url), { workerData: this.#data });
    worker.on('message', (result: JobResult) => this.#tell(result));
    worker.on('error', (error) => {
      this.#worker = null;
      this.#tell({ ok: false, problem: refusalWords.thread(error.message) });
    });
    return worker;
  }

  async end(): Promise<void> {
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
    this.#tell(null);
  }
}
