/** Showers in a row, now and after dull days, the wait for the next one, and how it feels second by second. */
import type { PlantDescription } from '../../parts/description.ts';
import { SCALD_FROM } from '../../run/tally.ts';
import type { Answer, AnswerCaution, Limit } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf } from '../band.ts';
import { ShowerBench } from '../coil/shower-bench.ts';
import { edited } from '../edit.ts';
import { householdOf, showerOf } from '../household.ts';
import type { DoJobs, Job, JobDone } from '../job.ts';
import { movesHeatOf } from '../matters.ts';
import { minds } from '../minds.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { countToTry, ROW_BEGINS_S, type RowPlan, startsOf, type WarmRow, warmRow } from './in-a-row.ts';
import { realDay } from './morning.ts';
import { firstWarm, type Heating, recovered, recoveryJobs, type SpentRow, WAITS_S } from './recovery.ts';
import { gapOf, MOST_DULL_DAYS } from './row.ts';
import { type Found, kindsWith, otherFacts, rowFacts } from './showers-facts.ts';
import { showerCurves, showerTables } from './showers-tables.ts';
import { traceOf } from './trace.ts';

export interface ShowersQuestion extends Question {
  doJobs: DoJobs;
  /** Dull days, 1 to 6, of which the facts and their bands tell. */
  dull_days?: number;
  onProgress?: OnProgress;
}

const USUAL_DULL_DAYS = 3;
/** The scenario's reader takes no more. */
const MOST_LAYERS = 100;

