import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  COIL_TURBULENT_REYNOLDS,
  coilCriticalReynolds,
  coilCurvature,
  coilNusselt,
  gnielinskiNusselt,
  hausenNusselt,
  straightNusselt,
  wallCorrection,
} from '../../../sim/physics/coil-inside.ts';
import {
  BUNDLING,
  churchillChuNusselt,
  churchillChuPrandtlFactor,
  GRAVITY_M_S2,
  rayleigh,
} from '../../../sim/physics/coil-outside.ts';
import {
  coilFrictionSpread,
  coilNusseltSpread,
  coilOutsideSpread,
} from '../../../sim/physics/coil-spread.ts';
import { fluidProperties } from '../../../sim/physics/fluid.ts';
import { coilFriction, pressureLoss, straightFriction } from '../../../sim/physics/friction.ts';
import { waterDensity, waterExpansion } from '../../../sim/physics/water.ts';

const curvature = fc.double({ min: 0.004, max: 0.1, noNaN: true });
const water = { kind: 'water', mass_share: 0 } as const;
/** Largest step of f in one part in a thousand of Re, as a share of f. */
const jump = (f: (re: number) => number, re: number) => Math.abs(f(re * 1.001) / f(re) - 1);

describe('the film inside a coil', () => {
  it('rises with flow and never jumps', () => {
    fc.assert(
      fc.property(curvature, fc.double({ min: 1, max: 60, noNaN: true }), (r, pr) => {
        const f = (re: number) => coilNusselt(re, pr, r);
        for (const re of [
          1,
          100,
          2300,
          0.9999 * coilCriticalReynolds(r),
          12_000,
          0.9999 * COIL_TURBULENT_REYNOLDS,
          6e4,
        ]) {
          expect(f(re * 1.001)).toBeGreaterThan(f(re));
          expect(jump(f, re)).toBeLessThan(3e-3);
        }
      }),
    );
  });

  it('is a multiple of the straight tube film in laminar flow', () => {
    const coil = coilNusselt(2000, 4.34, 0.0346);
    expect(coil / straightNusselt(2000, 4.34, 0)).toBeGreaterThan(4);
  });

  it('bends less in a steep helix', () => {
    expect(coilCurvature(0.014, 0.4, 0.3)).toBeLessThan(coilCurvature(0.014, 0.4, 0.02));
    expect(coilCurvature(0.014, 0.4, 0)).toBe(0.014 / 0.4);
  });

  it('is better with a wall warmer than the bulk, since the liquid there is thinner', () => {
    expect(wallCorrection(7, 3)).toBeGreaterThan(1);
    expect(wallCorrection(3, 7)).toBeLessThan(1);
    expect(wallCorrection(5, 5)).toBe(1);
  });
});

describe('the film inside a straight tube', () => {
  it('joins Hausen to Gnielinski', () => {
    expect(straightNusselt(2300, 5, 0.01)).toBe(hausenNusselt(2300, 5, 0.01));
    expect(straightNusselt(4000, 5, 0.01)).toBe(gnielinskiNusselt(4000, 5));
    for (const re of [2299.9, 3000, 3999.9])
      expect(jump((x) => straightNusselt(x, 5, 0.01), re)).toBeLessThan(5e-3);
  });
});

describe('friction', () => {
  it('in a coil never jumps and lies above the straight tube', () => {
    fc.assert(
      fc.property(curvature, (r) => {
        for (const re of [
          50,
          1000,
          0.9999 * coilCriticalReynolds(r),
          1.1 * coilCriticalReynolds(r),
          1.1999 * coilCriticalReynolds(r),
          3e4,
        ]) {
          expect(jump((x) => coilFriction(x, r, 0), re)).toBeLessThan(2e-3);
          // Above Re 2300 a straight tube is already turbulent where the coil is not yet.
          if (re < 2000 || re > 1.2 * coilCriticalReynolds(r)) {
            expect(coilFriction(re, r, 0)).toBeGreaterThan(straightFriction(re, 0));
          }
        }
      }),
    );
  });

  it('grows with roughness once turbulent, and not in laminar flow', () => {
    expect(coilFriction(20_000, 0.03, 0.003)).toBeGreaterThan(coilFriction(20_000, 0.03, 0));
    expect(coilFriction(1000, 0.03, 0.003)).toBe(coilFriction(1000, 0.03, 0));
  });

  it('is 64 / Re at a crawl, without overflow', () => {
    for (const re of [1e-300, 1e-30, 0.5, 2, 10])
      expect(straightFriction(re, 1e-4) / (64 / re)).toBeCloseTo(1, 6);
  });
});

