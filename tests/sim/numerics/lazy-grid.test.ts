import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LazyGrid } from '../../../sim/numerics/lazy-grid.ts';

const knots = { first: -2, step: 0.5, count: 13 };
const inside = fc.double({ min: -2, max: 3.999, noNaN: true });

describe('a lazy grid', () => {
  it('is exact for what is bilinear', () => {
    const f = (x: number, y: number) => 3 - 2 * x + 5 * y + 0.7 * x * y;
    const grid = new LazyGrid(f, knots, knots);
    fc.assert(
      fc.property(inside, inside, (x, y) => {
        expect(grid.at(x, y)).toBeCloseTo(f(x, y), 10);
      }),
    );
  });

  it('stays within its bound for what bends', () => {
    const f = (x: number, y: number) => Math.exp(0.3 * x) * Math.cos(y);
    const grid = new LazyGrid(f, knots, knots);
    const bound = (0.5 ** 2 * (0.3 ** 2 + 1) * Math.exp(1.2)) / 8;
    fc.assert(
      fc.property(inside, inside, (x, y) => {
        expect(Math.abs(grid.at(x, y) - f(x, y))).toBeLessThanOrEqual(bound);
      }),
    );
  });

  it('asks the function itself off the grid', () => {
    const grid = new LazyGrid((x, y) => x * x * y, knots, knots);
    expect(grid.at(10, 7)).toBe(700);
    expect(grid.at(0.25, -9.5)).toBe(0.25 * 0.25 * -9.5);
  });

  it('computes each knot once, and returns the same whatever was asked before', () => {
    let asked = 0;
    const f = (x: number, y: number) => {
      asked++;
      return Math.sin(x + 2 * y);
    };
    const grid = new LazyGrid(f, knots, knots);
    const value = grid.at(0.1, 0.1);
    expect(asked).toBe(4);
    for (let k = 0; k < 50; k++) grid.at(-1.9 + 0.1 * k, 3.9 - 0.1 * k);
    const before = asked;
    expect(grid.at(0.1, 0.1)).toBe(value);
    expect(asked).toBe(before);
  });
});
