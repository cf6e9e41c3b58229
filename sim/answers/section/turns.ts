/** A coil cut by the plane of the drawing: where each turn of it crosses, and which turns do not fit. */
import { turnsOf } from '../../parts/coil/course.ts';
import type { StoreDescription } from '../../parts/description.ts';
import type { SketchedCoil } from '../../scenario/index.ts';
import { narrowestWidth } from './facts.ts';

export type Misfit = 'above the water' | 'above its limit' | 'wider than the store';

/** One circle of the section. A whole turn has two: it starts in front, passes left, behind, right, and ends in front. */
export interface Crossing {
  side: 'left' | 'right';
  /** Which of the windings side by side, innermost 0. */
  winding: number;
  /** From the coil's axis to the tube's middle, outwards [m]. */
  out_m: number;
  /** Tube's middle above the inside bottom [m]. */
  height_m: number;
  misfit: Misfit | null;
}

/** Rounding of typed heights must not hatch a turn [m]. */
const SLACK_M = 5e-4;

/** Turns of each winding. Turns that are drawn out fill at least the height they are given. */
export function windingTurns(coil: SketchedCoil): number {
  const turns = turnsOf(coil, coil.rolls * coil.roll_length_m) / coil.side_by_side;
  if (!coil.stretched) return turns;
  return Math.max(turns, (coil.top_m - coil.bottom_m - coil.tube.outside_diameter_m) / coil.pitch_m);
}

/** Where the last turn ends [m], whether there is room for it or not. */
export function woundTop(coil: SketchedCoil): number {
  return coil.bottom_m + windingTurns(coil) * coil.pitch_m + coil.tube.outside_diameter_m;
}

export function crossingsOf(coil: SketchedCoil, store: StoreDescription): Crossing[] {
  const turns = windingTurns(coil);
  const radius = coil.tube.outside_diameter_m / 2;
  const crossings: Crossing[] = [];
  for (const [winding, out_m] of windingRadii(coil, store).entries()) {
    // Crossings come at a quarter and at three quarters of each turn.
    for (let half = 0; 0.25 + half / 2 <= turns + 1e-9; half++) {
      const height_m = coil.bottom_m + radius + (0.25 + half / 2) * coil.pitch_m;
      const side = half % 2 === 0 ? 'left' : 'right';
      crossings.push({ side, winding, out_m, height_m, misfit: misfitAt(coil, store, out_m, height_m) });
    }
  }
  return crossings;
}

/** Turns that do not fit, in halves, by the first reason met; null where all fit. */
export function misfitOf(
  coil: SketchedCoil,
  store: StoreDescription,
): { turns: number; of: number; why: Misfit } | null {
  const crossings = crossingsOf(coil, store);
  const wrong = crossings.filter(({ misfit }) => misfit !== null);
  if (wrong.length === 0) return null;
  const of = windingTurns(coil) * coil.side_by_side;
  return { turns: Math.min(of, wrong.length / 2), of, why: wrong[0].misfit as Misfit };
}

/** To the tube's middle [m], innermost winding first: one pitch apart, closer where store or eye are too small. */
export function windingRadii(coil: SketchedCoil, { shape }: StoreDescription): number[] {
  const { side_by_side: count, tube, coil_diameter_m } = coil;
  const outside = tube.outside_diameter_m;
  const radius = coil_diameter_m / 2;
  const width = narrowestWidth(shape, coil.bottom_m, woundTop(coil));
  const room = Math.min(radius - outside, (width - outside) / 2 - radius);
  const apart = count === 1 ? 0 : Math.max(outside, Math.min(coil.pitch_m, (2 * room) / (count - 1)));
  return Array.from({ length: count }, (_, i) => radius + (i - (count - 1) / 2) * apart);
}

function misfitAt(
  { limit_m, tube }: SketchedCoil,
  { shape, water_depth_m }: StoreDescription,
  out_m: number,
  height_m: number,
): Misfit | null {
  const radius_m = tube.outside_diameter_m / 2;
  const [low, high] = [height_m - radius_m, height_m + radius_m];
  if (high > water_depth_m + SLACK_M) return 'above the water';
  if (limit_m !== null && high > limit_m + SLACK_M) return 'above its limit';
  return 2 * (out_m + radius_m) > narrowestWidth(shape, low, high) + SLACK_M ? 'wider than the store' : null;
}
