/** Cold water: where pump and pipes cross, and a cistern that cools, freezes and is refilled. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Air } from '../../../sim/parts/air.ts';
import type { ColdWater, Draw } from '../../../sim/parts/description.ts';
import { Layout } from '../../../sim/parts/layout.ts';
import { Supply } from '../../../sim/parts/supply.ts';
import { demandPumpPressure } from '../../../sim/physics/heat-exchange.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, drawOf, plantOf, roomAt, supplyOf, tapsOf } from '../support/plant.ts';
import { steadyWeather } from '../support/weather.ts';

function supplyWith(over: Parameters<typeof supplyOf>[0] = {}, firstDay = 0) {
  const layout = new Layout();
  const supply = new Supply(supplyOf(over), new Air(steadyWeather(5), 0, firstDay), firstDay, layout);
  return { supply, y: layout.initial() };
}

/** What a draw lets through by the orifice law, at most what is wanted [m3/s]. */
function lets(draw: Draw, pressure_Pa: number): number {
  const rated = draw.outlet.kind === 'head' ? draw.outlet.rated_Pa : 69_000;
  return draw.flow_m3_s * Math.min(1, Math.sqrt(Math.max(0, pressure_Pa) / rated));
}

describe('pump and pipes', () => {
  const draws = fc.array(
    fc.record({
      flow_m3_s: fc.double({ min: 1e-5, max: 3e-4, noNaN: true }),
      outlet: fc.oneof(
        fc.constant({ kind: 'tap' as const }),
        fc.record({
          kind: fc.constant('head' as const),
          rated_Pa: fc.integer({ min: 50_000, max: 550_000 }),
        }),
      ),
    }),
    { minLength: 1, maxLength: 3 },
  );

  it('cross where both give the same pressure at the same flow', () => {
    fc.assert(
      fc.property(
        draws,
        fc.double({ min: 5e-5, max: 5e-4, noNaN: true }),
        fc.integer({ min: 100_000, max: 500_000 }),
        fc.double({ min: -5, max: 12, noNaN: true }),
        fc.double({ min: 1e8, max: 2e13, noNaN: true }),
        (wishes, open_flow_m3_s, cut_out_Pa, lift_m, resistance) => {
          const { supply } = supplyWith({ pump: { open_flow_m3_s, cut_out_Pa, power_W: 90 }, lift_m });
          const open = wishes.map((wish) => drawOf(wish));
          const loss = (flow: number) => resistance * flow ** 1.8 * 10;
          const { pressure_Pa, flows_m3_s } = supply.crossing(open, loss);
          const surplus = (p: number) => {
            const flow = open.reduce((sum, draw) => sum + lets(draw, p), 0);
            return (
              demandPumpPressure(flow, open_flow_m3_s, cut_out_Pa) - 9.80665 * 1000 * lift_m - loss(flow) - p
            );
          };
          flows_m3_s.forEach((flow, i) => {
            expect(flow).toBeCloseTo(lets(open[i], pressure_Pa), 12);
          });
          // The crossing is bracketed within the 200 Pa it is found to: what pump and pipes leave falls through it.
          if (pressure_Pa === 0) expect(surplus(0)).toBeLessThanOrEqual(0);
          else {
            expect(surplus(pressure_Pa - 201)).toBeGreaterThanOrEqual(0);
            expect(surplus(pressure_Pa + 201)).toBeLessThanOrEqual(0);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('give a hand tap what is wanted where pressure is plenty', () => {
    const { supply } = supplyWith();
    expect(supply.crossing([drawOf()], () => 0).flows_m3_s).toEqual([1e-4]);
  });

  it('give nothing where the lift takes all of the pump’s pressure', () => {
    const { supply } = supplyWith({ lift_m: 40 });
    expect(supply.crossing([drawOf()], () => 0)).toEqual({ pressure_Pa: 0, flows_m3_s: [0] });
  });

  it('share between two heads in proportion to their rating', () => {
    const head = (flow_m3_s: number) => drawOf({ flow_m3_s, outlet: { kind: 'head', rated_Pa: 550_000 } });
    const { supply } = supplyWith();
    const [one, two] = supply.crossing([head(1e-4), head(2e-4)], () => 0).flows_m3_s;
    expect(two / one).toBeCloseTo(2, 9);
    expect(one).toBeLessThan(1e-4);
  });

  it('gain the head of a cistern that stands above the taps', () => {
    const at = (lift_m: number) => supplyWith({ lift_m }).supply.crossing([drawOf()], () => 0).pressure_Pa;
    expect(Math.abs(at(-3) - at(0) - 3 * 9806.65)).toBeLessThan(401);
  });
});

describe('cold water', () => {
  it('by month changes with the calendar, over New Year too', () => {
    const temperature_C = Array.from({ length: 12 }, (_, i) => i + 1);
    const { supply, y } = supplyWith({ cold: { kind: 'by month', temperature_C } }, 364);
    expect([0, 86_399, 86_400, 31.5 * 86_400, 32 * 86_400].map((t) => supply.cold_C(t, y))).toEqual([
      12, 12, 1, 1, 2,
    ]);
  });
});

describe('a cistern', () => {
  const volume_m3 = 0.2;
  const conductance_W_K = 20;
  const cistern = (start_C: number, room_C: number): ColdWater => ({
    kind: 'cistern',
    volume_m3,
    start_C,
    conductance_W_K,
    surroundings: roomAt(room_C),
    refill_C: 6,
  });
  const mass = volume_m3 * 999.9;
  const run = (cold: ColdWater, days = 4) =>
    simulate(plantOf({ supply: supplyOf({ cold }), run: { days, interval_s: 1800, layers: 3 } }));

  it('cools towards its room as a lump of water does', () => {
    const { series } = run(cistern(18, 8), 1);
    const { cold_C } = series.channels;
    // Heat capacity of water between 8 and 18 C: 4,189 J/(kg K) (steam tables).
    for (const i of [4, 20, 47]) {
      const expected = 8 + 10 * Math.exp((-series.time_s[i] * conductance_W_K) / (volume_m3 * 998.6 * 4189));
      expect(Math.abs(cold_C[i] - expected)).toBeLessThan(0.01);
    }
  });

  it('stands at 0 C while it freezes, for as long as its latent heat takes', () => {
    const result = run(cistern(4, -10), 6);
    const { cold_C } = result.series.channels;
    expect(Math.min(...cold_C)).toBe(0);
    const frozen = result.events.find((e) => e.name === 'cistern.frozen');
    // From 4 C to 0 C (4,215 J/(kg K)), then half of 333.6 kJ/kg (IAPWS) at 10 K.
    const cooling = ((mass * 4215) / conductance_W_K) * Math.log(14 / 10);
    const freezing = (0.5 * mass * 333_600) / (conductance_W_K * 10);
    expect((frozen?.time_s ?? 0) / (cooling + freezing)).toBeCloseTo(1, 2);
  });

  it('that stands warm thaws', () => {
    const layout = new Layout();
    const supply = new Supply(supplyOf({ cold: cistern(1, 5) }), new Air(steadyWeather(5), 0, 0), 0, layout);
    const y = layout.initial();
    const place = layout.size - 1;
    y[place] = -40;
    const out = y.map(() => 0);
    supply.rates(0, y, 0, out);
    expect(supply.ice(y)).toBeCloseTo((40 * 4186) / 333_550, 9);
    expect(supply.cold_C(0, y)).toBe(0);
    // 20 W/K over 5 K into the whole mass.
    expect(out[place] * 4186 * mass).toBeCloseTo(100, 1);
  });

  it('frozen gives no water, and thawed gives it again', () => {
    const cold: ColdWater = {
      ...(cistern(2, -15) as Extract<ColdWater, { kind: 'cistern' }>),
      conductance_W_K: 200,
      surroundings: { kind: 'room', mean_C: -2, swing_K: 60, warmest_s: 50_400, relative_humidity: 0.5 },
      volume_m3: 0.05,
    };
    const draws = [drawOf({ at_s: 20_000, shower: false }), drawOf({ at_s: 60_000, shower: false })];
    const result = simulate(
      plantOf({
        supply: supplyOf({ cold }),
        coils: [coilOf('h')],
        taps: tapsOf('h', { draws }),
        run: { interval_s: 60 },
      }),
    );
    expect(result.events.slice(0, 2).map((e) => e.name)).toEqual(['cistern.frozen', 'cistern.thawed']);
    const [frozen, thawed] = result.events.map((e) => e.time_s);
    expect(frozen).toBeLessThan(20_000);
    expect(thawed).toBeGreaterThan(20_480);
    const flow = result.series.channels.mixed_flow_m3_s;
    expect(flow[338]).toBe(0);
    expect(flow[1004]).toBeGreaterThan(5e-5);
  });

  it('is warmed by what replaces the water drawn', () => {
    const { supply, y } = supplyWith({ cold: cistern(2, 2) });
    const out = y.map(() => 0);
    supply.rates(0, y, 0.1, out);
    // 0.1 kg/s of 6 C for 0.1 kg/s of 2 C, 4,207 J/(kg K) between (steam tables).
    expect((out[y.length - 1] * 4186 * mass) / (0.1 * 4207 * 4)).toBeCloseTo(1, 2);
  });
});
