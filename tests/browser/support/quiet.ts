/** Whether this machine has its processors to itself: a time that was measured beside others' work means little. */
import { cpus } from 'node:os';
import { setTimeout as rest } from 'node:timers/promises';

/** Share of all processors that is at work over a moment. */
async function busyShare(): Promise<number> {
  const before = cpus();
  await rest(400);
  const after = cpus();
  const sum = (of: 'idle' | 'all') =>
    after.reduce((total, { times }, i) => {
      const was = before[i].times;
      const all =
        Object.values(times).reduce((a, b) => a + b, 0) - Object.values(was).reduce((a, b) => a + b, 0);
      return total + (of === 'idle' ? times.idle - was.idle : all);
    }, 0);
  return 1 - sum('idle') / sum('all');
}

/** Waits until little else is at work; false where that does not happen in time. */
export async function quietMachine(most_ms: number): Promise<boolean> {
  for (const end = Date.now() + most_ms; Date.now() < end; ) {
    if ((await busyShare()) < 0.15) return true;
  }
  return false;
}
