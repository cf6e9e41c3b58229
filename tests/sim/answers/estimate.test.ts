import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { forEstimate } from '../../../sim/answers/estimate.ts';
import { estimate, estimateError, type Result, readScenario, simulate } from '../../../sim/index.ts';

function plantOf(name: string) {
  const file = new URL(`../../../scenarios/${name}.json`, import.meta.url);
  const read = readScenario(JSON.parse(readFileSync(file, 'utf8')));
  if (!read.ok) throw new Error(`${name} is refused`);
  return read.plant;
}

describe('the quick estimate', () => {
  it.each(['demo', 'tote-sun', 'nobody-home', 'boat'])(
    'of %s is near the full run over the same days',
    (name) => {
      const plant = plantOf(name);
      const quick = estimate(plant);
      const { days, interval_s } = forEstimate(plant).run;
      expect(quick.days).toBe(days);
      const full = simulate({ ...plant, run: { ...plant.run, days, interval_s } });
      const { top_rms_K, household, solar } = estimateError(quick, full);
      expect(top_rms_K).toBeLessThan(1);
      expect(Math.abs(household ?? 0)).toBeLessThan(0.02);
      expect(Math.abs(solar ?? 0)).toBeLessThan(0.05);
      // An evaluation's work goes with the layers.
      const work = ({ run, series }: Result) => run.evaluations * series.layers;
      expect(work(quick)).toBeLessThan(0.5 * work(full));
    },
  );

  it('does at most three days of eight layers', () => {
    const { run } = forEstimate(plantOf('demo'));
    expect(run).toMatchObject({ days: 3, layers: 8, tolerance: 1e-3, interval_s: 600 });
  });

  it('never runs more finely or longer than the file does', () => {
    const { run } = plantOf('boat');
    const coarse = { ...run, days: 1, layers: 5, tolerance: 1e-2, interval_s: 3600 };
    expect(forEstimate({ ...plantOf('boat'), run: coarse }).run).toEqual(coarse);
  });

  it('is off by nothing from itself', () => {
    const quick = estimate(plantOf('boat'));
    expect(estimateError(quick, quick)).toEqual({ top_rms_K: 0, household: null, solar: null });
  });
});
