import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  curveAt,
  type HourlyCurve,
  linearTable,
  meanPreserving,
} from '../../../sim/numerics/interpolation.ts';

const series = (min: number, max: number) =>
  fc
    .array(fc.oneof({ weight: 3, arbitrary: fc.double({ min, max, noNaN: true }) }, fc.constant(0)), {
      minLength: 1,
      maxLength: 60,
    })
    .map((values) => Float64Array.from(values));

const meanOf = (curve: HourlyCurve, h: number) => curve.c0[h] + curve.c1[h] / 2 + curve.c2[h] / 3;

describe('meanPreserving', () => {
  it('keeps every hour’s mean and joins at every edge, the year’s end included', () => {
    fc.assert(
      fc.property(series(-50, 50), fc.constant(false), (hourly, nonNegative) => {
        const curve = meanPreserving(hourly, nonNegative);
        for (let h = 0; h < hourly.length; h++) {
          expect(meanOf(curve, h)).toBeCloseTo(hourly[h], 10);
          expect(curveAt(curve, h, 1)).toBeCloseTo(curveAt(curve, (h + 1) % hourly.length, 0), 10);
        }
      }),
    );
  });

  it('never falls below zero where it may not, and still keeps the means', () => {
    fc.assert(
      fc.property(series(0, 1200), (hourly) => {
        const curve = meanPreserving(hourly, true);
        for (let h = 0; h < hourly.length; h++) {
          expect(Math.abs(meanOf(curve, h) - hourly[h])).toBeLessThan(1e-9);
          for (let k = 0; k <= 40; k++) expect(curveAt(curve, h, k / 40)).toBeGreaterThan(-1e-9);
        }
      }),
    );
  });

  it('is dark through an hour whose mean is zero', () => {
    const curve = meanPreserving(Float64Array.of(0, 400, 0), true);
    expect(curveAt(curve, 0, 0.5)).toBe(0);
    expect(curveAt(curve, 1, 0)).toBe(0);
    expect(curveAt(curve, 1, 0.5)).toBe(600);
  });

  it('follows a straight line exactly inside the year', () => {
    const curve = meanPreserving(
      Float64Array.from({ length: 9 }, (_, h) => 3 * (h + 0.5)),
      false,
    );
    for (let h = 1; h < 8; h++) expect(curveAt(curve, h, 0.25)).toBeCloseTo(3 * (h + 0.25), 12);
  });

  it('refuses a gap and a negative sun, naming the hour', () => {
    expect(() => meanPreserving(Float64Array.of(1, Number.NaN), false)).toThrow(/hour 1 - expected a finite/);
    expect(() => meanPreserving(Float64Array.of(1, -2), true)).toThrow(
      /hour 1 - expected .*0 or more - got -2/,
    );
    expect(() => meanPreserving(new Float64Array(0), true)).toThrow(/at least 1/);
  });
});

describe('linearTable', () => {
  const x = [0, 1, 3];
  const y = [10, 20, 0];
  it('passes through its knots and is linear between', () => {
    for (let i = 0; i < 3; i++) expect(linearTable(x, y, x[i])).toBe(y[i]);
    expect(linearTable(x, y, 0.5)).toBe(15);
    expect(linearTable(x, y, 2.5)).toBe(5);
  });
  it('holds its ends', () => {
    expect(linearTable(x, y, -5)).toBe(10);
    expect(linearTable(x, y, 9)).toBe(0);
    expect(linearTable([2], [7], 2.5)).toBe(7);
  });
});
