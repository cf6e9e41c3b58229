/**
 * Doubts: the same days run many times, every unsure input somewhere between its ends. What comes out is how often and
 * how far over those runs; what each input does by itself; and what would be worth measuring, with the very same runs
 * once more.
 */

import type { PlantDescription } from '../../parts/description.ts';
import type { Answer, Banded } from '../answer.ts';
import { exactly, type Facts } from '../band.ts';
import type { DoJobs, Job, JobDone } from '../job.ts';
import { movesHeatOf } from '../matters.ts';
import { minds } from '../minds.ts';
import { refusal } from '../refusal.ts';
import { temperaturesOf, variantJobs } from '../store/runs.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { effectsOn, endJobs } from './effects.ts';
import { headlineOf, overRuns, runFacts } from './facts.ts';
import { measuredAgain, promising, TRIED } from './measuring.ts';
import { coolingOf, measurementsOf } from './recipes.ts';
import {
  heldTable,
  inputsTable,
  measurementsTable,
  pointsTable,
  runsTable,
  showersTable,
  topCurve,
} from './tables.ts';
import { chanceOf, ensembleJobs, placesOf, variedOf } from './varied.ts';
import { watchedEvery } from './watched.ts';

export interface DoubtsQuestion extends Question {
  doJobs: DoJobs;
  /** How many runs, 2 to 200. */
  runs?: number;
  /** Another seed gives other points between the ends. */
  seed?: number;
  onProgress?: OnProgress;
}

const USUAL_RUNS = 20;
const [FEWEST_RUNS, MOST_RUNS] = [2, 200];
const MOST_SEED = 2 ** 32 - 1;

/** @throws RangeError for a scenario that cannot be read or run, without a doubt, or for runs out of range */
export async function doubtsAnswer(question: DoubtsQuestion): Promise<Answer> {
  const { runs = USUAL_RUNS, seed = 1 } = question;
  checkWhole('runs', runs, FEWEST_RUNS, MOST_RUNS);
  checkWhole('seed', seed, 0, MOST_SEED);
  const file = readQuestion(question);
  const { plant, filled, marks } = file;
  const varied = variedOf(file, movesHeatOf(plant));
  const chance = chanceOf(file);
  if (varied.length === 0 && chance === null) throw sureOfAll();
  const ends = endJobs(file, varied);
  const sweep = new Sweep(question.doJobs, 3 + (1 + TRIED) * runs + ends.length, question.onProgress);

  const watched_s = watchedEvery(plant.run.days);
  const ensemble = ensembleJobs(file, varied, runs, seed);
  const [base, ...done] = await sweep.run([{ edits: [] }, ...ensemble].map((job) => ({ ...job, watched_s })));
  if (!base && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const [finer, cool, ...atEnds] = base
    ? await sweep.run([{ edits: finerEdits(plant.run) }, coolJob(plant, base), ...ends])
    : [];

  const own = base ? runFacts(plant, base) : {};
  const before = done.map((each) => each && runFacts(plant, each));
  const known = before.filter((each) => each !== null);
  const headline = headlineOf(known);
  const effects = effectsOn(headline, plant, varied, chance, atEnds, own);
  const usual_C = base ? temperaturesOf(plant, base).usual_C : plant.run.start.top_C;
  const measurements = measurementsOf(plant, varied, usual_C, coolingOf(cool ?? null, usual_C));
  const tried = promising(measurements, effects, varied, headline, own);
  const set = { file, plant, varied, runs, seed, before };
  const measured = await measuredAgain(sweep, set, tried, headline);

  const facts = toldOf(own, finer ? runFacts(plant, finer) : own, known);
  const idle = marks.filter(({ path }) => !varied.some((each) => each.path === path));
  const counts = {
    runs: known.length,
    asked: runs,
    cold_runs: known.filter(({ showers_cold }) => (showers_cold ?? 0) > 0).length,
    boiled_runs: done.filter((each) => (each?.figures.boiled_kg ?? 0) > BOILED_KG).length,
    varied: varied.length,
    marked: varied.filter(({ marked }) => marked).length,
    idle: idle.length,
    ...(base?.figures.showers ? { showers: base.figures.showers } : {}),
  };
  for (const [key, value] of Object.entries(counts)) facts[key] = exactly(value, 'count');
  const answer: Answer = {
    key: 'doubts',
    facts,
    headline,
    limit: 'none',
    tables: {
      runs: runsTable(Object.keys(own), before),
      ...(base?.watched && counts.showers ? { showers: showersOf(base, done, plant) } : {}),
      inputs: inputsTable(varied, effects, headline, own),
      measurements: measurementsTable(measured, headline),
      points: pointsTable(varied, placesOf(varied, runs, seed)),
      held: heldTable(filled, varied),
    },
    curves: base ? { top: topCurve(base, done) } : {},
    // All of them, ranked, are a table.
    levers: [],
    cautions: minds([
      ['boils_in_some', counts.boiled_runs > 0],
      ['not_run', known.length < runs && !sweep.stopped],
    ]),
    taken: [
      'spread_evenly',
      chance === null ? 'weather_as_it_is' : 'like_years',
      'others_held',
      'each_alone',
      'found_as_taken',
    ],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** Boiled off from here on counts as boiling, as a run's own caution has it [kg]. */
const BOILED_KG = 0.01;

/** The day by itself that tells what an overnight test would see. */
function coolJob(plant: PlantDescription, base: JobDone): Job {
  return variantJobs(plant, [], temperaturesOf(plant, base)).cool;
}

function toldOf(own: Facts, finer: Facts, runs: readonly Facts[]): Record<string, Banded> {
  const told = Object.keys(own).map((key) => [key, overRuns(key, own, finer, runs)] as const);
  return Object.fromEntries(told.filter((entry): entry is [string, Banded] => entry[1] !== null));
}

function showersOf(base: JobDone, done: readonly (JobDone | null)[], plant: PlantDescription) {
  const runs = done.flatMap((each) => each?.watched ?? []);
  return showersTable(base.watched ?? { time_s: [], top_C: [], showers: [] }, runs, plant.run.first_weekday);
}

function checkWhole(where: string, value: number, least: number, most: number): void {
  if (Number.isInteger(value) && value >= least && value <= most) return;
  throw refusal(where, `a whole number, ${least} to ${most}`, `${value}`, 'leave it out for the usual');
}

function sureOfAll(): RangeError {
  return refusal(
    'doubts',
    'something one is unsure of',
    'a scenario that gives everything, and marks nothing',
    'mark an input under "doubts", as in { "input": "store.bridges", "unsure": "a little" }',
  );
}
