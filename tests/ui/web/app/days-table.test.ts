import { describe, expect, it } from 'vitest';
import { daysTable } from '../../../../ui/web/app/days-table.ts';
import { handMadeSeries, sixHours_s } from '../hand-made.ts';

const day = { from_s: 0, to_s: 86_400 };

describe('daysTable', () => {
  it('has a row for every sample where they are few', () => {
    const { rows } = daysTable(handMadeSeries(), day);
    expect(rows.map(({ top_C }) => top_C)).toEqual([40, 50, 60, 80]);
    expect(rows.map(({ cold_s }) => cold_s)).toEqual([0, 300, 0, 0]);
    expect(rows.map(({ outlet_C }) => outlet_C)).toEqual([Number.NaN, 30, 40, Number.NaN]);
  });

  it('has only the window’s', () => {
    const { rows } = daysTable(handMadeSeries(), { from_s: sixHours_s, to_s: 3 * sixHours_s });
    expect(rows.map(({ time_s }) => time_s / sixHours_s)).toEqual([2, 3]);
  });

  it('has a row a day where even hours are too many: temperatures at its end, means of the rest', () => {
    const { step_s, rows } = daysTable(handMadeSeries(), { from_s: 0, to_s: 60 * 86_400 });
    expect(step_s).toBe(86_400);
    expect(rows).toHaveLength(1);
    const [{ flow_m3_s, ...row }] = rows;
    expect(row).toEqual({
      time_s: 86_400,
      first: 0,
      last: 3,
      top_C: 80,
      middle_C: 60,
      bottom_C: 40,
      heat_W: { engine: 1000, sun: 250, losses: 115, household: 500 },
      sun_W_m2: 0,
      outlet_C: 40,
      cold_s: 300,
    });
    expect(flow_m3_s).toBeCloseTo(5e-5, 9);
  });

  it('has a row an hour between the two, on whole hours', () => {
    const count = 8 * 144 + 1;
    const series = {
      ...handMadeSeries(),
      interval_s: 600,
      time_s: Float64Array.from({ length: count }, (_, i) => i * 600),
      layer_C: new Float32Array(2 * count),
      channels: {},
    };
    const { step_s, rows } = daysTable(series, { from_s: 1800, to_s: 8 * 86_400 });
    expect(step_s).toBe(3600);
    expect(rows.map(({ time_s }) => time_s / 3600)).toEqual(Array.from({ length: 192 }, (_, i) => i + 1));
  });

  it('counts the state at the start in no row', () => {
    const series = handMadeSeries();
    series.time_s = series.time_s.map((time_s) => time_s - series.interval_s);
    expect(daysTable(series, day).rows).toHaveLength(3);
  });
});
