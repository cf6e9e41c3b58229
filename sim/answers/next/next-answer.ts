/**
 * The next dollar: each affordable change by itself as a run of the edited scenario, what it gains and costs, and over
 * a few runs with everything unsure varied alike in both, how far that gain reaches.
 */
import type { PlantDescription, Prices } from '../../parts/description.ts';
import type { Answer, AnswerCaution, Banded, Column, Table } from '../answer.ts';
import { exactly } from '../band.ts';
import { jobAt, placesOf, variedOf } from '../doubts/varied.ts';
import { edited } from '../edit.ts';
import type { DoJobs, Job, JobDone } from '../job.ts';
import { movesHeatOf, movesMoney } from '../matters.ts';
import { minds } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { type Change, changesFor } from './changes.ts';
import {
  fuelMoney,
  GAIN_DIMENSIONS,
  type GainKey,
  gainOf,
  goodOf,
  type Harm,
  harmIn,
  harmOf,
} from './gains.ts';

export interface NextQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

/** Runs with everything unsure varied, by which a gain's reach is told. */
const VARIED_RUNS = 5;
const SEED = 1;
/** Less of a change in the year's fuel is none. */
const LITTLE_FUEL = 1e-3;

/** A change as it was found. */
export interface Weighed {
  change: Change;
  /** Mean of the runs as the design stands and with everything varied, and the least and most of them. */
  gain: { value: number; low: number; high: number };
  cost: { value: number; low: number; high: number } | null;
  /** Fuel more, or less, over a year. */
  fuel_year: number;
  /** Gain for each unit of money of the first year; null where it costs nothing, or has no price. */
  per_money: number | null;
  rank: number | null;
  harm: Harm;
  showers_warm: number | null;
}

