/** What the measured sun says about the clock of a file. */
import { correlation } from '../../numerics/random.ts';
import { HOURS } from './calendar.ts';
import { binHours, type Rows } from './csv-rows.ts';
import type { ProblemList } from './problems.ts';
import type { SunOfYear } from './sun-of-year.ts';

/** Whether stamps stand at the start or the end of their hours: as the measured sun fits the real one better. */
export function guessStamp(rows: Rows, sunColumn: number, sun: SunOfYear): 'start' | 'end' {
  const start = likeness(binHours(rows, sunColumn, 'start'), sun, 0);
  const end = likeness(binHours(rows, sunColumn, 'end'), sun, 0);
  return end > start ? 'end' : 'start';
}

/** A clock two hours off the Sun is a wrong time zone, not weather: reported as a problem. */
export function checkClock(measured: Float64Array, sun: SunOfYear, problems: ProblemList): void {
  if (!measured.some((x) => x > 0)) {
    problems.add('sun', 'some sunlight', 'none in the whole file', 'check the column of sun and its unit');
    return;
  }
  const shifts = Array.from({ length: 24 }, (_, i) => i - 12);
  const scores = shifts.map((shift) => likeness(measured, sun, shift));
  const best = shifts[scores.indexOf(Math.max(...scores))];
  if (Math.abs(best) >= 2) {
    problems.add(
      'time',
      'the sun of the file to follow the sun of the site',
      `it comes ${Math.abs(best)} h too ${best > 0 ? 'early' : 'late'}`,
      'check the time zone and longitude of the site, and that the file is in local standard time',
    );
  }
}

/** Correlation of measured sun with the sun above the air `shift` hours later. */
function likeness(measured: Float64Array, sun: SunOfYear, shift: number): number {
  const there = (_: number, h: number) => !Number.isNaN(measured[h]);
  const later = sun.horizontal_W_m2.map((_, h, all) => all[(h + shift + HOURS) % HOURS]);
  return correlation(measured.filter(there), later.filter(there));
}
