import { describe, expect, it } from 'vitest';
import { day_s, type Frame } from '../../../../ui/web/charts/frame.ts';
import {
  type TemperatureData,
  temperatureChart,
  temperatureRange,
} from '../../../../ui/web/charts/temperature-chart.ts';

// 100 px of height for 0 to 100 degrees, 200 px of width for two days: every coordinate can be checked by eye.
const frame: Frame = { width: 260, height: 130, left: 20, right: 40, top: 10, bottom: 20 };
const options = {
  frame,
  span: { from_s: 0, to_s: 2 * day_s },
  timeWords: () => 'when',
  valueWords: (value: number) => `${value} deg`,
  apart_px: 60,
};
const data: TemperatureData = {
  time_s: [0, day_s, 2 * day_s],
  lines: [
    { key: 'top', label: 'top', values: [60, 100, 80] },
    { key: 'bottom', label: 'bottom', values: [0, 20, 78] },
  ],
  reference: 40,
  cold: [{ from_s: day_s, to_s: day_s + 600 }],
};

describe('temperatureChart', () => {
  const drawn = temperatureChart(data, options);

  it('draws each line through its samples', () => {
    expect(drawn).toContain('<path class="line top" d="M20,50L120,10L220,30"/>');
    expect(drawn).toContain('<path class="line bottom" d="M20,110L120,90L220,32"/>');
  });

  it('lays the wanted temperature across', () => {
    expect(drawn).toContain('<path class="reference" d="M20,70H220"/>');
  });

  it('escapes the words it is given', () => {
    const named = { ...data, lines: [{ ...data.lines[0], label: 'top & <hot>' }] };
    expect(temperatureChart(named, options)).toContain('>top &amp; &lt;hot&gt;</text>');
  });

  it('marks a cold spell on the floor, wide enough to be seen', () => {
    expect(drawn).toContain('<rect x="120" y="101" width="2" height="9"/>');
  });

  it('pushes the names at the ends apart', () => {
    expect(drawn).toContain('x="226" y="30" class="end top"');
    expect(drawn).toContain('x="226" y="44" class="end bottom"');
  });

  it('breaks a line where a sample is not a number', () => {
    const gap = { ...data, lines: [{ key: 'top', label: 'top', values: [0, Number.NaN, 100] }] };
    expect(temperatureChart(gap, options)).toContain('d="M20,110ZM220,10Z"');
  });

  it('draws an empty frame of a run without samples', () => {
    const none = temperatureChart({ time_s: [], lines: [], reference: null, cold: [] }, options);
    expect(none).not.toContain('NaN');
    expect(none).toContain('class="time-axis"');
  });
});

describe('a run of many days', () => {
  it('is drawn as the mean and the reach of each day', () => {
    // Forty days on 200 px: 5 px a day. Each swings by 40 around 50 degrees.
    const days = Array.from({ length: 40 }, (_, day) => day);
    const time_s = days.flatMap((day) => [day * day_s, (day + 0.5) * day_s]);
    const lines = [{ key: 'top', label: 'top', values: days.flatMap(() => [30, 70]) }];
    const drawn = temperatureChart(
      {
        time_s,
        lines: [
          ...lines,
          { key: 'bottom', label: 'bottom', values: time_s.map((_, i) => (i < 2 ? 0 : 100)) },
        ],
        reference: null,
        cold: [],
      },
      { ...options, span: { from_s: 0, to_s: 40 * day_s } },
    );
    const heights = (name: string) => {
      const path = new RegExp(`class="${name}" d="([^"]+)"`).exec(drawn)?.[1] ?? '';
      return [...path.matchAll(/,([\d.]+)/g)].map(([, y]) => Number(y));
    };
    expect(heights('line top')).toEqual(days.map(() => 60));
    expect(new Set(heights('band top'))).toEqual(new Set([80, 40]));
    expect(heights('line bottom')).toEqual(days.map((day) => (day === 0 ? 110 : 10)));
  });
});

describe('temperatureRange', () => {
  it('ends on round numbers and holds the reference', () => {
    const cool = { ...data, lines: [{ key: 'top', label: 'top', values: [12, 33] }] };
    expect(temperatureRange(cool)).toEqual({ low: 10, high: 40, at: [10, 15, 20, 25, 30, 35, 40] });
  });

  it('is not empty for one constant temperature', () => {
    const flat = { ...data, lines: [{ key: 'top', label: 'top', values: [50, 50] }], reference: null };
    const { low, high } = temperatureRange(flat);
    expect(high).toBeGreaterThan(low);
  });
});
