import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupBounds, groupExtremes, groupMeans, samplesToDraw } from '../../../../ui/web/charts/thin.ts';

describe('samplesToDraw', () => {
  it('keeps every sample where there is room', () => {
    expect(samplesToDraw([5, 6, 7], 10)).toEqual([0, 1, 2]);
  });

  it('keeps the first, lowest, highest and last of a crowded column, in order of time', () => {
    const values = [5, 9, 1, 4, 6, 5];
    expect(samplesToDraw(values, 1)).toEqual([0, 1, 2, 5]);
  });

  it('skips a column that holds no number', () => {
    const values = new Array(10).fill(Number.NaN).concat([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(samplesToDraw(values, 2)).toEqual([10, 19]);
  });

  it('never loses the lowest or the highest sample', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 150, noNaN: true }), { minLength: 1, maxLength: 500 }),
        fc.integer({ min: 1, max: 40 }),
        (values, columns) => {
          const drawn = samplesToDraw(values, columns).map((i) => values[i]);
          expect(Math.min(...drawn)).toBe(Math.min(...values));
          expect(Math.max(...drawn)).toBe(Math.max(...values));
        },
      ),
    );
  });
});

describe('groupMeans', () => {
  it('averages the samples of each group', () => {
    const bounds = groupBounds(4, 2);
    expect(bounds).toEqual([0, 2, 4]);
    expect([...groupMeans([1, 3, 10, 20], bounds)]).toEqual([2, 15]);
  });

  it('counts a sample that is not a number as the value given for it', () => {
    expect([...groupMeans([4, Number.NaN], [0, 2])]).toEqual([2]);
  });

  it('has no more groups than samples', () => {
    expect(groupBounds(3, 100)).toEqual([0, 1, 2, 3]);
  });
});

describe('groupExtremes', () => {
  it('finds the lowest and the highest number of each group', () => {
    const { low, high } = groupExtremes([3, 1, 2, Number.NaN, 7, 7, Number.NaN, Number.NaN], [0, 4, 6, 8]);
    expect([...low]).toEqual([1, 7, Number.NaN]);
    expect([...high]).toEqual([3, 7, Number.NaN]);
  });
});