/** @throws RangeError for a scenario that cannot be read or has no household, or dull days out of range */
export async function showersAnswer(question: ShowersQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const { taps, coil } = householdOf(plant);
  const dull = question.dull_days ?? USUAL_DULL_DAYS;
  if (!(Number.isInteger(dull) && dull >= 1 && dull <= MOST_DULL_DAYS)) {
    throw new RangeError(
      `dull days - expected a whole number, 1 to ${MOST_DULL_DAYS} - got ${dull} - leave it out for ${USUAL_DULL_DAYS}`,
    );
  }
  const shower = showerOf(taps);
  const bench = new ShowerBench(plant, shower);
  const lowest_tank_C = bench.lowestTank();
  const full = bench.atTank(lowest_tank_C ?? bench.boiling_C);
  const gap_s = gapOf(taps);
  const plan = { shower, gap_s, count: countToTry(plant, shower, bench.cold_C, gap_s) };
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const heatings = heatingsOf(plant);
  const planned = MOST_DULL_DAYS + 3 + heatings.length * WAITS_S.length + 4 * doubts.length;
  const sweep = new Sweep(question.doJobs, planned, question.onProgress);

  const asked = Array.from({ length: MOST_DULL_DAYS + 1 }, (_, day) => rowOf(plan, day));
  const finer = [{ path: 'run.layers', value: Math.min(MOST_LAYERS, 2 * plant.run.layers) }];
  const done = await sweep.run([...asked, rowOf(plan, 0, finer), rowOf(plan, dull, finer)]);
  const told = done.map((each) => warmAt(each, plan));
  const rows = told.slice(0, asked.length);
  const [finerNow, finerLater] = told.slice(asked.length);
  if (rows[0] === null && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const waits = await waitsFor(sweep, heatings, plan, rows[0]);
  const found: Found = { plan, coil, rows, waits, trace: traceOf(plant), day: realDay(plant) };

  const ends = doubtJobs(doubts);
  const plans = ends.map(({ edits }) => planAt(question, edits, plan));
  const now = await sweep.run(ends.map(({ edits }, i) => rowOf(plans[i], 0, edits)));
  const later = await sweep.run(ends.map(({ edits }, i) => rowOf(plans[i], dull, edits)));
  const varied = ends.map((_, i) => rowFacts(warmAt(now[i], plans[i]), warmAt(later[i], plans[i])));
  const base = { ...rowFacts(rows[0], rows[dull]), ...otherFacts(found, dull) };
  const kinds = kindsWith(base, rowFacts(finerNow, finerLater));
  const bands = bandsOf(base, varied, doubts, kinds);
  const answer: Answer = {
    key: 'showers',
    facts: bands.facts,
    headline: 'showers',
    limit: limitOf(plant, found, full.flow_m3_s, lowest_tank_C),
    tables: showerTables(found, dull),
    curves: showerCurves(found, dull),
    levers: bands.levers('showers'),
    cautions: cautionsOf(plant, found),
    taken: ['row_alone', 'dull_is_dark', 'no_backup'],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

function rowOf(plan: RowPlan, day: number, edits: Job['edits'] = []): Job {
  return { edits, row: { day, starts_s: startsOf(plan), sources: 'none' } };
}

/** At a doubt's end the household's shower may last longer: the row is laid for it. */
function planAt({ scenario, context }: Question, edits: Job['edits'], plan: Found['plan']): Found['plan'] {
  try {
    const { plant } = readQuestion({ scenario: edited(scenario, edits), context });
    const { taps } = householdOf(plant);
    return { ...plan, shower: showerOf(taps), gap_s: gapOf(taps) };
  } catch (error) {
    // Its run will fail for the same reason, and the doubt count as untried.
    if (error instanceof RangeError) return plan;
    throw error;
  }
}

function warmAt(done: JobDone | null, plan: RowPlan): WarmRow | null {
  return done?.cold_s ? warmRow(done.cold_s, plan) : null;
}

/** Ways the store may be heated while one waits. */
function heatingsOf({ engine, collector }: PlantDescription): Heating[] {
  const list: Heating[] = ['none'];
  if (engine) list.push('engine');
  if (engine || collector) list.push('planned');
  return list;
}

/** How long until the next warm shower, by heating; null where none is within two days or nothing ran cold. */
async function waitsFor(
  sweep: Sweep,
  heatings: readonly Heating[],
  plan: Found['plan'],
  row: WarmRow | null,
): Promise<Record<Heating, number | null>> {
  const waits: Record<Heating, number | null> = { none: null, engine: null, planned: null };
  if (!row || row.into_s === null) return waits;
  const { duration_s, at_s } = plan.shower;
  for (const heating of heatings) {
    const begins_s = heating === 'planned' ? at_s : ROW_BEGINS_S;
    const spent: SpentRow = { duration_s, gap_s: plan.gap_s, spent: row.whole + 1, begins_s };
    const after = await sweep.run(recoveryJobs(spent, heating, WAITS_S));
    waits[heating] = firstWarm(recovered(after), WAITS_S);
  }
  return waits;
}

const ENOUGH_FLOW = 0.95;

/** What ends the row: too little flow, a store with no heat left above what the coil needs, or the coil. */
function limitOf(
  plant: PlantDescription,
  { plan, rows }: Found,
  flow_m3_s: number,
  lowest_tank_C: number | null,
): Limit {
  if (flow_m3_s < ENOUGH_FLOW * plan.shower.flow_m3_s) return 'pump';
  const row = rows[0];
  if (!row || row.into_s === null) return 'none';
  // A coil that wants the store far above the shower leaves most of its heat where it is.
  const needs_K = (lowest_tank_C ?? plant.run.start.top_C) - plan.shower.wanted_C;
  return needs_K > COIL_GAP_K ? 'coil' : 'store';
}

/** A coil that wants the store this much hotter than the shower is what ends the row (judgement) [K]. */
const COIL_GAP_K = 8;

function cautionsOf(plant: PlantDescription, { trace, rows, day }: Found): AnswerCaution[] {
  const { taps } = householdOf(plant);
  return minds([
    ['scald_no_valve', taps.mixing_valve_C === null],
    ['scald', taps.mixing_valve_C !== null && trace.peak_C > SCALD_FROM],
    ['pause_scald', trace.again_peak_C > SCALD_FROM],
    ['never_ran_cold', rows[0]?.into_s === null],
    ['day_ran_cold', day.warm_showers < day.showers],
    ['trapped_coil', true],
  ]);
}
