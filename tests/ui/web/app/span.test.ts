import { describe, expect, it } from 'vitest';
import { spanOf, spanTroubles, withSpan } from '../../../../ui/web/app/span.ts';

describe('spanOf', () => {
  it('reads what the scenario says', () => {
    expect(spanOf({ run: { from: '2027-01-09', days: 3 } })).toEqual({ from: '2027-01-09', days: 3 });
  });

  it('gives a date without a year one, since a date field needs it', () => {
    expect(spanOf({ run: { from: '07-04', days: 3 } }).from).toMatch(/^\d{4}-07-04$/);
  });

  it.each([null, {}, { run: 7 }, { run: { from: 1, days: 'x' } }])('has a span for %j too', (scenario) => {
    expect(spanTroubles(spanOf(scenario))).toEqual([]);
  });
});

describe('withSpan', () => {
  it('changes nothing but the span, and not the original', () => {
    const scenario = { name: 'n', run: { from: '01-01', days: 7, layers: 30 } };
    const before = structuredClone(scenario);
    expect(withSpan(scenario, { from: '2027-05-06', days: 2 })).toEqual({
      name: 'n',
      run: { from: '2027-05-06', days: 2, layers: 30 },
    });
    expect(scenario).toEqual(before);
  });
});

describe('spanTroubles', () => {
  it.each([1, 365])('accepts %d days', (days) => {
    expect(spanTroubles({ from: '2027-01-09', days })).toEqual([]);
  });

  it.each([0, 366, 1.5, Number.NaN, -3])('refuses %d days', (days) => {
    const [trouble] = spanTroubles({ from: '2027-01-09', days });
    expect(trouble).toMatchObject({ where: 'Days', expected: 'a whole number, 1 to 365' });
  });

  it('names both faults at once', () => {
    expect(spanTroubles({ from: '', days: 0 }).map(({ where }) => where)).toEqual(['Start', 'Days']);
  });
});
