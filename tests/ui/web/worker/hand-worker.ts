/** Stands for the browser's worker: keeps what it was told, and says what a test has it say. */
import type { Order, Report } from '../../../../ui/web/worker/protocol.ts';
import type { WorkerLike } from '../../../../ui/web/worker/runner.ts';

export class HandWorker implements WorkerLike {
  orders: Order[] = [];
  ended = false;
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;

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
