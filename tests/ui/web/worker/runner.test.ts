import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../sim/index.ts';
import type { Order, Report, RunReport } from '../../../../ui/web/worker/protocol.ts';
import { createRunner } from '../../../../ui/web/worker/runner.ts';
import { HandWorker } from './hand-worker.ts';

const scenario = { name: 'n' } as Scenario;

function setUp() {
  const workers: HandWorker[] = [];
  const heard: string[] = [];
  const runner = createRunner(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  });
  const run = (name: string) =>
    runner.run(scenario, 'full', (report: RunReport) => heard.push(`${name} ${report.kind}`));
  return { runner, run, heard, workers };
}

const progress = (id: number): Report => ({ id, kind: 'progress', share: 0.5 });
const runs = (orders: Order[]) => orders.flatMap((order) => (order.kind === 'run' ? [order.id] : []));

describe('a runner', () => {
  it('hands the scenario to a worker and passes its reports on', () => {
    const { run, heard, workers } = setUp();
    run('first');
    workers[0].say(progress(1));
    expect(workers[0].orders).toEqual([{ kind: 'run', id: 1, scenario, how: 'full' }]);
    expect(heard).toEqual(['first progress']);
  });

  it('keeps its worker, warm, when a run overtakes another, and tells nothing more of the older', () => {
    const { run, heard, workers } = setUp();
    run('first');
    run('second');
    workers[0].say(progress(1));
    workers[0].say(progress(2));
    expect(workers).toHaveLength(1);
    expect(runs(workers[0].orders)).toEqual([1, 2]);
    expect(heard).toEqual(['second progress']);
  });

  it('hands attached files over once, before the runs that name them, also to a fresh worker', () => {
    const { runner, run, workers } = setUp();
    const files = { 'valley.csv': 'time,air (C)' };
    const kinds = (worker: HandWorker) => worker.orders.map(({ kind }) => kind);
    runner.attach(files);
    run('first');
    run('second');
    expect(kinds(workers[0])).toEqual(['attach', 'run', 'run']);
    expect(workers[0].orders[0]).toEqual({ kind: 'attach', files });
    runner.attach({});
    expect(workers[0].orders.at(-1)).toEqual({ kind: 'attach', files: {} });
    runner.attach(files);
    workers[0].onerror?.({ message: 'out of memory' } as ErrorEvent);
    run('third');
    expect(kinds(workers[1])).toEqual(['attach', 'run']);
  });

  it('passes nothing on after a stop', () => {
    const { runner, run, heard, workers } = setUp();
    run('first');
    runner.stop();
    workers[0].say(progress(1));
    expect(workers[0].orders.at(-1)).toEqual({ kind: 'stop' });
    expect(heard).toEqual([]);
  });

  it('tells of a worker that broke, and runs on in a fresh one', () => {
    const { run, heard, workers } = setUp();
    run('first');
    workers[0].onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(heard).toEqual(['first failed']);
    expect(workers[0].ended).toBe(true);
    run('second');
    expect(workers).toHaveLength(2);
    expect(runs(workers[1].orders)).toEqual([2]);
  });
});
