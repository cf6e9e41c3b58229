import { describe, expect, it } from 'vitest';
import { fluidBoilingPoint, fluidFreezingPoint, fluidProperties } from '../../../sim/physics/fluid.ts';
import { glycolFreezingPoint, massShareFromVolumeShare } from '../../../sim/physics/glycol.ts';

const glycols = ['propylene glycol', 'ethylene glycol'] as const;

describe.each(glycols)('%s', (kind) => {
  it('falls in viscosity from freezing to 200 C without a step, at every share', () => {
    for (const mass_share of [0.05, 0.1, 0.25, 0.4, 0.5, 0.6]) {
      const start = Math.max(-50, glycolFreezingPoint(kind, mass_share));
      for (let t = start; t < 200; t++) {
        const here = fluidProperties({ kind, mass_share }, t).viscosity_Pa_s;
        const next = fluidProperties({ kind, mass_share }, t + 1).viscosity_Pa_s;
        expect(next).toBeLessThan(here);
        expect(next).toBeGreaterThan(0.8 * here);
      }
    }
  });

  it('joins water at no share within half a percent in density and heat, 2 % in the rest', () => {
    for (const t of [5, 20, 50, 80, 100]) {
      const water = fluidProperties({ kind: 'water', mass_share: 0 }, t);
      const thin = fluidProperties({ kind, mass_share: 1e-9 }, t);
      expect(Math.abs(thin.density_kg_m3 / water.density_kg_m3 - 1)).toBeLessThan(0.005);
      expect(Math.abs(thin.heat_capacity_J_kgK / water.heat_capacity_J_kgK - 1)).toBeLessThan(0.005);
      expect(Math.abs(thin.conductivity_W_mK / water.conductivity_W_mK - 1)).toBeLessThan(0.02);
      expect(Math.abs(thin.viscosity_Pa_s / water.viscosity_Pa_s - 1)).toBeLessThan(0.02);
    }
  });

  it('freezes lower and boils higher with every share more', () => {
    for (let share = 0; share < 0.6; share += 0.05) {
      const thin = { kind, mass_share: share };
      const thick = { kind, mass_share: share + 0.05 };
      expect(fluidFreezingPoint(thick)).toBeLessThan(fluidFreezingPoint(thin));
      expect(fluidBoilingPoint(thick, 101_325)).toBeGreaterThan(fluidBoilingPoint(thin, 101_325));
    }
  });

  it('weighs more by mass than by volume, and the same at the ends', () => {
    expect(massShareFromVolumeShare(kind, 0)).toBe(0);
    expect(massShareFromVolumeShare(kind, 1)).toBe(1);
    expect(massShareFromVolumeShare(kind, 0.4)).toBeGreaterThan(0.4);
  });

  it('holds its properties below freezing', () => {
    const frozen = glycolFreezingPoint(kind, 0.3);
    expect(fluidProperties({ kind, mass_share: 0.3 }, frozen - 20)).toEqual(
      fluidProperties({ kind, mass_share: 0.3 }, frozen),
    );
  });
});

it.each([-0.01, 0.61, Number.NaN])('a share of %f is refused with the range', (mass_share) => {
  expect(() => fluidProperties({ kind: 'propylene glycol', mass_share }, 20)).toThrow(
    /expected 0 to 0.6 - got/,
  );
});
