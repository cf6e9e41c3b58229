/** A stretch of a run sampled more closely than the run itself, as to see a single shower. */
import type { PlantDescription } from '../parts/description.ts';
import type { Series } from './result.ts';
import { Simulation } from './simulation.ts';

export interface Stretch {
  from_s: number;
  to_s: number;
  interval_s: number;
}

/**
 * Series of a stretch. The run is repeated from its start, since the store remembers; samples do not steer the
 * steps, so that the stretch is the same run, to the bit. The first sample stands at or before `from_s`.
 */
export function detailOf(plant: PlantDescription, { from_s, to_s, interval_s }: Stretch): Series {
  // One interval earlier: the first sample closes none.
  const start_s = Math.max(0, Math.floor(from_s / interval_s) - 1) * interval_s;
  const days = Math.min(plant.run.days, Math.ceil(to_s / 86_400));
  const run = { ...plant.run, days, interval_s };
  const simulation = new Simulation({ ...plant, run }, [], start_s);
  simulation.advance(days);
  const { series } = simulation.result();
  const first = start_s === 0 ? 0 : 1;
  const count = Math.min(series.time_s.length, Math.floor((to_s - start_s) / interval_s) + 1);
  const cut = (values: Float32Array, per = 1) => values.slice(first * per, count * per);
  return {
    ...series,
    time_s: series.time_s.slice(first, count),
    layer_C: cut(series.layer_C, series.layers),
    channels: Object.fromEntries(Object.entries(series.channels).map(([key, values]) => [key, cut(values)])),
  };
}
