/** Days as people write them: dates with or without a year, days of the week. */
import { dayOfYear } from '../parts/weather/calendar.ts';
import { MONTH_DAYS } from '../physics/sun-by-day.ts';
import type { DayOfYear } from './field.ts';

export type Reading<V> = { ok: true; value: V } | { ok: false; expected: string; got: string; fix: string };

const DAY_NAMES = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const GROUPS: Record<string, number[]> = {
  'every day': [0, 1, 2, 3, 4, 5, 6],
  daily: [0, 1, 2, 3, 4, 5, 6],
  weekdays: [0, 1, 2, 3, 4],
  weekends: [5, 6],
  weekend: [5, 6],
};

/** Reads "2027-01-09" or "01-09". The year of a run has 365 days: 29 February is left out. */
export function parseDate(text: string): Reading<DayOfYear> {
  const parts = /^(?:(\d{4})-)?(\d{1,2})-(\d{1,2})$/.exec(text.trim());
  const refuse = (fix: string): Reading<DayOfYear> => ({
    ok: false,
    expected: 'a date as year-month-day or month-day, as in "2027-01-09" or "01-09"',
    got: quote(text),
    fix,
  });
  if (!parts) return refuse('write the month and the day as numbers with a dash between');
  const [year, month, day] = [parts[1] ? Number(parts[1]) : null, Number(parts[2]), Number(parts[3])];
  if (month < 1 || month > 12) return refuse(`months run from 01 to 12; this one is ${month}`);
  if (month === 2 && day === 29)
    return refuse('29 February is left out of the simulated year: use 02-28 or 03-01');
  const longest = MONTH_DAYS[month - 1];
  if (day < 1 || day > longest) return refuse(`that month’s days run from 01 to ${longest}`);
  const weekday = year === null ? null : weekdayOf(year, month, day);
  return { ok: true, value: { day: dayOfYear(month, day), weekday } };
}

/**
 * Day of the week, Monday 0, of a date of the Gregorian calendar: Zeller's congruence (1886, from memory),
 * in which January and February belong to the year before.
 */
export function weekdayOf(year: number, month: number, day: number): number {
  const [y, m] = month < 3 ? [year - 1, month + 12] : [year, month];
  const saturdayZero =
    day + Math.floor((13 * (m + 1)) / 5) + y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return (saturdayZero + 5) % 7;
}

/** Reads "every day", "weekdays", "weekends", "Mon Wed Fri", "Mon-Fri", "Sat, Sun". Monday is 0. */
export function parseDays(text: string): Reading<number[]> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (Object.hasOwn(GROUPS, plain)) return { ok: true, value: [...GROUPS[plain]] };
  const found = new Set<number>();
  for (const word of plain
    .replace(/\s*[-–]\s*/g, '-')
    .split(/[ ,;]+/)
    .filter(Boolean)) {
    const ends = word.split('-').map(dayNumber);
    if (ends.length > 2 || ends.some((d) => d < 0)) return refuseDays(text);
    const last = ends[ends.length - 1];
    for (let d = ends[0]; ; d = (d + 1) % 7) {
      found.add(d);
      if (d === last) break;
    }
  }
  if (found.size === 0) return refuseDays(text);
  return { ok: true, value: [...found].sort((a, b) => a - b) };
}

function dayNumber(word: string): number {
  return word.length < 2 ? -1 : DAY_NAMES.findIndex((name) => name.startsWith(word) || `${name}s` === word);
}

function refuseDays(text: string): Reading<number[]> {
  return {
    ok: false,
    expected: '"every day", "weekdays", "weekends" or names of days, as in "Mon Wed Fri" or "Mon-Fri"',
    got: quote(text),
    fix: 'name the days in English, three letters are enough',
  };
}

/** Text in quotes, cut to what fits in a message. */
export function quote(text: string): string {
  return JSON.stringify(text.length > 60 ? `${text.slice(0, 57)}...` : text);
}
