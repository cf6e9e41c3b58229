import { describe, expect, it } from 'vitest';
import { nearestWord } from '../../../sim/scenario/nearest.ts';

const known = ['water_depth', 'wall', 'liner', 'insulation', 'lid', 'temperature'];

describe('the nearest word', () => {
  it.each([
    ['waterdepth', 'water_depth'],
    ['Water Depth', 'water_depth'],
    ['wal', 'wall'],
    ['walls', 'wall'],
    ['inuslation', 'insulation'],
    ['temp', 'temperature'],
    ['lidd', 'lid'],
  ])('to %s is %s', (word, expected) => {
    expect(nearestWord(word, known)).toBe(expected);
  });

  it.each(['colour', 'x', '', 'q'.repeat(1000)])('to "%s" is none', (word) => {
    expect(nearestWord(word, known)).toBeNull();
  });
});
