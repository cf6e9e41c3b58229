import { describe, expect, it } from 'vitest';
import type { Frame } from '../../../../ui/web/charts/frame.ts';
import { type HeatData, heatChart, pile } from '../../../../ui/web/charts/heat-chart.ts';
import { groupBounds } from '../../../../ui/web/charts/thin.ts';

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

describe('pile', () => {
  it('stacks ins upwards and outs downwards, in the order given', () => {
    const layers = pile(data.streams, groupBounds(2, 10));
    const rows = layers.map(({ key, from, to }) => [key, [...from], [...to]]);
    expect(rows).toEqual([
      ['engine', [0, 0], [4, 0]],
      ['sun', [4, 0], [5, 3]],
      ['household', [0, 0], [0, -5]],
      ['losses', [0, -5], [-1, -6]],
    ]);
  });

  it('draws a stream that turned round on the other side', () => {
    const layers = pile([{ key: 'engine', side: 'in', values: [4, -2] }], [0, 1, 2]);
    const rows = layers.map(({ key, to }) => [key, [...to]]);
    expect(rows).toEqual([
      ['engine', [4, 0]],
      ['engine', [0, -2]],
    ]);
  });

  it('keeps the area of crowded samples', () => {
    const values = [0, 8, 0, 0, 4, 4];
    const [layer] = pile([{ key: 'engine', side: 'in', values }], groupBounds(6, 3));
    expect([...layer.to]).toEqual([4, 0, 4]);
  });
});

describe('heatChart', () => {
  const options = {
    frame,
    span: { from_s: 0, to_s: 7200 },
    timeWords: () => 'when',
    valueWords: (value: number) => `${value} kW`,
    apart_px: 40,
  };
  const drawn = heatChart(data, options);

  it('holds each mean from the start of its interval to the end', () => {
    // Half of the width each; the engine's area is flat at 4 kW until 1 h and empty after.
    const engine = /class="heat engine" d="([^"]+)"/.exec(drawn)?.[1] ?? '';
    const corners = [...engine.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    const columns = [...new Set(corners.map(([x]) => x))].sort((a, b) => a - b);
    expect(columns).toEqual([20, 120, 220]);
    const [top] = corners[0].slice(1);
    expect(corners.filter(([x, y]) => x <= 120 && y === top)).toHaveLength(2);
  });

  it('places equal powers of both sides at equal distance from the zero line', () => {
    const zero = Number(/class="zero" d="M20,([\d.]+)H/.exec(drawn)?.[1]);
    const highest = (key: string, pick: (...values: number[]) => number) => {
      const path = new RegExp(`class="heat ${key}" d="([^"]+)"`).exec(drawn)?.[1] ?? '';
      return pick(...[...path.matchAll(/[\d.]+,([\d.]+)/g)].map(([, y]) => Number(y)));
    };
    expect(zero - highest('sun', Math.min)).toBeCloseTo(highest('household', Math.max) - zero, 0);
  });

  it('draws no area and no nonsense for a run without samples', () => {
    const none = heatChart({ ...data, time_s: [], streams: [] }, options);
    expect(none).not.toContain('NaN');
    expect(none).not.toContain('class="heat');
  });
});
