import { describe, expect, it } from 'vitest';
import { type CurveData, curveChart, valueAt } from '../../../../ui/web/charts/curve-chart.ts';

const frame = { width: 266, height: 146, left: 52, right: 14, top: 20, bottom: 26 };
const words = {
  x: (value: number) => `${value} ft`,
  y: String,
  unit: '°F',
  present: 'as it is: 50 ft',
  knee: 'from 25 ft on <more> stops paying',
};
const data: CurveData = {
  at: [0, 50, 100],
  lines: [
    [40, 90, 140],
    [null, 60, null],
  ],
  x: { low: 0, high: 100, at: [0, 50, 100] },
  y: { low: 40, high: 140, at: [40, 90, 140] },
  present: 50,
  knee: 25,
  chosen: null,
};

describe('curveChart', () => {
  it('is, as text', () => {
    expect(curveChart(data, frame, words).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws its lines to scale', () => {
    // 200 px for 100 ft from 52 on, 100 px for 100 °F up to 20.
    expect(curveChart(data, frame, words)).toContain('d="M52,120h0L152,70L252,20"');
  });

  it('dots the design as it stands on every line that is known there', () => {
    const drawing = curveChart({ ...data, present: 75 }, frame, words);
    // 115 °F at 75 ft; the second line is not known there.
    expect(drawing.match(/<circle/g)).toHaveLength(1);
    expect(drawing).toContain('<circle cx="202" cy="45" r="4"/>');
    expect(curveChart({ ...data, present: null, knee: null }, frame, words)).not.toMatch(
      /present-mark|knee-mark/,
    );
  });

  it('draws a value between two gaps as a dot', () => {
    expect(curveChart(data, frame, words)).toContain('d="M152,100h0"');
  });

  it('draws many lines alike thin, beneath the others', () => {
    const many = curveChart(
      {
        ...data,
        thin: [
          [40, 40, 140],
          [90, null, 90],
        ],
      },
      frame,
      words,
    );
    const thin = many.match(/<path class="line thin"[^>]*>/g) ?? [];
    expect(thin).toHaveLength(2);
    expect(thin[0]).toContain('d="M52,120h0L152,120L252,20"');
    expect(many.indexOf('line thin')).toBeLessThan(many.indexOf('line curve-'));
    expect(curveChart(data, frame, words)).not.toContain('thin');
  });

  it('never reads words as markup', () => {
    expect(curveChart(data, frame, words)).toContain('from 25 ft on &lt;more&gt; stops paying');
  });
});

describe('valueAt', () => {
  it('lies between neighbours on a straight line, and is unknown beside a gap', () => {
    expect(valueAt(25, [0, 50], [10, 20])).toBe(15);
    expect(valueAt(50, [0, 50], [10, null])).toBeNull();
    expect(valueAt(25, [0, 50], [null, 20])).toBeNull();
    expect(valueAt(60, [0, 50], [10, 20])).toBeNull();
    expect(valueAt(-1, [0, 50], [10, 20])).toBeNull();
  });
});
