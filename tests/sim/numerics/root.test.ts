import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot, type RootSearch } from '../../../sim/numerics/root.ts';

const search = (low: number, high: number, tolerance = 1e-9): RootSearch => ({
  low,
  high,
  tolerance,
  name: 'test root',
  unit: 'K',
});

function counted(f: (x: number) => number) {
  const state = { calls: 0 };
  return {
    state,
    f: (x: number) => {
      state.calls++;
      return f(x);
    },
  };
}

/** Two ends, then the ceiling stated in the doc block. */
const ceiling = (low: number, high: number, tolerance: number) =>
  2 + Math.ceil(Math.log2((high - low) / (2 * tolerance))) + 1;

const cases: [string, (x: number) => number, number, number, number][] = [
  ['a square root', (x) => x * x - 2, 0, 2, Math.SQRT2],
  ['a falling line', (x) => 3 - x, -10, 50, 3],
  ['a cosine against a line', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
  ['a flat triple root', (x) => (x - 1) ** 3, -1, 4, 1],
  ['a step', (x) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
  ['a steep exponential', (x) => Math.exp(20 * x) - 2, -1, 1, Math.log(2) / 20],
];

describe('findRoot', () => {
  for (const [name, f, low, high, expected] of cases) {
    it(`finds ${name} within its tolerance and its ceiling of evaluations`, () => {
      const c = counted(f);
      const x = findRoot(c.f, search(low, high));
      expect(Math.abs(x - expected)).toBeLessThanOrEqual(name === 'a flat triple root' ? 1e-5 : 1.001e-9);
      expect(c.state.calls).toBeLessThanOrEqual(ceiling(low, high, 1e-9));
    });
  }

  it('spends far fewer evaluations than bisection on a smooth function', () => {
    const c = counted((x) => x * x * x - x - 2);
    findRoot(c.f, search(1, 2, 1e-12));
    expect(c.state.calls).toBeLessThan(ceiling(1, 2, 1e-12) / 2);
  });

  it('stays within tolerance and ceiling for random monotone cubics', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (root, k) => {
          const c = counted((x) => (x - root) * (1 + k * (x - root) ** 2));
          const x = findRoot(c.f, search(-10, 10, 1e-6));
          expect(Math.abs(x - root)).toBeLessThanOrEqual(1.001e-6);
          expect(c.state.calls).toBeLessThanOrEqual(ceiling(-10, 10, 1e-6));
        },
      ),
    );
  });

  it('returns an end that is a root at once', () => {
    expect(findRoot((x) => x, search(0, 1))).toBe(0);
    expect(findRoot((x) => x - 1, search(0, 1))).toBe(1);
  });

  it('refuses a bracket without a change of sign, a reversed one, and a value that is not finite', () => {
    expect(() => findRoot((x) => x * x + 1, search(-1, 1))).toThrow(
      /test root between -1 and 1 K - expected values of opposite sign at both ends - got 2 and 2/,
    );
    expect(() => findRoot((x) => x, search(1, -1))).toThrow(/low below high/);
    expect(() => findRoot((x) => (x === -1 ? -1 : Number.NaN), search(-1, 1))).toThrow(/got NaN at 1 K/);
  });
});
