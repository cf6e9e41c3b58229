/** What fails during a run: which machine stands still, who draws nothing, how cold it turns, and from when to when. */
import type { Fault } from './description.ts';
import type { Opening } from './draw-calendar.ts';

/** A cold spell comes and goes within this, so that nothing jumps [s] (a front's passage; judgement). */
const FRONT_S = 3600;

/** Whether a fault of a kind holds at a time of the run [s]: from its beginning until before its end. */
export function fails(faults: readonly Fault[], kind: Fault['kind'], t: number): boolean {
  return faults.some((each) => each.kind === kind && t >= each.from_s && t < each.to_s);
}

/** Times of the run at which a fault begins, ends or bends the equations [s]. */
export function faultEdges(faults: readonly Fault[]): number[] {
  return faults.flatMap(({ kind, from_s, to_s }) => {
    if (kind !== 'cold spell') return [from_s, to_s];
    const front = frontOf(from_s, to_s);
    return [from_s, from_s + front, to_s - front, to_s];
  });
}

/** Air outdoors [C] at a time of the run: no warmer than what cold spells leave of the weather's own. */
export function withColdSpells(faults: readonly Fault[], t: number, weather_C: number): number {
  let coldest = weather_C;
  for (const fault of faults) {
    if (fault.kind !== 'cold spell' || t <= fault.from_s || t >= fault.to_s) continue;
    const front = frontOf(fault.from_s, fault.to_s);
    const share = Math.min(1, (t - fault.from_s) / front, (fault.to_s - t) / front);
    coldest = Math.min(coldest, weather_C + share * (fault.temperature_C - weather_C));
  }
  return coldest;
}

/** Draws that are left: one under way as nobody can draw any more ends there, one to begin then does not begin. */
export function withoutFailedDraws(openings: readonly Opening[], faults: readonly Fault[]): Opening[] {
  const dry = faults.filter(({ kind }) => kind === 'household');
  if (dry.length === 0) return [...openings];
  return openings.flatMap((opening) => {
    if (fails(dry, 'household', opening.from_s)) return [];
    const ends = dry.map(({ from_s }) => from_s).filter((from_s) => from_s > opening.from_s);
    return [{ ...opening, to_s: Math.min(opening.to_s, ...ends) }];
  });
}

function frontOf(from_s: number, to_s: number): number {
  return Math.min(FRONT_S, (to_s - from_s) / 2);
}
