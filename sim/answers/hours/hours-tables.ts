/** Table and curve of the hours answer. */
import type { EngineDescription, PlantDescription } from '../../parts/description.ts';
import type { Column, Curve, Table } from '../answer.ts';
import { daysOfMonth } from '../stretch.ts';
import { fuelFlow, type Month } from './hours-facts.ts';
import { coldShare } from './warm-hours.ts';

const COLUMNS: Column[] = [
  { key: 'month', dimension: 'month' },
  { key: 'hours_s', dimension: 'time' },
  { key: 'charging_s', dimension: 'time' },
  { key: 'extra_s', dimension: 'time' },
  { key: 'extra_fuel_m3', dimension: 'volume' },
  { key: 'cold_share', dimension: 'share' },
  { key: 'solar_share', dimension: 'share' },
];

/** A row a month; empty where somebody stopped before it was found. */
export function monthsTable(
  engine: EngineDescription,
  plant: PlantDescription,
  months: readonly (Month | null)[],
  charging_s: number,
): Table {
  const flow_m3_s = fuelFlow(
    engine,
    months.filter((month) => month !== null),
  );
  const rows = months.map((month, i) => {
    if (!month) return [i + 1, null, charging_s, null, null, null, null];
    const { found, charging } = month;
    const extra_s = found.time_s === null ? null : Math.max(0, found.time_s - charging_s);
    return [
      i + 1,
      found.time_s,
      charging_s,
      extra_s,
      extra_s === null ? null : extra_s * daysOfMonth(i) * flow_m3_s,
      coldShare(plant, charging),
      found.week.solar_share,
    ];
  });
  return { columns: COLUMNS, rows, present: null };
}

export function monthsCurve(months: readonly (Month | null)[], charging_s: number): Curve {
  const y: Column = { key: 'hours_s', dimension: 'time' };
  return {
    x: COLUMNS[0],
    at: months.map((_, i) => i + 1),
    lines: [
      { name: 'hours_s', y, values: months.map((month) => month?.found.time_s ?? null) },
      { name: 'charging_s', y, values: months.map(() => charging_s) },
    ],
    present: null,
    knee: null,
  };
}
