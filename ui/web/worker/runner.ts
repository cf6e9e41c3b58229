/**
 * Runs one scenario at a time in a worker; a new order ends the one before it. A run computes without pause and
 * could not hear a message, so ending it means ending its worker.
 */
import type { Trouble } from '../../words/index.ts';
import type { Order, Report } from './protocol.ts';

/** The part of a worker that a runner needs. */
export interface WorkerLike {
  postMessage(order: Order): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Report>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface Runner {
  /** Reports to `heard` until done or refused, or until another run is started or this one stopped. */
  run(scenario: unknown, heard: (report: Report) => void): void;
  stop(): void;
}

export function createRunner(startWorker: () => WorkerLike): Runner {
  let worker: WorkerLike | null = null;
  let busy = false;

  function stop(): void {
    if (!busy) return;
    worker?.terminate();
    worker = null;
    busy = false;
  }

  return {
    stop,
    run(scenario, heard) {
      stop();
      busy = true;
      worker ??= startWorker();
      worker.onmessage = ({ data }) => {
        if (data.kind !== 'progress') busy = false;
        heard(data);
      };
      worker.onerror = (event) => {
        event.preventDefault?.();
        stop();
        heard({ kind: 'refused', troubles: [crashed(event.message)] });
      };
      worker.postMessage({ scenario });
    },
  };
}

function crashed(message: string | undefined): Trouble {
  return {
    where: 'The run',
    expected: 'a result',
    got: message || 'a worker that did not start',
    fix: 'choose another scenario, or load the page again',
  };
}
