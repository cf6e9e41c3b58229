import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  waterBoilingPoint,
  waterConductivity,
  waterDensity,
  waterEnthalpy,
  waterExpansion,
  waterHeatCapacity,
  waterLatentHeat,
  waterSaturationPressure,
  waterTemperatureFromEnthalpy,
  waterViscosity,
} from '../../../sim/physics/water.ts';

/** Central difference. */
const slope = (f: (t: number) => number, t: number, d = 1e-3) => (f(t + d) - f(t - d)) / (2 * d);
const temperatures = fc.double({ min: -60, max: 400, noNaN: true });

describe('water enthalpy', () => {
  it('comes back as the temperature it was taken at', () => {
    fc.assert(
      fc.property(temperatures, (t) => {
        expect(Math.abs(waterTemperatureFromEnthalpy(waterEnthalpy(t)) - t)).toBeLessThan(1e-9);
      }),
    );
  });

  it('has the heat capacity as its slope, also where the fit ends', () => {
    for (const t of [-20, -5.5, -4.5, 0.5, 20, 60, 99, 144.5, 145.5, 200]) {
      expect(Math.abs(slope(waterEnthalpy, t) / waterHeatCapacity(t) - 1)).toBeLessThan(1e-6);
    }
  });

  it('is 0 at 0 C and rises everywhere', () => {
    expect(waterEnthalpy(0)).toBe(0);
    for (let t = -60; t < 400; t += 0.5) expect(waterEnthalpy(t + 0.5)).toBeGreaterThan(waterEnthalpy(t));
  });

  it('passes NaN on, so that the integrator can name it', () => {
    for (const f of [
      waterEnthalpy,
      waterTemperatureFromEnthalpy,
      waterHeatCapacity,
      waterDensity,
      waterViscosity,
    ]) {
      expect(f(Number.NaN)).toBeNaN();
    }
  });
});

describe('water properties', () => {
  it('expand as the density says', () => {
    for (const t of [-15, 0, 3.98, 8, 40, 99, 140]) {
      expect(Math.abs(waterExpansion(t) + slope(waterDensity, t) / waterDensity(t))).toBeLessThan(1e-9);
    }
  });

  it('stay positive and finite from -100 to 500 C', () => {
    for (let t = -100; t <= 500; t += 1) {
      for (const f of [waterDensity, waterHeatCapacity, waterConductivity, waterViscosity, waterLatentHeat]) {
        expect(f(t)).toBeGreaterThan(0);
        expect(Number.isFinite(f(t))).toBe(true);
      }
    }
  });

  it('fall in viscosity and latent heat all the way up', () => {
    for (let t = -20; t < 140; t++) {
      expect(waterViscosity(t + 1)).toBeLessThan(waterViscosity(t));
      expect(waterLatentHeat(t + 1)).toBeLessThan(waterLatentHeat(t));
    }
  });

  it('boil at the temperature whose saturation pressure is meant', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 370, noNaN: true }), (t) => {
        expect(Math.abs(waterBoilingPoint(waterSaturationPressure(t)) - t)).toBeLessThan(1e-6);
      }),
    );
  });
});
