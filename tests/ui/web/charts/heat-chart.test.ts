import { describe, expect, it } from 'vitest';
import type { ChartOptions, Frame } from '../../../../ui/web/charts/frame.ts';
import { type HeatData, heatChart, pile } from '../../../../ui/web/charts/heat-chart.ts';

const frame: Frame = { width: 240, height: 230, left: 20, right: 20, top: 10, bottom: 20 };
const data: HeatData = {
  time_s: [3600, 7200],
  interval_s: 3600,
  streams: [
    { key: 'engine', side: 'in', values: [4, 0] },
    { key: 'sun', side: 'in', values: [1, 3] },
    { key: 'household', side: 'out', values: [0, 5] },
    { key: 'losses', side: 'out', values: [1, 1] },
  ],
};
const each = (count: number) => ({ step: 1, first: 0, last: count - 1 });

describe('pile', () => {
  it('stacks ins upwards and outs downwards, in the order given', () => {
    const rows = pile(data.streams, each(2)).map(({ key, from, to }) => [key, [...from], [...to]]);
    expect(rows).toEqual([
      ['engine', [0, 0], [4, 0]],
      ['sun', [4, 0], [5, 3]],
      ['household', [0, 0], [0, -5]],
      ['losses', [0, -5], [-1, -6]],
    ]);
  });

  it('draws a stream that turned round on the other side', () => {
    const layers = pile([{ key: 'engine', side: 'in', values: [4, -2] }], each(2));
    expect(layers.map(({ key, to }) => [key, [...to]])).toEqual([
      ['engine', [4, 0]],
      ['engine', [0, -2]],
    ]);
  });

  it('keeps the area of crowded samples, of a short last group too', () => {
    const values = [0, 8, 0, 0, 4];
    const [layer] = pile([{ key: 'engine', side: 'in', values }], { step: 2, first: 0, last: 2 });
    expect([...layer.to]).toEqual([4, 0, 4]);
  });

  it('takes a sample that is not a number for nothing', () => {
    const [layer] = pile([{ key: 'engine', side: 'in', values: [Number.NaN, 3] }], each(2));
    expect([...layer.to]).toEqual([0, 3]);
  });
});

describe('heatChart', () => {
  const options: ChartOptions = {
    frame,
    span: { from_s: 0, to_s: 7200 },
    timeWords: () => 'when',
    valueWords: (value) => `${value} kW`,
    apart_px: 40,
    of: (value) => value,
  };
  const drawn = heatChart(data, options);
  const corners = (key: string, of = drawn) => {
    const path = new RegExp(`class="${key}" d="([^"]+)"`).exec(of)?.[1] ?? '';
    let [x, y] = [0, 0];
    return [...path.matchAll(/([MLHV])([-\d.]+)(?:,([-\d.]+))?/g)].map(([, to, a, b]) => {
      if (to === 'V') y = Number(a);
      else x = Number(a);
      if (b) y = Number(b);
      return [x, y];
    });
  };

  it('is, as text', () => {
    expect(drawn.replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('holds each mean from the start of its interval to the end', () => {
    // Half of the width each; the engine's area is flat at 4 kW until 1 h and empty after.
    const engine = corners('heat engine');
    const top = Math.min(...engine.map(([, y]) => y));
    const atTop = engine.filter(([, y]) => y === top).map(([x]) => x);
    expect([Math.min(...atTop), Math.max(...atTop)]).toEqual([20, 120]);
  });

  it('places equal powers of both sides at equal distance from the zero line', () => {
    const zero = Number(/class="zero" d="M20,([\d.]+)H/.exec(drawn)?.[1]);
    const sun = Math.min(...corners('heat sun').map(([, y]) => y));
    const household = Math.max(...corners('heat household').map(([, y]) => y));
    expect(zero - sun).toBeCloseTo(household - zero, 0);
  });

  it('outlines a pinned design’s heat, in and out, on a scale that holds both', () => {
    const streams = [{ key: 'engine', side: 'in' as const, values: [20, 0] }];
    const both = heatChart({ ...data, ghost: { ...data, streams } }, options);
    const ghost = Math.min(...corners('ghost', both).map(([, y]) => y));
    expect(ghost).toBeGreaterThanOrEqual(frame.top);
    expect(ghost).toBeLessThan(Math.min(...corners('heat engine', both).map(([, y]) => y)));
    expect(drawn).not.toContain('ghost');
  });

  it('shows the same peaks, on the same scale, at any width', () => {
    // A shower of 50 for one sample of five minutes a day, and a pile whose streams peak at different times.
    const count = 7 * 288;
    const day = Array.from({ length: count }, (_, i) => i % 288);
    const series: HeatData = {
      time_s: day.map((_, i) => (i + 1) * 300),
      interval_s: 300,
      streams: [
        { key: 'engine', side: 'in', values: day.map((i) => (i === 100 ? 30 : 0)) },
        { key: 'sun', side: 'in', values: day.map((i) => (i === 101 ? 20 : 0)) },
        { key: 'household', side: 'out', values: day.map((i) => (i === 90 ? 50 : 0)) },
      ],
    };
    const seen = [240, 400, 700, 6000].map((width) => {
      const chart = heatChart(series, {
        ...options,
        frame: { ...frame, width },
        span: { from_s: 0, to_s: count * 300 },
      });
      // Below the line comes last.
      const below = chart.slice(chart.lastIndexOf('class="heat peak"'));
      const heights = [...corners('heat peak', below), ...corners('heat household', chart)].map(([, y]) => y);
      return {
        lowest: Math.max(...heights),
        axis: /class="value-axis">(.*?)<\/g>/.exec(chart)?.[1].match(/>(-?\d+) kW/g),
        pale: chart.includes('heat peak'),
      };
    });
    const [{ lowest, axis }] = seen;
    expect(seen).toEqual([true, true, true, false].map((pale) => ({ lowest, axis, pale })));
    // 30 + 0 and 0 + 20 are never 50: what is piled is of one moment.
    expect(axis).toContain('>20 kW');
    expect(axis).not.toContain('>40 kW');
    expect(axis).toContain('>-40 kW');
  });

  it('keeps its scale while it is panned', () => {
    const values = Array.from({ length: 48 }, (_, i) => i);
    const series = {
      time_s: values.map((i) => i * 3600),
      interval_s: 3600,
      streams: [{ key: 'engine', side: 'in' as const, values }],
    };
    const zero = (from_s: number) =>
      /class="value-axis">(.*?)<\/g>/.exec(
        heatChart(series, { ...options, span: { from_s, to_s: from_s + 36_000 } }),
      )?.[1];
    expect(zero(0)).toBe(zero(72_000));
  });

  it('draws no area and no nonsense for a run without samples', () => {
    const none = heatChart({ ...data, time_s: [], streams: [] }, options);
    expect(none).not.toContain('NaN');
    expect(none).not.toContain('class="heat');
  });
});
