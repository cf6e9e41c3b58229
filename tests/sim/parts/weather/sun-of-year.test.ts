import { describe, expect, it } from 'vitest';
import { NOMINAL_START_DAYS, sunOfYear } from '../../../../sim/parts/weather/sun-of-year.ts';
import { sunPosition } from '../../../../sim/physics/sun.ts';
import { DEGREE, hillside, sum } from './places.ts';

const at = (latitude: number, longitude: number, zone_h: number) => ({
  latitude_rad: latitude * DEGREE,
  longitude_rad: longitude * DEGREE,
  altitude_m: 0,
  time_zone_s: zone_h * 3600,
});

describe('sunOfYear', () => {
  it.each([hillside, at(-35, 150, 10), at(65, -160, -9), at(-80, 10, 0)])(
    'has the Sun within 0.004 degree of the full position at %o',
    (site) => {
      const sun = sunOfYear(site);
      let compared = 0;
      for (let h = 0; h < 8760; h += 7) {
        if (sun.up_share[h] < 1) continue;
        const when = NOMINAL_START_DAYS + (h + 0.5) / 24 - site.time_zone_s / 86400;
        const seen = sunPosition(when, site);
        expect(Math.abs(seen.zenith_rad - sun.zenith_rad[h]) / DEGREE).toBeLessThan(0.004);
        expect(
          Math.abs(Math.sin((seen.azimuth_rad - sun.azimuth_rad[h]) / 2)) * Math.sin(seen.zenith_rad),
        ).toBeLessThan(4e-5);
        compared++;
      }
      expect(compared).toBeGreaterThan(400);
    },
  );

  it('is up for half the year plus nothing, anywhere, within the dates’ unevenness', () => {
    for (const latitude of [0, 30, 60, 85]) {
      expect(Math.abs(sum(sunOfYear(at(latitude, 0, 0)).up_share) / 4380 - 1)).toBeLessThan(0.03);
    }
  });

  it('has daylight and darkness for whole days at the pole', () => {
    const sun = sunOfYear(at(85, 0, 0));
    expect(sum(sun.up_share.subarray(171 * 24, 172 * 24))).toBe(24);
    expect(sum(sun.up_share.subarray(355 * 24, 356 * 24))).toBe(0);
    expect(sum(sun.horizontal_W_m2.subarray(355 * 24, 356 * 24))).toBe(0);
  });

  it('keeps a day whose sunset comes after midnight whole', () => {
    // Clock five hours ahead of the Sun: the summer Sun sets after midnight.
    const shifted = sunOfYear(at(60, 0, 5));
    const plain = sunOfYear(at(60, 0, 0));
    const total = (from: number) => sum(shifted.horizontal_W_m2.subarray(from + 5, from + 29));
    const day = 172 * 24;
    expect(Math.abs(total(day) / sum(plain.horizontal_W_m2.subarray(day, day + 24)) - 1)).toBeLessThan(1e-3);
  });

  it('has the hour’s mean above the air, against a fine sum', () => {
    const sun = sunOfYear(hillside);
    for (const h of [200 * 24 + 4, 200 * 24 + 12, 340 * 24 + 7, 340 * 24 + 16]) {
      let fine = 0;
      for (let i = 0; i < 600; i++) {
        const when = NOMINAL_START_DAYS + (h + (i + 0.5) / 600) / 24 + 5 / 24;
        const seen = sunPosition(when, hillside);
        fine += ((1361 / seen.distance_au ** 2) * Math.max(0, Math.cos(seen.zenith_rad))) / 600;
      }
      expect(Math.abs(sun.horizontal_W_m2[h] - fine)).toBeLessThan(0.2);
    }
  });
});
