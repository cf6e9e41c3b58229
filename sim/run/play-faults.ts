/** What fails at a restart of a run, or works again. */
import { fails } from '../parts/faults.ts';
import type { Plant } from '../plant/plant.ts';
import type { RunEvent } from './result.ts';

/** Stops what a fault stops from now on; gives back what begins or ends to fail, to be logged. */
export function playFaults(plant: Plant, t: number, y: number[]): RunEvent[] {
  const { faults } = plant.description.run;
  if (faults.length === 0) return [];
  const { collector, store } = plant;
  if (collector) {
    collector.mayPump = !fails(faults, 'collector pump', t);
    if (!collector.mayPump && collector.pumping) {
      store.prepare(y);
      collector.stop(t, y, store);
    }
  }
  return faults.flatMap(({ kind, from_s, to_s }) => {
    const [begins, over] =
      kind === 'cold spell' ? ['spell.begins', 'spell.over'] : ['fault.begins', 'fault.over'];
    const name = t === from_s ? begins : t === to_s ? over : null;
    return name === null ? [] : [{ time_s: t, part: kind, name }];
  });
}
