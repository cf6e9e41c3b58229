/** A run by its properties: repeatable to the bit, the same in parts, blind to its sampling, right over midnights. */
import { describe, expect, it } from 'vitest';
import type { PlantDescription } from '../../../sim/parts/description.ts';
import type { Result } from '../../../sim/run/result.ts';
import { Simulation, simulate } from '../../../sim/run/simulation.ts';
import { coilOf, drawOf, fullPlant, plantOf, storeOf, tapsOf } from '../support/plant.ts';

const DAY = 86_400;
const WEEK = 7;

/** Result as plain values, so that two compare to the bit, but for what the run cost. */
function plain(result: Result): unknown {
  const { run: _cost, ...rest } = result;
  return JSON.parse(
    JSON.stringify(rest, (_key, value) =>
      ArrayBuffer.isView(value) ? Array.from(value as unknown as ArrayLike<number>, String) : value,
    ),
  );
}

const open = (make_up: 'float' | 'by hand') => storeOf({ lid: 'ajar', vapour_share: 0.2, make_up });
const busy = (over: Partial<PlantDescription['run']> = {}) =>
  fullPlant({ store: open('by hand'), run: { days: WEEK, interval_s: 1800, ...over } });

describe('a run', () => {
  const whole = simulate(busy());

  it('is the same to the bit when run again', () => {
    const again = simulate(busy());
    expect(plain(again)).toEqual(plain(whole));
    expect(again.run).toEqual(whole.run);
  });

  it('is the same to the bit when cut in two and asked in between', () => {
    const simulation = new Simulation(busy());
    simulation.advance(3);
    expect(simulation.result().days).toBe(3);
    simulation.advance(WEEK);
    expect(plain(simulation.result())).toEqual(plain(whole));
  });

  it('is the same to the bit day by day', () => {
    const simulation = new Simulation(busy());
    for (let day = 1; day <= WEEK; day++) simulation.advance(day);
    expect(plain(simulation.result())).toEqual(plain(whole));
  });

  it('goes no further than its days', () => {
    const simulation = new Simulation(plantOf());
    simulation.advance(99);
    expect(simulation.day).toBe(1);
    const before = plain(simulation.result());
    simulation.advance(99);
    expect(plain(simulation.result())).toEqual(before);
  });

  it('does not change what it was given', () => {
    const description = busy({ days: 2 });
    const before = plain(description as unknown as Result);
    simulate(description);
    expect(plain(description as unknown as Result)).toEqual(before);
  });

  it('tells of its progress, and stops when told to', () => {
    const shares: number[] = [];
    const stopped = simulate(busy(), {
      onProgress: (share) => {
        shares.push(share);
        return share < 0.4;
      },
    });
    expect(shares.map((share) => Math.round(share * WEEK))).toEqual([1, 2, 3]);
    expect(stopped.days).toBe(3);
  });
});

describe('sampling', () => {
  const fine = simulate(busy({ days: 3, interval_s: 600 }));
  const coarse = simulate(busy({ days: 3, interval_s: 3600 }));

  it('changes no state at the times both sample', () => {
    const { layers } = fine.series;
    const width = fine.series.channels;
    for (const [i, t] of coarse.series.time_s.entries()) {
      expect(fine.series.time_s[6 * i]).toBe(t);
      for (let k = 0; k < layers; k++) {
        const off = fine.series.layer_C[6 * i * layers + k] - coarse.series.layer_C[i * layers + k];
        expect(Math.abs(off)).toBeLessThan(1e-3);
      }
      for (const key of ['engine_C', 'collector_C', 'cold_C', 'level_m'])
        expect(Math.abs(width[key][6 * i] - coarse.series.channels[key][i])).toBeLessThan(1e-3);
    }
  });

  it('changes no event, figure or path', () => {
    expect(fine.events).toEqual(coarse.events);
    expect(fine.figures).toEqual(coarse.figures);
    expect(fine.ledger).toEqual(coarse.ledger);
    expect(fine.run.steps).toBe(coarse.run.steps);
  });

  it('closes intervals with means of power that add up to the ledger', () => {
    for (const { series, ledger } of [fine, coarse]) {
      const energy = series.channels.household_W.reduce((sum, w) => sum + w * series.interval_s, 0);
      const path = ledger.paths.find((p) => p.key === 'household_heat')?.energy_J ?? Number.NaN;
      expect(energy / path).toBeCloseTo(1, 5);
    }
  });

  it('takes a sample at the beginning, at the end, and every interval between', () => {
    expect(fine.series.time_s).toHaveLength(3 * 144 + 1);
    expect(fine.series.time_s.at(-1)).toBe(3 * DAY);
    const last = fine.series.layer_C.slice(-fine.series.layers);
    expect(Math.min(...last)).toBeGreaterThan(5);
  });
});

