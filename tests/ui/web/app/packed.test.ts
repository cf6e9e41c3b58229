import { describe, expect, it } from 'vitest';
import type { Series } from '../../../../sim/index.ts';
import { packSeries, unpackSeries } from '../../../../ui/web/app/packed.ts';
import { handMadeSeries } from '../hand-made.ts';

/** From the start on, as a run has it. */
function series(more: Partial<Series['channels']> = {}): Series {
  const made = handMadeSeries();
  return {
    ...made,
    time_s: Float64Array.from(made.time_s, (_, i) => i * made.interval_s),
    channels: { ...made.channels, ...more } as Series['channels'],
  };
}

/** Through text, as it travels. */
const there = (packed: unknown) => JSON.parse(JSON.stringify(packed));

describe('a packed series', () => {
  it('comes back within half a step of each value', () => {
    const steps = { C: 0.005, W: 0.5 };
    const wild = Float32Array.of(-273.1, 4.999, 1e4, -1e-3);
    const packed = series({ engine_C: wild, fuel_W: Float32Array.of(0, 123_456.7, -9.4, 3) });
    const back = unpackSeries(there(packSeries(packed)));
    expect(back.time_s).toEqual(packed.time_s);
    expect(back.height_m).toEqual(packed.height_m);
    expect(back.layers).toBe(packed.layers);
    for (const [key, values] of Object.entries(packed.channels)) {
      const step = key.endsWith('_C') ? steps.C : key.endsWith('_W') ? steps.W : Math.max(...values) / 4096;
      for (const [i, value] of values.entries()) {
        if (Number.isNaN(value)) expect(back.channels[key][i]).toBeNaN();
        else expect(Math.abs(back.channels[key][i] - value)).toBeLessThanOrEqual(step / 2 + 1e-3 * step);
      }
    }
    for (const [i, value] of packed.layer_C.entries()) expect(back.layer_C[i]).toBeCloseTo(value, 2);
  });

  it('keeps where values are no numbers', () => {
    const { NaN: none } = Number;
    const outlet_C = Float32Array.of(none, none, 40, none);
    const back = unpackSeries(there(packSeries(series({ outlet_C }))));
    expect(back.channels.outlet_C).toEqual(outlet_C);
  });

  it('keeps a channel of noughts', () => {
    const level_m = new Float32Array(4);
    expect(unpackSeries(there(packSeries(series({ level_m })))).channels.level_m).toEqual(level_m);
  });

  it('refuses samples that are not evenly spaced', () => {
    expect(() => packSeries(handMadeSeries())).toThrow('evenly spaced');
  });
});
