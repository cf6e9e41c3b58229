/** The engine's coil: heat into the store against the store's temperature, and where it no longer all fits. */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import type { Answer, AnswerCaution, Column, Limit } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf, type FactKind, type Facts, under } from '../band.ts';
import { minds } from '../minds.ts';
import { factsAt, type Question, readQuestion } from '../vary.ts';
import { ChargeBench, type SteadyCharge } from './charge-bench.ts';
import { refuseBoiling } from './coil-cautions.ts';

export interface ChargingQuestion extends Question {
  /** Store of one temperature; left out, the mean the scenario starts with. */
  tank_C?: number;
  onProgress?: (share: number) => void;
}

const NUMERICAL_K = 0.1;
const DAY = 86_400;

const KINDS: Record<string, FactKind> = {
  // Where it always fits, or never does, the end of the scale stands for it.
  radiator_from_C: { dimension: 'temperature', least: 0, greatest: 100, numerical: NUMERICAL_K },
  to_store_W: { dimension: 'power' },
  to_store_rated_W: { dimension: 'power' },
  jacket_W: { dimension: 'power', least: 0 },
  radiator_W: { dimension: 'power', least: 0 },
  return_C: { dimension: 'temperature' },
  warm_return_from_C: { dimension: 'temperature', least: 0, greatest: 100, none: 100 },
  coolant_flow_m3_s: { dimension: 'flow' },
  coil_loss_Pa: { dimension: 'pressure', least: 0 },
  output_W: { dimension: 'electric_power' },
  tank_C: { dimension: 'temperature' },
};

/** Output that holds longest while the engine is allowed to run [W], the week over. */
function usualOutput({ runs, load }: EngineDescription): number {
  const held = new Map<number, number>();
  for (const { days, from_s, to_s } of runs.spans) {
    load.forEach(({ from_s: start, output_W }, i) => {
      const end = load[i + 1]?.from_s ?? DAY;
      const seconds = Math.max(0, Math.min(end, to_s) - Math.max(start, from_s)) * days.length;
      held.set(output_W, (held.get(output_W) ?? 0) + seconds);
    });
  }
  const longest = [...held].reduce((a, b) => (b[1] > a[1] ? b : a), [load[0].output_W, 0]);
  return longest[0];
}

interface Studied {
  usual: ChargeBench;
  rated: ChargeBench;
  now: SteadyCharge;
  nowRated: SteadyCharge;
}

function study(plant: PlantDescription, tank_C: number): Studied {
  const { engine } = plant;
  if (!engine) {
    throw new RangeError(
      'engine - expected an engine whose heat goes into the store - got none - add "engine"',
    );
  }
  const usual = new ChargeBench(plant, usualOutput(engine));
  const rated = new ChargeBench(plant, engine.rated_output_W);
  return { usual, rated, now: usual.at(tank_C), nowRated: rated.at(tank_C) };
}

function factsOf({ usual, now, nowRated }: Studied): Facts {
  const from = usual.radiatorFrom();
  return {
    radiator_from_C: from === 'always' ? 0 : from === 'never' ? usual.boiling_C : from,
    to_store_W: now.to_store_W,
    to_store_rated_W: nowRated.to_store_W,
    jacket_W: now.jacket_W,
    radiator_W: now.radiator_W,
    return_C: now.return_C,
    warm_return_from_C: usual.warmEnoughFrom(),
    coolant_flow_m3_s: now.flow_m3_s,
    coil_loss_Pa: now.coil_loss_Pa,
    output_W: usual.output_W,
    tank_C: now.tank_C,
  };
}

