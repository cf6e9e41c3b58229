/** Every draw of a run as an instant it opens and an instant it closes. */
import type { Draw } from './description.ts';

const DAY = 86_400;

export interface Opening {
  draw: Draw;
  from_s: number;
  to_s: number;
}

/**
 * Draws of the run in the order they open. A draw that runs past midnight is carried over.
 *
 * @param firstWeekday weekday of the run's first day, Monday 0
 */
export function drawCalendar(draws: readonly Draw[], days: number, firstWeekday: number): Opening[] {
  const openings: Opening[] = [];
  for (let day = 0; day < days; day++) {
    const weekday = (firstWeekday + day) % 7;
    for (const draw of draws) {
      if (!draw.days.includes(weekday) || !(draw.duration_s > 0)) continue;
      const from_s = day * DAY + draw.at_s;
      openings.push({ draw, from_s, to_s: from_s + draw.duration_s });
    }
  }
  return openings.sort((a, b) => a.from_s - b.from_s || a.to_s - b.to_s);
}
