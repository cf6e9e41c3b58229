/** What a run must find by itself: when controls switch, in which direction, and what ends a run that will not. */
import { describe, expect, it } from 'vitest';
import { IntegrationError } from '../../../sim/index.ts';
import type { Result, RunEvent } from '../../../sim/run/result.ts';
import { Simulation, simulate } from '../../../sim/run/simulation.ts';
import {
  coilOf,
  collectorOf,
  EVERY_DAY,
  engineOf,
  fullPlant,
  heaterOf,
  plantOf,
  storeOf,
} from '../support/plant.ts';
import { sunnyWeather } from '../support/weather.ts';

const DAY = 86_400;
const solarCoil = coilOf('solar', { roll_length_m: 15, fed_from: 'top' });
const named = (result: Result, name: string) => result.events.filter((e) => e.name === name);

/** A channel of a run sampled every 10 s, on a straight line between samples. */
function reader(result: Result) {
  const { interval_s, channels, layer_C, layers } = result.series;
  const between = (at: (i: number) => number, t: number) => {
    const i = Math.min(Math.floor(t / interval_s), result.series.time_s.length - 2);
    const u = t / interval_s - i;
    return at(i) + u * (at(i + 1) - at(i));
  };
  return {
    channel: (key: string, t: number) => between((i) => channels[key][i], t),
    layer: (layer: number, t: number) => between((i) => layer_C[i * layers + layer], t),
  };
}

describe('differential control', () => {
  const collector = collectorOf('solar', { on_K: 7, off_K: 3, area_m2: 3 });
  const result = simulate(
    plantOf({
      weather: sunnyWeather(5),
      coils: [solarCoil],
      collector,
      run: { days: 2, interval_s: 10, start: { bottom_C: 25, top_C: 30 } },
    }),
  );
  const { channel, layer } = reader(result);
  // The coil's lowest turn, 5 cm up, lies three quarters of the way from the middle of the first of 20 layers to the second's.
  const probe = (t: number) => 0.25 * layer(0, t) + 0.75 * layer(1, t);
  const lead = (t: number) => channel('collector_C', t) - probe(t);

  it('switches on as the lead rises through its upper limit, and off as it falls through its lower', () => {
    const on = named(result, 'collector.pump.on');
    const off = named(result, 'collector.pump.off');
    expect(on.length).toBeGreaterThan(1);
    expect(off.length).toBe(on.length);
    for (const { time_s } of on) {
      // Before the pump starts the outlet warms by a kelvin a minute or so.
      expect(lead(time_s - 30)).toBeLessThan(7);
      expect(lead(time_s - 10)).toBeGreaterThan(6.5);
    }
    for (const { time_s } of off) {
      expect(lead(time_s - 60)).toBeGreaterThan(3 - 0.01);
      expect(lead(time_s - 10)).toBeLessThan(3.1);
    }
  });

  it('counts the time it pumps as the time between', () => {
    const on = named(result, 'collector.pump.on');
    const off = named(result, 'collector.pump.off');
    const pumped = off.reduce((sum, e, i) => sum + e.time_s - on[i].time_s, 0);
    expect(result.figures.collector_s).toBeCloseTo(pumped, 3);
  });

  it('finds the same instants at a hundredth of the tolerance, within seconds', () => {
    const fine = simulate(
      plantOf({
        weather: sunnyWeather(5),
        coils: [solarCoil],
        collector,
        run: { days: 2, tolerance: 1e-6, start: { bottom_C: 25, top_C: 30 } },
      }),
    );
    const on = (r: Result) => named(r, 'collector.pump.on').map((e) => e.time_s);
    expect(on(result)).toHaveLength(on(fine).length);
    on(result).forEach((t, i) => {
      expect(Math.abs(t - on(fine)[i])).toBeLessThan(5);
    });
  });
});

describe('an event', () => {
  it('stands in the log with the value at which it happened', () => {
    const runs = {
      kind: 'call for heat',
      below_C: 50,
      until_C: 58,
      probe_m: 0.6,
      spans: [{ days: EVERY_DAY, from_s: 0, to_s: DAY }],
    } as const;
    const result = simulate(
      plantOf({
        store: storeOf({ bridges: 12 }),
        coils: [coilOf('engine', { roll_length_m: 25 })],
        engine: engineOf('engine', { runs: { ...runs, spans: [...runs.spans] } }),
        run: { days: 3, start: { bottom_C: 55, top_C: 55 } },
      }),
    );
    const started = named(result, 'engine.start');
    const stopped = named(result, 'engine.stop');
    expect(started.length).toBeGreaterThan(1);
    // Layers cool by half a kelvin an hour: 10 ms of time is nothing, what remains is the step's interpolant.
    for (const { value } of started) expect(Math.abs((value ?? 0) - 50)).toBeLessThan(0.02);
    for (const { value } of stopped) expect(Math.abs((value ?? 0) - 58)).toBeLessThan(0.05);
    expect(started[0].time_s).toBeLessThan(stopped[0].time_s);
    expect(result.figures.engine_starts).toBe(started.length);
  });

  it('is in order of time, and within the run', () => {
    const { events } = simulate(fullPlant({ run: { days: 4 } }));
    expect(events.length).toBeGreaterThan(6);
    const times = events.map((e) => e.time_s);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
    expect(times[0]).toBeGreaterThanOrEqual(0);
    expect(times.at(-1)).toBeLessThanOrEqual(4 * DAY);
  });

  it('that already holds at the beginning happens at the beginning', () => {
    const result = simulate(
      plantOf({
        coils: [coilOf('engine')],
        engine: engineOf('engine', {
          runs: {
            kind: 'call for heat',
            below_C: 50,
            until_C: 60,
            probe_m: 0.6,
            spans: [{ days: EVERY_DAY, from_s: 0, to_s: DAY }],
          },
        }),
        run: { start: { bottom_C: 30, top_C: 30 } },
      }),
    );
    expect(result.events[0]).toMatchObject({ name: 'engine.start', time_s: 0 });
  });
});

