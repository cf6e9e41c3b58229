/** Dates of the 365-day year on screen. */
export const monthNames = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
];
/** Monday first. */
export const weekdayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const monthLengths_days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** "Jan 9" for day 8; days past 31 December go on into the next year. */
export function dateWords(dayOfYear: number): string {
  let day = ((Math.floor(dayOfYear) % 365) + 365) % 365;
  let month = 0;
  while (day >= monthLengths_days[month]) {
    day -= monthLengths_days[month];
    month++;
  }
  return `${monthNames[month]} ${day + 1}`;
}

/** "Jan 9, 18:30" for a time after the run's first midnight. */
export function momentWords(firstDay: number, time_s: number): string {
  // Rounded to whole minutes first, so that 59.9 s never becomes minute 60.
  const minutes = Math.round(time_s / 60);
  const clock = ((minutes % 1440) + 1440) % 1440;
  const two = (part: number) => String(part).padStart(2, '0');
  return `${dateWords(firstDay + Math.floor(minutes / 1440))}, ${two(Math.floor(clock / 60))}:${two(clock % 60)}`;
}

const dayFormat = new Intl.DateTimeFormat('en-US', { dateStyle: 'long' });

/** `November 29, 2026` for a day of the calendar, where the reader is. */
export function dayText(day: Date): string {
  return dayFormat.format(day);
}
