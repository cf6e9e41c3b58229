import { describe, expect, it } from 'vitest';
import { horizonElevation_rad, skyShare } from '../../../../sim/parts/weather/horizon.ts';
import { DEGREE } from './places.ts';

const ridge = [
  { azimuth_rad: 90 * DEGREE, elevation_rad: 10 * DEGREE },
  { azimuth_rad: 180 * DEGREE, elevation_rad: 30 * DEGREE },
  { azimuth_rad: 300 * DEGREE, elevation_rad: 0 },
];
const at = (azimuth: number) => horizonElevation_rad(ridge, azimuth * DEGREE) / DEGREE;

describe('horizonElevation_rad', () => {
  it('is open without a line', () => {
    expect(horizonElevation_rad([], 2)).toBe(0);
  });

  it('passes through its points and is linear between, over north too', () => {
    expect(at(90)).toBeCloseTo(10, 10);
    expect(at(135)).toBeCloseTo(20, 10);
    expect(at(240)).toBeCloseTo(15, 10);
    expect(at(15)).toBeCloseTo(5, 10);
    expect(at(375)).toBeCloseTo(5, 10);
    expect(at(-345)).toBeCloseTo(5, 10);
  });

  it('is the same all round with one point', () => {
    const one = [{ azimuth_rad: 1, elevation_rad: 0.2 }];
    for (const azimuth of [0, 1, 4]) expect(horizonElevation_rad(one, azimuth)).toBeCloseTo(0.2, 12);
  });
});

describe('skyShare', () => {
  const ring = (elevation: number) => [{ azimuth_rad: 0, elevation_rad: elevation * DEGREE }];
  const flat = { tilt_rad: 0, azimuth_rad: Math.PI };

  it('is 1 under an open sky', () => {
    expect(skyShare([], flat)).toBe(1);
    expect(skyShare(ring(0), flat)).toBe(1);
  });

  it('is cos^2 of a ring’s height for a plane lying flat', () => {
    for (const height of [5, 20, 45]) {
      expect(skyShare(ring(height), flat)).toBeCloseTo(Math.cos(height * DEGREE) ** 2, 2);
    }
  });

  it('counts only what the plane faces: a hill behind an upright wall takes nothing', () => {
    const north = [
      { azimuth_rad: 0, elevation_rad: 40 * DEGREE },
      { azimuth_rad: 80 * DEGREE, elevation_rad: 40 * DEGREE },
      { azimuth_rad: 85 * DEGREE, elevation_rad: 0 },
      { azimuth_rad: 275 * DEGREE, elevation_rad: 0 },
      { azimuth_rad: 280 * DEGREE, elevation_rad: 40 * DEGREE },
    ];
    const wall = { tilt_rad: Math.PI / 2, azimuth_rad: Math.PI };
    expect(skyShare(north, wall)).toBeGreaterThan(0.999);
    expect(skyShare(north, { ...wall, azimuth_rad: 0 })).toBeLessThan(0.6);
  });
});
