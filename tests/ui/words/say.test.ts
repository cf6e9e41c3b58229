import { describe, expect, it } from 'vitest';
import type { Banded } from '../../../sim/index.ts';
import { inColumn, sayIn } from '../../../ui/words/index.ts';

const US = sayIn('US');
const SI = sayIn('SI', { plain: true, currency: 'kr' });
const fact = (value: number, low: number, high: number, dimension: Banded['dimension'], numerical = 0) => ({
  ...{ value, low, high, numerical, dimension },
});
const F = (degrees: number) => (degrees - 32) / 1.8;

describe('a number with its band', () => {
  it.each([
    // A band of 19 F leaves whole degrees; one of 60 F would leave tens, but the table beneath has degrees.
    [fact(F(115.7), F(106.9), F(126.3), 'temperature'), '116 °F (107 to 126 °F)'],
    [fact(F(163), F(137), F(197), 'temperature'), '163 °F (137 to 197 °F)'],
    [fact(0.8562, 0.7223, 0.9554, 'share'), '86 % (72 to 96 %)'],
    [fact(4100, 2560, 5750, 'power'), '14 kBtu/h (9 to 20 kBtu/h)'],
    [fact(3.4, 1.2, 5.9, 'count'), '3.4 (1.2 to 5.9)'],
  ])('%# is no finer than the band allows', (banded, text) => {
    expect(US.banded(banded)).toBe(text);
  });

  it('stands alone where it has no band, no finer than its unit is read', () => {
    expect(US.banded(fact(40, 40, 40, 'temperature'))).toBe('104 °F');
    expect(SI.banded(fact(2.558_333, 2.558_3, 2.558_4, 'speed'))).toBe('2.56 m/s');
  });

  it('keeps the value’s unit for the band’s ends, and says it once each', () => {
    expect(US.banded(fact(5000, 500, 9000, 'power'))).toBe('17 kBtu/h (2 to 31 kBtu/h)');
  });

  it('lets the numerical doubt coarsen it as well', () => {
    expect(SI.value(fact(61.234, 61.234, 61.234, 'temperature', 5))).toBe('61 C');
    expect(SI.value(fact(61.234, 11, 111, 'temperature'))).toBe('61 C');
    expect(SI.value(fact(4100, 1000, 9000, 'power'))).toBe('4 kW');
  });
});

describe('money', () => {
  it('has two figures and its own sign, a word behind', () => {
    expect([72.62, 1064, 9.61, 0].map(US.money)).toEqual(['$73', '$1100', '$9.6', '$0']);
    expect(SI.money(523)).toBe('520 kr');
    expect(US.banded(fact(100, 66, 150, 'money'))).toBe('$100 ($66 to $150)');
  });
});

describe('a column', () => {
  it('keeps one unit however its numbers run', () => {
    expect(['length', 'power', 'pressure', 'speed'].map((key) => US.unit(key as 'length'))).toEqual([
      ...['ft', 'kBtu/h', 'psi', 'ft/s'],
    ]);
    expect([US.number(0.3048, 'length'), US.number(304.8, 'length')]).toEqual(['1', '1000']);
    expect(inColumn(100, 'temperature', 'US')).toBeCloseTo(212, 9);
  });

  it('has a dash where there is no number, and no minus before a nought', () => {
    expect(SI.number(null, 'power')).toBe('-');
    expect(SI.number(Number.NaN, 'power')).toBe('-');
    expect([SI.number(-0.2, 'power', 1), SI.number(-60, 'power', 1)]).toEqual(['0.0', '-0.1']);
  });
});

it('days keep their band', () => {
  const days = { value: 190_944, low: 100_000, high: 300_000, numerical: 0, dimension: 'time' } as const;
  expect(sayIn('US').banded(days)).toMatch(/^2\.2 days \(1\.2 to 3\.5 days\)$/);
});
