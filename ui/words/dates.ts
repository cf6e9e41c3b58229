/** Dates of the 365-day year on screen. */
import { dateFormat } from './locale.ts';

/** A year of 365 days, whose dates stand for those of any; and a Monday. */
const anyYear = 2027;
const monday_ms = Date.UTC(2024, 0, 1);
const day_ms = 86_400_000;

const names = (options: Intl.DateTimeFormatOptions, times_ms: number[]): string[] => {
  const format = dateFormat({ ...options, timeZone: 'UTC' });
  return times_ms.map((time_ms) => format.format(time_ms));
};

/** January first. */
export const monthNames = names(
  { month: 'short' },
  Array.from({ length: 12 }, (_, month) => Date.UTC(anyYear, month)),
);
/** Monday first. */
export const weekdayNames = names(
  { weekday: 'short' },
  Array.from({ length: 7 }, (_, day) => monday_ms + day * day_ms),
);

const dateForm = dateFormat({ month: 'short', day: 'numeric', timeZone: 'UTC' });

/** "Jan 9" for day 8; days past 31 December go on into the next year. */
export function dateWords(dayOfYear: number): string {
  return dateForm.format(Date.UTC(anyYear, 0, 1 + (((Math.floor(dayOfYear) % 365) + 365) % 365)));
}

/** "9" for day 8. */
export function dayOfMonth(dayOfYear: number): string {
  return String(new Date(Date.UTC(anyYear, 0, 1 + Math.floor(dayOfYear))).getUTCDate());
}

/** "18:30" for a time after the first midnight, "day 2, 09:30" where a day alone would not tell. */
export function instantWords(time_s: number, withDay: boolean): string {
  const clock = clockWords(time_s);
  return withDay ? `day ${Math.floor(time_s / 86_400) + 1}, ${clock}` : clock;
}

/** "18:30" for a time after any midnight. */
export function clockWords(time_s: number): string {
  // Rounded to whole minutes first, so that 59.9 s never becomes minute 60.
  const minutes = ((Math.round(time_s / 60) % 1440) + 1440) % 1440;
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** "Jan 9, 18:30" for a time after the run's first midnight. */
export function momentWords(firstDay: number, time_s: number): string {
  const minutes = Math.round(time_s / 60);
  return `${dateWords(firstDay + Math.floor(minutes / 1440))}, ${clockWords(time_s)}`;
}

const dayFormat = dateFormat({ dateStyle: 'long' });

/** `November 29, 2026` for a day of the calendar, where the reader is. */
export function dayText(day: Date): string {
  return dayFormat.format(day);
}
