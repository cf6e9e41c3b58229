/** Powers, sine and cosine against the platform's own, which is right to its last digits though not to the same ones. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cosine, power, sine } from '../../../sim/numerics/alike.ts';

const ULP = 2 ** -52;

describe('a power', () => {
  it.each([
    [2, 10, 1024],
    [2, -2, 0.25],
    [-3, 3, -27],
    [-0.5, 8, 1 / 256],
    [7, 0, 1],
    [0, 0, 1],
    [0, 0.25, 0],
    [0, 5, 0],
    [1, 0.3, 1],
  ])('%d to the %d is %d', (base, exponent, value) => {
    expect(power(base, exponent)).toBe(value);
  });

  it('is no number for a root of what is below 0', () => {
    expect(power(-1, 0.5)).toBeNaN();
  });

  it('is the platform’s own to within its own digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        fc.oneof(fc.double({ min: -8, max: 8, noNaN: true }), fc.integer({ min: -12, max: 12 })),
        (base, exponent) => {
          const most = 4 + Math.abs(exponent) * Math.max(4, Math.abs(Math.log(base)));
          expect(Math.abs(power(base, exponent) / base ** exponent - 1)).toBeLessThan(most * ULP);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('sine and cosine', () => {
  it('are the platform’s own to some units in the last place of 1', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (angle) => {
        expect(Math.abs(sine(angle) - Math.sin(angle))).toBeLessThan(8 * ULP);
        expect(Math.abs(cosine(angle) - Math.cos(angle))).toBeLessThan(8 * ULP);
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    [0, 0, 1],
    [Math.PI / 2, 1, 0],
    [Math.PI, 0, -1],
    [-Math.PI / 2, -1, 0],
  ])('at %d are %d and %d', (angle, s, c) => {
    expect(sine(angle)).toBeCloseTo(s, 15);
    expect(cosine(angle)).toBeCloseTo(c, 15);
  });
});
