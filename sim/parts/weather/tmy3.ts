/**
 * Reads a typical meteorological year in the open TMY3 CSV layout: a line about the station, a line of column
 * names, 8760 rows stamped at the end of their hour in local standard time.
 * Layout: Wilcox & Marion 2008, "Users Manual for TMY3 Data Sets", NREL/TP-581-43156 (from memory).
 */
import type { HourlyWeather } from '../description.ts';
import { dayOfYear, HOURS, nameOfHour } from './calendar.ts';
import { fillGaps, LONGEST_BRIDGE } from './fill-gaps.ts';
import { ProblemList, quote } from './problems.ts';
import { readNumber, readTable, splitLine, type TextTable } from './text-table.ts';
import type { WeatherReading } from './types.ts';

type Channel =
  | 'global_horizontal_W_m2'
  | 'direct_normal_W_m2'
  | 'diffuse_horizontal_W_m2'
  | 'air_C'
  | 'dew_point_C'
  | 'wind_m_s'
  | 'albedo';

/** Column name, channel, believable range, and a value to fall back on where the whole hour is missing. */
const COLUMNS: { head: string; key: Channel; low: number; high: number; otherwise?: number }[] = [
  { head: 'GHI (W/m^2)', key: 'global_horizontal_W_m2', low: 0, high: 1500 },
  { head: 'DNI (W/m^2)', key: 'direct_normal_W_m2', low: 0, high: 1400 },
  { head: 'DHI (W/m^2)', key: 'diffuse_horizontal_W_m2', low: 0, high: 1000 },
  { head: 'Dry-bulb (C)', key: 'air_C', low: -70, high: 60 },
  { head: 'Dew-point (C)', key: 'dew_point_C', low: -90, high: 40 },
  { head: 'Wspd (m/s)', key: 'wind_m_s', low: 0, high: 80 },
  { head: 'Alb (unitless)', key: 'albedo', low: 0, high: 1, otherwise: 0.2 },
];
const DATE = 'Date (MM/DD/YYYY)';
const TIME = 'Time (HH:MM)';

/** The second line names the columns, the first of them so. */
const HEAD = /^[^\n]*\n"?Date \(MM\/DD\/YYYY\)/i;

export function isTmy3(text: string): boolean {
  return HEAD.test(text);
}

/**
 * @param text the whole file
 * @returns the year and what was mended in it, or every problem (twenty, and how many more)
 */
export function parseTmy3(text: string): WeatherReading {
  const problems = new ProblemList();
  const table = readTable(text, 1, problems);
  const station = table && readStation(table, problems);
  const columns = table && findColumns(table, problems);
  if (!table || !station || !columns) return { ok: false, problems: problems.all() };
  const weather: HourlyWeather = { ...station, ...emptyHours() };
  const notes: string[] = [];
  readRows(table, columns, weather, problems, notes);
  if (problems.empty) mend(weather, problems, notes);
  return problems.empty ? { ok: true, weather, notes } : { ok: false, problems: problems.all() };
}

function emptyHours(): Record<Channel, Float64Array> {
  const hours = () => new Float64Array(HOURS).fill(Number.NaN);
  return {
    global_horizontal_W_m2: hours(),
    direct_normal_W_m2: hours(),
    diffuse_horizontal_W_m2: hours(),
    air_C: hours(),
    dew_point_C: hours(),
    wind_m_s: hours(),
    albedo: hours(),
  };
}

type Station = Omit<HourlyWeather, Channel>;

function readStation(table: TextTable, problems: ProblemList): Station | undefined {
  const where = `line ${table.lines[0].number}`;
  const cells = splitLine(table.lines[0].text, table.separator);
  if (cells.length < 7) {
    problems.add(
      where,
      'station number, name, state, time zone (h), latitude, longitude (degrees), altitude (m)',
      `${cells.length} values`,
      'take the file as it was published, first line included',
    );
    return undefined;
  }
  const bounds = [
    ['time zone', 'h', -12, 14],
    ['latitude', 'degrees', -90, 90],
    ['longitude', 'degrees', -180, 180],
    ['altitude', 'm', -450, 6000],
  ] as const;
  const values = bounds.map(([name, unit, low, high], i) => {
    const value = readNumber(cells[3 + i], false) ?? Number.NaN;
    if (!(value >= low && value <= high)) {
      problems.add(
        `${where}, ${name}`,
        `${low} to ${high} ${unit}`,
        quote(cells[3 + i]),
        'compare the first line with the file as it was published',
      );
    }
    return value;
  });
  const [zone_h, latitude, longitude, altitude_m] = values;
  return {
    place: [cells[1], cells[2]].filter((part) => part !== '').join(', '),
    latitude_rad: (latitude * Math.PI) / 180,
    longitude_rad: (longitude * Math.PI) / 180,
    altitude_m,
    time_zone_s: zone_h * 3600,
  };
}

