/**
 * A handle in a hand: what it was when it was taken, and where it is now. The drawing follows the hand at once, before
 * the plant has been simulated anew; the page hears of it as edits.
 */
import { type Grip, moved, type SectionFacts } from '../../../../sim/index.ts';
import type { SectionFrame } from '../../charts/section/frame.ts';
import type { SectionHandle } from '../../charts/section/handles.ts';

export interface HeldGrip {
  /** As it was taken. */
  handle: SectionHandle;
  /** Scale and place stay while it is held: the drawing must not slip away under the finger. */
  frame: SectionFrame;
  value_m: number;
  /** Where the pointer took it; null for a hand on the keys. */
  from: { x: number; y: number } | null;
  /** Let go of: the drawing keeps to it until the page brings new facts. */
  done: boolean;
}

/** The facts as the hand has them. */
export function underHand(facts: SectionFacts, held: HeldGrip | null): SectionFacts {
  return held && stillThere(facts, held.handle.grip) ? moved(facts, held.handle.grip, held.value_m) : facts;
}

function stillThere({ coils }: SectionFacts, grip: Grip): boolean {
  return grip.what !== 'coil' || grip.coil < coils.length;
}

/** Of handles that lie close together the nearest is meant. */
export function nearest(handles: readonly SectionHandle[], at: { x: number; y: number }): SectionHandle {
  const off = ({ x, y }: SectionHandle) => Math.hypot(x - at.x, y - at.y);
  return handles.reduce((best, handle) => (off(handle) < off(best) ? handle : best));
}
