/** The picture of the days: the store, and under it on the same columns engine, sun and draws. */
import type { PlantDescription, Result, Series } from '../../sim/index.ts';
import { dateWords, fixed, storeWords, type UnitSystem } from '../words/index.ts';
import { axisWidth, type StoreTrace, storeChart, timeFoot } from './chart.ts';
import type { Screen } from './screen.ts';
import { numberRow, sparkRow } from './spark.ts';
import { daysPerMark, markColumns, meanByColumn, type Span, shareByColumn } from './time-columns.ts';
import { columnUnit } from './units.ts';

const day_s = 86_400;
/** Room for a date or a number of six figures. */
const markRoom = 8;

/** A mean for each of so many equal parts of the run. */
type ByParts = (parts: number) => number[];

/** What all rows of one picture share. */
interface Grid {
  days: number;
  columns: number;
  /** First column of each mark, `step` days apart. */
  marks: number[];
  step: number;
  /** Means of a channel over any number of equal parts of the run. */
  meansOf: (values: ArrayLike<number>) => ByParts;
}

function gridOf({ series, days }: Result, screen: Screen): Grid {
  const { time_s, interval_s } = series;
  const columns = screen.width - axisWidth - 1;
  const step = daysPerMark(days, columns, markRoom);
  return {
    days,
    columns,
    step,
    marks: markColumns(days, columns, step),
    meansOf: (values) => (parts) => meanByColumn({ time_s, interval_s, values }, days * day_s, parts),
  };
}

export function dayLines(
  result: Result,
  plant: PlantDescription,
  units: UnitSystem,
  screen: Screen,
): string[] {
  const grid = gridOf(result, screen);
  const { channels } = result.series;
  const span_s = result.days * day_s;
  const dates = grid.marks.map((column, i) => ({
    column,
    words: dateWords(result.first_day + i * grid.step),
  }));
  const volume = columnUnit('volume', units);
  const engine = spansOf(result, 'engine.start', 'engine.stop');
  return [
    ...storeChart(storeTrace(result.series, plant, units, grid, screen), screen),
    ...timeFoot(dates, grid.columns, screen),
    ...(plant.engine
      ? rowLines(
          'engine',
          'h/day',
          (parts) => shareByColumn(engine, span_s, parts),
          (share) => share * 24,
          grid,
          screen,
        )
      : []),
    ...(plant.collector
      ? rowLines('sun', 'kWh/m2', grid.meansOf(channels.sun_W_m2), (W_m2) => (W_m2 * 24) / 1000, grid, screen)
      : []),
    ...(plant.taps
      ? rowLines(
          'draws',
          `${volume.symbol}/day`,
          grid.meansOf(channels.mixed_flow_m3_s),
          (m3_s) => volume.of(m3_s * day_s),
          grid,
          screen,
        )
      : []),
  ];
}

function storeTrace(
  { time_s, layers, layer_C }: Series,
  { taps }: PlantDescription,
  units: UnitSystem,
  grid: Grid,
  screen: Screen,
): StoreTrace {
  const temperature = columnUnit('temperature', units);
  const unit = `${screen.unicode ? '°' : ''}${temperature.symbol}`;
  const layer = (k: number) => {
    const values = Float64Array.from(time_s, (_, i) => layer_C[i * layers + k]);
    return grid.meansOf(values)(grid.columns).map(temperature.of);
  };
  const wanted = taps?.draws.length
    ? temperature.of(Math.max(...taps.draws.map(({ wanted_C }) => wanted_C)))
    : null;
  return {
    top: layer(layers - 1),
    middle: layer(Math.floor(layers / 2)),
    bottom: layer(0),
    unit,
    wanted: wanted === null ? null : { value: wanted, words: `wanted ${Math.round(wanted)} ${unit}` },
    words: storeWords,
  };
}

/** Bars over the days, and under each mark the mean of its days as `ofDay` makes it from a day's mean. */
function rowLines(
  label: string,
  unit: string,
  means: ByParts,
  ofDay: (mean: number) => number,
  { columns, days, marks, step }: Grid,
  screen: Screen,
): string[] {
  const perDay = means(days).map(ofDay);
  const numbers = marks.map((column, i) => {
    const shared = perDay.slice(i * step, (i + 1) * step);
    return { column, text: amount(shared.reduce((sum, value) => sum + value, 0) / shared.length) };
  });
  return [sparkRow(label, means(columns), screen), numberRow(unit, numbers)];
}

/** Spans between an event and the one that ends it; one still going lasts to the end of the run. */
function spansOf({ events, days }: Result, from: string, to: string): Span[] {
  const spans: Span[] = [];
  for (const { name, time_s } of events) {
    const last = spans.at(-1);
    if (name === from) spans.push({ from_s: time_s, to_s: days * day_s });
    else if (name === to && last) last.to_s = time_s;
  }
  return spans;
}

/** Two or three figures that mean something. */
function amount(value: number): string {
  if (!Number.isFinite(value)) return '';
  return fixed(value, value >= 99.95 || value === 0 ? 0 : 1);
}
