import { describe, expect, it } from 'vitest';
import {
  correlation,
  normalDeviates,
  seededRandom,
  shuffle,
  spaceFilling,
} from '../../../sim/numerics/random.ts';

const draw = (next: () => number, n: number) => Array.from({ length: n }, next);
const mean = (v: number[]) => v.reduce((s, x) => s + x, 0) / v.length;

describe('seededRandom', () => {
  it('repeats itself for one seed and differs for the next', () => {
    const first = draw(seededRandom(7), 20);
    expect(draw(seededRandom(7), 20)).toEqual(first);
    for (const seed of [8, 0, -7, 2 ** 31]) expect(draw(seededRandom(seed), 20)).not.toEqual(first);
  });

  it('fills [0, 1) evenly: ten equal boxes pass a chi-squared test at 0.001 for several seeds', () => {
    for (let seed = 0; seed < 8; seed++) {
      const boxes = new Array<number>(10).fill(0);
      for (const u of draw(seededRandom(seed), 20_000)) {
        expect(u >= 0 && u < 1).toBe(true);
        boxes[Math.floor(u * 10)]++;
      }
      const chi2 = boxes.reduce((s, k) => s + (k - 2000) ** 2 / 2000, 0);
      expect(chi2).toBeLessThan(27.88); // 9 degrees of freedom, 0.999 quantile (printed tables)
      expect(chi2).toBeGreaterThan(0.97); // too even is as suspect: 0.0004 quantile
    }
  });

  it('has neighbours that do not know each other', () => {
    const u = draw(seededRandom(3), 20_000);
    expect(Math.abs(correlation(u.slice(1), u.slice(0, -1)))).toBeLessThan(4 / Math.sqrt(20_000));
    const other = draw(seededRandom(4), 20_000);
    expect(Math.abs(correlation(u, other))).toBeLessThan(4 / Math.sqrt(20_000));
  });
});

describe('normalDeviates', () => {
  it('has mean 0, spread 1 and 4.55 % beyond two', () => {
    const z = draw(normalDeviates(seededRandom(11)), 40_000);
    expect(Math.abs(mean(z))).toBeLessThan(4 / Math.sqrt(40_000));
    expect(Math.abs(mean(z.map((x) => x * x)) - 1)).toBeLessThan(4 * Math.sqrt(2 / 40_000));
    expect(Math.abs(mean(z.map((x) => (Math.abs(x) > 2 ? 1 : 0))) - 0.0455)).toBeLessThan(0.004);
    expect(z.every(Number.isFinite)).toBe(true);
  });
});

describe('shuffle', () => {
  it('keeps what it was given and puts each first equally often', () => {
    const uniform = seededRandom(5);
    const first = [0, 0, 0, 0];
    for (let i = 0; i < 8000; i++) {
      const order = shuffle([0, 1, 2, 3], uniform);
      first[order[0]]++;
      expect([...order].sort()).toEqual([0, 1, 2, 3]);
    }
    for (const count of first) expect(Math.abs(count - 2000)).toBeLessThan(160);
  });
});

describe('spaceFilling', () => {
  it('puts exactly one point in each slice of each dimension', () => {
    for (const [n, dims] of [
      [1, 1],
      [2, 3],
      [17, 5],
      [200, 12],
    ]) {
      const points = spaceFilling(n, dims, 99);
      expect(points).toHaveLength(n);
      for (let d = 0; d < dims; d++) {
        const slices = points.map((p) => Math.floor(p[d] * n)).sort((a, b) => a - b);
        expect(slices).toEqual(Array.from({ length: n }, (_, i) => i));
        expect(points.every((p) => p[d] > 0 && p[d] < 1)).toBe(true);
      }
    }
  });

  it('integrates a sum of smooth terms far better than as many random points', () => {
    const f = (p: Float64Array) => p.reduce((s, x) => s + x * x, 0);
    const error = (points: Float64Array[]) => Math.abs(mean(points.map(f)) - 4 / 3);
    const uniform = seededRandom(1);
    let filled = 0;
    let random = 0;
    for (let seed = 0; seed < 20; seed++) {
      filled += error(spaceFilling(64, 4, seed));
      random += error(Array.from({ length: 64 }, () => Float64Array.from({ length: 4 }, uniform)));
    }
    expect(filled).toBeLessThan(random / 10);
  });

  it('keeps its dimensions nearly uncorrelated', () => {
    const points = spaceFilling(100, 6, 4);
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < i; j++) {
        const r = correlation(
          points.map((p) => p[i]),
          points.map((p) => p[j]),
        );
        expect(Math.abs(r)).toBeLessThan(0.25);
      }
    }
  });

  it('repeats itself for one seed', () => {
    expect(spaceFilling(9, 2, 1)).toEqual(spaceFilling(9, 2, 1));
    expect(spaceFilling(9, 2, 1)).not.toEqual(spaceFilling(9, 2, 2));
  });

  it('refuses sizes out of range', () => {
    for (const [n, dims] of [
      [0, 1],
      [1, 0],
      [1.5, 1],
      [10, 101],
    ]) {
      expect(() => spaceFilling(n, dims, 1)).toThrow(/expected 1 to 100000 points of 1 to 100/);
    }
  });
});

describe('correlation', () => {
  it('is 1 and -1 on straight lines and 0 where nothing varies', () => {
    expect(correlation([1, 2, 3], [5, 7, 9])).toBeCloseTo(1, 14);
    expect(correlation([1, 2, 3], [9, 7, 5])).toBeCloseTo(-1, 14);
    expect(correlation([1, 1, 1], [9, 7, 5])).toBe(0);
  });
});

/**
 * Centred L2 discrepancy squared of points in the unit cube. Source: Hickernell 1998, "A generalized discrepancy and
 * quadrature error bound" (from memory); checked below on a single point, whose value is plain.
 */
function discrepancy(points: ArrayLike<number>[]): number {
  const [n, s] = [points.length, points[0].length];
  const product = (of: (d: number) => number) =>
    Array.from({ length: s }, (_, d) => of(d)).reduce((a, b) => a * b, 1);
  const off = (x: number) => Math.abs(x - 0.5);
  let [single, pairs] = [0, 0];
  for (const p of points) {
    single += product((d) => 1 + off(p[d]) / 2 - off(p[d]) ** 2 / 2);
    for (const q of points) pairs += product((d) => 1 + (off(p[d]) + off(q[d]) - Math.abs(p[d] - q[d])) / 2);
  }
  return (13 / 12) ** s - (2 / n) * single + pairs / n ** 2;
}

describe('the discrepancy of space-filling points', () => {
  it('is well below what random points have on the mean', () => {
    expect(discrepancy([[0.5]])).toBeCloseTo(1 / 12, 12);
    // Random points, on the mean: ((5/4)^s - (13/12)^s) / n, from the terms of a pair with itself.
    for (const [n, s] of [
      [20, 2],
      [20, 10],
    ]) {
      const seeds = Array.from({ length: 20 }, (_, seed) => discrepancy(spaceFilling(n, s, seed)));
      expect(mean(seeds)).toBeLessThan((0.9 * ((5 / 4) ** s - (13 / 12) ** s)) / n);
    }
  });

  it('in one dimension is that of evenly spaced slices, whatever the seed', () => {
    // One point in the middle of each of n slices has 1 / (12 n^2); one anywhere in its slice at most four times that.
    for (let seed = 0; seed < 10; seed++) {
      expect(discrepancy(spaceFilling(20, 1, seed))).toBeLessThan(4 / (12 * 20 ** 2));
    }
  });
});
