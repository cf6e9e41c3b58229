/** Stretches of the year: edits that put a run there, whatever days the file runs. */
import type { Draw, RunDescription } from '../parts/description.ts';
import { MONTH_START, monthOfDay } from '../parts/weather/calendar.ts';
import type { Edit } from './edit.ts';

const DAYS = 365;

export interface Stretch {
  /** Day of the year, 0 = 1 January; may lie before it or after the year's end. */
  from_day: number;
  days: number;
}

export const YEAR: Stretch = { from_day: 0, days: DAYS };
/** Days of the year's run on which a month begins, the first left out. */
export const MONTH_BEGINS: number[] = MONTH_START.slice(1, 12);

/** The run over a stretch, of which nobody asks for samples. It begins on a Monday, so that each is alike. */
export function stretchEdits({ from_day, days }: Stretch): Edit[] {
  const day = ((from_day % DAYS) + DAYS) % DAYS;
  const month = monthOfDay(day);
  const two = (part: number) => String(part).padStart(2, '0');
  return [
    { path: 'run.from', value: `${two(month + 1)}-${two(day - MONTH_START[month] + 1)}` },
    { path: 'run.first_weekday', value: 'Monday' },
    { path: 'run.days', value: days },
    { path: 'run.interval', value: '24 h' },
    // Failures that the file plays belong to the file's own days.
    { path: 'run.faults', value: undefined },
  ];
}

/** The run with twice the layers at a tenth of the tolerance: what it moves is the numerical error. */
export function finerEdits({ layers, tolerance }: RunDescription): Edit[] {
  return [
    { path: 'run.layers', value: Math.min(100, 2 * layers) },
    { path: 'run.tolerance', value: Math.max(1e-8, tolerance / 10) },
  ];
}

/** Over weeks and months somebody tops the store up: without that it would run dry, whatever else one asks. */
export const LEVEL_KEPT: Edit = { path: 'store.make_up', value: 'float' };

/** The middle `days` of a month (0..11). */
export function middleOfMonth(month: number, days: number): Stretch {
  const [begin, end] = [MONTH_START[month], MONTH_START[month + 1]];
  return { from_day: begin + Math.floor((end - begin - days) / 2), days };
}

export function daysOfMonth(month: number): number {
  return MONTH_START[month + 1] - MONTH_START[month];
}

/**
 * How long the draws of a kind run [s] in `days` days of which `before` days have gone since a Monday.
 *
 * @param kind which draws count
 */
export function drawTime(
  draws: readonly Draw[],
  before: number,
  days: number,
  kind: (draw: Draw) => boolean,
): number {
  let sum = 0;
  for (let day = before; day < before + days; day++) {
    for (const draw of draws) if (kind(draw) && draw.days.includes(day % 7)) sum += draw.duration_s;
  }
  return sum;
}
