import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../sim/scenario/index.ts';
import { engine, sound } from './support.ts';

type Engine = NonNullable<Scenario['engine']>;

function made(parts: Partial<Engine> = {}) {
  const read = sound({ engine: { ...engine, ...parts } });
  if (!read.plant.engine) throw new Error('no engine');
  return { ...read, engine: read.plant.engine };
}

/** Gallons an hour at an output [W]. */
function gallonsAnHour({ engine: e }: ReturnType<typeof made>, output_W: number): number {
  return (((e.no_load_kg_s + e.slope_kg_J * output_W) / e.fuel.density_kg_m3) * 3600) / 3.785411784e-3;
}

describe('the fuel line', () => {
  it('goes through two given points', () => {
    const read = made({
      fuel_use: [
        { output: '4 kW', fuel: '0.39 gal/h' },
        { output: '8 kW', fuel: '0.69 gal/h' },
      ],
    });
    expect(gallonsAnHour(read, 4000)).toBeCloseTo(0.39, 9);
    expect(gallonsAnHour(read, 8000)).toBeCloseTo(0.69, 9);
    expect(gallonsAnHour(read, 6000)).toBeCloseTo(0.54, 9);
  });

  it('through three points is the least-squares line', () => {
    // 0.2, 0.3 and 0.5 gal/h at 2, 4 and 6 kW: mean 1/3 at 4 kW, slope 0.6 / 8 gal/h per kW.
    const fuel_use = [0.2, 0.3, 0.5].map((x, i) => ({ output: `${2 * i + 2} kW`, fuel: `${x} gal/h` }));
    const read = made({ rated_output: '6 kW', fuel_use });
    expect(gallonsAnHour(read, 4000)).toBeCloseTo(1 / 3, 9);
    expect(gallonsAnHour(read, 6000) - gallonsAnHour(read, 4000)).toBeCloseTo(0.15, 9);
  });

  it('through one point keeps the usual shape', () => {
    const read = made({ fuel_use: [{ output: '4 kW', fuel: '0.5 gal/h' }] });
    expect(gallonsAnHour(read, 4000)).toBeCloseTo(0.5, 9);
    expect(gallonsAnHour(read, 0) / gallonsAnHour(read, 8000)).toBeCloseTo(
      gallonsAnHour(made(), 0) / gallonsAnHour(made(), 8000),
      9,
    );
  });

  it('left out lies near what diesel sets are known to use', () => {
    // trade.md: 8 kW diesel 0.39, 0.54, 0.69 gal/h at 50, 75, 100 % (grade B), within a fifth.
    for (const [share, gal_h] of [
      [0.5, 0.39],
      [0.75, 0.54],
      [1, 0.69],
    ]) {
      expect(gallonsAnHour(made(), share * 8000) / gal_h).toBeGreaterThan(0.8);
      expect(gallonsAnHour(made(), share * 8000) / gal_h).toBeLessThan(1.25);
    }
  });
});

