/** Every worker of the page: runs the design, works out answers, does the runs that answers need. */
import { createAnswerDesk } from './answer-desk.ts';
import type { Order, Report } from './protocol.ts';
import { createRunSlot } from './run-slot.ts';

const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();

const doors = {
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
const answerDesk = createAnswerDesk(doors);

self.onmessage = ({ data }: MessageEvent<Order>) => {
  if (data.kind === 'run' || data.kind === 'stop') runSlot(data);
  else answerDesk(data);
};
