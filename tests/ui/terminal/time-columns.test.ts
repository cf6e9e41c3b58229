import { describe, expect, it } from 'vitest';
import { daysPerMark, markColumns, meanByColumn } from '../../../ui/terminal/time-columns.ts';

const hours = (values: number[]) => ({
  time_s: values.map((_, i) => (i + 1) * 3600),
  interval_s: 3600,
  values,
});

describe('meanByColumn', () => {
  it('averages the samples of each column', () => {
    expect(meanByColumn(hours([1, 3, 5, 7]), 4 * 3600, 2)).toEqual([2, 6]);
  });
  it('splits a sample that straddles two columns', () => {
    // Columns of 1.5 h: (1 + 0.5 x 4) / 1.5 and (0.5 x 4 + 7) / 1.5.
    expect(meanByColumn(hours([1, 4, 7]), 3 * 3600, 2)).toEqual([2, 6]);
  });
  it('spreads a sample over columns narrower than it', () => {
    expect(meanByColumn(hours([2, 8]), 2 * 3600, 4)).toEqual([2, 2, 8, 8]);
  });
  it('leaves out what is no number', () => {
    expect(meanByColumn(hours([Number.NaN, 3, Number.NaN, Number.NaN]), 4 * 3600, 2)).toEqual([
      3,
      Number.NaN,
    ]);
  });
  it('keeps the integral whatever the columns', () => {
    const samples = hours([4, 0, 9, 2, 2, 7, 1]);
    for (const columns of [1, 3, 5, 7, 16]) {
      const means = meanByColumn(samples, 7 * 3600, columns);
      expect((means.reduce((a, b) => a + b) * 7) / columns).toBeCloseTo(25, 9);
    }
  });
  it('gives a sample at time zero no weight', () => {
    expect(meanByColumn({ time_s: [0, 3600], interval_s: 3600, values: [99, 5] }, 3600, 1)).toEqual([5]);
  });
});

describe('marks', () => {
  it('stand far enough apart', () => {
    expect(daysPerMark(7, 70, 8)).toBe(1);
    expect(daysPerMark(30, 70, 8)).toBe(7);
    expect(daysPerMark(365, 70, 8)).toBe(56);
    expect(daysPerMark(1000, 5, 8)).toBe(1000);
  });
  it('start at the days they name', () => {
    expect(markColumns(7, 70, 1)).toEqual([0, 10, 20, 30, 40, 50, 60]);
    expect(markColumns(30, 60, 7)).toEqual([0, 14, 28, 42, 56]);
  });
});
