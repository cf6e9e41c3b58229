/** Stamps of a weather table as seconds of the year in local standard time. */
import { dayOfYear } from './calendar.ts';

/** Seconds since 1 January 00:00 of the stamp's own year (29 February left out), and that year. */
export interface Stamp {
  second: number;
  year: number;
}

const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ]+(.+))?$/;
const SLASHED = /^(\d{1,2})\/(\d{1,2})\/(\d{4})(?:[ ,]+(.+))?$/;
const DOTTED = /^(\d{1,2})\.(\d{1,2})\.(\d{4})(?:[ ,]+(.+))?$/;
const CLOCK = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?\s*(am|pm)?\s*(z|[+-]\d{2}:?\d{2})?$/i;

/**
 * Reads `2027-01-31T13:00`, `2027-01-31 13:00:00-05:00`, `1/31/2027 1:00 PM` (month first) or
 * `31.1.2027 13:00` (day first). A stamp with Z or an offset is brought to the site's standard time; one
 * without is local standard time already. 24:00 is the end of its day.
 *
 * @param zone_s the site's standard time less universal time [s]
 * @returns the stamp, undefined for none, or 'leap day'
 */
export function readStamp(text: string, zone_s: number): Stamp | 'leap day' | undefined {
  const iso = ISO.exec(text);
  const slashed = SLASHED.exec(text);
  const dotted = DOTTED.exec(text);
  const [year, month, day, clock] = iso
    ? [iso[1], iso[2], iso[3], iso[4]]
    : slashed
      ? [slashed[3], slashed[1], slashed[2], slashed[4]]
      : dotted
        ? [dotted[3], dotted[2], dotted[1], dotted[4]]
        : [];
  if (!year) return undefined;
  const time = readClock(clock ?? '0:00');
  if (!time) return undefined;
  const date = { year: Number(year), month: Number(month), day: Number(day) };
  return place(date, time.second + (time.offset_s === undefined ? 0 : zone_s - time.offset_s));
}

function readClock(text: string): { second: number; offset_s: number | undefined } | undefined {
  const clock = CLOCK.exec(text.trim());
  if (!clock) return undefined;
  let hour = Number(clock[1]);
  const half = clock[4]?.toLowerCase();
  if (half) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half === 'pm' ? 12 : 0);
  }
  const second = hour * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0);
  if (Number(clock[2]) > 59 || Number(clock[3] ?? 0) > 59 || second > 86400) return undefined;
  return { second, offset_s: clock[5] === undefined ? undefined : readOffset(clock[5]) };
}

function readOffset(text: string): number {
  if (/^z$/i.test(text)) return 0;
  const digits = text.replace(':', '');
  return Number(`${digits[0]}1`) * (Number(digits.slice(1, 3)) * 3600 + Number(digits.slice(3, 5)) * 60);
}

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Adds seconds to a date and finds its place in a year of 365 days; an offset may carry it over midnight. */
function place(
  date: { year: number; month: number; day: number },
  second: number,
): Stamp | 'leap day' | undefined {
  const leapDay = date.month === 2 && date.day === 29 && isLeap(date.year);
  const day = leapDay ? dayOfYear(2, 28) + 1 : dayOfYear(date.month, date.day);
  if (day < 0) return undefined;
  // Days of the real calendar, in which 29 February has its place, so that offsets cross it rightly.
  const real = day + (isLeap(date.year) && !leapDay && day >= 59 ? 1 : 0) + Math.floor(second / 86400);
  const within = second - Math.floor(second / 86400) * 86400;
  const length = (year: number) => (isLeap(year) ? 366 : 365);
  let year = date.year;
  let at = real;
  if (at < 0) {
    year--;
    at += length(year);
  } else if (at >= length(year)) {
    at -= length(year);
    year++;
  }
  if (isLeap(year) && at === 59) return 'leap day';
  return { second: (isLeap(year) && at > 59 ? at - 1 : at) * 86400 + within, year };
}
