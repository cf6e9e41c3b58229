/** Times and runs as the page names them. */
import { dateWords, momentWords } from '../../words/index.ts';
import type { TimeTick } from '../charts/frame.ts';
import type { Shown } from './page-state.ts';

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** "Sat" for a time after the run's first midnight. */
export function weekdayWords(firstWeekday: number, time_s: number): string {
  return weekdays[(firstWeekday + Math.floor(time_s / 86_400)) % 7];
}

/** What the results on the page are of. */
export function shownWords({ result, firstWeekday, filled }: Shown): string {
  const { name, first_day, days } = result;
  const last_s = (days - 1) * 86_400;
  const day = (time_s: number) =>
    `${weekdayWords(firstWeekday, time_s)} ${dateWords(first_day + time_s / 86_400)}`;
  const span = days === 1 ? `${day(0)}, 1 day` : `${day(0)} to ${day(last_s)}, ${days} days`;
  const defaults =
    filled.length === 0
      ? ''
      : ` ${filled.length} ${filled.length === 1 ? 'value was' : 'values were'} left to defaults.`;
  return `${name}: ${span}.${defaults}`;
}

/** Words under a tick: the day at midnight, the hour between; weekdays as long as days are told apart. */
export function tickWords(
  { result, firstWeekday }: Pick<Shown, 'result' | 'firstWeekday'>,
  { time_s, step_s, midnight }: TimeTick,
): string {
  if (!midnight) return momentWords(0, time_s).slice(-5);
  const date = dateWords(result.first_day + time_s / 86_400);
  return step_s <= 86_400 ? `${weekdayWords(firstWeekday, time_s)} ${date.split(' ')[1]}` : date;
}
