/** The household's coil: how cold the store may be for the wanted shower, and what one could buy instead. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Answer, Limit } from '../answer.ts';
import { bandsOf, doubtJobs, doubtsOf, type FactKind, type Facts, under } from '../band.ts';
import { householdOf, showerOf, usualTank } from '../household.ts';
import { mind } from '../minds.ts';
import { factsAt, type Question, readQuestion } from '../vary.ts';
import { coilPrice } from './candidates.ts';
import {
  coilCautions,
  hottestOutlet,
  hottestStore,
  mostPressure,
  refuseImpossible,
} from './coil-cautions.ts';
import { coilCurves, coilTables } from './coil-tables.ts';
import { type Asked, type HouseholdCoil, householdCoil, starved } from './household-coil.ts';
import { ShowerBench } from './shower-bench.ts';

export interface CoilQuestion extends Question {
  /** Store of one temperature; left out, the mean the scenario starts with. */
  tank_C?: number;
  /** Flow through the coil for its own figures; left out, what the pump gives the shower. */
  flow_m3_s?: number;
  onProgress?: (share: number) => void;
}

/** Prices that a coil's own price is made of. */
const COIL_PRICES = ['prices.copper_per_kg', 'prices.pex_per_m', 'prices.fitting_per_joint'];
/** Hottest an open store of water can be [C]. */
const HOTTEST = 100;
/** How near the march and the root come [K], measured with twice the layers and sections (tests). */
const NUMERICAL_K = 0.1;

const KINDS: Record<string, FactKind> = {
  lowest_tank_C: { dimension: 'temperature', greatest: HOTTEST, none: HOTTEST, numerical: NUMERICAL_K },
  outlet_C: { dimension: 'temperature', numerical: NUMERICAL_K },
  effectiveness: { dimension: 'share', least: 0, greatest: 1, numerical: 0.002 },
  UA_W_K: { dimension: 'conductance', least: 0 },
  heat_W: { dimension: 'power' },
  pressure_drop_Pa: { dimension: 'pressure', least: 0 },
  velocity_m_s: { dimension: 'speed', least: 0 },
  tap_flow_m3_s: { dimension: 'flow', least: 0 },
  tap_pressure_Pa: { dimension: 'pressure', least: 0 },
  content_m3: { dimension: 'volume' },
  mass_kg: { dimension: 'mass' },
  price: { dimension: 'money', least: 0 },
  tank_C: { dimension: 'temperature' },
  layered_C: { dimension: 'temperature', numerical: NUMERICAL_K },
  bottom_C: { dimension: 'temperature' },
  top_C: { dimension: 'temperature' },
  cold_C: { dimension: 'temperature' },
  wanted_C: { dimension: 'temperature' },
  flow_m3_s: { dimension: 'flow' },
  valve_C: { dimension: 'temperature' },
  hottest_outlet_C: { dimension: 'temperature' },
  hottest_store_C: { dimension: 'temperature' },
  pump_most_Pa: { dimension: 'pressure' },
};

function factsOf(own: HouseholdCoil, asked: Asked, plant: PlantDescription): Facts {
  const { steady, full } = own;
  const { prices, taps } = plant;
  const { start } = plant.run;
  return {
    lowest_tank_C: own.lowest_tank_C,
    outlet_C: steady.outlet_C,
    effectiveness: steady.effectiveness,
    UA_W_K: steady.UA_W_K,
    heat_W: steady.heat_W,
    pressure_drop_Pa: steady.pressure_drop_kPa * 1000,
    velocity_m_s: steady.velocity_m_s,
    tap_flow_m3_s: full.flow_m3_s,
    tap_pressure_Pa: full.pressure_Pa,
    content_m3: steady.content_m3,
    mass_kg: steady.mass_kg,
    price: coilPrice(own.coil, prices),
    tank_C: asked.tank_C,
    layered_C: own.layered.hot_line_C,
    bottom_C: start.bottom_C,
    top_C: start.top_C,
    cold_C: own.cold_C,
    wanted_C: asked.shower.wanted_C,
    flow_m3_s: own.flow_m3_s,
    valve_C: taps?.mixing_valve_C ?? null,
    hottest_outlet_C: hottestOutlet(own),
    hottest_store_C: hottestStore(own, asked),
    pump_most_Pa: mostPressure(plant),
  };
}

/** @throws RangeError for a scenario that cannot be read, has no household, or whose pump gives nothing, or a question that cannot be */
export function coilAnswer(question: CoilQuestion): Answer {
  const file = readQuestion(question);
  const { plant, filled } = file;
  const { index, coil } = householdOf(plant);
  const asked = askedOf(plant, question);
  const own = householdCoil(plant, coil, asked);
  refuseImpossible(question, own);
  const matters = under(`coils[${index}]`, 'supply', 'taps', ...COIL_PRICES);
  const doubts = doubtsOf(file, matters);
  const ends = factsAt(
    question,
    doubtJobs(doubts),
    (varied) => {
      // The store asked about stays; all else is as at the doubt's end.
      const there = { ...askedOf(varied, question), tank_C: asked.tank_C };
      const own = householdCoil(varied, householdOf(varied).coil, there);
      // Tube is paid for as it is listed, whatever its wall turns out to be.
      const price = coilPrice({ ...own.coil, tube: coil.tube }, varied.prices);
      return { ...factsOf(own, there, varied), price };
    },
    question.onProgress,
  );
  const bands = bandsOf(factsOf(own, asked, plant), ends, doubts, KINDS);
  const headline = own.lowest_tank_C === null ? 'outlet_C' : 'lowest_tank_C';
  return {
    key: 'coil',
    facts: bands.facts,
    headline,
    limit: limitOf(own, asked),
    tables: coilTables(plant, own, asked),
    curves: coilCurves(own, asked),
    levers: bands.levers(headline),
    cautions: [
      ...coilCautions(plant, own, asked, filled),
      ...(filled.some(({ path }) => COIL_PRICES.includes(path)) ? [mind('prices_invented')] : []),
    ],
  };
}

function askedOf(plant: PlantDescription, { tank_C, flow_m3_s }: CoilQuestion): Asked {
  const shower = showerOf(householdOf(plant).taps);
  const asked = { tank_C: tank_C ?? usualTank(plant, new ShowerBench(plant, shower).cold_C), shower };
  return flow_m3_s === undefined ? asked : { ...asked, flow_m3_s };
}

/** A coil that goes this share of the way gives nearly what an endless one would: then the store's heat is the limit. */
const NEARLY_ALL = 0.9;

function limitOf(own: HouseholdCoil, asked: Asked): Limit {
  if (starved(own, asked)) return 'pump';
  return own.steady.effectiveness >= NEARLY_ALL ? 'store' : 'coil';
}
