/** What breaks it: one thing at a time fails, and what then happens, when, how hot and how much. */
import type { PlantDescription } from '../../parts/description.ts';
import { readScenario } from '../../scenario/index.ts';
import type { Answer, AnswerCaution, Limit } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf, type Facts } from '../band.ts';
import { type Edit, edited } from '../edit.ts';
import type { DoJobs } from '../job.ts';
import { movesHeatOf } from '../matters.ts';
import { type MindKey, minds } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { breaksFacts, breaksKinds } from './breaks-facts.ts';
import { breaksCurves, breaksTables } from './breaks-tables.ts';
import { FAILURES, type Failure, whyNot } from './failures.ts';
import { type Plan, planOf, type RunKey, type Runs } from './runs.ts';

export interface BreaksQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

/** The first that is known is told first: by how much harm it does to people. */
const HEADLINES = ['away_top_C', 'trapped_rated_K', 'off_mean_C', 'power_mean_C', 'lid_more_K'];

/** Headlines are temperatures or warmings: what moves one by less is not worth a line [K]. */
const LEAST_LEVER_K = 0.3;

/** @throws RangeError for a scenario that cannot be read or run */
export async function breaksAnswer(question: BreaksQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const plan = planOf(plant);
  const ends = [[], finerEdits(plant.run), ...doubtJobs(doubts).map(({ edits }) => edits)];
  const planned = ends.length * Object.keys(plan.jobs).length;
  const sweep = new Sweep(question.doJobs, planned, question.onProgress);
  const done = await runsAt(sweep, plan, ends);
  const [runs] = done;
  if (sweep.problems.size > 0 && !Object.values(runs).some(Boolean)) {
    throw new RangeError([...sweep.problems].join('\n'));
  }
  const facts = breaksFacts(plant, plan, runs);
  // Closed forms too are worked out at each end of a doubt.
  const at = (edits: readonly Edit[], done: Runs): Facts | null => {
    const read = readScenario(edited(question.scenario, edits), question.context);
    return read.ok && Object.values(done).some(Boolean) ? breaksFacts(read.plant, plan, done) : null;
  };
  const [fine, ...atEnds] = ends.slice(1).map((edits, i) => at(edits, done[i + 1]));
  const bands = bandsOf(facts, atEnds, doubts, breaksKinds(facts, fine));
  const headline = HEADLINES.find((key) => bands.facts[key]) ?? HEADLINES[0];
  const answer: Answer = {
    key: 'breaks',
    facts: bands.facts,
    headline,
    limit: limitOf(headline),
    tables: breaksTables(plant, bands.facts),
    curves: breaksCurves(runs),
    levers: bands
      .levers(headline)
      .filter(({ low, high }) => Math.abs(high.value - low.value) > LEAST_LEVER_K),
    cautions: cautionsOf(plant, facts),
    taken: ['one_at_a_time', ...(plan.jobs.summer ? ['away_in_summer'] : []), 'off_in_winter'],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** The plan's runs as the scenario stands first, then at each end of a doubt. */
async function runsAt(sweep: Sweep, plan: Plan, ends: readonly (readonly Edit[])[]): Promise<Runs[]> {
  const entries = Object.entries(plan.jobs);
  const jobs = ends.flatMap((edits) =>
    entries.map(([, job]) => ({ ...job, edits: [...edits, ...job.edits] })),
  );
  const done = await sweep.run(jobs);
  return ends.map((_, end) =>
    Object.fromEntries(entries.map(([key], i) => [key as RunKey, done[end * entries.length + i]])),
  );
}

function limitOf(headline: string): Limit {
  if (headline === 'away_top_C') return 'sun';
  return headline === 'trapped_rated_K' ? 'coil' : 'none';
}

/** A caution for each failure that applies. */
function cautionsOf(plant: PlantDescription, facts: Facts): AnswerCaution[] {
  const of: Record<Failure, MindKey[]> = {
    pump: ['stagnation'],
    away: ['boil_over', 'legionella'],
    trapped: ['trapped_coil'],
    mixing: ['scald'],
    off: [],
    power: ['wiring'],
    night: ['freezing_loop'],
    weak: ['freezing_loop'],
    pipe: ['freezing_pipe'],
    cistern: ['freezing_cistern'],
    lid: ['open_lid'],
    sun_valve: ['thermosiphon'],
    engine_valve: ['thermosiphon', 'coolant'],
  };
  const due = FAILURES.filter((failure) => whyNot(failure, plant) === null).flatMap((failure) => of[failure]);
  const boils: MindKey[] = (facts.limitless_boiled_kg ?? 0) > 0 ? ['boiling'] : [];
  return minds([...new Set([...due, ...boils])].map((key) => [key, true]));
}
