import { describe, expect, it } from 'vitest';
import { coldSpans, daysData, heatAt, layerAt, streamsOf } from '../../../../ui/web/app/days-data.ts';
import { handMadeResult, handMadeSeries, sixHours_s } from '../hand-made.ts';

describe('layerAt', () => {
  it('gives the bottom and the top layer, and the mean of the two in the middle', () => {
    const series = handMadeSeries();
    expect([0, 0.5, 1].map((share) => layerAt(series, share, 1))).toEqual([20, 35, 50]);
  });

  it('gives the middle layer of an odd number', () => {
    const series = { ...handMadeSeries(), layers: 3, layer_C: Float32Array.of(10, 25, 60) };
    expect(layerAt(series, 0.5, 0)).toBe(25);
  });
});

describe('heatAt', () => {
  it('counts evaporation as a loss', () => {
    expect(heatAt(handMadeSeries(), 'losses', 1)).toBe(120);
  });

  it('gives no power where the plant lacks the part', () => {
    const series = handMadeSeries();
    delete series.channels.collector_W;
    expect(heatAt(series, 'sun', 2)).toBe(0);
  });
});

describe('streamsOf', () => {
  it('leaves out what never carried heat', () => {
    const series = handMadeSeries();
    series.channels.engine_W.fill(0);
    expect(streamsOf(series).map(({ key }) => key)).toEqual(['sun', 'losses', 'household']);
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

  it('finds none where nothing is drawn', () => {
    expect(coldSpans({ ...handMadeSeries(), channels: {} })).toEqual([]);
  });
});

describe('daysData', () => {
  it('is in the units asked for', () => {
    const us = daysData(handMadeResult(), 'US');
    // 20 to 80 degrees Celsius; 40 in of water in two layers of 20 in; 4 kW.
    expect(us.fieldScale).toMatchObject({ low: 68, high: 176 });
    expect(us.usable).toBeCloseTo(104, 9);
    expect(us.field.depth).toBeCloseTo(40, 9);
    expect(us.heat.streams[0].values[1]).toBeCloseTo(13.6486, 4);
    const si = daysData(handMadeResult(), 'SI');
    expect(si.fieldScale).toMatchObject({ low: 20, high: 80, pivot: 40 });
    expect(si.field.depth).toBeCloseTo(101.6, 9);
    expect(si.heat.streams[0].values[1]).toBe(4);
  });

  it('wants nothing where nobody draws, and still has a place for the colours to turn', () => {
    const result = handMadeResult();
    result.series.channels = {};
    const { usable, temperature, fieldScale } = daysData(result, 'SI');
    expect([usable, temperature.reference]).toEqual([null, null]);
    expect(Number.isFinite(fieldScale.pivot)).toBe(true);
  });
});