/** @throws RangeError for a scenario that cannot be read or has no engine, or a store past boiling */
export function chargingAnswer(question: ChargingQuestion): Answer {
  const file = readQuestion(question);
  const { plant } = file;
  const { bottom_C, top_C } = plant.run.start;
  const tank_C = question.tank_C ?? (bottom_C + top_C) / 2;
  const studied = study(plant, tank_C);
  if (question.tank_C !== undefined) refuseBoiling(tank_C, studied.usual.boiling_C);
  const coil = plant.coils.findIndex(({ name }) => name === plant.engine?.coil);
  const doubts = doubtsOf(file, under(`coils[${coil}]`, 'engine'));
  const ends = factsAt(
    question,
    doubtJobs(doubts),
    (varied) => factsOf(study(varied, tank_C)),
    question.onProgress,
  );
  const base = factsOf(studied);
  const bands = bandsOf(base, ends, doubts, KINDS);
  const from = studied.usual.radiatorFrom();
  const headline = typeof from === 'number' ? 'radiator_from_C' : 'to_store_W';
  return {
    key: 'charging',
    facts: bands.facts,
    headline,
    limit: limitOf(studied.now),
    ...pictures(studied, tank_C),
    levers: bands.levers(headline),
    cautions: cautionsOf(plant, base, from),
  };
}

/** A radiator that takes more than this share of the coolant's heat says that the coil is too small for it. */
const MUCH = 0.02;

function limitOf({ radiator_W, jacket_W }: SteadyCharge): Limit {
  return radiator_W > MUCH * jacket_W ? 'coil' : 'engine';
}

function cautionsOf(
  plant: PlantDescription,
  { return_C }: Facts,
  from: ReturnType<ChargeBench['radiatorFrom']>,
): AnswerCaution[] {
  const { engine } = plant;
  return minds([
    ['radiator_always', from === 'always'],
    ['radiator_never', from === 'never'],
    ['engine_cold', engine !== null && return_C !== null && return_C < engine.coldest_return_C],
    ['coolant_poison', engine?.coolant.kind === 'ethylene glycol'],
    ['trapped_coil', true],
  ]);
}

const COLUMNS: Column[] = [
  { key: 'tank_C', dimension: 'temperature' },
  { key: 'to_store_W', dimension: 'power' },
  { key: 'radiator_W', dimension: 'power' },
  { key: 'return_C', dimension: 'temperature' },
  { key: 'block_C', dimension: 'temperature' },
  { key: 'coolant_flow_m3_s', dimension: 'flow' },
  { key: 'to_store_rated_W', dimension: 'power' },
  { key: 'radiator_rated_W', dimension: 'power' },
];
const COLDEST = 5;
const POINTS = 25;
/** Every so manieth point of the curve is a row of the table. */
const ROW_EVERY = 2;

function pictures({ usual, rated }: Studied, tank_C: number): Pick<Answer, 'tables' | 'curves'> {
  const highest = Math.min(98, usual.boiling_C);
  const at = Array.from({ length: POINTS }, (_, i) => COLDEST + ((highest - COLDEST) * i) / (POINTS - 1));
  const points = at.map((tank) => ({ own: usual.at(tank), most: rated.at(tank) }));
  const rows = points
    .filter((_, i) => i % ROW_EVERY === 0)
    .map(({ own, most }) => [
      own.tank_C,
      own.to_store_W,
      own.radiator_W,
      own.return_C,
      own.block_C,
      own.flow_m3_s,
      most.to_store_W,
      most.radiator_W,
    ]);
  const from = usual.radiatorFrom();
  return {
    tables: { tank: { columns: COLUMNS, rows, present: null } },
    curves: {
      tank: {
        x: { key: 'tank_C', dimension: 'temperature' },
        at,
        lines: [
          {
            name: 'to_store_W',
            y: { key: 'to_store_W', dimension: 'power' },
            values: points.map(({ own }) => own.to_store_W),
          },
          {
            name: 'to_store_rated_W',
            y: { key: 'to_store_rated_W', dimension: 'power' },
            values: points.map(({ most }) => most.to_store_W),
          },
        ],
        present: tank_C,
        knee: typeof from === 'number' ? from : null,
      },
    },
  };
}
