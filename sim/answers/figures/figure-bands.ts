/** Bands of a run's figures: the run anew with each doubtful input at either end, as for every other answer. */
import { glossary } from '../../quantity/index.ts';
import type { Result } from '../../run/result.ts';
import { outlineOf } from '../../scenario/index.ts';
import { bandsOf, type Doubt, doubtJobs, doubtsOf, type FactKind, type Facts } from '../band.ts';
import type { DoJobs } from '../job.ts';
import { movesFiguresOf } from '../matters.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';

export interface BandsQuestion extends Question {
  doJobs: DoJobs;
  /** Of the run as it stands, where it was done already. */
  figures?: Result['figures'];
  onProgress?: OnProgress;
}

/** A doubtful input, and how to measure it where there is a way. */
export interface DoubtedInput {
  path: string;
  label: string;
  measure: string | null;
}

export interface FigureBand {
  low: number;
  high: number;
  /** What moves the figure most. */
  most: DoubtedInput;
}

export interface FigureBands {
  /** By the figure's key, SI; figures that no doubt moves have none. */
  bands: Record<string, FigureBand>;
  /** Paths of the doubts that were tried, and of those with an end at which nothing could be run. */
  tried: string[];
  untried: string[];
  /** Somebody stopped before all were tried. */
  stopped?: true;
}

/** Deviations smaller than this share of the figure are the integration's, not the doubt's. */
const LEAST_SHARE = 0.002;

/** @throws RangeError for a scenario that cannot be read or run */
export async function figureBands(question: BandsQuestion): Promise<FigureBands> {
  const file = readQuestion(question);
  const { plant, scenario, filled } = file;
  const doubts = doubtsOf(file, movesFiguresOf(plant));
  const sweep = new Sweep(question.doJobs, 2 * doubts.length + 1, question.onProgress);
  const [own] = question.figures ? [question] : await sweep.run([{ edits: [] }]);
  if (!own && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const base = own?.figures ?? {};
  const ends = await sweep.run(doubtJobs(doubts));
  const { facts, levers, untried } = bandsOf(
    base,
    ends.map((end) => end?.figures ?? null),
    doubts,
    kindsOf(base),
  );
  const inputOf = ({ path }: { path: string }): DoubtedInput => {
    const entry = outlineOf(scenario, path, filled);
    const own = filled.find((each) => each.path === path);
    const measure = own?.measure ?? (entry?.kind === 'entry' ? entry.measure : null);
    return { path, label: own?.label ?? entry?.label ?? path, measure };
  };
  const bands = Object.entries(facts).flatMap(([key, { low, high, dimension }]) => {
    const [most] = levers(key);
    if (!most) return [];
    const whole = dimension === 'count';
    const ends = { low: whole ? Math.floor(low) : low, high: whole ? Math.ceil(high) : high };
    return [[key, { ...ends, most: inputOf(most) }] as const];
  });
  return {
    bands: Object.fromEntries(bands),
    tried: doubts.map(({ path }: Doubt) => path).filter((path) => !untried.includes(path)),
    untried,
    ...(sweep.stopped ? { stopped: true } : {}),
  };
}

/** What a figure can be at the least and at the most: sums of squares may reach past it. */
function kindsOf(base: Facts): Record<string, FactKind> {
  const figures = glossary.filter(({ of }) => of === 'figure');
  const kinds = figures.map(({ key, dimension, range: [least, greatest] }): [string, FactKind] => {
    const numerical = LEAST_SHARE * Math.abs(base[key] ?? 0);
    const most = key === 'showers_cold' ? (base.showers ?? greatest) : greatest;
    return [key, { dimension, least, greatest: most, numerical }];
  });
  return Object.fromEntries(kinds.filter(([key]) => key in base));
}
