import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  collectorEfficiency,
  collectorLoss_W_m2,
  excessLoss_W_m2K4,
  glassModifier,
  singleModifier,
  stagnationRise_K,
  stagnationTemperature_C,
  tubeAngles,
  tubeModifier,
} from '../../../sim/physics/collector.ts';
import { incidenceCosine } from '../../../sim/physics/sun.ts';

const DEGREE = Math.PI / 180;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ratings = fc.record({
  eta0: between(0.3, 0.85),
  a1_W_m2K: between(0.4, 6),
  a2_W_m2K2: between(0, 0.03),
});
const goodTube = { eta0: 0.62, a1_W_m2K: 0.8, a2_W_m2K2: 0.004 };

describe('stagnation', () => {
  it('is where efficiency is nought and gain equals loss', () => {
    fc.assert(
      fc.property(ratings, between(20, 1200), (rating, light) => {
        const rise = stagnationRise_K(rating, light);
        expect(collectorEfficiency(rating, rise, light)).toBeCloseTo(0, 9);
        expect(collectorLoss_W_m2(rating, 0, rise)).toBeCloseTo(rating.eta0 * light, 6);
      }),
    );
  });

  it('is the air’s temperature in the dark', () => {
    expect(stagnationTemperature_C(goodTube, { kept_W_m2: 0, air_C: -7 })).toBe(-7);
  });

  it('stops at the ceiling', () => {
    expect(stagnationTemperature_C(goodTube, { kept_W_m2: 1000, air_C: 30 }, 280)).toBe(280);
    expect(stagnationTemperature_C(goodTube, { kept_W_m2: 100, air_C: 30 }, 280)).toBeLessThan(280);
  });
});

describe('excessLoss_W_m2K4', () => {
  it('brings stagnation in full sun to the ceiling and hardly touches working temperatures', () => {
    const excess = excessLoss_W_m2K4(goodTube, 280);
    expect(collectorLoss_W_m2(goodTube, excess, 250)).toBeCloseTo(620, 9);
    const plain = collectorLoss_W_m2(goodTube, 0, 50);
    expect(collectorLoss_W_m2(goodTube, excess, 50) - plain).toBeLessThan(0.3);
  });

  it('is nought where the quadratic stays below the ceiling by itself', () => {
    expect(excessLoss_W_m2K4({ eta0: 0.76, a1_W_m2K: 3.6, a2_W_m2K2: 0.014 }, 250)).toBe(0);
  });
});

describe('collectorLoss_W_m2', () => {
  it('grows with every kelvin and is the same gain from warmer air', () => {
    fc.assert(
      fc.property(ratings, between(0, 300), between(0, 1e-8), (rating, rise, excess) => {
        expect(collectorLoss_W_m2(rating, excess, rise + 1)).toBeGreaterThan(
          collectorLoss_W_m2(rating, excess, rise),
        );
        expect(collectorLoss_W_m2(rating, excess, -rise)).toBeCloseTo(
          -collectorLoss_W_m2(rating, excess, rise),
          9,
        );
      }),
    );
  });
});

describe('incidence modifiers of glass', () => {
  it('are 1 head on, fall all the way, and are nought at the edge and behind', () => {
    expect(singleModifier(0.15, 1)).toBe(1);
    expect(glassModifier(0)).toBe(1);
    for (let a = 0; a < 89; a++) {
      expect(glassModifier((a + 1) * DEGREE)).toBeLessThan(glassModifier(a * DEGREE) + 1e-9);
      expect(singleModifier(0.15, Math.cos((a + 1) * DEGREE))).toBeLessThanOrEqual(
        singleModifier(0.15, Math.cos(a * DEGREE)),
      );
    }
    expect(glassModifier(Math.PI / 2)).toBe(0);
    expect(singleModifier(0.15, 0)).toBe(0);
    expect(singleModifier(0.15, -0.5)).toBe(0);
    expect(singleModifier(0.3, 0.1)).toBe(0);
  });
});

describe('tubeAngles', () => {
  const plane = { tilt_rad: 50 * DEGREE, azimuth_rad: 200 * DEGREE };

  it('has the angle to the normal as the root of both tangents’ squares', () => {
    fc.assert(
      fc.property(between(0.01, 1.5), between(0, 6.28), (zenith_rad, azimuth_rad) => {
        const sun = { zenith_rad, azimuth_rad };
        const cos = incidenceCosine(sun, plane);
        fc.pre(cos > 0.05);
        const { lengthwise_rad, crosswise_rad } = tubeAngles(sun, plane);
        const tangent = Math.hypot(Math.tan(lengthwise_rad), Math.tan(crosswise_rad));
        expect(tangent).toBeCloseTo(Math.tan(Math.acos(cos)), 6);
      }),
    );
  });

  it('has no crosswise angle in the plane’s own meridian and no lengthwise one along the normal’s row', () => {
    const high = tubeAngles({ zenith_rad: 20 * DEGREE, azimuth_rad: plane.azimuth_rad }, plane);
    expect(high.crosswise_rad).toBeCloseTo(0, 12);
    expect(high.lengthwise_rad).toBeCloseTo(30 * DEGREE, 12);
    const upright = { tilt_rad: Math.PI / 2, azimuth_rad: Math.PI };
    const side = tubeAngles({ zenith_rad: Math.PI / 2, azimuth_rad: Math.PI + 40 * DEGREE }, upright);
    expect(side.lengthwise_rad).toBeCloseTo(0, 12);
    expect(side.crosswise_rad).toBeCloseTo(40 * DEGREE, 12);
  });
});

describe('tubeModifier', () => {
  const curves = {
    angle_rad: [0, 30 * DEGREE, 60 * DEGREE],
    lengthwise: [1, 0.98, 0.9],
    crosswise: [1, 1.1, 1.4],
  };
  const at = (lengthwise: number, crosswise: number) =>
    tubeModifier(curves, { lengthwise_rad: lengthwise * DEGREE, crosswise_rad: crosswise * DEGREE });

  it('is the product of both curves, linear between their angles', () => {
    expect(at(0, 0)).toBe(1);
    expect(at(30, 60)).toBeCloseTo(0.98 * 1.4, 12);
    expect(at(45, 15)).toBeCloseTo(0.94 * 1.05, 12);
  });

  it('falls straight to nought beyond its last angle', () => {
    expect(at(75, 0)).toBeCloseTo(0.45, 12);
    expect(at(0, 90)).toBe(0);
  });
});