describe('the engine', () => {
  it('sends a quarter of diesel and 28 % of other fuel into the coolant, more at light load', () => {
    expect(made().engine.jacket_share).toEqual({ rated: 0.25, quarter: expect.closeTo(0.3, 9) });
    expect(made({ fuel: 'propane' }).engine.jacket_share.rated).toBe(0.28);
    expect(made().byPath.get('engine.jacket_share')?.band).toEqual(['18 %', '33 %']);
  });

  it('recovers a tenth from the exhaust only where an exchanger is fitted', () => {
    expect(made().engine.exhaust_share).toBe(0);
    expect(made({ exhaust_exchanger: true }).engine.exhaust_share).toBe(0.1);
  });

  it('has coolant for a rise of 11 F at rated load', () => {
    const { engine: e } = made({ coolant: { kind: 'water' } });
    const jacket_W = 0.25 * (e.no_load_kg_s + e.slope_kg_J * 8000) * 42.8e6;
    // Water at 75 C: 974.84 kg/m3, 4193 J/(kg K) (IAPWS).
    expect(jacket_W / (e.coolant_flow_m3_s * 974.84 * 4193)).toBeCloseTo(11 / 1.8, 1);
  });

  it('has a radiator that carries its rated heat before the coolant boils over', () => {
    const { engine: e } = made();
    const jacket_W = 0.25 * (e.no_load_kg_s + e.slope_kg_J * 8000) * 42.8e6;
    expect(e.radiator.starts_C).toBeGreaterThan(e.thermostat_full_C);
    expect(e.radiator.conductance_W_K * (e.radiator.full_C - 40)).toBeGreaterThan(jacket_W);
  });

  it('draws nothing from the store past a check valve', () => {
    expect(made().engine.standby_loss_W_K).toBeGreaterThan(0);
    expect(made({ check_valve: true }).engine.standby_loss_W_K).toBe(0);
  });

  it('counts glycol by volume unless told by mass', () => {
    // Half ethylene glycol by volume is 52.7 % by mass: 1113 / (1113 + 998.2).
    expect(made().engine.coolant).toEqual({ kind: 'ethylene glycol', mass_share: expect.closeTo(0.527, 3) });
    const coolant = { kind: 'propylene glycol', share: '40 %', share_by: 'mass' } as const;
    expect(made({ coolant }).engine.coolant.mass_share).toBeCloseTo(0.4, 9);
  });

  it('is noted when its coolant freezes where it stands', () => {
    const water = { kind: 'water' } as const;
    const stands = { where: 'room', temperature: '2 C', swing: '6 K' } as const;
    expect(made({ coolant: water, stands }).notes).toEqual([
      {
        path: 'engine.coolant',
        text: 'the coolant begins to freeze at 32 F (0 C); the coldest air around the engine is at 30 F (-1 C)',
      },
    ]);
    expect(made({ coolant: water, stands: { ...stands, temperature: '5 C' } }).notes).toEqual([]);
    expect(made({ stands: { where: 'outdoors' } }).notes).toEqual([]);
    expect(made({ coolant: water, stands: { where: 'outdoors' } }).notes).toHaveLength(1);
  });

  it('follows a load by the clock, the last step holding past midnight', () => {
    const load_by_hour = [
      { from: '18:00', output: '3 kW' },
      { from: '7:00', output: '1 kW' },
    ];
    expect(made({ load_by_hour }).engine.load).toEqual([
      { from_s: 0, output_W: 3000 },
      { from_s: 25_200, output_W: 1000 },
      { from_s: 64_800, output_W: 3000 },
    ]);
  });
});

describe('a span', () => {
  const spans = (span: { days?: string; from: string; to: string }) => {
    const { runs } = made({ runs: { kind: 'timetable', spans: [span] } }).engine;
    return runs.spans;
  };

  it('past midnight goes on the next morning', () => {
    expect(spans({ days: 'Fri Sun', from: '10 pm', to: '1:30 am' })).toEqual([
      { days: [4, 6], from_s: 79_200, to_s: 86_400 },
      { days: [0, 5], from_s: 0, to_s: 5400 },
    ]);
  });

  it('to midnight ends with its day', () => {
    expect(spans({ from: '20:00', to: '0:00' })).toEqual([
      { days: [0, 1, 2, 3, 4, 5, 6], from_s: 72_000, to_s: 86_400 },
    ]);
    expect(spans({ from: '20:00', to: '24:00' })).toEqual(spans({ from: '20:00', to: '0:00' }));
  });

  it('of quiet hours is kept by an engine that is called for', () => {
    const { runs } = made({ runs: { kind: 'call for heat', below: '110 F', until: '140 F' } }).engine;
    if (runs.kind !== 'call for heat') throw new Error('wrong kind');
    expect(runs.spans).toEqual([{ days: [0, 1, 2, 3, 4, 5, 6], from_s: 25_200, to_s: 72_000 }]);
    expect(runs.below_C).toBeCloseTo(43.333, 3);
    // Two thirds of 0.92 x 36 in of water.
    expect(runs.probe_m).toBeCloseTo(0.5608, 4);
  });
});
