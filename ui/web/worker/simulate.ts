/** The worker: reads a scenario, runs it, reports on the way, and hands the series over without copying them. */
import { type Result, readScenario, simulate } from '../../../sim/index.ts';
import type { Trouble } from '../../words/index.ts';
import type { Order, Report } from './protocol.ts';

/** A bar moves visibly by this much; more messages would only slow the run. */
const reportEvery = 0.01;

function run({ scenario }: Order): void {
  const read = readScenario(scenario, {});
  if (!read.ok) {
    report({
      kind: 'refused',
      troubles: read.problems.map(({ path, expected, got, fix }) => ({ where: path, expected, got, fix })),
    });
    return;
  }
  let reported = 0;
  const result = simulate(read.plant, {
    onProgress(share) {
      if (share < reported + reportEvery) return;
      reported = share;
      report({ kind: 'progress', share });
    },
  });
  report(
    { kind: 'done', result, firstWeekday: read.plant.run.first_weekday, filled: read.filled.length },
    buffersOf(result),
  );
}

function buffersOf({ series }: Result): ArrayBuffer[] {
  const arrays = [series.time_s, series.height_m, series.layer_C, ...Object.values(series.channels)];
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}

function failed(error: unknown): Trouble {
  return {
    where: 'The run',
    expected: 'a result',
    got: error instanceof Error ? error.message : String(error),
    fix: 'change the scenario where the message points',
  };
}

function report(message: Report, transfer: Transferable[] = []): void {
  self.postMessage(message, { transfer });
}

self.onmessage = ({ data }: MessageEvent<Order>) => {
  try {
    run(data);
  } catch (error) {
    report({ kind: 'refused', troubles: [failed(error)] });
  }
};
