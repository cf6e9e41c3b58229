/** The benches hold the simulation's parts steady: a long run has to end where they say. */
import { describe, expect, it } from 'vitest';
import { ChargeBench } from '../../../../sim/answers/coil/charge-bench.ts';
import { ShowerBench } from '../../../../sim/answers/coil/shower-bench.ts';
import type { PlantDescription } from '../../../../sim/parts/description.ts';
import { Simulation } from '../../../../sim/run/simulation.ts';
import {
  coilOf,
  drawOf,
  EVERY_DAY,
  engineOf,
  plantOf,
  roomAt,
  SEALED,
  storeOf,
  tapsOf,
  tubeOf,
} from '../../support/plant.ts';

/** So much water that ten minutes or an hour do not change its temperature; nothing is lost. */
const sea = storeOf({
  shape: { kind: 'box', length_m: 200, width_m: 100, height_m: 1 },
  insulation: { sides: SEALED, bottom: SEALED, lid: SEALED },
});
const draw = drawOf({ at_s: 3600, duration_s: 1200, outlet: { kind: 'head', rated_Pa: 140_000 } });

function household(tank_C: number, over: Partial<PlantDescription> = {}): PlantDescription {
  return plantOf({
    store: sea,
    coils: [coilOf('household', { tube: tubeOf('refrigeration', '1/2') })],
    taps: tapsOf('household', { draws: [draw] }),
    ...over,
    run: { interval_s: 10, layers: 40, start: { bottom_C: tank_C, top_C: tank_C } },
  });
}

/** What the series show a minute before the draw ends. */
function atEnd(plant: PlantDescription): Record<string, number> {
  const simulation = new Simulation(plant);
  simulation.advance(1);
  const { channels } = simulation.result().series;
  const i = (draw.at_s + draw.duration_s - 60) / 10;
  return Object.fromEntries(Object.entries(channels).map(([key, values]) => [key, values[i]]));
}

describe('the household on the bench', () => {
  it.each([35, 50, 65, 90])('gives what a long draw from a store of %i C ends with', (tank_C) => {
    const plant = household(tank_C);
    const steady = new ShowerBench(plant, draw).atTank(tank_C);
    const seen = atEnd(plant);
    expect(seen.outlet_C).toBeCloseTo(steady.outlet_C, 1);
    expect(seen.coil_outlet_C).toBeCloseTo(steady.coil_outlet_C, 1);
    // Two figures of flow: litres of 1 kg in the series, of 40 C on the bench.
    expect(Math.abs(seen.mixed_flow_m3_s / 0.9922 / steady.flow_m3_s - 1)).toBeLessThan(0.005);
    expect(Math.abs(seen.hot_flow_m3_s / 0.9922 / steady.coil_flow_m3_s - 1)).toBeLessThan(0.01);
  });

  it('mixes at the valve as a run does', () => {
    const taps = tapsOf('household', { draws: [draw], mixing_valve_C: 46 });
    const plant = household(75, { taps });
    const steady = new ShowerBench(plant, draw).atTank(75);
    const seen = atEnd(plant);
    expect(steady.hot_line_C).toBeLessThan(46.01);
    expect(seen.hot_line_C).toBeCloseTo(steady.hot_line_C, 1);
    expect(seen.coil_outlet_C).toBeCloseTo(steady.coil_outlet_C, 1);
  });

  it('finds the coldest store that will do: there the hot line brings just what is wanted', () => {
    const bench = new ShowerBench(household(60), draw);
    const lowest = bench.lowestTank() ?? 0;
    expect(Math.abs(bench.atTank(lowest).hot_line_C - draw.wanted_C)).toBeLessThan(0.05);
    expect(bench.atTank(lowest - 1).outlet_C).toBeLessThan(draw.wanted_C);
    expect(bench.atTank(lowest + 1).outlet_C).toBeCloseTo(draw.wanted_C, 0);
  });

  it('is moved by less than a tenth of a kelvin by twice the layers', () => {
    const [usual, fine] = [40, 80].map((layers) =>
      new ShowerBench(household(60), draw, { layers }).lowestTank(),
    );
    expect(Math.abs((usual ?? 0) - (fine ?? 0))).toBeLessThan(0.1);
  });

  it('wants a hotter store for less tube, and none will do for next to none', () => {
    const lowest = (roll_length_m: number) =>
      new ShowerBench(household(60), draw, {
        coil: coilOf('household', { tube: tubeOf('refrigeration', '1/2'), roll_length_m }),
      }).lowestTank();
    const stores = [60, 30, 15].map((m) => lowest(m) ?? 0);
    expect(stores.toSorted((a, b) => a - b)).toEqual(stores);
    expect(lowest(1)).toBeNull();
  });

  it('has no store that will do where the pump gives nothing', () => {
    const plant = household(60);
    const supply = { ...plant.supply, lift_m: 60 };
    expect(new ShowerBench({ ...plant, supply }, draw).lowestTank()).toBeNull();
  });

  it('refuses a plant without a household', () => {
    expect(() => new ShowerBench(plantOf(), draw)).toThrow(/^taps - expected a household/);
  });
});

