/** Times and runs as the page names them. */
import { clockWords, dateWords, dayOfMonth, shellWords, weekdayNames } from '../../words/index.ts';
import type { TimeTick } from '../charts/frame.ts';
import type { Shown } from './page-state.ts';

/** "Sat" for a time after the run's first midnight. */
export function weekdayWords(firstWeekday: number, time_s: number): string {
  return weekdayNames[(firstWeekday + Math.floor(time_s / 86_400)) % 7];
}

/** What the results on the page are of. */
export function shownWords({ result, firstWeekday, filled }: Shown): string {
  const { name, first_day, days } = result;
  const day = (time_s: number) =>
    `${weekdayWords(firstWeekday, time_s)} ${dateWords(first_day + time_s / 86_400)}`;
  return shellWords.shown(name, day(0), day((days - 1) * 86_400), days, filled.length);
}

/** Words under a tick: the day at midnight, the hour between; weekdays as long as days are told apart. */
export function tickWords(
  { result, firstWeekday }: Pick<Shown, 'result' | 'firstWeekday'>,
  { time_s, step_s, midnight }: TimeTick,
): string {
  if (!midnight) return clockWords(time_s);
  const day = result.first_day + time_s / 86_400;
  return step_s <= 86_400 ? `${weekdayWords(firstWeekday, time_s)} ${dayOfMonth(day)}` : dateWords(day);
}
