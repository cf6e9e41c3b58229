import { describe, expect, it } from 'vitest';
import { seriesAsCsv } from '../../../ui/terminal/as-csv.ts';
import { resultAsJson } from '../../../ui/terminal/as-json.ts';
import { result } from './hand-made.ts';

describe('seriesAsCsv', () => {
  const lines = (units: 'US' | 'SI') => seriesAsCsv(result.series, units).trimEnd().split('\n');

  it('names every column with its unit', () => {
    expect(lines('SI')[0]).toBe(
      'time (h),store at 0.1 m (C),store at 0.3 m (C),store at 0.5 m (C),sun (W/m2),mixed_flow (L/min),outlet (C)',
    );
    expect(lines('US')[0]).toBe(
      'time (h),store at 3.93701 in (F),store at 11.811 in (F),store at 19.685 in (F),sun (W/m2),mixed_flow (gpm),outlet (F)',
    );
  });
  it('gives a row a sample, empty where there is no number', () => {
    expect(lines('SI')).toHaveLength(50);
    expect(lines('SI')[11]).toBe('10,50,60,70,500,0,');
    expect(lines('SI')[20]).toBe('19,50,60,70,0,1,41.25');
  });
  it('converts what has a unit', () => {
    // 1 L/min is 0.264172 US gallons a minute; 41.25 C is 106.25 F.
    expect(lines('US')[20]).toBe('19,122,140,158,0,0.264172,106.25');
  });
});

describe('resultAsJson', () => {
  const json = JSON.parse(resultAsJson(result, 0.25));

  it('gives figures in SI and the ledger in kWh', () => {
    expect(json.figures).toEqual(result.figures);
    expect(json.ledger).toEqual({
      paths: [{ key: 'fuel_to_coolant', side: 'in', energy_kWh: 2 }],
      stored_change_kWh: 2,
      throughput_kWh: 2,
      residual_percent: 0,
    });
  });
  it('gives the series by layer and channel, null where there is no number', () => {
    expect(json.series.layer_C.map((layer: number[]) => [layer.length, layer[7]])).toEqual([
      [49, 50],
      [49, 60],
      [49, 70],
    ]);
    expect(json.series.channels.outlet_C.slice(18, 21)).toEqual([null, 41.25, null]);
    expect(json.series.time_s[48]).toBe(172_800);
  });
  it('tells what the run took', () => {
    expect(json.run).toEqual({ evaluations: 100, steps: 10, restarts: 5, wall_s: 0.25 });
    expect(json.events).toHaveLength(3);
  });
});