describe('an engine that answers calls for heat', () => {
  const result = simulate(
    plantOf({
      coils: [coilOf('engine')],
      engine: engineOf('engine', {
        runs: {
          kind: 'call for heat',
          below_C: 50,
          until_C: 60,
          probe_m: 0.6,
          spans: [{ days: EVERY_DAY, from_s: 28_800, to_s: 36_000 }],
        },
      }),
      run: { days: 2, start: { bottom_C: 20, top_C: 20 } },
    }),
  );

  it('waits for the hours in which it may, and stops when they are over', () => {
    const times = result.events.map((e) => [e.name, e.time_s]);
    expect(times[0]).toEqual(['engine.start', 28_800]);
    for (const e of result.events) expect(e.time_s % DAY).toBeGreaterThanOrEqual(28_800);
    for (const e of result.events) expect(e.time_s % DAY).toBeLessThanOrEqual(36_000);
  });

  it('burns fuel only then', () => {
    expect(result.figures.engine_s).toBeLessThanOrEqual(2 * 7200);
    const rate = 1e-4 + 5.5e-8 * 4000;
    expect((result.figures.fuel_kg ?? 0) / ((result.figures.engine_s ?? 1) * rate)).toBeCloseTo(1, 6);
  });
});

describe('the high limit of a store', () => {
  const result = simulate(
    plantOf({
      weather: sunnyWeather(15),
      store: storeOf({ water_depth_m: 0.3, bridges: 6 }),
      coils: [coilOf('solar', { roll_length_m: 15, bottom_m: 0.03, top_m: 0.25 })],
      collector: collectorOf('solar', { area_m2: 8, high_limit_C: 55 }),
      run: { days: 4, interval_s: 300, start: { bottom_C: 45, top_C: 45 } },
    }),
  );

  it('stops the pump as the top reaches it, until the top has cooled by the dead band', () => {
    const reached = named(result, 'collector.high_limit');
    const over = named(result, 'collector.high_limit.over');
    expect(reached.length).toBeGreaterThan(0);
    expect(over.length).toBeGreaterThan(0);
    expect(result.figures.store_top_C_max).toBeLessThan(55.3);
    const { layers, layer_C, interval_s } = result.series;
    const top = (t: number) => layer_C[(Math.round(t / interval_s) + 1) * layers - 1];
    for (const { time_s } of reached) expect(Math.abs(top(time_s) - 55)).toBeLessThan(0.3);
    for (const { time_s } of over) expect(Math.abs(top(time_s) - 50)).toBeLessThan(0.3);
  });

  it('lets no pump run meanwhile', () => {
    const state = { limited: false };
    for (const { name } of result.events) {
      if (name === 'collector.high_limit') state.limited = true;
      if (name === 'collector.high_limit.over') state.limited = false;
      if (name === 'collector.pump.on') expect(state.limited).toBe(false);
    }
    expect(result.figures.collector_C_max).toBeGreaterThan(100);
  });
});

describe('boiling', () => {
  it('begins once, and is over once the store has cooled', () => {
    const { events } = simulate(
      plantOf({
        store: storeOf({ water_depth_m: 0.3, bridges: 8 }),
        coils: [coilOf('loop', { bottom_m: 0.02, top_m: 0.25 })],
        engine: { ...heaterOf('loop', 6000, 20_000), heat_capacity_J_K: 30_000 },
        run: { start: { bottom_C: 80, top_C: 80 } },
      }),
    );
    const boiling = events.filter((e: RunEvent) => e.name.startsWith('store.'));
    expect(boiling.map((e) => e.name)).toEqual(['store.boiling', 'store.boiling.over']);
    expect(boiling[1].time_s).toBeGreaterThan(20_000);
  });
});

describe('a control that switches without end', () => {
  /** Twice the sun, half the flow, and next to no dead band. */
  const nervous = (on_K: number, off_K: number) =>
    plantOf({
      weather: sunnyWeather(5),
      coils: [solarCoil],
      collector: collectorOf('solar', { on_K, off_K, heat_capacity_J_m2K: 1000 }),
      run: { start: { bottom_C: 30, top_C: 30 } },
    });

  it('ends the run with what to do about it', () => {
    expect(() => simulate(nervous(4, 3.9999))).toThrow(IntegrationError);
    expect(() => simulate(nervous(4, 3.9999))).toThrow(
      /^run on day 1 - expected at most 3000 switchings a day - got more \(last: .* of panels\) - widen the dead band/,
    );
  }, 20_000);

  it('is no such thing with a usual dead band', () => {
    expect(simulate(nervous(7, 3)).events.length).toBeLessThan(40);
  });

  it('keeps what was sampled before', () => {
    const plant = nervous(4, 3.9999);
    const simulation = new Simulation(plant);
    expect(() => simulation.advance(1)).toThrow(IntegrationError);
    const { series } = simulation.result();
    expect(series.layer_C[series.layers]).toBeGreaterThan(25);
  }, 20_000);
});
