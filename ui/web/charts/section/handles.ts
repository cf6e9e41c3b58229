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

/** Places tried along each seat. */
const TRIES = 9;

export function handlesOf(frame: SectionFrame, facts: SectionFacts, units: Units): SectionHandle[] {
  const placed: { x: number; y: number }[] = [];
  return gripsOf(facts).map((grip) => {
    const seat = seatOf(frame, facts, grip);
    const place = roomiest(seat, placed);
    placed.push(place);
    return {
      key: gripKey(grip),
      grip,
      label: gripLabel(grip, facts),
      text: gripText(grip, facts, units),
      misfit: gripMisfit(grip, facts),
      ...gripRange(facts, grip),
      ...place,
      grows: seat.grows,
    };
  });
}

export function gripKey(grip: Grip): string {
  if (grip.what === 'coil') return `coil-${grip.coil}-${grip.end}`;
  return grip.what === 'sheet' ? `sheet-${grip.face}` : grip.what;
}

/** The place on a seat that is farthest from every handle already placed; its start if there is none. */
function roomiest({ from, to }: Seat, placed: readonly { x: number; y: number }[]): { x: number; y: number } {
  let best = { x: from[0], y: from[1] };
  let most = -1;
  for (let i = 0; i < TRIES; i++) {
    const share = i / (TRIES - 1);
    const place = { x: from[0] + share * (to[0] - from[0]), y: from[1] + share * (to[1] - from[1]) };
    const distances = placed.map(({ x, y }) => Math.hypot(x - place.x, y - place.y));
    // Past 100 px more room is no gain: the first such place keeps handles where eyes expect them.
    const distance = Math.min(100, ...distances);
    if (distance > most + 0.5) [best, most] = [place, distance];
  }
  return best;
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