describe('draws', () => {
  const coils = [coilOf('h')];
  const draw = (over: Parameters<typeof drawOf>[0]) => drawOf({ flow_m3_s: 5e-5, ...over });
  const run = (draws: ReturnType<typeof drawOf>[], days = 1) =>
    simulate(
      plantOf({
        coils,
        taps: tapsOf('h', { draws }),
        run: { days, interval_s: 60, start: { bottom_C: 65, top_C: 70 } },
      }),
    );
  const litres = (result: Result, from: number, to: number) =>
    result.series.channels.mixed_flow_m3_s
      .slice(from / 60 + 1, to / 60 + 1)
      .reduce((sum, q) => sum + q * 60_000, 0);

  it('that overlap flow together, each for its own time', () => {
    const result = run([
      draw({ at_s: 3600, duration_s: 600 }),
      draw({ at_s: 3900, duration_s: 600, flow_m3_s: 3e-5 }),
    ]);
    // Volume is drawn as mass at 40 C: 0.992 kg a litre, counted here at 1 kg a litre.
    expect(litres(result, 3600, 3900) / (0.992 * 15)).toBeCloseTo(1, 3);
    expect(litres(result, 3900, 4200) / (0.992 * 24)).toBeCloseTo(1, 3);
    expect(litres(result, 4200, 4500) / (0.992 * 9)).toBeCloseTo(1, 3);
    expect(litres(result, 4500, DAY)).toBeLessThan(1e-9);
    expect(result.figures.showers).toBe(2);
    expect((result.figures.wanted_m3 ?? 0) * 1000).toBeCloseTo(30 + 18, 6);
  });

  it('that follow one another without a gap are as one', () => {
    const two = run([draw({ at_s: 3600, duration_s: 300 }), draw({ at_s: 3900, duration_s: 300 })]);
    const one = run([draw({ at_s: 3600, duration_s: 600 })]);
    expect((two.figures.household_heat_J ?? 0) / (one.figures.household_heat_J ?? 1)).toBeCloseTo(1, 4);
    expect((two.figures.waiting_m3 ?? 0) / (one.figures.waiting_m3 ?? 1)).toBeCloseTo(1, 3);
  });

  it('past midnight go on into the next day, and end with the run', () => {
    const result = run([draw({ at_s: DAY - 300, duration_s: 900 })], 2);
    expect(litres(result, 0, DAY - 300)).toBe(0);
    expect(litres(result, DAY - 300, DAY) / (0.992 * 15)).toBeCloseTo(1, 3);
    expect(litres(result, DAY, DAY + 600) / (0.992 * 30)).toBeCloseTo(1, 3);
    expect(litres(result, DAY + 600, 2 * DAY - 300)).toBe(0);
    expect(result.figures.showers).toBe(1);
  });

  it('come as often as their days', () => {
    const monday = drawOf({ at_s: 3600, duration_s: 60, days: [0] });
    const result = simulate(
      plantOf({ coils, taps: tapsOf('h', { draws: [monday] }), run: { days: 9, first_weekday: 6 } }),
    );
    expect(result.figures.showers).toBe(2);
  });

  it('run cold where the store is cold, and not where it is hot', () => {
    const taps = tapsOf('h', { draws: [draw({ at_s: 3600, duration_s: 600 })] });
    const at = (store_C: number) =>
      simulate(plantOf({ coils, taps, run: { start: { bottom_C: store_C, top_C: store_C } } })).figures;
    expect(at(70).showers_cold).toBe(0);
    expect(at(70).cold_shower_s).toBe(0);
    expect(at(25).showers_cold).toBe(1);
    // All of it but the wait for the pipe.
    expect(at(25).cold_shower_s).toBeGreaterThan(540);
    expect(at(25).delivered_m3).toBe(0);
  });
});

describe('a run over New Year', () => {
  it('goes on into the weather of January', () => {
    const plant = plantOf({ run: { first_day: 363, days: 4, interval_s: 3600 } });
    for (let h = 0; h < 8760; h++) plant.weather.air_C[h] = h < 24 * 180 ? -10 : 20;
    const { air_C } = simulate(plant).series.channels;
    expect(air_C[24]).toBeCloseTo(20, 6);
    expect(air_C[47]).toBeCloseTo(20, 6);
    expect(air_C[50]).toBeCloseTo(-10, 6);
    expect(air_C[90]).toBeCloseTo(-10, 6);
  });
});

describe('precision', () => {
  it('of a tenth moves layers by less than a tenth of a kelvin, and heats by less than a five-hundredth', () => {
    const usual = simulate(busy({ days: 3 }));
    const fine = simulate(busy({ days: 3, tolerance: 1e-6 }));
    const off = usual.series.layer_C
      .map((t, i) => Math.abs(t - fine.series.layer_C[i]))
      .sort((a, b) => a - b);
    expect(off[Math.floor(0.99 * off.length)]).toBeLessThan(0.1);
    for (const key of ['household_heat_J', 'engine_heat_J', 'solar_heat_J'])
      expect(Math.abs((usual.figures[key] ?? 0) / (fine.figures[key] ?? 1) - 1)).toBeLessThan(0.002);
  });
});

describe('a run stopped early', () => {
  it('has samples of the days done and none beyond', () => {
    const plant = plantOf();
    const simulation = new Simulation({ ...plant, run: { ...plant.run, days: 3, interval_s: 3600 } });
    simulation.advance(1);
    const { series } = simulation.result();
    // The sample at midnight is taken by the restart that opens the next day.
    expect(series.time_s.length).toBe(24);
    expect(series.layer_C.length).toBe(24 * series.layers);
    expect(series.layer_C.every((t) => t > 0)).toBe(true);
  });
});
