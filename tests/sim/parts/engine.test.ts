/** The engine by its balances over whole runs, and its curves by their ends and direction. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EngineDescription } from '../../../sim/parts/description.ts';
import { type Engine, inSpans } from '../../../sim/parts/engine.ts';
import { Plant } from '../../../sim/plant/plant.ts';
import type { Result } from '../../../sim/run/result.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, DIESEL, EVERY_DAY, engineOf, plantOf, roomAt, storeOf } from '../support/plant.ts';

const coils = [coilOf('engine', { roll_length_m: 18, fed_from: 'top' })];

function engineWith(over: Partial<EngineDescription> = {}, altitude_m = 0): Engine {
  const site = { latitude_rad: 0.7, longitude_rad: 0, altitude_m, time_zone_s: 0 };
  return new Plant(plantOf({ site, coils, engine: engineOf('engine', over) })).engine as Engine;
}

const runWith = (over: Partial<EngineDescription> = {}, start = { bottom_C: 40, top_C: 45 }) =>
  simulate(plantOf({ coils, engine: engineOf('engine', over), run: { start, interval_s: 300 } }));
const path = (result: Result, key: string) =>
  result.ledger.paths.find((p) => p.key === key)?.energy_J ?? Number.NaN;
const figure = (result: Result, key: string) => result.figures[key] ?? Number.NaN;

describe('the thermostat', () => {
  it('is shut below, full above, and opens further the hotter it is', () => {
    const engine = engineWith();
    expect([20, 78, 90, 120].map((t) => engine.opening(t))).toEqual([0, 0, 1, 1]);
    fc.assert(
      fc.property(fc.double({ min: 70, max: 95, noNaN: true }), (t) => {
        expect(engine.opening(t + 0.01)).toBeGreaterThanOrEqual(engine.opening(t));
      }),
    );
  });
});

describe('fuel', () => {
  it('follows its line, and its share to the jacket falls or rises evenly with the load', () => {
    const engine = engineWith();
    expect(engine.fuel_kg_s(8000) - engine.fuel_kg_s(4000)).toBeCloseTo(4000 * 5.5e-8, 15);
    expect(engine.jacketShare(0)).toBe(0.34);
    expect(engine.jacketShare(2000)).toBe(0.34);
    expect(engine.jacketShare(5000)).toBeCloseTo(0.31, 12);
    expect(engine.jacketShare(8000)).toBeCloseTo(0.28, 12);
    expect(engine.jacketShare(9000)).toBeCloseTo(0.28, 12);
  });

  it('of a thin air’s engine is no more than its air burns', () => {
    const load = [{ from_s: 0, output_W: 8000 }];
    expect(engineWith({ load }).output_W(0)).toBe(8000);
    // 3.5 % a thousand feet (common practice): 0.883 to 0.886 at 1,000 m.
    const high = engineWith({ load }, 1000).output_W(0);
    expect(high / 8000).toBeGreaterThan(0.86);
    expect(high / 8000).toBeLessThan(0.9);
  });

  it('burns as the load steps say', () => {
    const load = [
      { from_s: 0, output_W: 2000 },
      { from_s: 58_000, output_W: 6000 },
    ];
    const result = runWith({ load });
    // From 54,000 s to 68,400 s, the step in between.
    const energy = 2000 * 4000 + 6000 * 10_400;
    expect(figure(result, 'electricity_J') / energy).toBeCloseTo(1, 6);
    expect(figure(result, 'fuel_kg') / (1e-4 * 14_400 + 5.5e-8 * energy)).toBeCloseTo(1, 6);
    expect(figure(result, 'engine_s')).toBeCloseTo(14_400, 6);
    expect(figure(result, 'engine_starts')).toBe(1);
  });
});

describe('heat of the jacket', () => {
  const result = runWith();
  const fuel = (1e-4 + 5.5e-8 * 4000) * 14_400;

  it('is its share of the fuel’s', () => {
    expect(path(result, 'fuel_to_coolant') / (0.32 * fuel * DIESEL.lower_heating_value_J_kg)).toBeCloseTo(
      1,
      6,
    );
  });

  it('goes into store, pipes, radiator and what the block keeps', () => {
    const parts = ['engine_to_store', 'engine_pipes_to_air', 'radiator_to_air', 'block_to_air'];
    const gone = parts.reduce((sum, key) => sum + path(result, key), 0);
    // The block keeps up to 60 kJ/K over 80 K, the coil's liquid a little; both give it up again in the night.
    expect(Math.abs(path(result, 'fuel_to_coolant') - gone)).toBeLessThan(60_000 * 80);
    expect(path(result, 'engine_to_store')).toBeGreaterThan(0.8 * path(result, 'fuel_to_coolant'));
    expect(result.ledger.residual_percent).toBeLessThan(1e-7);
  });

  it('warms the block to its thermostat and holds it there', () => {
    const { engine_C } = result.series.channels;
    const at = (second: number) => engine_C[second / 300];
    expect(at(53_700)).toBeCloseTo(15, 1);
    for (let s = 57_600; s <= 68_400; s += 300) {
      expect(at(s)).toBeGreaterThan(78);
      expect(at(s)).toBeLessThan(92);
    }
  });

  it('leaves a stopped block for the air as a lump does', () => {
    const { engine_C } = result.series.channels;
    const at = (second: number) => engine_C[second / 300] - 15;
    expect(at(75_600) / at(69_000)).toBeCloseTo(Math.exp((-6600 * 8) / 60_000), 3);
  });

  it('goes to the radiator where the store can take no more', () => {
    const hot = runWith({}, { bottom_C: 90, top_C: 92 });
    expect(path(hot, 'radiator_to_air')).toBeGreaterThan(0.5 * path(hot, 'fuel_to_coolant'));
    expect(Math.max(...hot.series.channels.engine_C)).toBeLessThan(110);
  });
});

describe('a stopped engine', () => {
  const never = { kind: 'timetable' as const, spans: [] };

  it('draws nothing from the store past a check valve, and its heat without one', () => {
    const shut = runWith({ runs: never }, { bottom_C: 60, top_C: 60 });
    expect(path(shut, 'standby_to_engine')).toBe(0);
    expect(figure(shut, 'engine_heat_J')).toBe(0);
    const open = runWith({ runs: never, standby_loss_W_K: 3 }, { bottom_C: 60, top_C: 60 });
    // The block stands between store and air: 3 W/K in, 8 W/K out, 12.3 K above 15 C, 98 W.
    const power = (3 * 8 * 45) / (3 + 8);
    expect(path(open, 'standby_to_engine') / (power * 86_400)).toBeGreaterThan(0.9);
    expect(path(open, 'standby_to_engine') / (power * 86_400)).toBeLessThan(1.1);
    expect(path(open, 'block_to_air')).toBeLessThan(path(open, 'standby_to_engine'));
  });
});

describe('spans of the week', () => {
  const evening = [{ days: [4], from_s: 64_800, to_s: 86_400 }];

  it('begin with their first second and end before their last, on their days alone', () => {
    const friday = 4 * 86_400;
    expect(inSpans(evening, friday + 64_799, 0)).toBe(false);
    expect(inSpans(evening, friday + 64_800, 0)).toBe(true);
    expect(inSpans(evening, friday + 86_399, 0)).toBe(true);
    expect(inSpans(evening, friday + 86_400, 0)).toBe(false);
    expect(inSpans(evening, 64_800, 0)).toBe(false);
    // A run that begins on a Friday.
    expect(inSpans(evening, 64_800, 4)).toBe(true);
    expect(inSpans(evening, 7 * 86_400 + 64_800, 4)).toBe(true);
  });

  it('that meet at midnight are one run of the engine', () => {
    const spans = [
      { days: EVERY_DAY, from_s: 79_200, to_s: 86_400 },
      { days: EVERY_DAY, from_s: 0, to_s: 3600 },
    ];
    const result = simulate(
      plantOf({
        store: storeOf({ surroundings: roomAt(10) }),
        coils,
        engine: engineOf('engine', { runs: { kind: 'timetable', spans } }),
        run: { days: 2 },
      }),
    );
    expect(result.events.map((e) => [e.name, e.time_s])).toEqual([
      ['engine.start', 0],
      ['engine.stop', 3600],
      ['engine.start', 79_200],
      ['engine.stop', 90_000],
      ['engine.start', 165_600],
    ]);
    expect(figure(result, 'engine_s')).toBeCloseTo(3600 + 10_800 + 7200, 6);
  });
});
