/** Which measurement would narrow the answer most: the same runs once more, with what it tells held closer. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Facts } from '../band.ts';
import type { File } from '../entered.ts';
import type { Sweep } from '../sweep.ts';
import { type Effect, movesBy } from './effects.ts';
import { middle, runFacts } from './facts.ts';
import type { Measurement } from './recipes.ts';
import { ensembleJobs, type Varied } from './varied.ts';

export interface Measured {
  measurement: Measurement;
  /** The measured input with its ends as they would be. */
  input: Varied;
  /** Ends over the middle runs, as they were and as they would be. */
  was: readonly [low: number, high: number];
  is: readonly [low: number, high: number];
  /** What is left of the reach, 0..1 and, rarely, a little more. */
  left: number;
}

export interface Runs {
  file: File;
  plant: PlantDescription;
  varied: readonly Varied[];
  runs: number;
  seed: number;
  /** Of the runs before, in their order; null where one failed. */
  before: readonly (Facts | null)[];
}

/** Measurements that are tried with all runs once more. */
export const TRIED = 2;

/** The most promising by what their inputs move alone, most promising first. */
export function promising(
  measurements: readonly Measurement[],
  effects: readonly Effect[],
  varied: readonly Varied[],
  key: string,
  base: Facts,
): Measurement[] {
  const gain = ({ leaves }: Measurement) => {
    let squares = 0;
    for (const [path, { low, high }] of leaves) {
      const effect = effects.find((each) => each.path === path);
      const input = varied.find((each) => each.path === path);
      if (!effect || !input) continue;
      const left = (high - low) / (input.high - input.low);
      squares += movesBy(effect, key, base) ** 2 * (1 - left ** 2);
    }
    return squares;
  };
  const gains = new Map(measurements.map((each) => [each, gain(each)]));
  return [...gains.entries()]
    .filter(([, squares]) => squares > 0)
    .sort(([, a], [, b]) => b - a)
    .slice(0, TRIED)
    .map(([measurement]) => measurement);
}

/** Inputs with what a measurement leaves of their ends. */
function narrowed(varied: readonly Varied[], { leaves }: Measurement): Varied[] {
  return varied.map((each) => ({ ...each, ...leaves.get(each.path) }));
}

/** Does the runs once more for each, and tells what remains, least first. Only whole sets of runs are told of. */
export async function measuredAgain(
  sweep: Sweep,
  { file, plant, varied, runs, seed, before }: Runs,
  tried: readonly Measurement[],
  key: string,
): Promise<Measured[]> {
  const sets = tried.map((measurement) => ({ measurement, inputs: narrowed(varied, measurement) }));
  const jobs = sets.map(({ inputs }) => ensembleJobs(file, inputs, runs, seed));
  const done = await sweep.run(jobs.flat());
  const found = sets.flatMap(({ measurement, inputs }, i): Measured[] => {
    const own = done.slice(i * runs, (i + 1) * runs);
    const pairs = own.flatMap((each, k) => {
      const was = before[k];
      return each && was ? [{ was, is: runFacts(plant, each) }] : [];
    });
    const was = middle(
      pairs.map((pair) => pair.was),
      key,
    );
    const is = middle(
      pairs.map((pair) => pair.is),
      key,
    );
    const input = inputs.find(({ path }) => path === measurement.path);
    // Half a set would look narrow for being small.
    if (!was || !is || !input || pairs.length < before.filter(Boolean).length || was[0] === was[1]) return [];
    return [{ measurement, input, was, is, left: (is[1] - is[0]) / (was[1] - was[0]) }];
  });
  return found.sort((a, b) => a.left - b.left);
}
