/** Where each loop's pipes come down through the lid to the two ends of its coil, so placed that few of them cross. */
import { crossingsOf, drawnWidth, insideHeight, type SectionFacts } from '../../../../sim/index.ts';
import { type SectionFrame, xAt, yAt } from './frame.ts';
import type { Loop } from './loops.ts';

export interface Riser {
  x: number;
  /** Where it meets the coil. */
  foot_x: number;
  foot_y: number;
}

export interface LoopRisers {
  side: 'left' | 'right';
  into: Riser;
  out: Riser;
}

type Store = SectionFacts['store'];

/** Pipes closer than this run into each other [px]. */
const APART = 8;

export function risersOf(frame: SectionFrame, store: Store, loops: readonly Loop[]): LoopRisers[] {
  const ways = loops.reduce<('left' | 'right')[][]>(
    (all, { user }) =>
      all.flatMap((sides) => {
        if (user === 'collector')
          return [
            [...sides, 'left' as const],
            [...sides, 'right' as const],
          ];
        return [[...sides, user === 'engine' ? ('left' as const) : ('right' as const)]];
      }),
    [[]],
  );
  const placed = ways.map((sides) => loops.map((loop, i) => loopRisers(frame, store, loop, sides[i])));
  const best = placed.reduce((a, b) => (inversions(b) < inversions(a) ? b : a));
  pushApart(frame, store, best);
  return best;
}

function loopRisers(frame: SectionFrame, store: Store, { coil }: Loop, side: 'left' | 'right'): LoopRisers {
  const sign = side === 'left' ? -1 : 1;
  const own = crossingsOf(coil, store).filter((crossing) => crossing.side === side);
  const radius = coil.coil_diameter_m / 2;
  const [first, last] = [own[0], own[own.length - 1]];
  const low = {
    x: xAt(frame, sign * (first?.out_m ?? radius)),
    y: yAt(frame, first?.height_m ?? coil.bottom_m),
  };
  // Turns that stand out of the store have no pipe to them.
  const top_m = Math.min(last?.height_m ?? coil.top_m, insideHeight(store.shape));
  const high = { x: xAt(frame, sign * (last?.out_m ?? radius)), y: yAt(frame, top_m) };
  const inset = Math.max(APART, 1.5 * coil.tube.outside_diameter_m * frame.px_per_m);
  // The upper end goes straight up; the lower one comes up inside the turns.
  const top: Riser = { x: high.x, foot_x: high.x, foot_y: high.y };
  const bottom: Riser = { x: low.x - sign * inset, foot_x: low.x, foot_y: low.y };
  return coil.fed_from === 'bottom' ? { side, into: bottom, out: top } : { side, into: top, out: bottom };
}

/** Pairs of pipes that change their order between machines and store. */
function inversions(risers: readonly LoopRisers[]): number {
  const xs = risers.flatMap(({ into, out }) => [into.x, out.x]);
  let count = 0;
  for (let i = 0; i < xs.length; i++) for (let j = i + 1; j < xs.length; j++) if (xs[i] > xs[j]) count++;
  return count;
}

function pushApart(frame: SectionFrame, { shape }: Store, risers: readonly LoopRisers[]): void {
  const all = risers.flatMap(({ into, out }) => [into, out]).sort((a, b) => a.x - b.x);
  const half = drawnWidth(shape) / 2;
  const [left, right] = [xAt(frame, -half) + 3, xAt(frame, half) - 3];
  let least = left;
  for (const riser of all) {
    riser.x = Math.max(riser.x, least);
    least = riser.x + APART;
  }
  let most = right;
  for (const riser of all.toReversed()) {
    riser.x = Math.min(riser.x, most);
    most = riser.x - APART;
  }
}
