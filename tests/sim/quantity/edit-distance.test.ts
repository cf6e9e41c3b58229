import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../sim/quantity/index.ts';

describe('editDistance', () => {
  it.each([
    ['', '', 0],
    ['gpm', 'gpm', 0],
    ['gpm', 'gmp', 1], // neighbours swapped
    ['fet', 'feet', 1],
    ['inchs', 'inch', 1],
    ['psi', 'pst', 1],
    ['', 'abc', 3],
    ['kitten', 'sitting', 3], // the textbook pair
    ['ca', 'abc', 3], // optimal string alignment, where the unrestricted distance is 2
  ])('from %j to %j is %i', (a, b, steps) => {
    expect(editDistance(a, b)).toBe(steps);
    expect(editDistance(b, a)).toBe(steps);
  });
});
