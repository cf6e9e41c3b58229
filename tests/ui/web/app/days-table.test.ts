import { describe, expect, it } from 'vitest';
import { daysTable } from '../../../../ui/web/app/days-table.ts';
import { handMadeSeries } from '../hand-made.ts';

describe('daysTable', () => {
  it('has a row for every sample where samples are further apart than an hour', () => {
    const { rows } = daysTable(handMadeSeries(), 1);
    expect(rows.map(({ top_C }) => top_C)).toEqual([40, 50, 60, 80]);
    expect(rows.map(({ cold_s }) => cold_s)).toEqual([0, 300, 0, 0]);
  });

  it('has a row a day for more than a week: temperatures at its end, means of the heat', () => {
    const { step_s, rows } = daysTable(handMadeSeries(), 8);
    expect(step_s).toBe(86_400);
    expect(rows).toEqual([
      {
        time_s: 86_400,
        top_C: 80,
        middle_C: 60,
        bottom_C: 40,
        heat_W: { engine: 1000, sun: 250, losses: 115, household: 500 },
        cold_s: 300,
      },
    ]);
  });

  it('counts the state at the start in no row', () => {
    const series = handMadeSeries();
    series.time_s = series.time_s.map((time_s) => time_s - series.interval_s);
    const { rows } = daysTable(series, 8);
    expect(rows[0].heat_W.engine).toBeCloseTo(4000 / 3, 6);
  });
});
