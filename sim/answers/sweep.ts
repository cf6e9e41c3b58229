/** The runs of one answer, asked for in several rounds: progress over all of them, and what became of those that failed. */
import type { DoJobs, Job, JobDone } from './job.ts';

export type OnProgress = (done: number, of: number) => void;

export class Sweep {
  /** True once runs were left undone because somebody stopped. */
  stopped = false;
  /** What was wrong with runs that failed, each once. */
  readonly problems = new Set<string>();
  readonly #doJobs: DoJobs;
  readonly #onProgress: OnProgress;
  #planned: number;
  #done = 0;

  /** @param planned runs expected over all rounds, to tell progress by */
  constructor(doJobs: DoJobs, planned: number, onProgress: OnProgress = () => {}) {
    this.#doJobs = doJobs;
    this.#planned = planned;
    this.#onProgress = onProgress;
  }

  /** Does a round; null where a run failed or was left undone. */
  async run(jobs: Job[]): Promise<(JobDone | null)[]> {
    if (jobs.length === 0) return [];
    const before = this.#done;
    this.#planned = Math.max(this.#planned, before + jobs.length);
    const results = await this.#doJobs(jobs, (done) => this.#onProgress(before + done, this.#planned));
    this.#done = before + jobs.length;
    return results.map((result) => {
      if (result === null) this.stopped = true;
      else if (result.ok) return result;
      else this.problems.add(result.problem);
      return null;
    });
  }
}
