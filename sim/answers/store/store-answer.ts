/** Store and insulation: what it loses by itself, how long it carries the household, how long it takes to heat. */
import type { PlantDescription } from '../../parts/description.ts';
import { evaporativeHeat } from '../../physics/evaporation.ts';
import { weightSeverity } from '../../run/weight-severity.ts';
import type { Answer, Limit } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf, type FactKind, type Facts } from '../band.ts';
import type { Edit } from '../edit.ts';
import type { DoJobs, Job } from '../job.ts';
import { movesHeatOf } from '../matters.ts';
import { mind } from '../minds.ts';
import { finerEdits } from '../stretch.ts';
import { type OnProgress, Sweep } from '../sweep.ts';
import { type Question, readQuestion } from '../vary.ts';
import { type Measured, measured, ownJob, type Temperatures, temperaturesOf, variantJobs } from './runs.ts';
import { storeCurves, storeTables, type Told } from './store-tables.ts';
import { type Choice, LIDS, presentThickness, THICKNESS_COUNT, VOLUMES, variantOf } from './variants.ts';

export interface StoreQuestion extends Question {
  doJobs: DoJobs;
  onProgress?: OnProgress;
}

const DAY = 86_400;
const RUNS_A_VARIANT = 3;

/** @throws RangeError for a scenario that cannot be read or run */
export async function storeAnswer(question: StoreQuestion): Promise<Answer> {
  const file = readQuestion(question);
  const { plant } = file;
  const variants = choicesOf(plant).map((choice) => variantOf(plant, question.scenario, choice));
  const doubts = doubtsOf(file, movesHeatOf(plant));
  const ends = [{ edits: finerEdits(plant.run) }, ...doubtJobs(doubts)];
  const planned = 1 + RUNS_A_VARIANT * (variants.length + ends.length);
  const sweep = new Sweep(question.doJobs, planned, question.onProgress);
  const [own] = await sweep.run([ownJob(plant)]);
  if (!own && sweep.problems.size > 0) throw new RangeError([...sweep.problems].join('\n'));
  const at = own ? temperaturesOf(plant, own) : null;
  // The present store first: it is what somebody who stops early wants to keep.
  const order = [...variants].sort((a, b) => Number(b.present) - Number(a.present));
  const found = at
    ? await measureAll(
        sweep,
        plant,
        order.map(({ edits }) => edits),
        at,
      )
    : [];
  const told = variants.map(
    (variant): Told => ({ variant, measured: found[order.indexOf(variant)] ?? null }),
  );
  const [finer, ...varied] = at
    ? await measureAll(
        sweep,
        plant,
        ends.map(({ edits }) => edits),
        at,
      )
    : [];
  const present = told.find(({ variant }) => variant.present)?.measured ?? null;
  const base = present && at ? factsOf(present, at) : {};
  const bands = bandsOf(
    base,
    varied.map((each) => (each && at ? factsOf(each, at) : null)),
    doubts,
    kindsOf(base, finer && at ? factsOf(finer, at) : base),
  );
  const answer: Answer = {
    key: 'store',
    facts: bands.facts,
    headline: 'drop_K',
    limit: limitOf(bands.facts.vapour_share?.value ?? 0, bands.facts.loops_share?.value ?? 0),
    tables: storeTables(plant, told),
    curves: storeCurves(plant, told),
    levers: bands.levers('drop_K'),
    cautions: [
      { ...mind('weight'), severity: weightSeverity(plant) },
      ...(plant.store.lid === 'open' ? [mind('open_lid')] : []),
    ],
    taken: ['at_usual', 'carried_from_full', ...(plant.engine ? ['heat_up_from_fresh'] : [])],
  };
  return sweep.stopped ? { ...answer, stopped: true } : answer;
}

/** Every insulation under every lid at the size as it is; every size with the insulation as it is and thicker. */
function choicesOf(plant: PlantDescription): Choice[] {
  const thickness = presentThickness(plant);
  const { lid } = plant.store;
  const thicknesses = Array.from({ length: THICKNESS_COUNT }, (_, i) => i);
  const here = thicknesses.flatMap((each) =>
    LIDS.map((over): Choice => ({ thickness: each, lid: over, volume: 1 })),
  );
  const thicker = Math.min(THICKNESS_COUNT - 1, thickness + 2);
  const sizes = VOLUMES.filter((volume) => volume !== 1).flatMap((volume) =>
    [thickness, thicker].map((each): Choice => ({ thickness: each, lid, volume })),
  );
  return [...here, ...sizes];
}

async function measureAll(
  sweep: Sweep,
  plant: PlantDescription,
  edits: readonly (readonly Edit[])[],
  at: Temperatures,
): Promise<(Measured | null)[]> {
  const jobs = edits.map((each) => variantJobs(plant, each, at));
  const all = jobs
    .flatMap(({ cool, carry, heat }) => [cool, carry, heat])
    .filter((job): job is Job => job !== null);
  const done = await sweep.run(all);
  const of = (job: Job | null) => (job ? done[all.indexOf(job)] : null);
  return jobs.map(({ cool, carry, heat }) => {
    const cooled = of(cool);
    return cooled ? measured(at.usual_C, cooled, of(carry), of(heat)) : null;
  });
}

function factsOf(found: Measured, at: Temperatures): Facts {
  const { drop_K, loss_W, skin_W, carried_s, heat_up_s } = found;
  const vapour_J = evaporativeHeat(found.evaporated_kg ?? 0, at.usual_C);
  return {
    drop_K,
    loss_W,
    carried_s,
    heat_up_s,
    vapour_share: loss_W !== null && loss_W > 0 ? Math.min(1, vapour_J / (loss_W * DAY)) : null,
    loops_share: loss_W !== null && loss_W > 0 ? 1 - Math.min(1, (skin_W ?? 0) / loss_W) : null,
    ...at,
  };
}

function kindsOf(base: Facts, finer: Facts): Record<string, FactKind> {
  const numerical = (key: string) => Math.abs((finer[key] ?? 0) - (base[key] ?? finer[key] ?? 0));
  return {
    drop_K: { dimension: 'temperature_difference', numerical: numerical('drop_K') },
    loss_W: { dimension: 'power', numerical: numerical('loss_W') },
    carried_s: { dimension: 'time', least: 0, numerical: numerical('carried_s') },
    heat_up_s: { dimension: 'time', least: 0, numerical: numerical('heat_up_s') },
    vapour_share: { dimension: 'share', least: 0, greatest: 1 },
    loops_share: { dimension: 'share', least: 0, greatest: 1 },
    usual_C: { dimension: 'temperature' },
    full_C: { dimension: 'temperature' },
    fresh_C: { dimension: 'temperature' },
  };
}

/** Where more than half goes with the vapour the lid comes before the foam; where it goes back to the engine, a valve. */
function limitOf(vapour_share: number, loops_share: number): Limit {
  if (loops_share > 0.5) return 'engine';
  return vapour_share > 0.5 ? 'store' : 'insulation';
}
