/**
 * What the sun spares the engine, by size and month. An engine called for heat runs less by itself: its runs tell. A
 * timetable goes on as it did, sun or not: there, what would be enough to keep the showers warm is set against what
 * would be enough without a collector.
 */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import { chargingTime, planOf } from '../hours/engine-span.ts';
import { MOST_STEPS, STEP_s, warmHours } from '../hours/warm-hours.ts';
import { daysOfMonth } from '../stretch.ts';
import type { Sweep } from '../sweep.ts';
import type { Size } from './sizes.ts';

const MONTHS = 12;
const USUAL_STEPS = 8;

/** Steps a day by month: null where half a day is not enough, undefined where not known. */
type Steps = (number | null | undefined)[];

/**
 * Time a day that keeps the showers warm [s], by size and month; null where half a day does not, undefined where runs
 * failed or were left undone. More collector never asks for more: sizes between two that need the same are not run.
 */
export async function needBySize(
  sweep: Sweep,
  plant: PlantDescription,
  engine: EngineDescription,
  sizes: readonly Size[],
): Promise<Steps[]> {
  const plan = planOf(engine, plant.taps?.draws ?? []);
  const steps: Steps[] = sizes.map(() => new Array(MONTHS).fill(undefined));
  const charging = Math.round(chargingTime(engine) / STEP_s) || USUAL_STEPS;
  for (const round of roundsOf(sizes.length)) {
    const cases = round.flatMap(({ size, below, above }) =>
      Array.from({ length: MONTHS }, (_, month) => {
        const most = below === null ? null : steps[below][month];
        const least = above === null ? 0 : steps[above][month];
        return { size, month, most, least };
      }).flatMap(({ month, most, least }) => {
        // Nothing keeps them warm with more collector, so nothing does with less; or both neighbours need the same.
        if (least === null || (least === most && above !== null)) {
          steps[size][month] = least;
          return [];
        }
        const [bottom, top] = [least ?? 0, most ?? MOST_STEPS];
        const guess = above === null ? charging : (bottom + top) >> 1;
        const known = typeof most === 'number';
        return [
          { size, month, known, edits: sizes[size].edits, guess, least: Math.min(bottom, top), most: top },
        ];
      }),
    );
    const found = await warmHours(sweep, plant, plan, cases);
    for (const [i, { size, month, most, known }] of cases.entries()) {
      const at = found[i];
      // What a smaller collector needs does for a larger one, whatever a week's chance says.
      const beyond = known ? most : null;
      steps[size][month] = at ? (at.time_s === null ? beyond : at.time_s / STEP_s) : undefined;
    }
  }
  return steps.map((months) => months.map((step) => (typeof step === 'number' ? step * STEP_s : step)));
}

/** The ends first, then the middle of each gap: every size after the first two lies between two known ones. */
function roundsOf(sizes: number): Place[][] {
  const rounds: Place[][] = [[0, sizes - 1].map((size) => ({ size, below: null, above: null }))];
  let gaps: [number, number][] = [[0, sizes - 1]];
  while (gaps.length > 0) {
    const round = gaps.flatMap(([below, above]) =>
      above - below > 1 ? [{ size: (below + above) >> 1, below, above }] : [],
    );
    if (round.length > 0) rounds.push(round);
    gaps = round.flatMap(({ size, below, above }): [number, number][] => [
      [below, size],
      [size, above],
    ]);
  }
  return rounds;
}

/** A size, and the nearest smaller and larger ones whose needs are known by then. */
interface Place {
  size: number;
  below: number | null;
  above: number | null;
}

/** Time spared over a month [s], or null where it is not known. `charging_s`: the engine runs so long a day anyway. */
export function sparedTime(
  without_s: number | null | undefined,
  with_s: number | null | undefined,
  month: number,
  charging_s: number,
): number | null {
  if (without_s === undefined || with_s === undefined) return null;
  // Where even half a day is not enough, at least what is beyond it is spared.
  const beyond = (time_s: number | null) => Math.max(0, (time_s ?? MOST_STEPS * STEP_s) - charging_s);
  return Math.max(0, beyond(without_s) - beyond(with_s)) * daysOfMonth(month);
}
