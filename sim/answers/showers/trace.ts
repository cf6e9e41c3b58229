/** A shower second by second: start, eight minutes, stop, a minute's pause, start again. */
import type { Draw, PlantDescription } from '../../parts/description.ts';
import { Simulation } from '../../run/simulation.ts';
import { WARM_ENOUGH } from '../../run/tally.ts';
import { householdOf, showerOf } from '../household.ts';
import { rowPlant } from './row.ts';

const BEGINS_S = 60;
const FIRST_S = 480;
const PAUSE_S = 60;
const AGAIN_S = 120;

export interface Trace {
  /** Seconds since the water was turned on. */
  time_s: number[];
  /** Mixed to the wanted temperature where the hot line allows it; null while nothing flows. */
  outlet_C: (number | null)[];
  /** What the hot line brings to the tap: what a hand that does not mix would meet. */
  hot_line_C: (number | null)[];
  coil_outlet_C: (number | null)[];
  wait_s: number | null;
  /** Hottest at the tap before the hand mixes it, in the first shower and after the pause. */
  peak_C: number;
  /** Hottest behind the coil, ahead of any valve: the slug that stood in it. */
  slug_C: number;
  again_peak_C: number;
  /** Coldest after the pause, once the pipe's own plug has passed. */
  again_low_C: number;
  /** In the last half minute before the stop. */
  steady_C: number;
  first_s: number;
  pause_s: number;
}

/** Sources are off and the household draws nothing else. @throws RangeError without a household */
export function traceOf(plant: PlantDescription): Trace {
  const shower = showerOf(householdOf(plant).taps);
  const base = rowPlant(plant, { day: 0, starts_s: [BEGINS_S], sources: 'none' });
  const [only] = base.taps?.draws ?? [];
  const draws: Draw[] = [
    { ...only, duration_s: FIRST_S },
    { ...only, at_s: BEGINS_S + FIRST_S + PAUSE_S, duration_s: AGAIN_S },
  ];
  const simulation = new Simulation({
    ...base,
    taps: base.taps && { ...base.taps, draws },
    run: { ...base.run, days: 1, interval_s: 1 },
  });
  simulation.advance(1);
  const { channels } = simulation.result().series;
  const until_s = FIRST_S + PAUSE_S + AGAIN_S;
  const time_s = Array.from({ length: until_s + 1 }, (_, i) => i);
  const flowing = (s: number) => s < FIRST_S || (s >= FIRST_S + PAUSE_S && s < until_s);
  const read = (key: string) =>
    time_s.map((s) => {
      const value = channels[key][BEGINS_S + s];
      return flowing(s) && Number.isFinite(value) ? value : null;
    });
  const hot_line_C = read('hot_line_C');
  const coil_outlet_C = read('coil_outlet_C');
  const known = (values: (number | null)[]) => values.filter((t) => t !== null);
  const between = (from: number, to: number) => known(hot_line_C.slice(from, to));
  const first = between(1, FIRST_S);
  const again = between(FIRST_S + PAUSE_S + 1, until_s);
  const warm = (t: number) => t >= shower.wanted_C - WARM_ENOUGH;
  const wait = hot_line_C.findIndex((t) => t !== null && warm(t));
  const last = between(FIRST_S - 30, FIRST_S);
  return {
    time_s,
    outlet_C: read('outlet_C'),
    hot_line_C,
    coil_outlet_C,
    wait_s: wait < 0 || wait >= FIRST_S ? null : wait,
    peak_C: Math.max(...first),
    slug_C: Math.max(...known(coil_outlet_C)),
    again_peak_C: Math.max(...again),
    again_low_C: Math.min(...again),
    steady_C: last.reduce((sum, t) => sum + t, 0) / last.length,
    first_s: FIRST_S,
    pause_s: PAUSE_S,
  };
}
