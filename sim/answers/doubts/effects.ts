/** What each unsure input does by itself: the run with it at either end, all else as the scenario stands. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Facts } from '../band.ts';
import { entered, type File } from '../entered.ts';
import type { Job, JobDone } from '../job.ts';
import { runFacts } from './facts.ts';
import { chanceOf, likeYear, type Varied, WEATHER, written } from './varied.ts';

export interface Effect {
  path: string;
  label: string;
  marked: boolean;
  low: { text: string; facts: Facts };
  high: { text: string; facts: Facts };
}

/** Like years by which the weather's own part is judged. */
const LIKE_YEARS = 4;

/** Low and high end of each input in turn, then the like years. */
export function endJobs(file: File, varied: readonly Varied[]): Job[] {
  const chance = chanceOf(file);
  const at = (path: string, value: string | number) => ({ edits: entered(file, [[path, value]]) });
  const ends = varied.flatMap(({ path, field, low, high }) =>
    [low, high].map((end) => at(path, written(field, end))),
  );
  const years = Array.from({ length: chance === null ? 0 : LIKE_YEARS }, (_, i) => i + 1);
  return [...ends, ...years.map((i) => at(WEATHER, likeYear(chance ?? 0, i)))];
}

/** Inputs by how far they move a fact, farthest first; those that do not, or whose ends cannot be run, are left out. */
export function effectsOn(
  key: string,
  plant: PlantDescription,
  varied: readonly Varied[],
  chance: number | null,
  done: readonly (JobDone | null)[],
  base: Facts,
): Effect[] {
  const own = varied.flatMap(({ path, label, marked, texts }, i): Effect[] => {
    const [low, high] = [done[2 * i], done[2 * i + 1]];
    if (!low || !high) return [];
    return [
      {
        path,
        label,
        marked,
        low: { text: texts.low, facts: runFacts(plant, low) },
        high: { text: texts.high, facts: runFacts(plant, high) },
      },
    ];
  });
  const effects = [
    ...own,
    ...(chance === null ? [] : weatherEffect(key, plant, chance, done.slice(2 * varied.length))),
  ];
  return effects
    .filter((effect) => movesBy(effect, key, base) > 0)
    .sort((a, b) => movesBy(b, key, base) - movesBy(a, key, base));
}

/** Of several like years the lowest and the highest. */
function weatherEffect(
  key: string,
  plant: PlantDescription,
  seed: number,
  done: readonly (JobDone | null)[],
): Effect[] {
  const years = done
    .flatMap((each, i) => (each ? [{ text: `${likeYear(seed, i + 1)}`, facts: runFacts(plant, each) }] : []))
    .sort((a, b) => (a.facts[key] ?? 0) - (b.facts[key] ?? 0));
  if (years.length < 2) return [];
  return [{ path: WEATHER, label: WEATHER, marked: false, low: years[0], high: years[years.length - 1] }];
}

/** From the least to the most that a fact is at either end and as the scenario stands. */
export function movesBy({ low, high }: Effect, key: string, base: Facts): number {
  const values = [low.facts[key], high.facts[key], base[key]].flatMap((value) => value ?? []);
  return values.length < 2 ? 0 : Math.max(...values) - Math.min(...values);
}
