import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import { readScenario, simulate } from '../../../sim/index.ts';

describe('the channel of time that draws ran cold', () => {
  const read = readScenario({
    ...demo,
    run: { ...demo.run, days: 2, start: { bottom: '70 F', top: '80 F' } },
  });
  if (!read.ok) throw new Error('the demo does not read');
  const { figures, series } = simulate(read.plant);
  const { ran_cold_s, mixed_flow_m3_s } = series.channels;

  it('sums to the figures', () => {
    const figure_s = (figures.cold_shower_s ?? 0) + (figures.cold_draw_s ?? 0);
    expect(figure_s).toBeGreaterThan(60);
    expect(ran_cold_s.reduce((sum, cold_s) => sum + cold_s, 0)).toBeCloseTo(figure_s, 1);
  });

  it('is zero where nothing was drawn, in that interval and the one before', () => {
    const still = [...ran_cold_s.keys()].filter(
      (i) => i > 0 && mixed_flow_m3_s[i] < 1e-9 && mixed_flow_m3_s[i - 1] < 1e-9,
    );
    expect(still.length).toBeGreaterThan(100);
    expect(still.filter((i) => ran_cold_s[i] > 0)).toEqual([]);
  });
});