interface Columns {
  date: number;
  time: number;
  channels: number[];
}

function findColumns(table: TextTable, problems: ProblemList): Columns | undefined {
  const head = splitLine(table.lines[1].text, table.separator).map((cell) => cell.toLowerCase());
  const find = (name: string) => {
    const at = head.indexOf(name.toLowerCase());
    if (at < 0) {
      problems.add(
        `line ${table.lines[1].number}`,
        `a column "${name}"`,
        `${head.length} columns without it`,
        'take the file as it was published, or give a plain CSV with units in its head',
      );
    }
    return at;
  };
  const found = { date: find(DATE), time: find(TIME), channels: COLUMNS.map(({ head: name }) => find(name)) };
  return [found.date, found.time, ...found.channels].includes(-1) ? undefined : found;
}

function readRows(
  table: TextTable,
  columns: Columns,
  weather: HourlyWeather,
  problems: ProblemList,
  notes: string[],
): void {
  const width = 1 + Math.max(columns.date, columns.time, ...columns.channels);
  const seen = new Uint8Array(HOURS);
  const years = new Set<string>();
  let leap = 0;
  for (const { number, text } of table.lines.slice(2)) {
    const cells = splitLine(text, table.separator);
    if (cells.length < width) {
      problems.add(
        `line ${number}`,
        `${width} values or more`,
        `${cells.length} values`,
        'the line was cut: take the whole file',
      );
      continue;
    }
    const stamp = hourOfStamp(cells[columns.date], cells[columns.time]);
    if (stamp === '29 February') leap++;
    else if (typeof stamp === 'string') {
      problems.add(
        `line ${number}`,
        'date MM/DD/YYYY and time 01:00 to 24:00',
        quote(`${cells[columns.date]} ${cells[columns.time]}`),
        'mend the stamp or leave the row out',
      );
    } else if (seen[stamp.hour]) {
      problems.add(
        `line ${number}`,
        'each hour once',
        `${nameOfHour(stamp.hour)} again`,
        'leave one of the two rows out',
      );
    } else {
      seen[stamp.hour] = 1;
      years.add(stamp.year);
      readHour(cells, columns, { number, hour: stamp.hour }, weather, problems);
    }
  }
  if (leap > 0) notes.push(`29 February left out (${leap} hours): the year has 365 days`);
  if (years.size > 1) {
    const sorted = [...years].sort();
    notes.push(`a year put together from typical months of ${sorted[0]} to ${sorted.at(-1)}`);
  }
}

/** Hour of the year of an end-of-hour stamp; text when it is none. */
function hourOfStamp(
  date: string,
  time: string,
): { hour: number; year: string } | '29 February' | 'no stamp' {
  const d = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(date);
  const t = /^(\d{1,2}):00$/.exec(time);
  if (!d || !t) return 'no stamp';
  if (Number(d[1]) === 2 && Number(d[2]) === 29) return '29 February';
  const day = dayOfYear(Number(d[1]), Number(d[2]));
  const end = Number(t[1]);
  return day < 0 || end < 1 || end > 24 ? 'no stamp' : { hour: 24 * day + end - 1, year: d[3] };
}

function readHour(
  cells: string[],
  columns: Columns,
  at: { number: number; hour: number },
  weather: HourlyWeather,
  problems: ProblemList,
): void {
  COLUMNS.forEach(({ head, key, low, high }, i) => {
    const cell = cells[columns.channels[i]];
    const value = readNumber(cell, false);
    if (value === undefined || value < low || value > high) {
      problems.add(
        `line ${at.number}, ${head}`,
        `a number from ${low} to ${high}, or -9900 for none`,
        quote(cell),
        'mend the value, or write -9900 to have a short gap bridged',
      );
    } else weather[key][at.hour] = value;
  });
}

function mend(weather: HourlyWeather, problems: ProblemList, notes: string[]): void {
  for (const { head, key, otherwise } of COLUMNS) {
    const series = weather[key];
    if (otherwise !== undefined) {
      const missing = series.reduce((count, x) => count + (Number.isNaN(x) ? 1 : 0), 0);
      if (missing > 0) notes.push(`${head}: ${missing} hours without a value are taken as ${otherwise}`);
      for (let h = 0; h < HOURS; h++) if (Number.isNaN(series[h])) series[h] = otherwise;
      continue;
    }
    const { filled, gaps } = fillGaps(series);
    if (filled > 0) notes.push(`${head}: ${filled} missing hours bridged by straight lines`);
    for (const gap of gaps) {
      problems.add(
        head,
        `no gap over ${LONGEST_BRIDGE} hours`,
        `${gap.hours} hours from ${nameOfHour(gap.from)}`,
        'use a complete file, or generated weather',
      );
    }
  }
}
