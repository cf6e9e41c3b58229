import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decay, sixthRoot } from '../../../sim/numerics/quick.ts';

const off = (got: number, exact: number) => Math.abs(got / exact - 1);

describe('the quick sixth root', () => {
  it('is right to 2e-5 over all magnitudes', () => {
    fc.assert(
      fc.property(fc.double({ min: -14, max: 6, noNaN: true }), (power) => {
        expect(off(sixthRoot(10 ** power), 10 ** (power / 6))).toBeLessThan(2e-5);
      }),
      { numRuns: 5000 },
    );
  });

  it.each([0, 1, 64, 2 ** -36])('is right at %f, where knots or ends lie', (x) => {
    expect(sixthRoot(x)).toBeCloseTo(x ** (1 / 6), 14);
  });

  it('rises', () => {
    let before = 0;
    for (let x = 1e-3; x < 30; x *= 1.0009) {
      const root = sixthRoot(x);
      expect(root).toBeGreaterThan(before);
      before = root;
    }
  });
});

describe('the quick decay', () => {
  it('is right to 2e-6', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (u) => {
        expect(off(decay(u), Math.exp(-u))).toBeLessThan(2e-6);
      }),
      { numRuns: 5000 },
    );
    expect(off(decay(0.25), Math.exp(-0.25))).toBeLessThan(2e-6);
  });

  it('ends at 1 and at 0', () => {
    expect(decay(0)).toBe(1);
    expect(decay(Number.POSITIVE_INFINITY)).toBe(0);
  });
});
