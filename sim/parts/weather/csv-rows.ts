/** Rows of a weather table: stamps read, cells converted, hours averaged. */
import { HOURS } from './calendar.ts';
import type { CsvHead, Measure } from './csv-head.ts';
import { readStamp } from './csv-time.ts';
import { type ProblemList, quote } from './problems.ts';
import { readNumber, splitLine, type TextTable } from './text-table.ts';

/** Rows as they came; NaN where nothing was measured. */
export interface Rows {
  /** Seconds of the year in local standard time. */
  second: number[];
  /** One number per column of the head. */
  values: number[][];
}

/** Believable ranges in the units kept. */
const RANGE: Record<Measure, [low: number, high: number]> = {
  air: [-70, 60],
  'dew point': [-90, 45],
  sun: [-25, 1700],
  direct: [-25, 1500],
  diffuse: [-25, 1200],
  humidity: [0, 1.1],
  wind: [0, 80],
  albedo: [0, 1],
};

export function readRows(
  table: TextTable,
  head: CsvHead,
  zone_s: number,
  problems: ProblemList,
  notes: string[],
): Rows {
  const rows: Rows = { second: [], values: [] };
  const seen = new Set<number>();
  const years = new Set<number>();
  const decimalComma = table.separator !== ',';
  let leap = 0;
  for (const { number, text } of table.lines.slice(1)) {
    const cells = splitLine(text, table.separator);
    const stampText = head.time.map((i) => cells[i] ?? '').join(' ');
    const stamp = readStamp(stampText, zone_s);
    if (stamp === 'leap day') {
      leap++;
    } else if (stamp === undefined) {
      problems.add(
        `line ${number}`,
        'a time such as 2027-01-31 13:00, or month first 1/31/2027 13:00',
        quote(stampText),
        'mend the stamp or leave the row out',
      );
    } else if (seen.has(stamp.second)) {
      problems.add(
        `line ${number}`,
        'each time once, in standard time all year',
        `${quote(stampText)} again`,
        'export one year only, without daylight saving: in autumn it has an hour twice',
      );
    } else {
      seen.add(stamp.second);
      years.add(stamp.year);
      rows.second.push(stamp.second);
      rows.values.push(readCells(cells, head, { number, decimalComma }, problems));
    }
  }
  if (leap > 0) notes.push(`29 February left out (${leap} rows): the year has 365 days`);
  if (years.size > 2) {
    problems.add('the file', 'one year', `stamps of ${years.size} years`, 'cut it to twelve months');
  }
  return rows;
}

function readCells(
  cells: string[],
  head: CsvHead,
  row: { number: number; decimalComma: boolean },
  problems: ProblemList,
): number[] {
  return head.columns.map(({ measure, index, name, offset, factor }) => {
    const cell = cells[index] ?? '';
    const value = readNumber(cell, row.decimalComma);
    const kept = value === undefined ? undefined : (value + offset) * factor;
    const [low, high] = RANGE[measure];
    if (kept === undefined || kept < low || kept > high) {
      const show = (x: number) => String(Number((x / factor - offset).toPrecision(3)));
      problems.add(
        `line ${row.number}, ${name}`,
        `a number from ${show(low)} to ${show(high)}, or nothing`,
        quote(cell),
        'mend the value or its unit in the head, or leave the cell empty',
      );
      return Number.NaN;
    }
    return kept;
  });
}

/** Median distance between neighbouring stamps [s]; an hour for a single row. */
export function commonStep_s(rows: Rows): number {
  const sorted = [...rows.second].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((t, i) => t - sorted[i]);
  steps.sort((a, b) => a - b);
  return steps.length === 0 ? 3600 : steps[steps.length >> 1];
}

/**
 * Hourly means of one column; NaN where an hour has no value.
 *
 * @param stamp whether a row's stamp stands at the start or the end of what it measured
 */
export function binHours(rows: Rows, column: number, stamp: 'start' | 'end'): Float64Array {
  const sum = new Float64Array(HOURS);
  const count = new Float64Array(HOURS);
  for (let i = 0; i < rows.second.length; i++) {
    const value = rows.values[i][column];
    if (Number.isNaN(value)) continue;
    const h = stamp === 'start' ? Math.floor(rows.second[i] / 3600) : Math.ceil(rows.second[i] / 3600) - 1;
    const hour = (h + HOURS) % HOURS;
    sum[hour] += value;
    count[hour]++;
  }
  return sum.map((s, h) => (count[h] > 0 ? s / count[h] : Number.NaN));
}
