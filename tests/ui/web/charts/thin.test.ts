import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  extent,
  groupSize,
  groupsInView,
  groupsOf,
  groupTime,
  layerMeans,
  once,
  sampleAt,
  stepFor,
  sumBetween,
} from '../../../../ui/web/charts/thin.ts';

const minutes = (count: number) => Float64Array.from({ length: count }, (_, i) => i * 60);

describe('sampleAt', () => {
  it('finds the first sample at or after a time, and the last one after all', () => {
    expect([-5, 0, 1, 60, 61, 1e9].map((at_s) => sampleAt([0, 60, 120], at_s))).toEqual([0, 0, 1, 1, 2, 2]);
  });

  it('gives 0 for no samples', () => {
    expect(sampleAt([], 10)).toBe(0);
  });
});

describe('stepFor', () => {
  it('leaves every sample alone while there are no more than columns', () => {
    expect(stepFor(minutes(101), { from_s: 0, to_s: 6000 }, 100)).toBe(1);
  });

  it('takes together the power of two that leaves no fewer groups than columns', () => {
    const year = minutes(525_601);
    expect(stepFor(year, { from_s: 0, to_s: 525_600 * 60 }, 400)).toBe(1024);
    expect(stepFor(year, { from_s: 0, to_s: 525_600 * 30 }, 400)).toBe(512);
  });
});

describe('groups', () => {
  it('know their lowest, highest and sum, and skip what is not a number', () => {
    const { low, high, sum } = groupsOf([3, 1, Number.NaN, 8, Number.NaN, Number.NaN, 5], 2);
    expect([...Array.from(low)]).toEqual([1, 8, Number.NaN, 5]);
    expect([...Array.from(high)]).toEqual([3, 8, Number.NaN, 5]);
    expect([...Array.from(sum)]).toEqual([4, 8, 0, 5]);
  });

  it('stand at the middle of their samples, the last one over fewer', () => {
    const time_s = [0, 10, 20, 30, 40];
    expect([0, 1].map((group) => groupTime(time_s, group, 4))).toEqual([15, 40]);
    expect([0, 1].map((group) => groupSize(5, group, 4))).toEqual([4, 1]);
  });

  it('in view include the neighbours just outside, and no more than there are', () => {
    const time_s = minutes(100);
    expect(groupsInView(time_s, { from_s: 1200, to_s: 2400 }, 4)).toEqual([4, 11]);
    expect(groupsInView(time_s, { from_s: 0, to_s: 1e6 }, 4)).toEqual([0, 24]);
  });

  it('never lose a dip of one minute in a year on 400 columns', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 525_599 }), (dip) => {
        const values = new Float32Array(525_600).fill(60);
        values[dip] = 5;
        const step = stepFor(minutes(2), { from_s: 0, to_s: 60 }, 400) * 1024;
        const { low } = groupsOf(values, step);
        expect(low[Math.floor(dip / step)]).toBe(5);
      }),
      { numRuns: 20 },
    );
  });

  it('hold the lowest and the highest of any samples at any coarseness', () => {
    fc.assert(
      fc.property(
        fc.array(fc.float({ min: -50, max: 150, noNaN: true }), { minLength: 1, maxLength: 300 }),
        fc.integer({ min: 0, max: 9 }),
        (values, power) => {
          const { low, high, sum } = groupsOf(values, 2 ** power);
          expect(Math.min(...Array.from(low))).toBe(Math.min(...values));
          expect(Math.max(...Array.from(high))).toBe(Math.max(...values));
          const total = values.reduce((all, value) => all + value, 0);
          expect(Array.from(sum).reduce((all, value) => all + value, 0)).toBeCloseTo(total, 6);
        },
      ),
    );
  });
});

describe('sumBetween', () => {
  it('is the sum of the samples, wherever it begins and ends', () => {
    const values = Array.from({ length: 2000 }, (_, i) => i % 17);
    fc.assert(
      fc.property(fc.nat(2000), fc.nat(2000), (a, b) => {
        const plain = values.slice(a, b).reduce((sum, value) => sum + value, 0);
        expect(sumBetween(values, a, b)).toBeCloseTo(plain, 6);
      }),
    );
  });

  it('counts what is not a number as nothing', () => {
    expect(sumBetween([1, Number.NaN, 3], 0, 3)).toBe(4);
  });
});

describe('layerMeans', () => {
  it('averages each layer over a group, the short last one too', () => {
    const values = [10, 50, 20, 60, 40, 80];
    expect(Array.from(layerMeans(values, 2, 2))).toEqual([15, 55, 40, 80]);
    expect(layerMeans(values, 2, 1)).toBe(values);
  });
});

describe('once', () => {
  it('works for each array and each thing only once', () => {
    const array = [1];
    let worked = 0;
    const work = () => ++worked;
    expect([
      once(array, 'a', work),
      once(array, 'a', work),
      once(array, 'b', work),
      once([1], 'a', work),
    ]).toEqual([1, 1, 2, 3]);
  });
});

describe('extent', () => {
  it('spans all numbers of all arrays', () => {
    expect(extent([3, Number.NaN], [-1, 2])).toEqual([-1, 3]);
  });

  it('is nothing without numbers', () => {
    expect(extent([Number.NaN], [])).toBeNull();
  });
});
