/** Tables and curves of the collector's answer. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Column, Curve, Table } from '../answer.ts';
import { sizePrice, stopsPaying } from './sizes.ts';
import { type Found, figuresOf, heatOf, overKey, presentOf, sparedBy } from './sun-facts.ts';

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

/** `sizes`: a row a size, over the year; `months`: heat by month and size; `long`: all of it, a row a size and month. */
export function sunTables(plant: PlantDescription, found: Found): Record<string, Table> {
  return { sizes: sizesTable(plant, found), months: monthsTable(found), long: longTable(plant, found) };
}

function sizesTable(plant: PlantDescription, found: Found): Table {
  const counted = plant.collector?.tubes !== null;
  const timetable = found.need_s !== null;
  const over = overKey(plant);
  const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });
  const columns: Column[] = [
    column('area_m2', 'area'),
    ...(counted ? [column('tubes', 'number')] : []),
    column('heat_J', 'energy'),
    column('share', 'share'),
    column('dull_day_J', 'energy'),
    ...(plant.engine ? [column('spared_s', 'time')] : []),
    ...(timetable ? [column('spared_beyond_s', 'time')] : []),
    column('spared_fuel_m3', 'volume'),
    column('spared_money', 'money'),
    column('price', 'money'),
    column('payback_years', 'number'),
    column(over, 'time'),
    column('store_top_C_max', 'temperature'),
  ];
  const rows = found.runs.map((run, index) => {
    const { size, dull } = run;
    const figures = figuresOf(run);
    const spared = sparedBy(plant, found, index);
    const price = sizePrice(size, plant.prices);
    const without = size.area_m2 === 0;
    return [
      size.area_m2,
      ...(counted ? [size.tubes ?? 0] : []),
      heatOf(run),
      figures ? (figures.solar_share ?? 0) : null,
      without ? 0 : dull ? (dull.solar_heat_J ?? 0) / 7 : null,
      ...(plant.engine ? [spared.engine_s] : []),
      ...(timetable ? [spared.beyond_s] : []),
      spared.fuel_m3,
      spared.money,
      price,
      spared.money !== null && spared.money > 0 ? price / spared.money : null,
      figures?.[over] ?? null,
      figures?.store_top_C_max ?? null,
    ];
  });
  return { columns, rows, present: presentOf(found.runs) };
}

function monthsTable({ runs }: Found): Table {
  const shown = runs.filter(({ size }) => size.area_m2 > 0);
  const columns: Column[] = [
    { key: 'month', dimension: 'month' },
    ...shown.map(
      ({ size }, i): Column => ({
        key: `heat_${i + 1}_J`,
        dimension: 'energy',
        at: { value: size.area_m2, dimension: 'area' },
      }),
    ),
  ];
  const rows = MONTHS.map((month) => [
    month + 1,
    ...shown.map((run) => figuresOf(run, month)?.solar_heat_J ?? null),
  ]);
  return { columns, rows, present: null };
}

function longTable(plant: PlantDescription, found: Found): Table {
  const over = overKey(plant);
  const columns: Column[] = [
    { key: 'area_m2', dimension: 'area' },
    { key: 'month', dimension: 'month' },
    { key: 'heat_J', dimension: 'energy' },
    { key: 'share', dimension: 'share' },
    { key: 'store_mean_C', dimension: 'temperature' },
    { key: 'store_top_C_max', dimension: 'temperature' },
    { key: 'need_s', dimension: 'time' },
    { key: 'spared_s', dimension: 'time' },
    { key: 'spared_fuel_m3', dimension: 'volume' },
    { key: over, dimension: 'time' },
  ];
  const rows = found.runs.flatMap((run, index) =>
    MONTHS.map((month) => {
      const figures = figuresOf(run, month);
      const spared = sparedBy(plant, found, index, month);
      return [
        run.size.area_m2,
        month + 1,
        figures ? (figures.solar_heat_J ?? 0) : null,
        figures ? (figures.solar_share ?? 0) : null,
        figures?.store_mean_C ?? null,
        figures?.store_top_C_max ?? null,
        found.need_s?.[index][month] ?? null,
        spared.engine_s,
        spared.fuel_m3,
        figures?.[over] ?? null,
      ];
    }),
  );
  return { columns, rows, present: null };
}

/** `size`: the year's heat by area; `months`: heat by month with the collector as it is. */
export function sunCurves(found: Found): Record<string, Curve> {
  const { runs } = found;
  const heat: Column = { key: 'heat_J', dimension: 'energy' };
  const areas = runs.map(({ size }) => size.area_m2);
  const heats = runs.map(heatOf);
  const present = presentOf(runs);
  return {
    size: {
      x: { key: 'area_m2', dimension: 'area' },
      at: areas,
      lines: [{ name: 'heat_J', y: heat, values: heats }],
      present: areas[present],
      knee: stopsPaying(areas, heats),
    },
    months: {
      x: { key: 'month', dimension: 'month' },
      at: MONTHS.map((month) => month + 1),
      lines: [
        {
          name: 'heat_J',
          y: heat,
          values: MONTHS.map((month) => figuresOf(runs[present], month)?.solar_heat_J ?? null),
        },
      ],
      present: null,
      knee: null,
    },
  };
}
