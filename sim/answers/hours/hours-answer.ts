/** Hours a day, by month, that keep the showers warm, and what the fuel for hot water alone costs. */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import type { Answer } from '../answer.ts';
import { bandsOf, type Doubt, doubtJobs, doubtsOf, type Facts } from '../band.ts';
import type { DoJobs } from '../job.ts';
import { movesHeatOf, movesMoney } from '../matters.ts';
import { mind } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { factsAt, type Question, readQuestion } from '../vary.ts';
import { chargingTime, type Plan, planOf } from './engine-span.ts';
import { factsOf, kindsOf, limitOf, MONTHS, MOST_s, type Month, worstOf } from './hours-facts.ts';
import { monthsCurve, monthsTable } from './hours-tables.ts';
import { countedWeek, type Found, STEP_s, tenDays, warmHours } from './warm-hours.ts';

export interface HoursQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

/** Tries that a month, and an end of a doubt, take as a rule. */
const TRIES = 5;
const TRIES_AT_END = 3;
/** Where nothing is known of what charging needs, the search begins here [steps]. */
const USUAL_STEPS = 8;

/** @throws RangeError for a scenario that cannot be read or lacks an engine or a household */
export async function hoursAnswer(question: HoursQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const engine = engineOf(plant);
  const plan = planOf(engine, plant.taps?.draws ?? []);
  const charging_s = chargingTime(engine);
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const planned = MONTHS * (TRIES + 1) + (2 * doubts.length + 1) * TRIES_AT_END;
  const sweep = new Sweep(question.doJobs, planned, question.onProgress);
  const months = await byMonth(sweep, plant, plan, charging_s);
  const known = months.filter((month) => month !== null);
  const worst = worstOf(known);
  if (!worst && !sweep.stopped) throw new RangeError([...sweep.problems].join('\n'));
  const span = 'from_s' in plan ? 'span_from_start' : 'span_before_evening';
  const taken = [span, 'typical_weeks', 'level_kept', 'no_backup', 'worst_month_bands'];
  const answer: Answer = {
    key: 'hours',
    ...(worst
      ? await banded(question, sweep, { plant, plan, charging_s, months: known, worst, doubts })
      : NOTHING),
    headline: 'worst_s',
    tables: { months: monthsTable(engine, plant, months, charging_s) },
    curves: { months: monthsCurve(months, charging_s) },
    cautions: [mind('carbon_monoxide')],
    taken: charging_s > 0 ? [...taken, 'charging_hours'] : taken,
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

const NOTHING = { facts: {}, levers: [], limit: 'none' as const };

function engineOf({ engine, taps }: PlantDescription): EngineDescription {
  if (!engine) {
    throw new RangeError(
      'engine - expected an engine to ask hours of - got none - add "engine" to the scenario',
    );
  }
  if (!taps || taps.draws.length === 0) {
    throw new RangeError('taps - expected a household that draws - got none - add showers under "taps"');
  }
  return engine;
}

async function byMonth(sweep: Sweep, plant: PlantDescription, plan: Plan, charging_s: number) {
  const guess = charging_s > 0 ? Math.round(charging_s / STEP_s) : USUAL_STEPS;
  const cases = Array.from({ length: MONTHS }, (_, month) => ({ month, edits: [], guess }));
  const asCharging = await sweep.run(cases.map(({ month }) => tenDays(plan, month, charging_s, [])));
  const found = await warmHours(sweep, plant, plan, cases);
  return found.map((month, i): Month | null => {
    const charging = asCharging[i];
    return month && charging ? { month: i, found: month, charging: countedWeek(charging) } : null;
  });
}

interface Basis {
  plant: PlantDescription;
  plan: Plan;
  charging_s: number;
  months: readonly Month[];
  worst: Month;
  doubts: readonly Doubt[];
}

/** The facts with their bands: doubts of heat by the worst month anew, doubts of money by sums. */
async function banded(question: HoursQuestion, sweep: Sweep, basis: Basis) {
  const { plant, charging_s, months, worst, doubts } = basis;
  const file = readQuestion(question);
  const at = (varied: PlantDescription, end: Found): Facts => factsOf(varied, months, worst, end, charging_s);
  const { ends, finer } = await worstAnew(sweep, basis);
  const prices = doubtsOf(file, movesMoney);
  const bands = bandsOf(
    at(plant, worst.found),
    [
      ...ends.map((end) => (end ? at(plant, end) : null)),
      ...factsAt(question, doubtJobs(prices), (varied) => at(varied, worst.found)),
    ],
    [...doubts, ...prices],
    kindsOf(finer ? Math.abs((finer.time_s ?? MOST_s) - (worst.found.time_s ?? MOST_s)) : 0),
  );
  return { facts: bands.facts, levers: bands.levers('worst_s'), limit: limitOf(worst) };
}

/** The worst month at the ends of each doubt, and computed more finely; with as much of it as was not stopped. */
async function worstAnew(sweep: Sweep, { plant, plan, worst, doubts }: Basis) {
  const guess = Math.round((worst.found.time_s ?? MOST_s) / STEP_s);
  const jobs = [...doubtJobs(doubts), { edits: finerEdits(plant.run) }];
  const cases = jobs.map(({ edits }) => ({ month: worst.month, edits, guess }));
  const ends = await warmHours(sweep, plant, plan, cases);
  const finer = ends.pop() ?? null;
  return { ends, finer };
}
