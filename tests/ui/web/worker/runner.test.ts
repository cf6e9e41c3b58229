import { describe, expect, it } from 'vitest';
import type { Order, Report } from '../../../../ui/web/worker/protocol.ts';
import { createRunner, type WorkerLike } from '../../../../ui/web/worker/runner.ts';

/** Stands for the browser's worker: keeps what it was told, and says what a test has it say. */
class HandWorker implements WorkerLike {
  static started: HandWorker[] = [];
  orders: Order[] = [];
  ended = false;
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;

  constructor() {
    HandWorker.started.push(this);
  }
  postMessage(order: Order): void {
    this.orders.push(order);
  }
  terminate(): void {
    this.ended = true;
  }
  say(report: Report): void {
    this.onmessage?.({ data: report } as MessageEvent<Report>);
  }
}

function setUp() {
  HandWorker.started = [];
  const heard: string[] = [];
  const runner = createRunner(() => new HandWorker());
  const run = (name: string) => runner.run(name, (report) => heard.push(`${name} ${report.kind}`));
  return { runner, run, heard, workers: HandWorker.started };
}

describe('a runner', () => {
  it('hands the scenario to a worker and passes its reports on', () => {
    const { run, heard, workers } = setUp();
    run('first');
    workers[0].say({ kind: 'progress', share: 0.5 });
    workers[0].say({ kind: 'refused', troubles: [] });
    expect(workers[0].orders).toEqual([{ scenario: 'first' }]);
    expect(heard).toEqual(['first progress', 'first refused']);
  });

  it('keeps a worker that has finished for the next run', () => {
    const { run, workers } = setUp();
    run('first');
    workers[0].say({ kind: 'refused', troubles: [] });
    run('second');
    expect(workers).toHaveLength(1);
    expect(workers[0].ended).toBe(false);
  });

  it('ends a run that is overtaken: the latest wins', () => {
    const { run, heard, workers } = setUp();
    run('first');
    run('second');
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    workers[1].say({ kind: 'progress', share: 1 });
    expect(heard).toEqual(['second progress']);
  });

  it('ends the run when told to, and can run again', () => {
    const { runner, run, workers } = setUp();
    run('first');
    runner.stop();
    expect(workers[0].ended).toBe(true);
    run('second');
    expect(workers[1].orders).toHaveLength(1);
  });

  it('tells of a worker that broke', () => {
    const { runner, workers } = setUp();
    const reports: Report[] = [];
    runner.run('first', (report) => reports.push(report));
    workers[0].onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(reports).toMatchObject([{ kind: 'refused', troubles: [{ got: 'out of memory' }] }]);
    expect(workers[0].ended).toBe(true);
  });
});