describe('pressure loss', () => {
  const run = { length_m: 15, inside_diameter_m: 0.0079, curvature: 0.02, roughness_m: 1.5e-6, minor: 2 };
  const liquid = fluidProperties(water, 15);

  it('is nothing at no flow, grows with flow, and doubles with length but for the fittings', () => {
    expect(pressureLoss(run, 0, liquid)).toBe(0);
    expect(pressureLoss(run, 1e-25, liquid)).toBeLessThan(1e-12);
    for (let q = 1e-6; q < 3e-4; q *= 1.1) {
      expect(pressureLoss(run, q * 1.1, liquid)).toBeGreaterThan(pressureLoss(run, q, liquid));
    }
    const bare = { ...run, minor: 0 };
    expect(pressureLoss({ ...bare, length_m: 30 }, 1e-4, liquid)).toBeCloseTo(
      2 * pressureLoss(bare, 1e-4, liquid),
      6,
    );
  });

  it('of a coil is more than of the same tube pulled straight', () => {
    const straight = { ...run, curvature: 0 };
    expect(pressureLoss(run, 1e-4, liquid)).toBeGreaterThan(1.05 * pressureLoss(straight, 1e-4, liquid));
  });
});

describe('the film outside a tube', () => {
  const film = (bath: number, wall: number) => fluidProperties(water, (bath + wall) / 2);

  it('by density difference agrees with expansion times difference away from 4 C', () => {
    for (const [bath, wall] of [
      [60, 55],
      [60, 40],
      [40, 60],
      [80, 20],
    ]) {
      const properties = film(bath, wall);
      const middle = (bath + wall) / 2;
      const byExpansion = waterDensity(middle) * waterExpansion(middle) * (bath - wall);
      const here = rayleigh(waterDensity(bath) - waterDensity(wall), 0.016, properties);
      expect(Math.abs(here / rayleigh(byExpansion, 0.016, properties) - 1)).toBeLessThan(0.05);
    }
  });

  it('is stronger between 4 and 0 C than between 8 and 0 C, which weigh nearly the same', () => {
    const nusselt = (bath: number, wall: number) =>
      churchillChuNusselt(
        rayleigh(waterDensity(bath) - waterDensity(wall), 0.016, film(bath, wall)),
        film(bath, wall).prandtl,
      );
    expect(nusselt(4, 0)).toBeGreaterThan(1.5 * nusselt(8, 0));
  });

  it('is (a + b |d rho|^(1/6))^2 with a and b of the film temperature alone', () => {
    const [bath, wall, d] = [55, 25, 0.0159];
    const p = film(bath, wall);
    const difference = waterDensity(wall) - waterDensity(bath);
    const root = Math.sqrt(p.conductivity_W_mK / d);
    const diffusivity = p.conductivity_W_mK / (p.density_kg_m3 * p.heat_capacity_J_kgK);
    const b =
      root *
      churchillChuPrandtlFactor(p.prandtl) *
      ((GRAVITY_M_S2 * d ** 3) / (p.viscosity_Pa_s * diffusivity)) ** (1 / 6);
    const split = (0.6 * root + b * difference ** (1 / 6)) ** 2;
    const direct = (p.conductivity_W_mK / d) * churchillChuNusselt(rayleigh(difference, d, p), p.prandtl);
    expect(split / direct).toBeCloseTo(1, 12);
  });

  it('loses more the tighter the turns', () => {
    expect(BUNDLING.touching.value).toBeLessThan(BUNDLING['finger gap'].value);
    expect(BUNDLING['finger gap'].value).toBeLessThan(BUNDLING.spread.value);
    for (const { low, value, high } of Object.values(BUNDLING)) {
      expect(low).toBeLessThan(value);
      expect(value).toBeLessThan(high);
      expect(high).toBeLessThanOrEqual(1);
    }
  });
});

describe('the spread of published forms', () => {
  // physics.md 3: max/min in laminar Nu 1.27 at Re 1000 and 1.47 at 6000, turbulent 1.25-1.49; laminar friction up to 45 %.
  it.each([
    [1000, 1.27],
    [6000, 1.47],
    [8000, 1.49],
  ])('in Nu at Re %f is the fact sheet’s factor %f', (re, factor) => {
    const { low, high } = coilNusseltSpread(re, 4.33956, 0.0346);
    expect(Math.abs(high / low / factor - 1)).toBeLessThan(0.02);
  });

  it('in friction holds the main form between its ends', () => {
    for (const re of [500, 3000, 6000, 12_000, 50_000]) {
      const { low, high } = coilFrictionSpread(re, 0.0346);
      expect(low).toBeLessThanOrEqual(1);
      expect(high).toBeGreaterThan(1);
      expect(high).toBeLessThan(1.5);
    }
  });

  // physics.md 4: the one water-coil measurement in range is 0.52-0.62 of Churchill and Chu.
  it('outside reaches down to the measured coils and up to 1.2', () => {
    const p = fluidProperties(water, 50);
    const ra = rayleigh(waterDensity(40) - waterDensity(60), 0.0159, p);
    const { low, high } = coilOutsideSpread(ra, p.prandtl, 0.0159, 0.6);
    expect(low).toBeGreaterThan(0.52);
    expect(low).toBeLessThan(0.62);
    expect(high).toBe(1.2);
  });
});
