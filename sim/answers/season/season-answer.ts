/** The season: a simulated year by months, in one piece. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Answer, AnswerCaution, Column, Curve, Limit, Table } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf, type FactKind, type Facts } from '../band.ts';
import type { DoJobs, JobDone } from '../job.ts';
import { movesHeatOf } from '../matters.ts';
import { minds } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { SEASON_COUNT, seasonJobs } from '../sun/runs.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { monthsOf, type Sums, stretchSums, yearJobs } from './season-runs.ts';

export interface SeasonQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

/** @throws RangeError for a scenario that cannot be read or run */
export async function seasonAnswer(question: SeasonQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const years = yearJobs(plant.store);
  const ends = [[], finerEdits(plant.run), ...doubtJobs(doubts).map(({ edits }) => edits)];
  const sweep = new Sweep(question.doJobs, years.length + ends.length * SEASON_COUNT, question.onProgress);
  const [year, unkept = null] = await sweep.run(years);
  if (!year && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const done = await sweep.run(ends.flatMap((edits) => seasonJobs(edits)));
  const [base, finer, ...varied] = ends.map((_, i) =>
    stretchSums(done.slice(i * SEASON_COUNT, (i + 1) * SEASON_COUNT)),
  );
  const facts = factsOf(year, unkept, base, base);
  const bands = bandsOf(
    facts,
    varied.map((sums) => sums && factsOf(year, unkept, base, sums)),
    doubts,
    kindsOf(facts, finer && factsOf(year, unkept, base, finer)),
  );
  const headline = headlineOf(plant);
  const answer: Answer = {
    key: 'season',
    facts: bands.facts,
    headline,
    limit: limitOf(plant),
    tables: { months: monthsTable(plant, year) },
    curves: seasonCurves(plant, year),
    levers: bands.levers(headline),
    cautions: cautionsOf(plant, year, unkept),
    taken: ['level_kept', 'four_stretches'],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** What can move: a timetable burns what it burns. */
function headlineOf({ engine, collector }: PlantDescription): string {
  if (engine?.runs.kind === 'call for heat') return 'fuel_m3';
  return collector ? 'solar_heat_J' : 'loss_J';
}

/** Facts of the year, what adds up moved as the four stretches' sums move from `base` to `sums`. */
function factsOf(year: JobDone | null, unkept: JobDone | null, base: Sums | null, sums: Sums | null): Facts {
  const figures = year?.figures;
  const moved = (key: string): number | null => {
    const value = figures?.[key] ?? null;
    return value === null || !base || !sums || !(base[key] > 0) ? value : (value * sums[key]) / base[key];
  };
  // A few cold showers are no measure of how many more there may be: of the stretches', each stands for as many as the
  // year has more showers.
  const { showers = null, showers_cold = null } = figures ?? {};
  const cold =
    showers_cold !== null && showers !== null && base && sums && base.showers > 0
      ? showers_cold + ((sums.showers_cold - base.showers_cold) * showers) / base.showers
      : showers_cold;
  const [engine_J, solar_J] = [moved('engine_heat_J'), moved('solar_heat_J')];
  const put_in_J = (engine_J ?? 0) + (solar_J ?? 0);
  return {
    engine_s: moved('engine_s'),
    fuel_m3: moved('fuel_m3'),
    engine_heat_J: engine_J,
    solar_heat_J: solar_J,
    share: solar_J !== null && put_in_J > 0 ? solar_J / put_in_J : null,
    loss_J: moved('loss_J'),
    make_up_kg: moved('make_up_kg'),
    showers,
    showers_cold: cold,
    cold_shower_s: moved('cold_shower_s'),
    top_C_max: figures?.store_top_C_max ?? null,
    top_C_min: figures?.store_top_C_min ?? null,
    dry_s: unkept?.figures.dry_s ?? null,
  };
}

const DAY = 86_400;

function kindsOf(facts: Facts, finer: Facts | null): Record<string, FactKind> {
  const adding = (key: string, dimension: FactKind['dimension']): [string, FactKind] => [
    key,
    { dimension, least: 0, numerical: Math.abs((finer?.[key] ?? 0) - (finer ? (facts[key] ?? 0) : 0)) },
  ];
  return {
    ...Object.fromEntries([
      adding('engine_s', 'time'),
      adding('fuel_m3', 'volume'),
      adding('engine_heat_J', 'energy'),
      adding('solar_heat_J', 'energy'),
      adding('loss_J', 'energy'),
      adding('make_up_kg', 'mass'),
      adding('cold_shower_s', 'time'),
    ]),
    share: { dimension: 'share', least: 0, greatest: 1 },
    showers: { dimension: 'count' },
    showers_cold: { dimension: 'count', least: 0, greatest: facts.showers ?? 0 },
    top_C_max: { dimension: 'temperature' },
    top_C_min: { dimension: 'temperature' },
    dry_s: { dimension: 'time', numerical: DAY / 2 },
  };
}

/** A row a month; columns of parts that the plant has. */
function monthsTable(plant: PlantDescription, year: JobDone | null): Table {
  const { engine, collector, taps } = plant;
  const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });
  const columns: Column[] = [
    ...(engine ? [column('engine_s', 'time'), column('fuel_m3', 'volume')] : []),
    ...(collector ? [column('solar_heat_J', 'energy'), column('solar_share', 'share')] : []),
    ...(taps ? [column('showers', 'number'), column('showers_cold', 'number')] : []),
    column('store_top_C_max', 'temperature'),
    column('store_top_C_min', 'temperature'),
    column('loss_J', 'energy'),
    column('make_up_kg', 'mass'),
  ];
  const rows = monthsOf(year).map((figures, month) => [
    month + 1,
    ...columns.map(({ key }) => figures?.[key] ?? null),
  ]);
  return { columns: [column('month', 'month'), ...columns], rows, present: null };
}

/** `months`: heat by month from the engine, from the sun, and lost. */
function seasonCurves(plant: PlantDescription, year: JobDone | null): Record<string, Curve> {
  const y: Column = { key: 'heat_J', dimension: 'energy' };
  const keys = [
    ...(plant.engine ? ['engine_heat_J'] : []),
    ...(plant.collector ? ['solar_heat_J'] : []),
    'loss_J',
  ];
  const months = monthsOf(year);
  return {
    months: {
      x: { key: 'month', dimension: 'month' },
      at: months.map((_, month) => month + 1),
      lines: keys.map((key) => ({ name: key, y, values: months.map((figures) => figures?.[key] ?? null) })),
      present: null,
      knee: null,
    },
  };
}

function limitOf({ engine, collector }: PlantDescription): Limit {
  return engine ? 'engine' : collector ? 'sun' : 'none';
}

function cautionsOf(plant: PlantDescription, year: JobDone | null, unkept: JobDone | null): AnswerCaution[] {
  const f = year?.figures ?? {};
  const over = (key: string) => (f[key] ?? 0) > 0;
  return minds([
    ['carbon_monoxide', plant.engine !== null],
    ['boiling', over('boiled_kg')],
    ['runs_dry', unkept !== null && unkept.figures.dry_s !== null],
    ['liner_limit', over('liner_over_s')],
    ['foam_limit', over('foam_over_s')],
    ['wall_limit', over('wall_over_s')],
    ['freezing_loop', over('freezing_s')],
    ['weather_generated', plant.weather.made_up === true],
  ]);
}
