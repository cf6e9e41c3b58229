import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearnessOverDay,
  clearSkyHaurwitz_W_m2,
  clearSkyIneichen,
  clearSkyTemperature_C,
  diffuseShareErbs,
  diffuseShareOrgillHollands,
  hottelBeamShare,
  hourOfDayDiffuseShare,
  hourOfDayShare,
} from '../../../sim/physics/sky.ts';
import { airMass } from '../../../sim/physics/sun.ts';

const DEGREE = Math.PI / 180;
const clear = (zenith_deg: number, turbidity = 3, altitude_m = 0) =>
  clearSkyIneichen({
    zenith_rad: zenith_deg * DEGREE,
    air_mass: airMass(zenith_deg * DEGREE),
    turbidity,
    altitude_m,
    normal_W_m2: 1361,
  });

describe('a clear sky', () => {
  it('is dark with the Sun down', () => {
    expect(clearSkyHaurwitz_W_m2(Math.PI / 2)).toBe(0);
    expect(clearSkyHaurwitz_W_m2(2)).toBe(0);
    expect(clear(95)).toEqual({
      global_horizontal_W_m2: 0,
      direct_normal_W_m2: 0,
      diffuse_horizontal_W_m2: 0,
    });
  });

  it('adds up: global is diffuse plus the direct’s upright part', () => {
    for (let z = 0; z < 90; z += 3) {
      const sky = clear(z);
      const sum = sky.diffuse_horizontal_W_m2 + sky.direct_normal_W_m2 * Math.cos(z * DEGREE);
      expect(sky.global_horizontal_W_m2).toBeCloseTo(sum, 9);
      expect(sky.diffuse_horizontal_W_m2).toBeGreaterThan(0);
    }
  });

  it('weakens with haze and low Sun, and gains with altitude', () => {
    for (let z = 5; z < 85; z += 10) {
      expect(clear(z, 5).direct_normal_W_m2).toBeLessThan(clear(z, 2).direct_normal_W_m2);
      expect(clear(z + 4).global_horizontal_W_m2).toBeLessThan(clear(z).global_horizontal_W_m2);
      expect(clear(z, 3, 2000).direct_normal_W_m2).toBeGreaterThan(clear(z, 3, 0).direct_normal_W_m2);
      expect(hottelBeamShare(z * DEGREE, 2000)).toBeGreaterThan(hottelBeamShare(z * DEGREE, 0));
    }
  });
});

describe('the diffuse share', () => {
  it.each([diffuseShareErbs, diffuseShareOrgillHollands])(
    'falls from all to a sixth without a step, by %o',
    (share) => {
      expect(share(0)).toBe(1);
      expect(share(0.9)).toBeCloseTo(1 / 6, 1);
      for (let kt = 0; kt < 1; kt += 0.001) {
        expect(share(kt)).toBeGreaterThan(0.15);
        expect(share(kt)).toBeLessThanOrEqual(1);
        expect(Math.abs(share(kt + 0.001) - share(kt))).toBeLessThan(0.003);
      }
    },
  );
});

describe('the hours of a day', () => {
  it('sum to the day: diffuse exactly in the limit, global within 2 %', () => {
    for (const sunset of [60, 75, 90, 105, 120]) {
      let diffuse = 0;
      let global = 0;
      const parts = 2000;
      for (let i = 0; i < parts; i++) {
        const w = (((i + 0.5) / parts) * 2 - 1) * sunset * DEGREE;
        const hours = (2 * sunset) / 15 / parts;
        diffuse += hourOfDayDiffuseShare(w, sunset * DEGREE) * hours;
        global += hourOfDayShare(w, sunset * DEGREE) * hours;
      }
      expect(diffuse).toBeCloseTo(1, 5);
      expect(Math.abs(global - 1)).toBeLessThan(0.02);
    }
  });

  it('are clearer at noon than in the morning, the same before and after noon, and dark at night', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 2.8, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (sunset, place) => {
          const w = sunset * place;
          expect(clearnessOverDay(0, sunset)).toBeGreaterThan(clearnessOverDay(w, sunset) - 1e-12);
          expect(hourOfDayShare(-w, sunset)).toBeCloseTo(hourOfDayShare(w, sunset), 12);
          expect(hourOfDayDiffuseShare(sunset * 1.01 + 0.01, sunset)).toBe(0);
        },
      ),
    );
  });
});

describe('the clear sky’s temperature', () => {
  it('lies below the air, the more the drier it is, and is coldest in relation at noon', () => {
    for (let dew = -20; dew <= 20; dew += 5) {
      const at = (dew_point_C: number, hour_h: number) =>
        clearSkyTemperature_C({ air_C: 22, dew_point_C, hour_h });
      expect(at(dew, 0)).toBeLessThan(22);
      expect(at(dew, 0)).toBeLessThan(at(dew + 5, 0));
      expect(at(dew, 12)).toBeLessThan(at(dew, 0));
    }
  });
});
