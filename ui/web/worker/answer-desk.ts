/**
 * The worker's side of the answers: works one out, and hands the runs it needs to the page, which shares them out
 * among all workers; and does such runs, day by day, so that other messages are heard between.
 */
import {
  type DoJobs,
  detailOf,
  type JobResult,
  jobByDays,
  type ReadContext,
  readScenario,
} from '../../../sim/index.ts';
import { failure } from './failure.ts';
import type { AskOrder, AskReport } from './protocol.ts';
import { buffersOf } from './slices.ts';

export interface DeskDoors {
  /** Files at hand. */
  context(): ReadContext;
  say(report: AskReport, transfer?: Transferable[]): void;
  nextTurn(): Promise<void>;
}

interface Batch {
  of: number;
  onProgress: ((done: number, of: number) => void) | undefined;
  done(results: (JobResult | null)[]): void;
}

export function createAnswerDesk({ context, say, nextTurn }: DeskDoors): (order: AskOrder) => void {
  const batches = new Map<number, Batch>();
  const dropped = new Set<number>();
  let lastBatch = 0;

  async function answer({ id, question, scenario }: Extract<AskOrder, { kind: 'ask' }>): Promise<void> {
    const files = context();
    const doJobs: DoJobs = (jobs, onProgress) =>
      new Promise((done) => {
        const batch = ++lastBatch;
        batches.set(batch, { of: jobs.length, onProgress, done });
        say({ kind: 'jobs', id, batch, scenario, jobs });
      });
    try {
      const onProgress = (done: number, of: number) => say({ kind: 'asked', id, done, of });
      // Answers are a good part of the code, and most workers only run.
      const { answerTo } = await import('./answers.ts');
      const found = await answerTo(question, { scenario, context: files, doJobs, onProgress });
      say({ kind: 'answered', id, answer: found });
    } catch (error) {
      say({ kind: 'unanswered', id, problem: failure(error).got });
    }
  }

  async function job({ id, scenario, job }: Extract<AskOrder, { kind: 'job' }>): Promise<void> {
    const days = jobByDays(scenario, job, context());
    for (let next = days.next(); ; next = days.next()) {
      if (next.done) {
        say({ kind: 'job-done', id, result: next.value });
        return;
      }
      await nextTurn();
      if (dropped.delete(id)) return;
    }
  }

  function detail({ id, scenario, stretch }: Extract<AskOrder, { kind: 'detail' }>): void {
    const read = readScenario(scenario, context());
    if (!read.ok) return;
    const series = detailOf(read.plant, stretch);
    say({ kind: 'detailed', id, series }, buffersOf(series));
  }

  return (order) => {
    switch (order.kind) {
      case 'ask':
        void answer(order);
        return;
      case 'job':
        void job(order);
        return;
      case 'detail':
        detail(order);
        return;
      case 'drop-job':
        dropped.add(order.id);
        return;
      case 'job-progress': {
        const batch = batches.get(order.batch);
        batch?.onProgress?.(order.done, batch.of);
        return;
      }
      case 'jobs-done':
        batches.get(order.batch)?.done(order.results);
        batches.delete(order.batch);
    }
  };
}
