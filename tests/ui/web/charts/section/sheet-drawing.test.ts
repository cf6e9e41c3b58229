import { describe, expect, it } from 'vitest';
import { buildSheet, type SectionFacts } from '../../../../../sim/index.ts';
import { linesWithin, spread } from '../../../../../ui/web/charts/section/dimension-lines.ts';
import { sheetDrawing } from '../../../../../ui/web/charts/section/sheet-drawing.ts';
import { factsOf, tenTurns } from '../../../../sim/answers/section/facts-of.ts';
import { randomScenario } from '../../../../sim/scenario/random-scenario.ts';
import { texts } from './drawn.ts';

const box = { width: 700, height: 400 };
const drawn = (facts: SectionFacts) => sheetDrawing(facts, buildSheet(facts), box);
/** Lengths of the dimension lines [px], upright ones first. */
const lines = (drawing: string) =>
  [...drawing.matchAll(/class="line" d="M([\d.-]+),([\d.-]+)([VH])([\d.-]+)"/g)].map(([, x, y, way, to]) => ({
    way,
    length: Math.abs(Number(to) - Number(way === 'V' ? y : x)),
  }));

describe('the dimensioned section of ten turns', () => {
  const drawing = drawn(factsOf(tenTurns()));

  it('writes its measures in both systems', () => {
    const words = texts(drawing);
    for (const each of [
      'inside 36 in / 914 mm',
      'water 32 in / 813 mm',
      'inside 48 in / 1219 mm',
      // 3/4 in of plywood and 3 1/2 in of batts on either side.
      'outside 56 1/2 in / 1435 mm',
      'A first turn 4 in / 102 mm',
      'A last turn 19 1/2 in / 495 mm',
      '36 in / 914 mm wide inside',
    ]) {
      expect(words).toContain(each);
    }
  });

  it('has lines as long as what they measure, all to one scale', () => {
    const found = lines(drawing);
    expect(found.map(({ way }) => way)).toEqual(['V', 'V', 'H', 'H']);
    const scale = found[1].length / 36;
    expect(found[0].length / scale).toBeCloseTo(32, 0);
    expect(found[2].length / scale).toBeCloseTo(48, 0);
    expect(found[3].length / scale).toBeCloseTo(56.5, 0);
  });

  it('marks five thermometers on the stick, a tenth of the depth from bottom and surface', () => {
    const stick = /<g class="stick">(.*?)<\/g>/.exec(drawing)?.[1] ?? '';
    const y = [...stick.matchAll(/cy="([\d.]+)"/g)].map(([, at]) => Number(at));
    expect(y).toHaveLength(5);
    const scale = lines(drawing)[0].length / 32;
    expect((y[0] - y[4]) / scale).toBeCloseTo(0.8 * 32, 0);
  });
});

describe('over random plants', () => {
  it('is whole, and stays in its box', () => {
    for (let seed = 0; seed < 40; seed++) {
      const drawing = drawn(factsOf(randomScenario(seed)));
      expect(drawing).not.toMatch(/NaN|undefined|Infinity/);
      for (const [, y] of drawing.matchAll(/<text x="[\d.-]+" y="([\d.-]+)"/g)) {
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(box.height);
      }
    }
  });
});

describe('words side by side', () => {
  it('are spread within their room, apart as far as it lets them, in order', () => {
    expect(spread([10, 11, 12], [0, 100], 12)).toEqual([10, 22, 34]);
    expect(spread([95, 96, 97], [0, 100], 12)).toEqual([76, 88, 100]);
    const tight = spread([5, 5, 5, 5, 5], [0, 20], 12);
    expect(tight).toEqual([0, 5, 10, 15, 20]);
    expect(spread([50], [0, 100], 12)).toEqual([50]);
  });

  it('go on two lines where one is too long', () => {
    expect(linesWithin(1000, '36 in', '914 mm')).toEqual(['36 in / 914 mm']);
    expect(linesWithin(40, '36 in', '914 mm')).toEqual(['36 in', '914 mm']);
  });
});
