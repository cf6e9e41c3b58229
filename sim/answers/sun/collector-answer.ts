/** Collector: what each size brings over a simulated year, in the dullest week, to the engine and to the purse. */
import type { CollectorDescription, PlantDescription } from '../../parts/description.ts';
import { planeOfArray } from '../../parts/weather/plane-of-array.ts';
import type { Answer, AnswerCaution } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf } from '../band.ts';
import type { DoJobs, JobDone } from '../job.ts';
import { movesHeatOf, movesMoney } from '../matters.ts';
import { minds } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { factsAt, type Question, readQuestion } from '../vary.ts';
import {
  awayJob,
  lastPart,
  SEASON_COUNT,
  type Seasons,
  type SizeRun,
  seasonJobs,
  seasonSums,
  weekJob,
  yearJob,
} from './runs.ts';
import { needBySize } from './savings.ts';
import { collectorOf, dullestWeek, type Size, sizesAround } from './sizes.ts';
import { type Found, factsOf, kindsOf, limitOf, presentOf } from './sun-facts.ts';
import { sunCurves, sunTables } from './sun-tables.ts';

export interface CollectorQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

/** Runs that the hours take by size and month, as a rule. */
const NEED_RUNS = 36;

/** @throws RangeError for a scenario that cannot be read or has no collector */
export async function collectorAnswer(question: CollectorQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const collector = collectorOf(plant);
  const sizes = sizesAround(collector, question.scenario);
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const timetable = sparedHow(plant) === 'spared_by_hours';
  const planned =
    2 * sizes.length -
    1 +
    3 +
    (timetable ? NEED_RUNS * sizes.length : 0) +
    (2 + 2 * doubts.length) * SEASON_COUNT;
  const sweep = new Sweep(question.doJobs, planned, question.onProgress);
  const found = await findAll(sweep, plant, collector, sizes, timetable);
  if (sweep.problems.size > 0 && found.runs[presentOf(found.runs)].year === null) {
    throw new RangeError([...sweep.problems].join('\n'));
  }
  const ends = [{ edits: [] }, { edits: finerEdits(plant.run) }, ...doubtJobs(doubts)];
  const seasons = await seasonsAt(sweep, ends);
  const [base, finer, ...varied] = seasons;
  const prices = doubtsOf(file, movesMoney);
  const facts = factsOf(plant, found, base, base);
  const error = base && finer ? Math.abs(finer.solar_J / base.solar_J - 1) : 0;
  const bands = bandsOf(
    facts,
    [
      ...varied.map((sums) => (sums && base ? factsOf(plant, found, base, sums) : null)),
      ...factsAt(question, doubtJobs(prices), (priced) => factsOf(priced, found, base, base)),
    ],
    [...doubts, ...prices],
    kindsOf(facts, error),
  );
  const answer: Answer = {
    key: 'collector',
    facts: bands.facts,
    headline: 'heat_J',
    limit: limitOf(found),
    tables: sunTables(plant, found),
    curves: sunCurves(found),
    levers: bands.levers('heat_J'),
    cautions: cautionsOf(plant, found),
    taken: ['level_kept', 'four_stretches', sparedHow(plant), 'coil_as_it_is'],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** By what the engine's saving is told, as a key of what is taken for granted. */
function sparedHow({ engine, taps }: PlantDescription): string {
  if (!engine) return 'no_engine';
  if (engine.runs.kind !== 'timetable') return 'spared_by_calls';
  return (taps?.draws.length ?? 0) > 0 ? 'spared_by_hours' : 'nobody_draws';
}

/** The present size first: it is what somebody who stops early wants to keep. */
async function findAll(
  sweep: Sweep,
  plant: PlantDescription,
  collector: CollectorDescription,
  sizes: readonly Size[],
  timetable: boolean,
): Promise<Found> {
  const order = [...sizes].sort((a, b) => Number(b.present) - Number(a.present));
  const dull = dullestWeek(planeOfArray(plant.weather, plant.site, collector).absorbed_W_m2);
  const done = await sweep.run([
    ...order.map(({ edits }) => yearJob(edits)),
    ...order.map(({ edits }) => weekJob(dull, edits)),
  ]);
  const at = (size: Size) => order.indexOf(size);
  const runs = sizes.map((size): SizeRun => {
    const week = done[order.length + at(size)];
    return { size, year: done[at(size)], dull: week ? lastPart(week) : null };
  });
  const away = await away3(sweep, plant, done[0]);
  const need_s = timetable && plant.engine ? await needBySize(sweep, plant, plant.engine, sizes) : null;
  return { runs, need_s, dull_day: dull, away };
}

/** Nobody home in the month when the sun stands highest, from the temperature the store then has. */
async function away3(sweep: Sweep, plant: PlantDescription, year: JobDone | null): Promise<Found['away']> {
  const north = plant.site.latitude_rad >= 0;
  const start_C = year?.parts[north ? 6 : 0].figures.store_mean_C ?? plant.run.start.top_C;
  const failings = ['none', 'limit', 'pump'] as const;
  const [none, limit, pump] = await sweep.run(failings.map((failing) => awayJob(north, start_C, failing)));
  return { none, limit, pump };
}

async function seasonsAt(
  sweep: Sweep,
  ends: readonly { edits: Parameters<typeof seasonJobs>[0] }[],
): Promise<(Seasons | null)[]> {
  const done = await sweep.run(ends.flatMap(({ edits }) => seasonJobs(edits)));
  return ends.map((_, i) => seasonSums(done.slice(i * SEASON_COUNT, (i + 1) * SEASON_COUNT)));
}

function cautionsOf(plant: PlantDescription, { away, runs }: Found): AnswerCaution[] {
  const year = runs[presentOf(runs)].year?.figures;
  return minds([
    ['boil_over', (away.limit?.figures.boiled_kg ?? 0) > 0],
    ['liner_limit', (year?.liner_over_s ?? 0) > 0],
    ['foam_limit', (year?.foam_over_s ?? 0) > 0],
    ['wall_limit', (year?.wall_over_s ?? 0) > 0],
    ['freezing_loop', (year?.freezing_s ?? 0) > 0],
    ['stagnation', plant.collector !== null],
    ['trapped_coil', plant.collector?.loop === 'filled'],
    ['weather_generated', true],
  ]);
}
