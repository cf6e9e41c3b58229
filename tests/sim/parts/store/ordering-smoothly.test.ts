/** The continuous order that right-hand sides see, beside the strict one that restarts make. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Ordering } from '../../../../sim/parts/store/ordering.ts';
import { waterDensity } from '../../../../sim/physics/water.ts';

const layers = 8;
const profile = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: layers, maxLength: layers });
const mass = Float64Array.from({ length: layers }, (_, i) => 20 + 3 * i);
const energy = (x: ArrayLike<number>) => mass.reduce((sum, m, i) => sum + m * x[i], 0);

function smoothly(x: number[]): Float64Array {
  const ordered = new Float64Array(layers);
  new Ordering(layers).orderSmoothly(x, 0, mass, ordered);
  return ordered;
}

function strictly(x: number[]): Float64Array {
  const ordered = new Float64Array(layers);
  new Ordering(layers).order(x, 0, mass, ordered, waterDensity);
  return ordered;
}

describe('the continuous order', () => {
  it('is the strict one while all water is warmer than its densest', () => {
    fc.assert(
      fc.property(profile(4.6, 95), (x) => {
        expect(smoothly(x)).toEqual(strictly(x));
      }),
    );
  });

  it('moves by no more than a small change of the profile times a bound, also across 4 C', () => {
    const step = 1e-7;
    fc.assert(
      fc.property(profile(0, 14), fc.nat(layers - 1), (x, at) => {
        const before = smoothly(x);
        const moved = x.slice();
        moved[at] += step;
        const after = smoothly(moved);
        const most = Math.max(...after.map((v, i) => Math.abs(v - before[i])));
        // Blending over 1 K between two profiles that differ by at most 14 K, plus the change itself.
        expect(most).toBeLessThan(20 * step);
      }),
      { numRuns: 2000 },
    );
  });

  it('leaves water below its densest where it is, and keeps the energy there', () => {
    fc.assert(
      fc.property(profile(0, 4), (x) => {
        expect(Math.abs(energy(smoothly(x)) - energy(x))).toBeLessThan(1e-9 * energy(x) + 1e-9);
        smoothly(x).forEach((v, i) => {
          expect(v).toBeCloseTo(x[i], 12);
        });
      }),
    );
  });

  it('carries a warm bottom up through nearly freezing water', () => {
    const ordered = smoothly([30, 1, 1, 1, 1, 1, 1, 1]);
    expect(ordered[0]).toBeLessThan(10);
    expect(ordered[layers - 1]).toBeGreaterThan(1.5);
  });
});

describe('the strict order', () => {
  it('jumps across 4 C, which is why there is another', () => {
    // By Tanaka's formula water at 2 C is as dense as water at about 5.96 C.
    const jump = (above: number) => strictly([above, 2, 60, 60, 60, 60, 60, 60])[0];
    expect(Math.abs(jump(6.1) - jump(5.8))).toBeGreaterThan(1.5);
  });
});
