import { describe, expect, it } from 'vitest';
import demo from '../../../scenarios/demo.json' with { type: 'json' };
import { readScenario, Simulation } from '../../../sim/index.ts';

function simulated(parts: number[]) {
  const read = readScenario({ ...demo, run: { ...demo.run, days: 4 } });
  if (!read.ok) throw new Error('demo.json is refused');
  const simulation = new Simulation(read.plant, parts);
  simulation.advance(4);
  return { whole: simulation.result().figures, parts: simulation.parts };
}

describe('figures by part', () => {
  const { whole, parts } = simulated([1, 3]);
  const of = (key: string) => parts.map(({ figures }) => figures[key] ?? Number.NaN);

  it('come for every part, and none without being asked for', () => {
    expect(parts.map(({ from_day, days }) => [from_day, days])).toEqual([
      [0, 1],
      [1, 2],
      [3, 1],
    ]);
    expect(simulated([]).parts).toEqual([]);
  });

  it('leave the whole as it is', () => {
    expect(whole).toEqual(simulated([]).whole);
  });

  it.each([
    ...[
      'engine_s',
      'engine_starts',
      'fuel_kg',
      'engine_heat_J',
      'solar_heat_J',
      'household_heat_J',
      'loss_J',
    ],
    ...['wanted_m3', 'delivered_m3', 'cold_shower_s', 'showers', 'evaporated_kg', 'pump_electricity_J'],
  ])('sum up to the whole: %s', (key) => {
    const sum = of(key).reduce((a, b) => a + b, 0);
    expect(sum).toBeGreaterThan(0);
    expect(Math.abs(sum / (whole[key] ?? Number.NaN) - 1)).toBeLessThan(1e-9);
  });

  it('have the whole’s extremes among theirs, and its end in the last', () => {
    expect(Math.max(...of('store_top_C_max'))).toBe(whole.store_top_C_max);
    expect(Math.min(...of('store_top_C_min'))).toBe(whole.store_top_C_min);
    expect(Math.min(...of('store_top_C_max'))).toBeLessThan(whole.store_top_C_max ?? 0);
    expect(of('store_mean_C_end').at(-1)).toBe(whole.store_mean_C_end);
  });

  it('have means that weigh up to the whole’s', () => {
    const mean = parts.reduce((sum, { days, figures }) => sum + days * (figures.store_mean_C ?? 0), 0) / 4;
    expect(mean).toBeCloseTo(whole.store_mean_C ?? 0, 9);
    expect(mean).toBeGreaterThan(0);
    expect(mean).toBeLessThan(whole.store_top_C_max ?? 0);
  });

  it('count the first cold draw from the part’s own beginning', () => {
    const cold = simulated([1]);
    const [first, rest] = cold.parts.map(({ figures }) => figures.first_cold_s);
    expect(first).toBe(cold.whole.first_cold_s);
    expect(rest).toBeGreaterThanOrEqual(0);
    expect(rest).toBeLessThan(3 * 86_400);
  });
});
