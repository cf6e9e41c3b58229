/** Water that leaves an open store, over runs: mass and energy balance, level, boiling dry by the hour. */
import { describe, expect, it } from 'vitest';
import type { StoreDescription } from '../../../../sim/parts/description.ts';
import { waterEnthalpy, waterLatentHeat } from '../../../../sim/physics/water.ts';
import type { Result } from '../../../../sim/run/result.ts';
import { simulate } from '../../../../sim/run/simulation.ts';
import { coilOf, heaterOf, plantOf, roomAt, storeOf } from '../../support/plant.ts';

const open: Partial<StoreDescription> = { lid: 'open', vapour_share: 1 };
const path = (result: Result, key: string) =>
  result.ledger.paths.find((p) => p.key === key)?.energy_J ?? Number.NaN;
const figure = (result: Result, key: string) => result.figures[key] ?? Number.NaN;
/** 1 m by 0.8 m, filled at a mean of 55 C: 985.7 kg/m3 (IAPWS-95). */
const KG_A_METRE = 0.8 * 985.7;

describe('an open store filled by hand', () => {
  const result = simulate(plantOf({ store: storeOf({ ...open, make_up: 'by hand' }), run: { days: 6 } }));
  const gone = figure(result, 'evaporated_kg');

  it('loses the water that evaporates', () => {
    expect(gone).toBeGreaterThan(20);
    const fallen = 0.8 - figure(result, 'level_m_end');
    // What has evaporated since the level was last lowered is less than 2e-4 of the water.
    expect(Math.abs(fallen * KG_A_METRE - gone)).toBeLessThan(2.2e-4 * 0.8 * KG_A_METRE);
  });

  it('sinks throughout', () => {
    const { level_m } = result.series.channels;
    for (let i = 1; i < level_m.length; i++) expect(level_m[i]).toBeLessThanOrEqual(level_m[i - 1]);
  });

  it('loses with it its latent heat, and its warmth once the level is lowered', () => {
    const [hot, cold] = [figure(result, 'store_top_C_max'), figure(result, 'store_top_C_min')];
    const vapour = path(result, 'store_lid_vapour');
    expect(vapour).toBeLessThan(gone * (waterLatentHeat(cold) + waterEnthalpy(hot)));
    expect(vapour).toBeGreaterThan(gone * (waterLatentHeat(hot) + waterEnthalpy(cold)) * 0.999);
  });

  it('balances', () => {
    expect(result.ledger.residual_percent).toBeLessThan(1e-7);
    expect(path(result, 'make_up_water')).toBe(0);
  });
});

describe('the same store with a float valve', () => {
  const result = simulate(plantOf({ store: storeOf({ ...open, make_up: 'float' }), run: { days: 6 } }));

  it('keeps its level and takes in what evaporates', () => {
    expect(figure(result, 'level_m_end')).toBe(0.8);
    expect(figure(result, 'make_up_kg')).toBe(figure(result, 'evaporated_kg'));
    const heat = path(result, 'make_up_water') / figure(result, 'make_up_kg');
    expect(heat / waterEnthalpy(10)).toBeCloseTo(1, 4);
    expect(result.ledger.residual_percent).toBeLessThan(1e-7);
  });
});

describe('a store heated past boiling', () => {
  const power = 3000;
  const boiled = (make_up: 'float' | 'by hand', altitude_m = 0) =>
    simulate(
      plantOf({
        site: { latitude_rad: 0.7, longitude_rad: 0, altitude_m, time_zone_s: 0 },
        store: storeOf({ make_up, water_depth_m: 0.3, surroundings: roomAt(15) }),
        coils: [coilOf('loop', { bottom_m: 0.02, top_m: 0.25 })],
        engine: { ...heaterOf('loop', power), heat_capacity_J_K: 30_000 },
        run: { start: { bottom_C: 80, top_C: 80 }, interval_s: 600, layers: 10 },
      }),
    );

  it.each(['float', 'by hand'] as const)('%s never passes the boiling point', (make_up) => {
    for (const altitude of [0, 2000]) {
      const result = boiled(make_up, altitude);
      const boiling = altitude === 0 ? 99.97 : 93.3;
      expect(figure(result, 'boiled_kg')).toBeGreaterThan(30);
      expect(figure(result, 'store_top_C_max')).toBeLessThan(boiling + 0.1);
      expect(result.events.map((e) => e.name)).toContain('store.boiling');
    }
  });

  it('boils off what heat the walls do not lose', () => {
    const result = boiled('float');
    const stored = result.ledger.stored_change_J;
    const surplus = power * 86_400 - figure(result, 'loss_J') - stored;
    // Each kilogram takes the latent heat and the warming from the float's 10 C: 2,256.5 + 377 kJ (steam tables).
    expect(figure(result, 'boiled_kg') / (surplus / 2_633_500)).toBeCloseTo(1, 2);
    expect(result.ledger.residual_percent).toBeLessThan(1e-7);
  });

  it('filled by hand sinks by what boils off', () => {
    const result = boiled('by hand');
    const fallen = 0.3 - figure(result, 'level_m_end');
    // Filled at 80 C: 971.8 kg/m3 (IAPWS-95).
    expect((fallen * 0.8 * 971.8) / figure(result, 'boiled_kg')).toBeCloseTo(1, 2);
    expect(result.ledger.residual_percent).toBeLessThan(1e-7);
  });
});
