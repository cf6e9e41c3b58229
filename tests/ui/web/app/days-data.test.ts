import { describe, expect, it } from 'vitest';
import type { RunEvent } from '../../../../sim/index.ts';
import { coldSpans, daysData, heatValues, layerAt, layerLine } from '../../../../ui/web/app/days-data.ts';
import { handMadeResult, handMadeSeries, sixHours_s } from '../hand-made.ts';

const shown = (result = handMadeResult()) => ({ result, firstWeekday: 5 });

describe('layerAt', () => {
  it('gives the bottom and the top layer, and the mean of the two in the middle', () => {
    const series = handMadeSeries();
    expect([0, 0.5, 1].map((share) => layerAt(series, share, 1))).toEqual([20, 35, 50]);
    expect([...layerLine(series, 0.5)]).toEqual([30, 35, 45, 60]);
  });

  it('gives the middle layer of an odd number', () => {
    const series = { ...handMadeSeries(), layers: 3, layer_C: Float32Array.of(10, 25, 60) };
    expect(layerAt(series, 0.5, 0)).toBe(25);
  });
});

describe('heatValues', () => {
  it('counts evaporation as a loss', () => {
    expect(Array.from(heatValues(handMadeSeries(), 'losses'))).toEqual([100, 120, 120, 120]);
  });

  it('gives no power where the plant lacks the part', () => {
    const series = handMadeSeries();
    delete series.channels.collector_W;
    expect(Array.from(heatValues(series, 'sun'))).toEqual([0, 0, 0, 0]);
  });
});

describe('coldSpans', () => {
  it('finds the interval in which a draw ran cold', () => {
    expect(coldSpans(handMadeSeries())).toEqual([{ from_s: sixHours_s, to_s: 2 * sixHours_s }]);
  });

  it('joins neighbours into one spell', () => {
    const series = handMadeSeries();
    series.channels.ran_cold_s[2] = 300;
    expect(coldSpans(series)).toEqual([{ from_s: sixHours_s, to_s: 3 * sixHours_s }]);
  });

  it('passes over the moment in which the pipe warms', () => {
    const series = handMadeSeries();
    series.channels.ran_cold_s[1] = 10;
    expect(coldSpans(series)).toEqual([]);
  });

  it('finds in close samples what lasted long enough, and reaches as far back as it lasted', () => {
    const close = (...cold_s: number[]) =>
      coldSpans({
        ...handMadeSeries(),
        interval_s: 10,
        time_s: Float64Array.from(cold_s, (_, i) => 100 + 10 * i),
        channels: { ran_cold_s: Float32Array.from(cold_s) },
      });
    expect(close(0, 10, 10, 10, 0)).toEqual([{ from_s: 100, to_s: 130 }]);
    expect(close(0, 10, 0, 0, 0)).toEqual([]);
    expect(close(0, 0, 0, 0, 35)).toEqual([{ from_s: 105, to_s: 140 }]);
  });

  it('finds none where nothing is drawn', () => {
    expect(coldSpans({ ...handMadeSeries(), channels: {} })).toEqual([]);
  });
});

describe('daysData', () => {
  it('has axes in the units asked for, and values as the run has them', () => {
    const us = daysData(shown(), 'US');
    const si = daysData(shown(), 'SI');
    // 20 to 80 degrees Celsius.
    expect(us.temperatures.range).toMatchObject({ low: 60, high: 180 });
    expect(si.temperatures.range).toMatchObject({ low: 20, high: 80 });
    expect(us.temperatures.lines[0].values).toEqual(si.temperatures.lines[0].values);
    expect(us.units.power.symbol).toBe('kBtu/h');
    expect(si.units.power.of(4000)).toBe(4);
    expect(us.usable_C).toBe(40);
    expect(us.field.depth).toBeCloseTo(1.016, 9);
    expect(us.fieldScale).toEqual({ low: 20, high: 80, pivot: 40 });
  });

  it('leaves out streams that never carried heat and panels of what is not there', () => {
    const result = handMadeResult();
    result.series.channels.engine_W.fill(0);
    const { heat, sun, water } = daysData(shown(result), 'SI');
    expect(heat.streams.map(({ key }) => key)).toEqual(['sun', 'losses', 'household']);
    expect(sun).toBeNull();
    expect(water?.lines.map(({ key }) => key)).toEqual(['mixed_flow_m3_s']);
    expect(water?.range.low).toBe(0);
  });

  it('wants nothing where nobody draws, and still has a place for the colours to turn', () => {
    const result = handMadeResult();
    result.series.channels = {};
    const { usable_C, temperatures, fieldScale, tap } = daysData(shown(result), 'SI');
    expect([usable_C, temperatures.reference, tap]).toEqual([null, null, null]);
    expect(Number.isFinite(fieldScale.pivot)).toBe(true);
  });

  it('makes rows of what began and ended, to the end where it still runs', () => {
    const event = (name: string, time_s: number): RunEvent => ({ name, time_s, part: 'x' });
    const result = handMadeResult();
    result.events = [event('engine.start', 100), event('engine.stop', 700), event('collector.pump.on', 900)];
    const { rows } = daysData(shown(result), 'SI');
    expect(rows.map(({ key, spells }) => [key, spells])).toEqual([
      ['engine', [{ from_s: 100, to_s: 700 }]],
      ['pump', [{ from_s: 900, to_s: 86_400 }]],
      ['cold', [{ from_s: sixHours_s, to_s: 2 * sixHours_s }]],
    ]);
  });

  it('draws closer samples where there are some, of the run’s own streams, and a pinned run as ghosts', () => {
    const closer = handMadeSeries();
    closer.channels.engine_W.fill(0);
    const pinned = handMadeResult();
    pinned.series.layer_C.fill(120);
    const data = daysData(shown(), 'SI', { closer, pinned });
    expect(data.series).toBe(closer);
    expect(data.heat.streams.map(({ key }) => key)).toContain('engine');
    expect(data.temperatures.range.high).toBe(120);
    expect(data.temperatures.ghosts?.lines).toHaveLength(3);
    expect(data.ghostField?.values).toBe(pinned.series.layer_C);
  });

  it('reaches as far as was asked for, also while the run has not come so far', () => {
    expect(daysData({ ...shown(), ofDays: 7 }, 'SI').whole).toEqual({ from_s: 0, to_s: 7 * 86_400 });
  });
});
