import { describe, expect, it } from 'vitest';
import {
  candidatesFor,
  coilPrice,
  jointsOf,
  namesake,
  sameCoil,
  windingsOf,
  withTube,
} from '../../../../sim/answers/coil/candidates.ts';
import { coilOf, pricesOf, storeOf, tubeOf } from '../../support/plant.ts';

const own = coilOf('household', { rolls: 2, join: 'parallel' });

describe('candidatesFor', () => {
  const all = candidatesFor(own);

  it('holds the present coil once, and every coil once', () => {
    expect(all.filter((coil) => sameCoil(coil, own))).toHaveLength(1);
    for (const coil of all) expect(all.filter((other) => sameCoil(coil, other))).toHaveLength(1);
  });

  it('offers tube in rolls as the trade sells it, one to four of them', () => {
    const others = all.filter((coil) => Math.abs(coil.roll_length_m - own.roll_length_m) > 0.01);
    const feet = (coil: (typeof all)[number]) => Math.round(coil.roll_length_m / 0.3048);
    const sold = (word: string) => new Set(others.filter(({ tube }) => tube.label.includes(word)).map(feet));
    expect(sold('refrigeration')).toEqual(new Set([50]));
    expect(sold('plumbing')).toEqual(new Set([60, 100]));
    expect(sold('PEX')).toEqual(new Set([100]));
    expect(Math.max(...others.map(({ rolls }) => rolls))).toBe(4);
  });

  it('keeps the own rolls even where they are more than anyone joins', () => {
    const many = { ...own, rolls: 7 };
    expect(candidatesFor(many).some((coil) => sameCoil(coil, many))).toBe(true);
  });

  it('leaves out tube too thick to be wound so tightly', () => {
    const tight = candidatesFor({ ...own, coil_diameter_m: 0.1, tube: tubeOf('refrigeration', '3/8') });
    expect(tight.length).toBeGreaterThan(0);
    for (const { tube } of tight) expect(tube.outside_diameter_m).toBeLessThanOrEqual(0.1 / 6);
  });
});

describe('withTube', () => {
  it('leaves the gap between the turns as it was', () => {
    const thin = withTube(own, tubeOf('refrigeration', '3/8'));
    const gap = (coil: typeof own) => coil.pitch_m - coil.tube.outside_diameter_m;
    expect(gap(thin)).toBeCloseTo(gap(own), 12);
  });
});

describe('windingsOf', () => {
  it('counts how often the turns go up between the lowest turn and the surface', () => {
    // 0.6 m wide turns of 40 mm pitch: 1.885 m a turn; 0.75 m less the tube leave room for 18.2 turns, 34.3 m.
    const store = storeOf({ water_depth_m: 0.8 });
    const coil = (m: number) => coilOf('any', { roll_length_m: m, bottom_m: 0.05 });
    expect([34, 35, 68, 69].map((m) => windingsOf(coil(m), store))).toEqual([1, 2, 2, 3]);
  });
});

describe('joints and prices', () => {
  it.each([
    [1, 'series', 2],
    [3, 'series', 4],
    [3, 'parallel', 8],
  ] as const)('of %i in %s are %i', (rolls, join, joints) => {
    expect(jointsOf({ rolls, join })).toBe(joints);
  });

  it('are copper by its weight and PEX by its length', () => {
    const prices = pricesOf({ copper_per_kg: 10, pex_per_m: 2, fitting_per_joint: 5 });
    // Half-inch type L: 0.285 lb a foot (from memory), so 30 m weigh 12.72 kg.
    const copper = coilOf('any', { tube: tubeOf('plumbing L', '1/2'), roll_length_m: 30 });
    expect(Math.abs((coilPrice(copper, prices) ?? 0) - (127.2 + 10))).toBeLessThan(2);
    const pex = coilOf('any', { tube: tubeOf('PEX', '1/2'), roll_length_m: 30, rolls: 2, join: 'parallel' });
    expect(coilPrice(pex, prices)).toBe(120 + 30);
    expect(coilPrice(coilOf('any', { tube: tubeOf('stainless', '1/2') }), prices)).toBeNull();
  });
});

describe('namesake', () => {
  it('is the other trade’s tube of the same name, an eighth of an inch apart across', () => {
    const thin = tubeOf('refrigeration', '3/8');
    const thick = tubeOf('plumbing L', '3/8');
    expect(namesake(thin)).toEqual(thick);
    expect(namesake(thick)).toEqual(thin);
    expect(thick.outside_diameter_m - thin.outside_diameter_m).toBeCloseTo(0.125 * 0.0254, 9);
  });

  it('is nobody for PEX, or for a tube measured by hand', () => {
    expect(namesake(tubeOf('PEX', '1/2'))).toBeNull();
    expect(namesake({ ...tubeOf('PEX', '1/2'), label: 'own copper tube', material: 'copper' })).toBeNull();
  });
});
