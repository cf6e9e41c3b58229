/** An owner's log, from CSV text to readings in degrees Celsius over a run's clock. */
import { MONTH_START, monthOfDay } from '../../parts/weather/calendar.ts';
import { readStamp } from '../../parts/weather/csv-time.ts';
import { ProblemList, quote } from '../../parts/weather/problems.ts';
import { readNumber, readTable, splitLine } from '../../parts/weather/text-table.ts';
import { parseQuantity } from '../../quantity/index.ts';
import { type Degrees, type LogHead, readLogHead } from './log-head.ts';
import type { LogPoint, ProbePlace } from './modelled.ts';

export interface Reading extends LogPoint {
  /** Which of the log's probes. */
  probe: number;
  value_C: number;
}

export interface Log {
  probes: { name: string; place: ProbePlace }[];
  /** By time; times count from the midnight before the first row. */
  readings: Reading[];
  room: { time_s: number; value_C: number }[];
  /** Days that a run of the log takes. */
  days: number;
  /** First day as a scenario has it, `2027-01-09`; null for a log of clock times alone. */
  from: string | null;
  ignored: string[];
}

const DAY = 86_400;
const MOST_DAYS = 31;
/** Rows kept; a longer log is thinned evenly. */
const MOST_ROWS = 400;
/** What water in an open store and the air around it can be [C]. */
const BELIEVABLE = [-40, 105] as const;

/**
 * Reads a log: any separator, decimal point or comma, degrees C or F as the head says or else as the values do,
 * empty cells and missing rows, stamps with a date or clock times alone (rows then follow in time).
 *
 * @param depth_m of the water, for probes named by place
 * @param zone_s standard time less universal time
 * @throws RangeError with every problem, a line each
 */
export function readLog(text: string, depth_m: number, zone_s: number): Log {
  const problems = new ProblemList();
  const table = readTable(text, 0, problems);
  if (!table) throw refused(problems);
  const [first, ...lines] = table.lines;
  const head = readLogHead(splitLine(first.text, table.separator), depth_m, `line ${first.number}`, problems);
  if (!problems.empty) throw refused(problems);
  const columns = [...head.probes, ...(head.room ? [{ ...head.room, name: 'room' }] : [])];
  const clock = new Clock(zone_s);
  const rows = lines.map(({ number, text: line }) => {
    const cells = splitLine(line, table.separator);
    const stamp = head.time.map((i) => cells[i] ?? '').join(' ');
    const time_s = clock.read(stamp.trim());
    if (time_s === null)
      problems.add(
        `line ${number}`,
        'a time such as 2027-01-31 21:00 or 9:00 pm, the same way in every row',
        quote(stamp),
        'mend the stamp or leave the row out',
      );
    const values = columns.map(({ index, name }) => {
      // A comma left inside a cell is a decimal one.
      const value = readNumber((cells[index] ?? '').replace(/ ?°? ?[CF]$/i, ''), true);
      if (value === undefined)
        problems.add(`line ${number}, ${name}`, 'a number, or nothing', quote(cells[index]), 'mend it');
      return value ?? Number.NaN;
    });
    return { number, time_s: time_s ?? Number.NaN, values };
  });
  if (!problems.empty) throw refused(problems);
  const degrees = degreesOf(columns, rows, head, problems);
  for (const row of rows) {
    row.values = row.values.map((value, i) => (degrees[i] === 'F' ? (value - 32) / 1.8 : value));
    row.values.forEach((value, i) => {
      if (value >= BELIEVABLE[0] && value <= BELIEVABLE[1]) return;
      if (!Number.isNaN(value))
        problems.add(
          `line ${row.number}, ${columns[i].name}`,
          'water or air, -40 to 105 C',
          `${value.toFixed(0)} C`,
          'check the degrees in the head; leave a broken probe empty',
        );
    });
  }
  return logFrom(rows, head, clock, problems);
}

