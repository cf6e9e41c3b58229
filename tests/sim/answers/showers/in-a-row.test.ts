import { describe, expect, it } from 'vitest';
import type { Edit } from '../../../../sim/answers/edit.ts';
import { doJob, type JobDone } from '../../../../sim/answers/job.ts';
import { countToTry, type RowPlan, startsOf, warmRow } from '../../../../sim/answers/showers/in-a-row.ts';
import { gapOf, rowPlant, type ShowerRow } from '../../../../sim/answers/showers/row.ts';
import { Simulation, simulate } from '../../../../sim/run/simulation.ts';
import { readScenario } from '../../../../sim/scenario/index.ts';
import { drawOf, fullPlant, plantOf, tapsOf } from '../../support/plant.ts';
import { toteScenario } from '../scenarios.ts';

const plan: RowPlan = { shower: { duration_s: 480 }, gap_s: 300, count: 12 };
const row: ShowerRow = { day: 0, starts_s: startsOf(plan), sources: 'none' };

function done(given: Partial<ShowerRow>, edits: Edit[] = []): JobDone {
  const result = doJob(toteScenario(), { edits, row: { ...row, ...given } }, {});
  if (!result.ok) throw new Error(result.problem);
  return result;
}
const warm = (...args: Parameters<typeof done>) => warmRow(done(...args).cold_s ?? [], plan);

describe('warmRow', () => {
  it('counts the showers warm to the end and the minutes of the next', () => {
    expect(warmRow([0, 20, 240, 480], plan)).toEqual({ whole: 2, showers: 2.5, warm_s: 1200, into_s: 240 });
  });

  it('knows no next one where all tried stayed warm', () => {
    expect(warmRow([0, 5, 0], plan)).toEqual({ whole: 3, showers: 3, warm_s: 1440, into_s: null });
  });

  it('calls warm for half a minute never warm', () => {
    expect(warmRow([0, 455], plan)).toMatchObject({ whole: 1, showers: 1, into_s: 0 });
  });
});

describe('a row as a job', () => {
  it('counts as a run of the same plant counts, and sees the cold in its series', () => {
    const { cold_s = [], figures } = done({});
    expect(cold_s).toHaveLength(12);
    expect(cold_s.filter((cold) => cold > 20)).toHaveLength(figures.showers_cold ?? -1);
    expect(cold_s.reduce((sum, cold) => sum + cold, 0)).toBeCloseTo(figures.cold_shower_s ?? -1, 6);
    const read = readScenario(toteScenario());
    if (!read.ok) throw new Error(read.problems[0].path);
    const plant = rowPlant(read.plant, row);
    const { series } = simulate({ ...plant, run: { ...plant.run, interval_s: 2 } });
    const { hot_line_C } = series.channels;
    const { whole } = warmRow(cold_s, plan);
    expect(whole).toBeGreaterThan(0);
    for (const i of [whole - 1, whole, whole + 1]) {
      const from = row.starts_s[i] / 2;
      const seen = Array.from(hot_line_C.subarray(from + 1, from + 240));
      const hot = seen.findIndex((t) => t >= 40.556 - 1);
      const under = seen.slice(hot).filter((t) => t < 40.556 - 1).length * 2;
      expect(Math.abs(under - cold_s[i])).toBeLessThanOrEqual(6);
    }
  });

  it('keeps no fewer showers warm in a hotter store', () => {
    const rows = ['110 F', '125 F', '140 F', '155 F'].map(
      (top) => warm({}, [{ path: 'run.start', value: { bottom: '110 F', top } }]).showers,
    );
    expect(rows.toSorted((a, b) => a - b)).toEqual(rows);
    expect(rows[3]).toBeGreaterThan(rows[0]);
  });

  it('keeps no more warm after dull days', () => {
    const rows = [0, 1, 2, 4].map((day) => warm({ day }).showers);
    expect(rows.toSorted((a, b) => b - a)).toEqual(rows);
    expect(rows[3]).toBeLessThan(rows[0]);
  });

  it('lasts longer when the engine is started at once', () => {
    expect(warm({ sources: { engine_from_s: 60 } }).showers).toBeGreaterThan(warm({}).showers);
  });
});

describe('rowPlant', () => {
  const usual = fullPlant();
  const row: ShowerRow = { day: 2, starts_s: [60, 900], sources: 'none' };

  it('draws as usual before the row’s day, and only the row on it', () => {
    const plant = rowPlant(usual, row);
    expect(plant.run.days).toBe(3);
    const onDay = (day: number) => plant.taps?.draws.filter(({ days }) => days.includes(day)) ?? [];
    expect([onDay(0).length, onDay(1).length]).toEqual([4, 4]);
    expect(onDay(2).map(({ at_s }) => at_s)).toEqual([60, 900]);
    const asRow = onDay(2).map(({ flow_m3_s, wanted_C, outlet }) => ({ flow_m3_s, wanted_C, outlet }));
    const { flow_m3_s, wanted_C, outlet } = usual.taps?.draws[0] ?? drawOf();
    expect(asRow).toEqual([
      { flow_m3_s, wanted_C, outlet },
      { flow_m3_s, wanted_C, outlet },
    ]);
  });

  it('heats with nothing, with what was planned, or with the engine from when it is told', () => {
    const heat = (sources: ShowerRow['sources']) => {
      const { figures } = simulate(rowPlant(usual, { ...row, sources }));
      return [figures.engine_s, figures.collector_s].map((s) => (s ?? 0) > 0);
    };
    expect(heat('none')).toEqual([false, false]);
    expect(heat('planned')).toEqual([true, true]);
    expect(heat({ engine_from_s: 3600 })).toEqual([true, false]);
    const started = simulate(rowPlant(usual, { ...row, sources: { engine_from_s: 82_800 } }));
    expect(started.figures.engine_s).toBeCloseTo(3600, 3);
  });

  it('leaves the backup heater out and lasts as long as its last shower', () => {
    const late = rowPlant(usual, { day: 0, starts_s: [60, 100_000], sources: 'none' });
    expect([late.backup, late.run.days]).toEqual([null, 2]);
    const simulation = new Simulation(late);
    simulation.advance(2);
    expect(simulation.result().figures.showers).toBe(2);
  });

  it('refuses days that a week cannot tell apart, and a plant without a household', () => {
    for (const day of [-1, 1.5, 7]) {
      expect(() => rowPlant(usual, { ...row, day })).toThrow(/^days before the showers - expected/);
    }
    expect(() => rowPlant(plantOf(), row)).toThrow(/^taps - expected/);
  });
});

describe('gapOf', () => {
  const at = (at_s: number, shower = true) => drawOf({ at_s, duration_s: 300, shower });

  it('is the household’s own shortest pause between showers', () => {
    expect(gapOf({ draws: [at(1000), at(1700), at(2120)] })).toBe(120);
  });

  it('is five minutes where its draws do not say', () => {
    expect(gapOf({ draws: [at(1000), at(30_000)] })).toBe(300);
    expect(gapOf({ draws: [at(1000), at(1400, false)] })).toBe(300);
  });
});

describe('countToTry', () => {
  it('is enough for any store that will run cold', () => {
    const plant = plantOf({ taps: tapsOf('household'), run: { start: { bottom_C: 60, top_C: 60 } } });
    const shower = drawOf({ duration_s: 480, flow_m3_s: 1e-4, wanted_C: 40 });
    // 640 L of 50 K above the cold are 20.8 showers of 48 L and 32 K.
    expect(countToTry(plant, shower, 8, 300)).toBeGreaterThanOrEqual(31);
    expect(countToTry(plant, shower, 8, 30_000)).toBe(2);
  });
});
