/** The year weather is kept in: 365 days, 8760 hours of local standard time, from 1 January 00:00. */
import { MONTH_DAYS } from '../../physics/sun-by-day.ts';

export const HOURS = 8760;
export const DAYS = 365;

/** First day of each month, 0 = 1 January; a thirteenth entry closes the year. */
export const MONTH_START: readonly number[] = Array.from({ length: 13 }, (_, month) =>
  MONTH_DAYS.slice(0, month).reduce((sum, days) => sum + days, 0),
);

/** Month (0..11) of a day of the year (0..364). */
export function monthOfDay(day: number): number {
  let month = 0;
  while (month < 11 && day >= MONTH_START[month + 1]) month++;
  return month;
}

/** Day of the year (0..364) of a month (1..12) and day; -1 for a date that does not exist or 29 February. */
export function dayOfYear(month: number, day: number): number {
  const sound = Number.isInteger(month) && Number.isInteger(day) && month >= 1 && month <= 12 && day >= 1;
  return sound && day <= MONTH_DAYS[month - 1] ? MONTH_START[month - 1] + day - 1 : -1;
}

const MONTH_NAMES = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** An hour of the year in words, for messages: `3 Feb 14:00`. */
export function nameOfHour(hour: number): string {
  const day = Math.floor(hour / 24);
  const month = monthOfDay(day);
  return `${day - MONTH_START[month] + 1} ${MONTH_NAMES[month]} ${String(hour % 24).padStart(2, '0')}:00`;
}
