/** Try a range: one or two inputs over values, any figures out. Every point is a run like any other. */
import { editDistance, glossary } from '../../quantity/index.ts';
import type { Result } from '../../run/result.ts';
import { entering, type FilledDefault, type Scenario } from '../../scenario/index.ts';
import { type Edit, edited } from '../edit.ts';
import type { DoJobs, JobResult } from '../job.ts';
import { refusal } from '../refusal.ts';
import type { OnProgress } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { type Axis, readAxis } from './axis.ts';

export interface RangeQuestion extends Question {
  doJobs: DoJobs;
  /** One or two, as `store.water_depth=20 in:40 in:5`. */
  vary: readonly string[];
  /** Figures by glossary key; none: the main ones. */
  figures?: readonly string[];
  onProgress?: OnProgress;
}

export interface RangePoint {
  /** A value of each axis. */
  values: Axis['values'];
  /** SI by glossary key; null where the run failed or was left undone. */
  figures: Result['figures'] | null;
  /** Why it failed. */
  problem: string | null;
}

export interface RangeAnswer {
  axes: Axis[];
  figures: string[];
  /** The last axis runs fastest. */
  points: RangePoint[];
  /** Runs done, failed ones included. */
  done: number;
}

/** What is shown where nobody chose. */
const MAIN = [
  ...['showers_cold', 'cold_shower_s', 'delivered_m3', 'store_top_C_max', 'store_mean_C'],
  ...['engine_heat_J', 'engine_s', 'fuel_m3', 'solar_heat_J', 'loss_J', 'backup_fuel_m3'],
];
/** More than anyone waits for. */
const MOST_POINTS = 2000;

/** @throws RangeError in the house form, before the first run */
export async function rangeAnswer(question: RangeQuestion): Promise<RangeAnswer> {
  const { doJobs, onProgress, scenario } = question;
  const { filled } = readQuestion(question);
  const axes = axesOf(question, filled);
  const chosen = figuresOf(question.figures ?? []);
  const points = axes.reduce<Axis['values'][]>(
    (rows, axis) => rows.flatMap((row) => axis.values.map((value) => [...row, value])),
    [[]],
  );
  const jobs = points.map((values) => ({ edits: editsOf(axes, values, scenario, filled) }));
  const results = await doJobs(jobs, onProgress);
  const told = points.map((values, i) => ({ values, ...outcome(results[i]) }));
  const known = (key: string) => told.some(({ figures }) => figures && figures[key] !== null);
  return {
    axes,
    figures: chosen.length > 0 ? chosen : MAIN.filter(known),
    points: told,
    done: results.filter((result) => result !== null).length,
  };
}

function axesOf({ vary, scenario }: RangeQuestion, filled: readonly FilledDefault[]): Axis[] {
  if (vary.length < 1 || vary.length > 2) {
    throw refusal(
      'vary',
      'one or two inputs',
      `${vary.length}`,
      'write it as store.water_depth="20 in:40 in:5"',
    );
  }
  const axes = vary.map((spec) => readAxis(spec, scenario, filled));
  if (axes.length === 2 && axes[0].path === axes[1].path) {
    throw refusal(axes[0].path, 'two inputs that differ', 'the same twice', 'vary it once');
  }
  const points = axes.reduce((product, axis) => product * axis.values.length, 1);
  if (points > MOST_POINTS)
    throw refusal('vary', `at most ${MOST_POINTS} runs`, `${points}`, 'choose fewer values');
  return axes;
}

function figuresOf(keys: readonly string[]): string[] {
  const known = glossary.filter((entry) => entry.of === 'figure').map(({ key }) => key);
  for (const key of keys) {
    if (known.includes(key)) continue;
    const near = [...known].sort((a, b) => editDistance(key, a) - editDistance(key, b))[0];
    throw refusal(
      'figure',
      'the key of a figure',
      `"${key.slice(0, 60)}"`,
      `did you mean ${near}? all: ${known.join(', ')}`,
    );
  }
  return [...new Set(keys)];
}

/** Each input entered as a person would: what it lies in may have to be described first. */
function editsOf(
  axes: readonly Axis[],
  values: Axis['values'],
  scenario: Scenario,
  filled: readonly FilledDefault[],
): Edit[] {
  const edits: Edit[] = [];
  for (const [i, { path }] of axes.entries()) {
    edits.push(...entering(edited(scenario, edits), path, values[i], filled).edits);
  }
  const sampled = axes.some(({ path }) => path === 'run.interval');
  // Samples are of no use here: as few as a run takes, unless they are what is varied.
  return sampled ? edits : [...edits, { path: 'run.interval', value: '24 h' }];
}

function outcome(result: JobResult | null): Pick<RangePoint, 'figures' | 'problem'> {
  if (result === null) return { figures: null, problem: null };
  return result.ok ? { figures: result.figures, problem: null } : { figures: null, problem: result.problem };
}
