import { describe, expect, it } from 'vitest';
import { coilOf } from '../../../../sim/answers/coil/coil-of.ts';
import { kneeLength, outletByLength } from '../../../../sim/answers/coil/endless.ts';
import { tubeMass } from '../../../../sim/parts/filled-weight.ts';
import { coilOf as description, tubeOf } from '../../support/plant.ts';

const at = { flow_m3_s: 1.2e-4, tank_C: 60, cold_C: 7 };
const given = { ...description('household'), ...at };

describe('coilOf', () => {
  it('is the same coil in one piece and cut in two', () => {
    const whole = coilOf(given);
    const half = { ...given, roll_length_m: given.roll_length_m / 2 };
    const first = coilOf(half);
    const second = coilOf({ ...half, cold_C: first.outlet_C });
    // Twice the sections: what the march leaves out shows here.
    expect(Math.abs(second.outlet_C - whole.outlet_C)).toBeLessThan(0.01);
    expect(first.heat_W + second.heat_W).toBeCloseTo(whole.heat_W, -1);
    expect(first.content_m3 + second.content_m3).toBeCloseTo(whole.content_m3, 9);
  });

  it('agrees with its own definitions', () => {
    const { outlet_C, effectiveness, UA_W_K, heat_W } = coilOf(given);
    expect(effectiveness).toBeCloseTo((outlet_C - 7) / 53, 12);
    const capacity_W_K = heat_W / (outlet_C - 7);
    // A litre of water takes 4.18 kJ/K; the flow is counted at 40 C, 992 g a litre.
    expect(Math.abs(capacity_W_K / (0.12 * 0.9922 * 4180) - 1)).toBeLessThan(0.003);
    expect(1 - Math.exp(-UA_W_K / capacity_W_K)).toBeCloseTo(effectiveness, 9);
  });

  it('never gives less through more tube at the same flow', () => {
    const outlets = [1, 3, 10, 30, 100, 300].map((m) => coilOf({ ...given, roll_length_m: m }).outlet_C);
    expect(outlets.toSorted((a, b) => a - b)).toEqual(outlets);
    expect(outlets[5]).toBeLessThanOrEqual(60);
  });

  it('gives less warmth and takes more pressure the faster it flows', () => {
    const steady = [0.4, 0.8, 1.2, 2.4, 5].map((lpm10) => coilOf({ ...given, flow_m3_s: lpm10 * 1e-4 }));
    for (let i = 1; i < steady.length; i++) {
      expect(steady[i].outlet_C).toBeLessThan(steady[i - 1].outlet_C);
      expect(steady[i].heat_W).toBeGreaterThan(steady[i - 1].heat_W);
      expect(steady[i].pressure_drop_kPa).toBeGreaterThan(steady[i - 1].pressure_drop_kPa);
    }
  });

  it('charges the store as a warm liquid and drains it as a cold one', () => {
    const warm = coilOf({ ...given, tank_C: 40, cold_C: 80 });
    expect(warm.heat_W).toBeLessThan(0);
    expect(warm.outlet_C).toBeGreaterThan(40);
    expect(warm.effectiveness).toBeGreaterThan(0);
    expect(coilOf(given).heat_W).toBeGreaterThan(0);
  });

  it('carries glycol less well than water', () => {
    const glycol = { kind: 'propylene glycol', mass_share: 0.5 } as const;
    expect(coilOf({ ...given, fluid: glycol }).UA_W_K).toBeLessThan(coilOf(given).UA_W_K);
  });

  it('minds neither how high it hangs nor how many sections it lies in', () => {
    const high = coilOf({ ...given, bottom_m: 3, top_m: 9 });
    expect(high.outlet_C).toBeCloseTo(coilOf(given).outlet_C, 9);
  });

  it('refuses a flow that is none and a tank as warm as what enters', () => {
    expect(() => coilOf({ ...given, flow_m3_s: 0 })).toThrow(/^flow - expected .* - got 0 - /);
    expect(() => coilOf({ ...given, tank_C: 7 })).toThrow(/^tank - expected .* - got 7 C - /);
  });
});

describe('tubeMass', () => {
  it('is the handbook’s weight of tube', () => {
    // ASTM B88: half-inch type L weighs 0.285 lb a foot (from memory).
    const tube = tubeOf('plumbing L', '1/2');
    const mass = tubeMass({ ...description('any'), tube, rolls: 2, roll_length_m: 0.3048 });
    expect(Math.abs(mass / 0.45359237 / 2 / 0.285 - 1)).toBeLessThan(0.01);
  });
});

describe('the coil drawn out', () => {
  it('nears the tank’s temperature', () => {
    const [short, long, endless] = outletByLength(given, [10, 100, 2000]);
    expect(short).toBeLessThan(long);
    expect(endless).toBeCloseTo(60, 3);
  });

  it('has its knee where a metre brings a quarter of the first', () => {
    const knee = kneeLength(given) ?? 0;
    const gain = (m: number) => {
      const [a, b] = outletByLength(given, [m - 0.05, m + 0.05]);
      return (b - a) / 0.1;
    };
    expect(gain(knee) / gain(0.3)).toBeCloseTo(0.25, 2);
  });

  it('has no knee while even the longest pays', () => {
    // PEX at a flood: three kilometres still pay.
    expect(kneeLength({ ...given, tube: tubeOf('PEX', '1'), flow_m3_s: 0.05 })).toBeNull();
  });
});
