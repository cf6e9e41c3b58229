import { describe, expect, it } from 'vitest';
import type { Answer, JobResult, RangeAnswer, Scenario, Series } from '../../../../sim/index.ts';
import { createPool, type Heard } from '../../../../ui/web/worker/pool.ts';
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
    const { pool, workers, hear, jobOf, finish } = setUp();
    pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 7, scenario, jobs: [edits(1), edits(2), edits(3)] });
    expect(workers).toHaveLength(2);
    const other = workers[1];
    expect(jobOf(other)?.job).toEqual(edits(2));
    finish(other, 22);
    expect(jobOf(other)?.job).toEqual(edits(3));
    finish(other, 33);
    finish(host, 11);
    expect(host.orders.slice(-4)).toEqual([
      { kind: 'job-progress', batch: 7, done: 1 },
      { kind: 'job-progress', batch: 7, done: 2 },
      { kind: 'job-progress', batch: 7, done: 3 },
      { kind: 'jobs-done', batch: 7, results: [result(11), result(22), result(33)] },
    ]);
  });

  it('passes on how far an answer is, and the answer', () => {
    const { pool, workers, heard, hear } = setUp();
    pool.answer('store', scenario, hear);
    workers[0].say({ kind: 'asked', id: 1, done: 2, of: 2 });
    workers[0].say({ kind: 'answered', id: 1, answer });
    expect(heard).toEqual([[2, 2], answer]);
  });

  it('asks for a range as it does for an answer', () => {
    const { pool, workers, hear } = setUp();
    pool.range('run.days=1:3:3', scenario, hear as unknown as Heard<RangeAnswer>);
    expect(workers[0].orders).toEqual([
      { kind: 'ask', id: 1, question: { vary: 'run.days=1:3:3' }, scenario },
    ]);
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
    const { pool, workers, hear, jobOf, finish } = setUp(1);
    const underWay = pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 1, scenario, jobs: [edits(1)] });
    const dropped = jobOf(host)?.id ?? -1;
    underWay.stop();
    pool.answer('hours', scenario, hear);
    host.say({ kind: 'jobs', id: 3, batch: 2, scenario, jobs: [edits(2)] });
    host.say({ kind: 'job-done', id: dropped, result: result(11) });
    expect(host.orders.at(-1)?.kind).toBe('job');
    finish(host, 22);
    expect(host.orders.at(-1)).toEqual({ kind: 'jobs-done', batch: 2, results: [result(22)] });
  });

  it('hands attached files to every worker before what it is asked, whenever it starts', () => {
    const { pool, workers, hear } = setUp();
    const files = { 'valley.csv': 'time,air (C)' };
    pool.answer('coil', scenario, hear);
    pool.attach(files);
    expect(workers[0].orders.at(-1)).toEqual({ kind: 'attach', files });
    pool.answer('store', scenario, hear);
    expect(workers[1].orders.map(({ kind }) => kind)).toEqual(['attach', 'ask']);
  });

  it('gives two answers to two workers', () => {
    const { pool, workers, hear } = setUp();
    pool.answer('coil', scenario, hear);
    pool.answer('charging', scenario, hear);
    pool.answer('store', scenario, hear);
    expect(workers.map(({ orders }) => orders.length).sort()).toEqual([1, 2]);
  });

  it('fails what a broken worker had in hand, and goes on with the rest in a new one', () => {
    const { pool, workers, heard, hear, finish } = setUp();
    pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 1, scenario, jobs: [edits(1), edits(2), edits(3)] });
    workers[1].onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(workers[1].ended).toBe(true);
    finish(workers[2], 33);
    finish(host, 11);
    const results = [result(11), { ok: false, problem: 'out of memory' }, result(33)];
    expect(host.orders.at(-1)).toEqual({ kind: 'jobs-done', batch: 1, results });
    host.onerror?.({ message: 'no more' } as ErrorEvent);
    expect(heard).toEqual(['no more']);
  });

  it('ends the workers that work answers out once nobody waits for them; a closer look is asked for anew', () => {
    const { pool, workers, heard, hear, jobOf } = setUp(1);
    const { length } = heard;
    pool.answer('store', scenario, hear);
    const [host] = workers;
    host.say({ kind: 'jobs', id: 1, batch: 7, scenario, jobs: [edits(1)] });
    const looked: unknown[] = [];
    const stretch = { from_s: 0, to_s: 600, interval_s: 10 };
    pool.detail(scenario, stretch, (series) => void looked.push(series));
    pool.endAnswers();
    expect(host.ended).toBe(true);
    const [, fresh] = workers;
    expect(fresh.orders).toEqual([{ kind: 'detail', id: expect.any(Number), scenario, stretch }]);
    expect(jobOf(fresh)).toBeNull();
    // What is still said of the old answer is not heard.
    host.say({ kind: 'answered', id: 1, answer });
    expect(heard).toHaveLength(length);
    const [order] = fresh.orders;
    const series = {} as Series;
    if ('id' in order) fresh.say({ kind: 'detailed', id: order.id, series });
    expect(looked).toEqual([series]);
  });

  it('leaves workers alone that work no answer out', () => {
    const { pool, workers } = setUp();
    pool.detail(scenario, { from_s: 0, to_s: 600, interval_s: 10 }, () => {});
    pool.endAnswers();
    expect(workers.map(({ ended }) => ended)).toEqual([false]);
  });
});
