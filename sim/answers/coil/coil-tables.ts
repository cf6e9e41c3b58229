/** Tables and curves of the coil's answer. */
import type { CoilDescription, PlantDescription } from '../../parts/description.ts';
import type { Column, Curve, Table } from '../answer.ts';
import { candidatesFor, coilPrice, namesake, sameCoil, windingsOf, withTube } from './candidates.ts';
import { tooHotFor } from './coil-cautions.ts';
import { coilOf } from './coil-of.ts';
import { kneeLength, outletByLength } from './endless.ts';
import { type Asked, type HouseholdCoil, householdCoil, starved } from './household-coil.ts';

const COLUMNS: Column[] = [
  { key: 'tube', dimension: 'text' },
  { key: 'rolls', dimension: 'number' },
  { key: 'roll_length_m', dimension: 'length' },
  { key: 'join', dimension: 'text' },
  { key: 'outlet_C', dimension: 'temperature' },
  { key: 'tap_flow_m3_s', dimension: 'flow' },
  { key: 'tap_pressure_Pa', dimension: 'pressure' },
  { key: 'pressure_drop_Pa', dimension: 'pressure' },
  { key: 'velocity_m_s', dimension: 'speed' },
  { key: 'content_m3', dimension: 'volume' },
  { key: 'lowest_tank_C', dimension: 'temperature' },
  { key: 'too_hot_for', dimension: 'text' },
  { key: 'windings', dimension: 'number' },
  { key: 'mass_kg', dimension: 'mass' },
  { key: 'price', dimension: 'money' },
];

type Row = Table['rows'][number];

function rowOf(
  plant: PlantDescription,
  { coil, steady, full, lowest_tank_C, boiling_C }: HouseholdCoil,
): Row {
  return [
    coil.tube.label,
    coil.rolls,
    coil.roll_length_m,
    coil.rolls > 1 ? coil.join : null,
    steady.outlet_C,
    full.flow_m3_s,
    full.pressure_Pa,
    steady.pressure_drop_kPa * 1000,
    steady.velocity_m_s,
    steady.content_m3,
    lowest_tank_C,
    tooHotFor(coil, lowest_tank_C, boiling_C),
    windingsOf(coil, plant.store),
    steady.mass_kg,
    coilPrice(coil, plant.prices),
  ];
}

function tableOf(plant: PlantDescription, coils: readonly HouseholdCoil[], present: CoilDescription): Table {
  const at = coils.findIndex(({ coil }) => sameCoil(coil, present));
  return {
    columns: COLUMNS,
    rows: coils.map((coil) => rowOf(plant, coil)),
    present: at < 0 ? null : at,
  };
}

/** A dearer coil is worth a row if the store may be this much colder [K]. */
const WORTH_K = 1;

/** Cheapest first, each next one dearer and content with a colder store; all give the shower its flow. */
function worthwhile(coils: readonly HouseholdCoil[], plant: PlantDescription, asked: Asked): HouseholdCoil[] {
  const priced = coils.flatMap((each) => {
    const price = coilPrice(each.coil, plant.prices);
    return price === null || each.lowest_tank_C === null || starved(each, asked)
      ? []
      : [{ each, price, lowest_C: each.lowest_tank_C }];
  });
  priced.sort((a, b) => a.price - b.price || a.lowest_C - b.lowest_C);
  let best_C = Number.POSITIVE_INFINITY;
  return priced.flatMap(({ each, lowest_C }) => {
    if (lowest_C > best_C - WORTH_K) return [];
    best_C = lowest_C;
    return [each];
  });
}

/**
 * `candidates` all that one can buy; `worth` those of them that nothing cheaper beats, with the present one;
 * `joined` the present tube in series and in parallel; `namesake` the tube that goes by the same size, if any.
 */
export function coilTables(plant: PlantDescription, own: HouseholdCoil, asked: Asked): Record<string, Table> {
  const present = own.coil;
  const study = (coil: CoilDescription) =>
    sameCoil(coil, present) ? own : householdCoil(plant, coil, asked);
  const all = candidatesFor(present).map(study);
  const worth = worthwhile(all, plant, asked);
  if (!worth.includes(own)) worth.unshift(own);
  // Beside one another at one flow through the tube; what the pump makes of each is in the tap's columns.
  const alike = { ...asked, flow_m3_s: own.flow_m3_s };
  const beside = (coil: CoilDescription) =>
    sameCoil(coil, present) ? own : householdCoil(plant, coil, alike);
  const rolls = Math.max(2, present.rolls);
  const tables: Record<string, Table> = {
    candidates: tableOf(plant, all, present),
    worth: tableOf(plant, worth, present),
    joined: tableOf(
      plant,
      (['series', 'parallel'] as const).map((join) => beside({ ...present, rolls, join })),
      present,
    ),
  };
  const other = namesake(present.tube);
  if (other) tables.namesake = tableOf(plant, [own, beside(withTube(present, other))], present);
  return tables;
}

const POINTS = 25;

/** `tank`: outlet over store temperature, whole flow; `length`: outlet over total length, flow as it is. */
export function coilCurves(own: HouseholdCoil, asked: Asked): Record<string, Curve> {
  const { coil, flow_m3_s, cold_C, boiling_C } = own;
  const given = { ...coil, flow_m3_s, tank_C: asked.tank_C, cold_C };
  const total_m = coil.rolls * coil.roll_length_m;
  const tanks = steps(Math.max(cold_C + 5, 25), Math.min(95, boiling_C));
  const lengths = steps(total_m / 10, total_m * 2.5);
  return {
    tank: {
      x: { key: 'tank_C', dimension: 'temperature' },
      at: tanks,
      lines: [
        {
          name: 'outlet_C',
          y: { key: 'outlet_C', dimension: 'temperature' },
          values: tanks.map((tank_C) => coilOf({ ...given, tank_C }).outlet_C),
        },
      ],
      present: asked.tank_C,
      knee: null,
    },
    length: {
      x: { key: 'length_m', dimension: 'length' },
      at: lengths,
      lines: [
        {
          name: 'outlet_C',
          y: { key: 'outlet_C', dimension: 'temperature' },
          values: outletByLength(given, lengths),
        },
      ],
      present: total_m,
      knee: kneeLength(given),
    },
  };
}

function steps(from: number, to: number): number[] {
  return Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1));
}
