/** Handles over the drawing: one for each grip, each on its own line or edge, as far from the others as it can be. */
import {
  drawnWidth,
  type Grip,
  type GripRange,
  gripRange,
  gripsOf,
  insideHeight,
  type SectionFacts,
} from '../../../../sim/index.ts';
import { gripLabel, gripMisfit, gripText, type Units } from '../../../words/index.ts';
import { outerOf, type SectionFrame, sheetsThickness, xAt, yAt } from './frame.ts';

export interface SectionHandle extends GripRange {
  /** The same for the same grip in every drawing. */
  key: string;
  grip: Grip;
  label: string;
  /** Where it stands, in words, and what does not fit because of it. */
  text: string;
  misfit: string;
  x: number;
  y: number;
  /** Where a hand pulls it to make it more. */
  grows: 'up' | 'down' | 'left';
}

/** A line on which a handle may sit. */
interface Seat {
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  grows: SectionHandle['grows'];
}

interface Place {
  x: number;
  y: number;
}

/** Places tried along each seat. */
const TRIES = 13;
const ROUNDS = 5;

export function handlesOf(frame: SectionFrame, facts: SectionFacts, units: Units): SectionHandle[] {
  const seats = gripsOf(facts).map((grip) => ({ grip, seat: seatOf(frame, facts, grip) }));
  const places = apart(seats.map(({ seat }) => seat));
  return seats.map(({ grip, seat }, i) => ({
    key: gripKey(grip),
    grip,
    label: gripLabel(grip, facts),
    text: gripText(grip, facts, units),
    misfit: gripMisfit(grip, facts),
    ...gripRange(facts, grip),
    ...places[i],
    grows: seat.grows,
  }));
}

function gripKey(grip: Grip): string {
  if (grip.what === 'coil') return `coil-${grip.coil}-${grip.end}`;
  return grip.what === 'sheet' ? `sheet-${grip.face}` : grip.what;
}

/** A place on each seat: all push each other away, by turns, until they hardly move any more. */
function apart(seats: readonly Seat[]): Place[] {
  const places = seats.map(({ from }): Place => ({ x: from[0], y: from[1] }));
  for (let round = 0; round < ROUNDS; round++) {
    for (const [i, { from, to }] of seats.entries()) {
      let least = Number.POSITIVE_INFINITY;
      for (let t = 0; t < TRIES; t++) {
        const share = t / (TRIES - 1);
        const x = from[0] + share * (to[0] - from[0]);
        const y = from[1] + share * (to[1] - from[1]);
        const push = places.reduce(
          (sum, other, j) => (j === i ? sum : sum + 1 / (1 + (x - other.x) ** 2 + (y - other.y) ** 2)),
          0,
        );
        if (push < least) {
          least = push;
          places[i] = { x, y };
        }
      }
    }
  }
  return places;
}

function seatOf(frame: SectionFrame, facts: SectionFacts, grip: Grip): Seat {
  const { store, coils } = facts;
  const half = drawnWidth(store.shape) / 2;
  const height = insideHeight(store.shape);
  const outer = outerOf(store);
  const level = (height_m: number, left_m: number, right_m: number, grows: Seat['grows'] = 'up'): Seat => ({
    from: [xAt(frame, left_m), yAt(frame, height_m)],
    to: [xAt(frame, right_m), yAt(frame, height_m)],
    grows,
  });
  if (grip.what === 'water') return level(store.water_depth_m, -0.88 * half, 0.5 * half);
  if (grip.what === 'coil') {
    const coil = coils[grip.coil];
    const reach = Math.min(half, coil.coil_diameter_m / 2);
    const { value_m } = gripRange(facts, grip);
    return level(Math.min(value_m, height), reach, -reach);
  }
  if (grip.face === 'bottom') return level(-outer.below_m, 0.9 * half, -0.9 * half, 'down');
  if (grip.face === 'lid') return level(height + outer.above_m, 0.9 * half, -0.9 * half);
  const x = xAt(frame, -half - store.wall.thickness_m - sheetsThickness(store.insulation.sides));
  return { from: [x, yAt(frame, height / 2)], to: [x, yAt(frame, height * 0.2)], grows: 'left' };
}