function logFrom(
  rows: { time_s: number; values: number[] }[],
  head: LogHead,
  clock: Clock,
  problems: ProblemList,
): Log {
  const sorted = [...rows].sort((a, b) => a.time_s - b.time_s);
  const midnight = Math.floor((sorted[0]?.time_s ?? 0) / DAY) * DAY;
  const last_s = (sorted.at(-1)?.time_s ?? 0) - midnight;
  const days = Math.max(1, Math.ceil(last_s / DAY));
  if (days > MOST_DAYS)
    problems.add('the log', `at most ${MOST_DAYS} days`, `${days} days`, 'cut a stretch out of it');
  const every = Math.ceil(sorted.length / MOST_ROWS);
  const kept = sorted.filter((_, i) => i % every === 0 || i === sorted.length - 1);
  const readings = kept.flatMap(({ time_s, values }) =>
    head.probes.flatMap(({ place }, probe) =>
      Number.isNaN(values[probe])
        ? []
        : [{ time_s: time_s - midnight, place, probe, value_C: values[probe] }],
    ),
  );
  if (readings.length < 4)
    problems.add('the log', 'at least 4 readings', String(readings.length), 'log on for longer');
  if (!problems.empty) throw refused(problems);
  const room = kept.flatMap(({ time_s, values }) => {
    const value_C = head.room ? values[head.probes.length] : Number.NaN;
    return Number.isNaN(value_C) ? [] : [{ time_s: time_s - midnight, value_C }];
  });
  const { ignored } = head;
  const probes = head.probes.map(({ name, place }) => ({ name, place }));
  return { probes, readings, room, days, from: clock.dateOf(midnight), ignored };
}

/** Reads stamps with a date, or clock times that run on over midnight; not both in one log. */
class Clock {
  readonly #zone_s: number;
  #kind: 'date' | 'clock' | null = null;
  #year = 0;
  #before_s = 0;

  constructor(zone_s: number) {
    this.#zone_s = zone_s;
  }

  read(text: string): number | null {
    const stamp = readStamp(text, this.#zone_s);
    if (typeof stamp === 'object' && this.#kind !== 'clock') {
      if (this.#kind === null) [this.#kind, this.#year] = ['date', stamp.year];
      // Over New Year the seconds of the year begin again.
      return stamp.second + (stamp.year - this.#year) * 365 * DAY;
    }
    const clock = parseQuantity(text, 'clock');
    if (!clock.ok || this.#kind === 'date') return null;
    this.#kind = 'clock';
    let time_s = clock.value + Math.floor(this.#before_s / DAY) * DAY;
    if (time_s < this.#before_s) time_s += DAY;
    this.#before_s = time_s;
    return time_s;
  }

  dateOf(midnight_s: number): string | null {
    if (this.#kind !== 'date') return null;
    const day = ((midnight_s / DAY) % 365) | 0;
    const month = monthOfDay(day);
    const two = (n: number) => String(n).padStart(2, '0');
    const year = this.#year + Math.floor(midnight_s / DAY / 365);
    return `${year}-${two(month + 1)}-${two(day - MONTH_START[month] + 1)}`;
  }
}

/** Degrees by column: as its head says, as another column's does, or as the values can only be. */
function degreesOf(
  columns: { degrees: Degrees | null }[],
  rows: { values: number[] }[],
  head: LogHead,
  problems: ProblemList,
): Degrees[] {
  const said = columns.find(({ degrees }) => degrees !== null)?.degrees ?? null;
  const water = rows.flatMap(({ values }) => values.slice(0, head.probes.length)).filter(Number.isFinite);
  const room = rows.map(({ values }) => values[head.probes.length]).filter(Number.isFinite);
  const hottest = Math.max(...water);
  // Water is liquid: over 100 it counts in F, under 32 in C; nobody keeps a log in a room of 45 C.
  const guess = hottest > 100 || Math.max(...room) > 45 ? 'F' : Math.min(...water) < 32 ? 'C' : null;
  const common = said ?? guess;
  if (common === null && water.length > 0) {
    const got = `values up to ${hottest} without a unit`;
    problems.add('the head', 'degrees C or F', got, 'write them in the head, as in top (F)');
  }
  return columns.map(({ degrees }) => degrees ?? common ?? 'C');
}

function refused(problems: ProblemList): RangeError {
  return new RangeError(
    problems
      .all()
      .map(({ where, expected, got, fix }) => `${where} - expected ${expected} - got ${got} - ${fix}`)
      .join('\n'),
  );
}