/** @throws RangeError for a scenario that cannot be read or run */
export async function nextAnswer(question: NextQuestion): Promise<Answer> {
  const { scenario, context } = question;
  const file = readQuestion(question);
  const { plant } = file;
  const changes = changesFor({ scenario, context, plant });
  const designs = [[], ...changes.map(({ edits }) => edits)].map((edits) => {
    return { edits, file: readQuestion({ scenario: edited(scenario, edits), context }) };
  });
  const moves = movesHeatOf(plant);
  const places = placesOf(variedOf(file, moves), VARIED_RUNS, SEED);
  const varied = designs.map(({ edits, file }) => {
    const inputs = variedOf(file, moves);
    return places.map((at, i): Job => ({ edits: [...edits, ...jobAt(file, inputs, at, i).edits] }));
  });
  const sweep = new Sweep(question.doJobs, 1 + designs.length * (1 + VARIED_RUNS), question.onProgress);
  const plain = designs.map(({ edits }): Job => ({ edits }));
  const [finer, base, ...done] = await sweep.run([{ edits: finerEdits(plant.run) }, ...plain]);
  if (!base && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const spread = await sweep.run(varied.flat());
  const runsOf = (i: number) => spread.slice(i * VARIED_RUNS, (i + 1) * VARIED_RUNS);

  const key = base ? gainOf(plant, base) : 'heat_J_day';
  const good = (each: JobDone) => goodOf(key, plant, each);
  const noise = base && finer ? Math.abs(good(finer) - good(base)) : 0;
  const prices = priceEnds(plant, file);
  const weighed = changes.flatMap((change, i): Weighed[] => {
    const own = done[i];
    if (!base || !own) return [];
    const pairs = runsOf(i + 1).flatMap((each, k) => {
      const was = runsOf(0)[k];
      return each && was ? [good(each) - good(was)] : [];
    });
    const gains = [good(own) - good(base), ...pairs];
    const value = gains.reduce((sum, each) => sum + each, 0) / gains.length;
    const gain = { value, low: Math.min(...gains), high: Math.max(...gains) };
    const more = fuelMoney(plant, own) - fuelMoney(plant, base);
    const told = key !== 'spared_money_year' && Math.abs(more) > LITTLE_FUEL * fuelMoney(plant, base);
    const fuel_year = told ? more : 0;
    const harm = harmOf(base, own);
    const cold = (each: JobDone) => each.figures.showers_cold ?? null;
    const [was, is] = [cold(base), cold(own)];
    const showers_warm = was === null || is === null ? null : was - is;
    return [
      {
        change,
        gain,
        cost: costOf(change, prices),
        fuel_year,
        per_money: null,
        rank: null,
        harm,
        showers_warm,
      },
    ];
  });
  const ranked = ranking(weighed, noise);
  const answer: Answer = {
    key: 'next',
    facts: base ? factsOf(key, plant, base, ranked, noise) : {},
    headline: 'gain',
    limit: 'none',
    tables: { changes: changesTable(key, ranked) },
    curves: {},
    levers: [],
    cautions: cautionsOf(plant, changes, base === null ? '' : harmIn(base)),
    taken: [
      'each_change_alone',
      'year_as_these_days',
      'gain_over_few_runs',
      'first_year_money',
      ...(changes.some(({ key }) => key === 'hour_less') ? ['less_charging'] : []),
    ],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** Prices at the low and at the high end of what is believed of each; those that were typed in are what they are. */
function priceEnds(
  plant: PlantDescription,
  file: Parameters<typeof variedOf>[0],
): { low: Prices; value: Prices; high: Prices } {
  const value = plant.prices;
  const [low, high] = [{ ...value }, { ...value }] as unknown as Record<string, number>[];
  for (const price of variedOf(file, movesMoney)) {
    const key = price.path.replace(/^prices\./, '');
    if (!(key in low)) continue;
    low[key] = price.low;
    high[key] = price.high;
  }
  return { low: low as unknown as Prices, value, high: high as unknown as Prices };
}

function costOf(change: Change, { low, value, high }: ReturnType<typeof priceEnds>): Weighed['cost'] {
  const [a, at, b] = [low, value, high].map((prices) => change.cost(prices));
  return a === null || at === null || b === null ? null : { low: a, value: at, high: b };
}

/**
 * Changes that cost nothing and gain first, by their gain; then those that cost, by gain for each unit of money of the
 * first year (what they cost once, and the fuel more); the others have no rank.
 */
export function ranking(weighed: readonly Weighed[], noise: number): Weighed[] {
  const told = weighed.map((each) => {
    const money = each.cost === null ? null : each.cost.value + Math.max(0, each.fuel_year);
    return { ...each, per_money: money !== null && money > 0 ? each.gain.value / money : null, money };
  });
  const gains = ({ gain, harm }: Weighed) => gain.value > noise && harm === '';
  const spares = ({ gain, fuel_year, harm }: Weighed) => gain.value >= -noise && fuel_year < 0 && harm === '';
  const free = told.filter((each) => each.money === 0 && (gains(each) || spares(each)));
  const paid = told.filter((each) => each.money !== null && each.money > 0 && gains(each));
  const first = [
    ...free.sort((a, b) => b.gain.value - a.gain.value),
    ...paid.sort((a, b) => (b.per_money ?? 0) - (a.per_money ?? 0)),
  ];
  const others = told.filter((each) => !first.includes(each)).sort((a, b) => b.gain.value - a.gain.value);
  return [...first.map((each, i) => ({ ...each, rank: i + 1 })), ...others].map(
    ({ money: _, ...each }) => each,
  );
}

function factsOf(
  key: GainKey,
  plant: PlantDescription,
  base: JobDone,
  ranked: readonly Weighed[],
  noise: number,
): Record<string, Banded> {
  const dimension = GAIN_DIMENSIONS[key];
  const [best] = ranked;
  const count = (value: number) => exactly(value, 'count');
  const money = best?.rank ? best.cost : null;
  return {
    [key]: { ...exactly(goodOf(key, plant, base), dimension), numerical: noise },
    ...(best?.rank ? { gain: { ...best.gain, numerical: noise, dimension } } : {}),
    ...(money ? { cost: { ...money, numerical: 0, dimension: 'money' } } : {}),
    tried: count(ranked.length),
    ranked: count(ranked.filter(({ rank }) => rank !== null).length),
    days: count(plant.run.days),
    ...(plant.taps && plant.taps.mixing_valve_C === null
      ? { mixing_valve: exactly(plant.prices.mixing_valve_each, 'money') }
      : {}),
  };
}

function changesTable(key: GainKey, ranked: readonly Weighed[]): Table {
  const dimension = GAIN_DIMENSIONS[key];
  const column = (name: string, of: Column['dimension']): Column => ({ key: name, dimension: of });
  return {
    columns: [
      column('rank', 'number'),
      column('change', 'text'),
      column('what', 'text'),
      column('gain', dimension),
      column('gain_low', dimension),
      column('gain_high', dimension),
      column('showers_warm', 'number'),
      column('cost', 'money'),
      column('cost_low', 'money'),
      column('cost_high', 'money'),
      column('fuel_year', 'money'),
      column('per_hundred', dimension),
      column('harm', 'text'),
    ],
    rows: ranked.map(({ rank, change, gain, showers_warm, cost, fuel_year, per_money, harm }) => [
      rank,
      change.key,
      change.what,
      gain.value,
      gain.low,
      gain.high,
      showers_warm,
      cost?.value ?? null,
      cost?.low ?? null,
      cost?.high ?? null,
      fuel_year,
      per_money === null ? null : 100 * per_money,
      harm,
    ]),
    present: null,
  };
}

/** What is for safety is said, and not weighed. */
function cautionsOf(
  { taps, coils }: PlantDescription,
  changes: readonly Change[],
  harm: Harm,
): AnswerCaution[] {
  return minds([
    ['already_boils', harm === 'boils'],
    ['already_too_hot', harm === 'too_hot'],
    ['fit_mixing_valve', taps !== null && taps.mixing_valve_C === null],
    ['fit_relief', coils.length > 0],
    ['vent_stays_open', changes.some(({ key }) => key === 'seal_lid' || key === 'close_lid')],
  ]);
}
