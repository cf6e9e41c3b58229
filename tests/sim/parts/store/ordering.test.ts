/** The strict order by density: energy, idempotence, and no heavier water above lighter, also across 4 C. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liquid, lookUp, temperatureOf } from '../../../../sim/parts/liquid.ts';
import { Ordering } from '../../../../sim/parts/store/ordering.ts';

const water = liquid({ kind: 'water', mass_share: 0 });
const density = (x: number) => lookUp(water.density, temperatureOf(water, x));
const layers = 12;
const profile = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: layers, maxLength: layers });
const masses = fc.array(fc.double({ min: 1, max: 90, noNaN: true }), {
  minLength: layers,
  maxLength: layers,
});

function order(x: number[], mass: number[]): number[] {
  const ordered = new Float64Array(layers);
  new Ordering(layers).order(x, 0, Float64Array.from(mass), ordered, density);
  return [...ordered];
}

const energy = (x: number[], mass: number[]) => x.reduce((sum, v, i) => sum + v * mass[i], 0);

describe.each([
  ['of warm water', 5, 99],
  ['across 4 C', 0, 9],
  ['of water that goes from ice-cold to hot', 0, 95],
])('an ordered profile %s', (_what, min, max) => {
  it('has the energy it had', () => {
    fc.assert(
      fc.property(profile(min, max), masses, (x, mass) => {
        const before = energy(x, mass);
        expect(Math.abs(energy(order(x, mass), mass) - before)).toBeLessThan(1e-12 * before + 1e-9);
      }),
    );
  });

  it('never has heavier water above lighter', () => {
    fc.assert(
      fc.property(profile(min, max), masses, (x, mass) => {
        const ordered = order(x, mass);
        for (let i = 1; i < layers; i++)
          expect(density(ordered[i])).toBeLessThanOrEqual(density(ordered[i - 1]));
      }),
    );
  });

  it('is left alone when ordered again', () => {
    fc.assert(
      fc.property(profile(min, max), masses, (x, mass) => {
        const once = order(x, mass);
        order(once, mass).forEach((v, i) => {
          expect(v).toBeCloseTo(once[i], 10);
        });
      }),
    );
  });

  it('stays within what it was made of', () => {
    fc.assert(
      fc.property(profile(min, max), masses, (x, mass) => {
        for (const v of order(x, mass)) {
          expect(v).toBeGreaterThanOrEqual(Math.min(...x) - 1e-9);
          expect(v).toBeLessThanOrEqual(Math.max(...x) + 1e-9);
        }
      }),
    );
  });
});

describe('ordering', () => {
  const even = new Array<number>(layers).fill(10);

  it('leaves a stable profile to the bit', () => {
    const x = Array.from({ length: layers }, (_, i) => 20 + 3 * i);
    expect(order(x, even)).toEqual(x);
  });

  it('leaves ice-cold water on water at 4 C', () => {
    const x = Array.from({ length: layers }, (_, i) => 3.9 - 0.3 * i);
    expect(order(x, even)).toEqual(x);
  });

  it('turns the same profile over on the warm side of 4 C', () => {
    const x = Array.from({ length: layers }, (_, i) => 9 - 0.3 * i);
    const mean = energy(x, even) / energy(new Array<number>(layers).fill(1), even);
    for (const v of order(x, even)) expect(v).toBeCloseTo(mean, 9);
  });

  it('mixes only what hot water at the bottom reaches on its way up', () => {
    const x = [40, 20, 21, 22, 50, 51, 52, 53, 54, 55, 56, 57];
    const ordered = order(x, even);
    const mixed = (40 + 20 + 21 + 22) / 4;
    expect(ordered.slice(0, 4)).toEqual([mixed, mixed, mixed, mixed]);
    expect(ordered.slice(4)).toEqual(x.slice(4));
  });

  it('weighs layers by their mass', () => {
    const mass = even.slice();
    mass[0] = 30;
    const x = [40, 20, ...Array.from({ length: layers - 2 }, (_, i) => 60 + i)];
    expect(order(x, mass)[0]).toBeCloseTo((30 * 40 + 10 * 20) / 40, 12);
  });
});
