/** The page's side of the run worker: one run at a time, the latest wins, reports of older ones are not passed on. */
import type { Problem, Scenario } from '../../../sim/index.ts';
import { workWords } from '../../words/index.ts';
import type { Attached, Order, Report, RunOrder, RunReport } from './protocol.ts';

/** The part of a worker that the page needs. */
export interface WorkerLike {
  postMessage(order: Order): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Report>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

type How = Extract<RunOrder, { kind: 'run' }>['how'];

export interface Runner {
  /** Files that the scenarios of the runs from now on name. */
  attach(files: Attached): void;
  /** Reports to `heard` until done, refused or failed, or until another run is started or this one stopped. */
  run(scenario: Scenario, how: How, heard: (report: RunReport) => void): void;
  stop(): void;
}

export function createRunner(startWorker: () => WorkerLike): Runner {
  let worker: WorkerLike | null = null;
  let attached: Attached | null = null;
  let latest = 0;
  let hear: ((report: RunReport) => void) | null = null;

  function start(): WorkerLike {
    const started = startWorker();
    started.onmessage = ({ data }) => {
      if ('id' in data && data.id === latest) hear?.(data as RunReport);
    };
    started.onerror = (event) => {
      event.preventDefault?.();
      // What broke once may be broken for good: the next run gets a fresh one.
      started.terminate();
      worker = null;
      hear?.({ id: latest, kind: 'failed', problem: crashed(event.message) });
    };
    if (attached) started.postMessage({ kind: 'attach', files: attached });
    return started;
  }

  return {
    attach(files) {
      attached = files;
      worker?.postMessage({ kind: 'attach', files });
    },
    run(scenario, how, heard) {
      worker ??= start();
      hear = heard;
      worker.postMessage({ kind: 'run', id: ++latest, scenario, how });
    },
    stop() {
      hear = null;
      worker?.postMessage({ kind: 'stop' });
    },
  };
}

function crashed(message: string | undefined): Problem {
  return {
    path: '',
    expected: workWords.expected,
    got: message || workWords.notStarted,
    fix: workWords.load,
  };
}
