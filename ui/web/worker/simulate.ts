/** Every worker of the page: runs the design, works out answers, does the runs that answers need. */
import type { ReadContext } from '../../../sim/index.ts';
import type { AskOrder, Attached, Order, Report } from './protocol.ts';
import { createRunSlot } from './run-slot.ts';

const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();

let context: ReadContext = {};
let answerDesk: ((order: AskOrder) => void) | null = null;
const doors = {
  context: () => context,
  say: (report: Report, transfer: Transferable[] = []) => self.postMessage(report, { transfer }),
  now: () => performance.now(),
  /** A message to oneself comes after those that wait already; a timer would rest for milliseconds. */
  nextTurn: () =>
    new Promise<void>((resolve) => {
      waiting.push(resolve);
      port2.postMessage(null);
    }),
};
const runSlot = createRunSlot(doors);

/** Most workers only run, and most designs name no file: the code for the rest is loaded when it is wanted. */
async function take(order: Order): Promise<void> {
  if (order.kind === 'run' || order.kind === 'stop') runSlot(order);
  else if (order.kind === 'attach') context = await contextOf(order.files);
  else {
    answerDesk ??= (await import('./answer-desk.ts')).createAnswerDesk(doors);
    answerDesk(order);
  }
}

async function contextOf(files: Attached): Promise<ReadContext> {
  if (Object.keys(files).length === 0) return {};
  return (await import('./weather.ts')).withWeather(files);
}

/** Orders wait for what the ones before them need. */
let before = Promise.resolve();
self.onmessage = ({ data }: MessageEvent<Order>) => {
  before = before.then(() => take(data)).catch(broken);
};

/** Told as what it is, a worker that cannot go on. */
function broken(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}
