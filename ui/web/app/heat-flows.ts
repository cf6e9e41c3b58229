/** Where the heat of a span came from, passed and ended: the ledger over any stretch of a run, as flows. */
import type { Series } from '../../../sim/index.ts';
import type { heatWords } from '../../words/index.ts';
import type { TimeSpan } from '../charts/frame.ts';
import { sampleAt, sumBetween } from '../charts/thin.ts';

export type HeatPlace = keyof typeof heatWords.long;

export interface HeatFlow {
  from: HeatPlace;
  to: HeatPlace;
  /** Never below nought: what ran backwards has its ends swapped. */
  energy_J: number;
  /** Into the plant, out of it, from part to part, or into and out of what the parts hold. */
  side: 'in' | 'inside' | 'out' | 'held';
}

export interface HeatBalance {
  flows: HeatFlow[];
  in_J: number;
  out_J: number;
  /** Energy held at the end less energy held at the start. */
  stored_J: number;
  /** In - out - stored: nothing but rounding. */
  residual_J: number;
  /** All that came in, with what the plant as a whole gave up where it cooled down; shares are of this. */
  spent_J: number;
}

type Path = [
  channels: [string, sign: 1 | -1][],
  from: HeatPlace,
  to: HeatPlace,
  side: 'in' | 'inside' | 'out',
];

const paths: Path[] = [
  [[['fuel_W', 1]], 'fuel', 'engine', 'in'],
  [[['absorbed_W', 1]], 'sunshine', 'collector', 'in'],
  [[['make_up_W', 1]], 'make_up', 'store', 'in'],
  [[['backup_W', 1]], 'heater', 'water', 'in'],
  [
    [
      ['engine_W', 1],
      ['standby_W', -1],
    ],
    'engine',
    'store',
    'inside',
  ],
  [
    [
      ['collector_W', 1],
      ['night_W', -1],
    ],
    'collector',
    'store',
    'inside',
  ],
  [[['household_W', 1]], 'store', 'water', 'inside'],
  [[['radiator_W', 1]], 'engine', 'radiator', 'out'],
  [[['engine_loss_W', 1]], 'engine', 'engine_air', 'out'],
  [[['loss_W', 1]], 'store', 'walls', 'out'],
  [[['evaporation_W', 1]], 'store', 'vapour', 'out'],
  [[['taps_W', 1]], 'water', 'taps', 'out'],
  [[['tap_pipe_W', 1]], 'water', 'pipe', 'out'],
  [[['collector_loss_W', 1]], 'collector', 'collector_air', 'out'],
];

/** Parts that hold heat; what a part took in and did not give on, it holds. */
const holders = ['engine', 'collector', 'water'] as const;

export function heatBalance(
  { channels, time_s, interval_s }: Series,
  { from_s, to_s }: TimeSpan,
): HeatBalance {
  // A sample closes its interval: those after the start, up to the end.
  const after = (at_s: number) => sampleAt(time_s, at_s) + Number(time_s[sampleAt(time_s, at_s)] <= at_s);
  const [first, end] = [after(from_s), after(to_s)];
  const energy_J = (name: string) =>
    channels[name] ? sumBetween(channels[name], first, end) * interval_s : 0;
  const flows: HeatFlow[] = [];
  const gained_J: Partial<Record<HeatPlace, number>> = {};
  const add = (from: HeatPlace, to: HeatPlace, amount_J: number, side: HeatFlow['side']) => {
    if (amount_J > 0) flows.push({ from, to, energy_J: amount_J, side });
  };
  for (const [parts, from, to, side] of paths) {
    const amount_J = parts.reduce((sum, [name, sign]) => sum + sign * energy_J(name), 0);
    gained_J[from] = (gained_J[from] ?? 0) - amount_J;
    gained_J[to] = (gained_J[to] ?? 0) + amount_J;
    add(from, to, amount_J, side);
    // Backwards: out to where it came from, in from the air around, or back from part to part.
    if (side === 'in') add(to, to === 'collector' ? 'collector_air' : 'vapour', -amount_J, 'out');
    if (side === 'out') add('around', from, -amount_J, 'in');
    if (side === 'inside') {
      add(to, 'creeping', -amount_J, side);
      add('crept', from, -amount_J, side);
    }
  }
  const stored_J = energy_J('stored_W');
  let rest_J = stored_J;
  const hold = (place: HeatPlace, amount_J: number) => {
    add(place, 'kept', amount_J, 'held');
    add('held', place, -amount_J, 'held');
  };
  for (const place of holders) {
    const amount_J = gained_J[place] ?? 0;
    hold(place, amount_J);
    rest_J -= amount_J;
  }
  hold('store', rest_J);
  const sum = (side: HeatFlow['side']) =>
    flows.reduce((total, flow) => total + (flow.side === side ? flow.energy_J : 0), 0);
  const [in_J, out_J] = [sum('in'), sum('out')];
  const spent_J = in_J + Math.max(0, -stored_J);
  return { flows, in_J, out_J, stored_J, residual_J: in_J - out_J - stored_J, spent_J };
}
