import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDate, parseDays, weekdayOf } from '../../../sim/scenario/calendar.ts';

describe('a date', () => {
  it.each([
    ['01-01', 0, null],
    ['1-9', 8, null],
    ['02-28', 58, null],
    ['03-01', 59, null],
    ['12-31', 364, null],
    // 9 January 2027 is a Saturday, 1 March 2024 (a leap year) a Friday: paper calendars.
    ['2027-01-09', 8, 5],
    ['2024-03-01', 59, 4],
  ])('%s is day %i, weekday %s', (text, day, weekday) => {
    expect(parseDate(text)).toEqual({ ok: true, value: { day, weekday } });
  });

  it.each([
    ['2027-02-29', '29 February is left out'],
    ['02-30', '01 to 28'],
    ['04-31', '01 to 30'],
    ['13-01', '01 to 12'],
    ['0-1', '01 to 12'],
    ['9 January', 'month and the day as numbers'],
    ['2027/01/09', 'dash'],
    ['', 'dash'],
  ])('%s is refused', (text, fix) => {
    expect(parseDate(text)).toMatchObject({ ok: false, fix: expect.stringContaining(fix) });
  });

  it('has the weekday the platform’s calendar has', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }),
        (date) => {
          const sundayZero = date.getUTCDay();
          const weekday = weekdayOf(date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate());
          expect((weekday + 1) % 7).toBe(sundayZero);
        },
      ),
    );
  });
});

describe('days of the week', () => {
  it.each([
    ['every day', [0, 1, 2, 3, 4, 5, 6]],
    ['Daily', [0, 1, 2, 3, 4, 5, 6]],
    ['weekdays', [0, 1, 2, 3, 4]],
    ['weekends', [5, 6]],
    ['Mon Wed Fri', [0, 2, 4]],
    ['Fri, Mon', [0, 4]],
    ['Mon-Fri', [0, 1, 2, 3, 4]],
    ['Sat - Mon', [0, 5, 6]],
    ['Tuesdays', [1]],
    ['Sunday', [6]],
  ])('%s', (text, days) => {
    expect(parseDays(text)).toEqual({ ok: true, value: days });
  });

  it.each(['', 'never', 'M', 'Mon-Wed-Fri', 'Montag', '__proto__', 'constructor'])(
    '"%s" is refused',
    (text) => {
      expect(parseDays(text)).toMatchObject({ ok: false, expected: expect.stringContaining('every day') });
    },
  );
});