const HOURS = 6;

function generator(tank_C: number): PlantDescription {
  const spans = [{ days: EVERY_DAY, from_s: 3600, to_s: (1 + HOURS) * 3600 }];
  return plantOf({
    store: sea,
    coils: [coilOf('engine', { roll_length_m: 15, tube: tubeOf('refrigeration', '3/8'), fed_from: 'top' })],
    engine: engineOf('engine', { surroundings: roomAt(15), runs: { kind: 'timetable', spans } }),
    run: { interval_s: 60, layers: 40, start: { bottom_C: tank_C, top_C: tank_C } },
  });
}

describe('the engine on the bench', () => {
  it.each([15, 45, 70, 88])('carries what a long run beside a store of %i C ends with', (tank_C) => {
    const plant = generator(tank_C);
    const steady = new ChargeBench(plant, 4000).at(tank_C);
    const simulation = new Simulation(plant);
    simulation.advance(1);
    const { engine_W, engine_C, radiator_W } = simulation.result().series.channels;
    const i = (1 + HOURS) * 60 - 5;
    expect(Math.abs(engine_W[i] - steady.to_store_W)).toBeLessThan(0.01 * steady.jacket_W);
    expect(Math.abs(radiator_W[i] - steady.radiator_W)).toBeLessThan(0.01 * steady.jacket_W);
    expect(engine_C[i]).toBeCloseTo(steady.block_C, 1);
  });

  it('books all the heat: store, radiator and pipes take what the coolant brings', () => {
    const bench = new ChargeBench(generator(50), 4000);
    for (const tank_C of [10, 40, 60, 80, 95]) {
      const { jacket_W, to_store_W, radiator_W, pipes_W } = bench.at(tank_C);
      expect(Math.abs(jacket_W - to_store_W - radiator_W - pipes_W)).toBeLessThan(0.005 * jacket_W);
    }
  });

  it('carries less into a hotter store, and never more at less load', () => {
    const plant = generator(50);
    const [low, high] = [2000, 8000].map((output_W) => new ChargeBench(plant, output_W));
    const stores = [10, 30, 50, 70, 85, 95];
    const heat = (bench: ChargeBench) => stores.map((tank_C) => bench.at(tank_C).to_store_W);
    for (const values of [heat(low), heat(high)]) {
      for (let i = 1; i < values.length; i++) expect(values[i]).toBeLessThanOrEqual(values[i - 1] + 1);
    }
    heat(low).forEach((value, i) => void expect(value).toBeLessThanOrEqual(heat(high)[i] + 1));
  });

  it('finds the store at which the radiator takes over: the coolant is where it begins', () => {
    const plant = generator(50);
    const bench = new ChargeBench(plant, 4000);
    const from = bench.radiatorFrom();
    if (typeof from !== 'number') throw new Error(from);
    expect(bench.at(from).block_C).toBeCloseTo(plant.engine?.radiator.starts_C ?? 0, 1);
    expect(bench.at(from - 2).radiator_W).toBe(0);
    expect(bench.at(from + 2).radiator_W).toBeGreaterThan(0);
  });

  it('knows a coil that never takes all, and one that always does', () => {
    const plant = generator(50);
    const withLength = (m: number) => ({ ...plant, coils: [{ ...plant.coils[0], roll_length_m: m }] });
    expect(new ChargeBench(withLength(1), 8000).radiatorFrom()).toBe('always');
    const low = { ...plant.store, shape: sea.shape };
    const mountain = { ...withLength(200), store: low, site: { ...plant.site, altitude_m: 5000 } };
    // At 5,000 m water boils at 83 C, far below the coolant.
    expect(new ChargeBench(mountain, 2000).radiatorFrom()).toBe('never');
  });

  it('finds the store from which the coolant comes back warm enough', () => {
    const plant = generator(50);
    const bench = new ChargeBench(plant, 4000);
    const from = bench.warmEnoughFrom() ?? 0;
    expect(bench.at(from).return_C).toBeCloseTo(plant.engine?.coldest_return_C ?? 0, 1);
  });

  it('refuses a plant without an engine', () => {
    expect(() => new ChargeBench(plantOf(), 1000)).toThrow(/^engine - expected an engine/);
  });
});
