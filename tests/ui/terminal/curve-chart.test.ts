import { describe, expect, it } from 'vitest';
import type { Curve } from '../../../sim/index.ts';
import { curveLines } from '../../../ui/terminal/curve-chart.ts';
import { sayIn } from '../../../ui/words/index.ts';

const plain = { width: 60, unicode: false, colour: false };
const say = sayIn('SI', { plain: true });
const words = { title: 'Heat over store', lines: { heat: 'heat', most: 'at most' } };

function curve(values: (number | null)[], over: Partial<Curve> = {}): Curve {
  return {
    x: { key: 'tank_C', dimension: 'temperature' },
    at: values.map((_, i) => 10 * i),
    lines: [{ name: 'heat', y: { key: 'heat_W', dimension: 'power' }, values }],
    present: null,
    knee: null,
    ...over,
  };
}

describe('curveLines', () => {
  it('draws a rising line from the lower left to the upper right', () => {
    const lines = curveLines(curve([0, 4000, 8000]), words, say, plain);
    const body = lines.slice(1, 10);
    expect(body[0]).toMatch(/^ +8\.0 \| +#+$/);
    expect(body[8]).toMatch(/^ +0\.0 \|#+$/);
    const starts = body.map((line) => line.indexOf('#'));
    expect(starts.toSorted((a, b) => b - a)).toEqual(starts);
  });

  it('names its unit, its title and its ends', () => {
    const lines = curveLines(curve([0, 4000, 8000]), words, say, plain);
    expect(lines[0]).toMatch(/^ +kW +Heat over store$/);
    expect(lines[lines.length - 1]).toMatch(/^ +0 C +20 C$/);
  });

  it.each([
    ['a night', [75_600, 118_800], /^ +21:00 +0?9:00$/],
    ['days', [75_600, 205_200], /^ +day 1, 21:00 +day 3, 0?9:00$/],
  ])('has clock times under a log of %s, not hours past midnight', (_, at, ends) => {
    const lines = curveLines(
      curve([0, 1], { x: { key: 'time_s', dimension: 'time' }, at }),
      words,
      say,
      plain,
    );
    expect(lines[lines.length - 1]).toMatch(ends);
  });

  it('marks the present design and the knee where they lie, and leaves out what lies outside', () => {
    const lines = curveLines(curve([0, 4000, 8000], { present: 5, knee: 12 }), words, say, plain);
    const foot = lines[lines.length - 1];
    // 51 columns over 0 to 20 C.
    expect(foot.indexOf('^')).toBe(9 + Math.round(0.25 * 50));
    expect(foot.indexOf('v')).toBe(9 + Math.round(0.6 * 50));
    const outside = curveLines(curve([0, 4000, 8000], { present: 50 }), words, say, plain);
    expect(outside[outside.length - 1]).not.toContain('^');
  });

  it('tells two lines apart and leaves out one without words', () => {
    const power = { key: 'heat_W', dimension: 'power' } as const;
    const two = curve([0, 1000], {
      lines: [
        { name: 'heat', y: power, values: [0, 0] },
        { name: 'most', y: power, values: [8000, 8000] },
        { name: 'secret', y: power, values: [90_000, 90_000] },
      ],
    });
    const lines = curveLines(two, words, say, plain);
    expect(lines[0]).toMatch(/# heat +\+ at most$/);
    expect(lines[1]).toMatch(/8\.0 \|\++$/);
    expect(lines[9]).toMatch(/0\.0 \|#+$/);
  });

  it('leaves gaps where nothing flows', () => {
    const lines = curveLines(curve([5, 5, null, 5, 5]), words, say, plain);
    expect(lines.join('\n')).toMatch(/#{10,} {10,}#{10,}/);
  });

  it('draws nothing of fewer than two numbers', () => {
    expect(curveLines(curve([null, 5]), words, say, plain)).toEqual([]);
    expect(curveLines(curve([]), words, say, plain)).toEqual([]);
  });
});
