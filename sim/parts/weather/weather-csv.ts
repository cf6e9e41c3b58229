/** Reads a plain weather table with units in its head: hourly or finer, one year. */
import type { HourlyWeather } from '../description.ts';
import { HOURS } from './calendar.ts';
import { checkClock, guessStamp } from './csv-clock.ts';
import { completeYear, type HourlyMeasures } from './csv-complete.ts';
import { type CsvHead, readHead } from './csv-head.ts';
import { binHours, commonStep_s, type Rows, readRows } from './csv-rows.ts';
import { ProblemList } from './problems.ts';
import { type SunOfYear, sunOfYear } from './sun-of-year.ts';
import { readTable, splitLine } from './text-table.ts';
import type { WeatherReading, WeatherSite } from './types.ts';

/**
 * Reads a table such as `time,air (F),sun (W/m2),dew point (C),wind (mph)`: commas, semicolons or tabs; ISO
 * or month-first times in local standard time; hourly or finer, averaged to hours.
 *
 * @param text the whole file
 * @param site where it was measured
 * @param fallback weather for the hours and columns the file lacks; without it missing hours are problems
 * @returns the year and what was filled in, or every problem (twenty, and how many more)
 */
export function parseWeatherCsv(text: string, site: WeatherSite, fallback?: HourlyWeather): WeatherReading {
  const problems = new ProblemList();
  const table = readTable(text, 0, problems);
  const head =
    table &&
    readHead(splitLine(table.lines[0].text, table.separator), `line ${table.lines[0].number}`, problems);
  if (!table || !head) return { ok: false, problems: problems.all() };
  const notes: string[] = [];
  if (head.ignored.length > 0) notes.push(`columns left out: ${head.ignored.join(', ')}`);
  const rows = readRows(table, head, site.time_zone_s, problems, notes);
  const sun = sunOfYear(site);
  const hours = problems.empty ? hourlyMeasures(rows, head, sun, problems, notes) : undefined;
  const weather = hours && completeYear(hours, { site, sun, fallback }, problems, notes);
  return weather && problems.empty ? { ok: true, weather, notes } : { ok: false, problems: problems.all() };
}

function hourlyMeasures(
  rows: Rows,
  head: CsvHead,
  sun: SunOfYear,
  problems: ProblemList,
  notes: string[],
): HourlyMeasures | undefined {
  const step = commonStep_s(rows);
  if (step > 3600) {
    problems.add(
      'time',
      'a row at least every hour',
      `one every ${(step / 3600).toFixed(1)} h`,
      'export hourly values, or give monthly means',
    );
    return undefined;
  }
  if (step < 3600) notes.push(`rows every ${(step / 60).toFixed(0)} min averaged to hours`);
  const sunColumn = head.columns.findIndex((column) => column.measure === 'sun');
  const stamp = head.stamp ?? guessStamp(rows, sunColumn, sun);
  if (!head.stamp) {
    notes.push(
      `stamps taken to mark the ${stamp} of their hour, as the sun fits best; write time (start) or time (end) to say so`,
    );
  }
  const measures: HourlyMeasures = {};
  head.columns.forEach(({ measure }, column) => {
    measures[measure] = binHours(rows, column, stamp);
  });
  checkClock(measures.sun ?? new Float64Array(HOURS), sun, problems);
  return measures;
}
