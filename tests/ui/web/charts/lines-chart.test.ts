import { describe, expect, it } from 'vitest';
import { type ChartOptions, day_s, type Frame } from '../../../../ui/web/charts/frame.ts';
import { type LinesData, linesChart, marksInView } from '../../../../ui/web/charts/lines-chart.ts';

// 100 px of height for 0 to 100 degrees, 200 px of width for two days: every coordinate can be checked by eye.
const frame: Frame = { width: 260, height: 130, left: 20, right: 40, top: 10, bottom: 20 };
const options: ChartOptions = {
  frame,
  span: { from_s: 0, to_s: 2 * day_s },
  timeWords: () => 'when',
  valueWords: (value) => `${value} deg`,
  apart_px: 60,
  of: (value) => value,
};
const data: LinesData = {
  time_s: [0, day_s, 2 * day_s],
  lines: [
    { key: 'top', label: 'top', values: [60, 100, 80] },
    { key: 'bottom', label: 'bottom', values: [0, 20, 78] },
  ],
  range: { low: 0, high: 100, at: [0, 50, 100] },
  reference: 40,
  cold: [{ from_s: day_s, to_s: day_s + 600 }],
  named: true,
};
const pathOf = (drawn: string, name: string) =>
  new RegExp(`class="${name}" d="([^"]*)"`).exec(drawn)?.[1] ?? null;

describe('linesChart', () => {
  const drawn = linesChart(data, options);

  it('is, as text', () => {
    expect(drawn.replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws each line through its samples', () => {
    expect(pathOf(drawn, 'line top')).toBe('M20,50h0L120,10L220,30');
    expect(pathOf(drawn, 'line bottom')).toBe('M20,110h0L120,90L220,32');
  });

  it('converts to the axis’s unit', () => {
    const inTens = linesChart(
      { ...data, range: { low: 0, high: 10, at: [] } },
      { ...options, of: (v) => v / 10 },
    );
    expect(pathOf(inTens, 'line top')).toBe(pathOf(drawn, 'line top'));
  });

  it('lays the wanted temperature across', () => {
    expect(pathOf(drawn, 'reference')).toBe('M20,70H220');
  });

  it('escapes the words it is given', () => {
    const named = { ...data, lines: [{ ...data.lines[0], label: 'top & <hot>' }] };
    expect(linesChart(named, options)).toContain('>top &amp; &lt;hot&gt;</text>');
  });

  it('marks a cold spell on the floor, wide enough to be seen', () => {
    expect(drawn).toContain('<rect x="120" y="101" width="2" height="9"/>');
  });

  it('pushes the names at the ends apart', () => {
    expect(drawn).toContain('x="226" y="30" class="end top"');
    expect(drawn).toContain('x="226" y="44" class="end bottom"');
  });

  it('breaks a line where a sample is not a number, and draws a lone one as a dot', () => {
    const gap = { ...data, lines: [{ key: 'top', label: 'top', values: [0, Number.NaN, 100] }] };
    expect(pathOf(linesChart(gap, options), 'line top')).toBe('M20,110h0M220,10h0');
  });

  it('holds means level over their intervals', () => {
    expect(pathOf(linesChart({ ...data, steps: true }, options), 'line bottom')).toBe(
      'M20,110h0L20,90L120,90L120,32L220,32',
    );
  });

  it('draws only what is in view, and just beyond, cut off at the axes', () => {
    const time_s = Array.from({ length: 49 }, (_, i) => i * 3600);
    const lines = [{ key: 'top', label: 'top', values: time_s.map(() => 50) }];
    const close = linesChart(
      { ...data, time_s, lines },
      { ...options, span: { from_s: 36_000, to_s: 43_200 } },
    );
    expect(pathOf(close, 'line top')).toBe('M-80,60h0L20,60L120,60L220,60L320,60');
    expect(close).toContain(
      '<svg x="20" y="10" width="200" height="100" viewBox="20 10 200 100" class="inside">',
    );
  });

  it('draws a pinned design’s lines on the same scale', () => {
    const ghosts = { time_s: data.time_s, lines: [{ key: 'top', label: 'top', values: [40, 80, 60] }] };
    expect(pathOf(linesChart({ ...data, ghosts }, options), 'ghost top')).toBe('M20,70h0L120,30L220,50');
  });

  it('draws the chosen line stronger', () => {
    expect(pathOf(linesChart({ ...data, chosen: 'top' }, options), 'line top chosen')).not.toBeNull();
  });

  it('draws an empty frame of a run without samples', () => {
    const none = linesChart({ ...data, time_s: [], lines: [], cold: [] }, options);
    expect(none).not.toContain('NaN');
    expect(none).toContain('class="time-axis"');
  });
});

describe('a year of minutes on 400 px', () => {
  const year: Frame = { ...frame, width: 460 };
  const time_s = Float64Array.from({ length: 525_601 }, (_, i) => i * 60);
  const span = { from_s: 0, to_s: 365 * day_s };
  const heightsOf = (path: string | null) =>
    [...(path ?? '').matchAll(/,([\d.]+)/g)].map(([, y]) => Number(y));
  const dipped = (at: number) => {
    const values = new Float32Array(525_601).fill(60);
    values[at] = 5;
    return [{ key: 'top', label: 'top', values }];
  };

  it.each([0, 1, 199_999, 525_600])(
    'shows a dip of a single minute, sample %i, as curve and as band',
    (at) => {
      const lines = dipped(at);
      const curve = linesChart({ ...data, time_s, lines, steps: true }, { ...options, frame: year, span });
      expect(Math.max(...heightsOf(pathOf(curve, 'line top')))).toBe(105);
      const band = linesChart({ ...data, time_s, lines }, { ...options, frame: year, span });
      expect(Math.max(...heightsOf(pathOf(band, 'band top')))).toBe(105);
    },
  );

  it('does not draw more points than a screen can show', () => {
    const values = Float32Array.from(time_s, (_, i) => 50 + 40 * Math.sin(i));
    const lines = [{ key: 'top', label: 'top', values }];
    const drawn = linesChart({ ...data, time_s, lines, steps: true }, { ...options, frame: year, span });
    expect(heightsOf(pathOf(drawn, 'line top')).length).toBeLessThan(4 * 400);
  });
});

describe('a run of many days', () => {
  it('is drawn as the mean and the reach of each day', () => {
    // Forty days on 200 px: 5 px a day. Each swings by 40 around 50 degrees.
    const days = Array.from({ length: 40 }, (_, day) => day);
    const time_s = days.flatMap((day) => [day * day_s, (day + 0.5) * day_s]);
    const lines = [{ key: 'top', label: 'top', values: days.flatMap(() => [30, 70]) }];
    const drawn = linesChart(
      { ...data, time_s, lines },
      { ...options, span: { from_s: 0, to_s: 40 * day_s } },
    );
    const heights = (name: string) =>
      [...(pathOf(drawn, name) ?? '').matchAll(/,([\d.]+)/g)].map(([, y]) => Number(y));
    expect(heights('line top')).toEqual(days.map(() => 60));
    expect(new Set(heights('band top'))).toEqual(new Set([80, 40]));
  });
});

describe('marksInView', () => {
  it('takes together what would touch, and leaves out what is not in view', () => {
    const spans = [100, 200, 50_000, 400_000].map((from_s) => ({ from_s, to_s: from_s + 50 }));
    const marks = marksInView(spans, frame, options.span);
    expect(marks.map(([x]) => Math.round(x))).toEqual([20, 78]);
  });
});
