import { describe, expect, it } from 'vitest';
import type { Answer, JobResult, Scenario } from '../../../../sim/index.ts';
import { createPool } from '../../../../ui/web/worker/pool.ts';
import { HandWorker } from './hand-worker.ts';

const scenario = { name: 'n' } as Scenario;
const edits = (value: number) => ({ edits: [{ path: 'run.days', value }] });
const result = (evaluations: number): JobResult => ({
  ok: true,
  figures: {},
  parts: [],
  evaluations,
  residual_percent: 0,
});
const answer = { key: 'store' } as Answer;

function setUp(size = 2) {
  const workers: HandWorker[] = [];
  const pool = createPool(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  }, size);
  const heard: unknown[] = [];
  const hear = {
    progress: (done: number, of: number) => void heard.push([done, of]),
    answered: (found: Answer) => void heard.push(found),
    failed: (problem: string) => void heard.push(problem),
  };
  /** The run a worker was last asked for. */
  const jobOf = (worker: HandWorker) => {
    const order = worker.orders.findLast(({ kind }) => kind === 'job');
    return order?.kind === 'job' ? order : null;
  };
  const finish = (worker: HandWorker, evaluations: number) => {
    const job = jobOf(worker);
    worker.say({ kind: 'job-done', id: job?.id ?? -1, result: result(evaluations) });
  };
  return { pool, workers, heard, hear, jobOf, finish };
}

describe('a pool', () => {
  it('starts no worker before there is something to do', () => {
    expect(setUp().workers).toHaveLength(0);
  });

  it('gives runs out one to a worker, and their results back in the order they were asked for', () => {
    const { pool, workers, jobOf, finish } = setUp();
    const found: (JobResult | null)[][] = [];
    const steps: number[] = [];
    pool.jobs(scenario, [edits(1), edits(2), edits(3)], {
      progress: (done) => void steps.push(done),
      done: (results) => void found.push(results),
    });
    expect(workers).toHaveLength(2);
    expect(jobOf(workers[1])?.job).toEqual(edits(2));
    finish(workers[1], 22);
    expect(jobOf(workers[1])?.job).toEqual(edits(3));
    finish(workers[1], 33);
    finish(workers[0], 11);
    expect(steps).toEqual([1, 2, 3]);
    expect(found).toEqual([[result(11), result(22), result(33)]]);
  });

  it('shares the runs of an answer out among all workers and sends their results to the one that asked', () => {
    const { pool, workers, heard, hear, finish } = setUp();
    pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 7, scenario, jobs: [edits(1), edits(2)] });
    expect(workers).toHaveLength(2);
    finish(workers[1], 22);
    finish(host, 11);
    expect(host.orders.slice(-3)).toEqual([
      { kind: 'job-progress', batch: 7, done: 1 },
      { kind: 'job-progress', batch: 7, done: 2 },
      { kind: 'jobs-done', batch: 7, results: [result(11), result(22)] },
    ]);
    host.say({ kind: 'asked', id: 1, done: 2, of: 2 });
    host.say({ kind: 'answered', id: 1, answer });
    expect(heard).toEqual([[2, 2], answer]);
  });

  it('leaves the rest undone when an answer is stopped, and keeps what is finished', () => {
    const { pool, workers, hear, finish } = setUp();
    const underWay = pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 1, scenario, jobs: [edits(1), edits(2), edits(3)] });
    finish(workers[1], 22);
    underWay.stop();
    expect(host.orders.at(-1)).toEqual({
      kind: 'jobs-done',
      batch: 1,
      results: [null, result(22), null],
    });
    expect(workers[1].orders.at(-1)?.kind).toBe('drop-job');
    // A later round of a stopped answer is not begun.
    host.say({ kind: 'jobs', id: 1, batch: 2, scenario, jobs: [edits(4)] });
    expect(host.orders.at(-1)).toEqual({ kind: 'jobs-done', batch: 2, results: [null] });
  });

  it('does not mistake a run that was dropped for the next one', () => {
    const { pool, workers, jobOf } = setUp(1);
    const found: unknown[] = [];
    const heard = { progress: () => {}, done: (results: unknown[]) => void found.push(results) };
    pool.jobs(scenario, [edits(1)], heard).stop();
    const dropped = jobOf(workers[0])?.id ?? -1;
    pool.jobs(scenario, [edits(2)], heard);
    workers[0].say({ kind: 'job-done', id: dropped, result: result(11) });
    expect(found).toEqual([[null]]);
    workers[0].say({ kind: 'job-done', id: jobOf(workers[0])?.id ?? -1, result: result(22) });
    expect(found).toEqual([[null], [result(22)]]);
  });

  it('gives two answers to two workers', () => {
    const { pool, workers, hear } = setUp();
    pool.answer('coil', scenario, hear);
    pool.answer('charging', scenario, hear);
    pool.answer('store', scenario, hear);
    expect(workers.map(({ orders }) => orders.length).sort()).toEqual([1, 2]);
  });

  it('fails what a broken worker had in hand, and goes on with the rest in a new one', () => {
    const { pool, workers, heard, hear, finish } = setUp(1);
    const found: (JobResult | null)[][] = [];
    pool.answer('coil', scenario, hear);
    pool.jobs(scenario, [edits(1), edits(2)], {
      progress: () => {},
      done: (results) => void found.push(results),
    });
    workers[0].onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(heard).toEqual(['out of memory']);
    expect(workers[0].ended).toBe(true);
    finish(workers[1], 22);
    expect(found).toEqual([[{ ok: false, problem: 'out of memory' }, result(22)]]);
  });
});
