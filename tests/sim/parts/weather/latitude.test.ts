import { describe, expect, it } from 'vitest';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import {
  LATITUDE_BANDS,
  monthlyFromLatitude,
  roughDayToDay_K,
} from '../../../../sim/parts/weather/latitude.ts';
import { DEGREE, hillside, mean, sum } from './places.ts';

const at = (latitude: number, climate: 'cloudy' | 'average' | 'clear' = 'average', altitude = 0) =>
  monthlyFromLatitude(latitude * DEGREE, climate, altitude);

describe('monthlyFromLatitude', () => {
  it('has its winter in January in the north and in July in the south', () => {
    const coldest = (latitude: number) => {
      const { air_C } = at(latitude);
      return air_C.indexOf(Math.min(...air_C));
    };
    expect(coldest(45)).toBe(0);
    expect(coldest(-45)).toBe(6);
  });

  it('is colder towards the pole and uphill, and brighter under clearer skies', () => {
    for (let latitude = 0; latitude < 80; latitude += 10) {
      expect(mean(at(latitude + 10).air_C)).toBeLessThan(mean(at(latitude).air_C));
    }
    expect(mean(at(45, 'average', 2000).air_C)).toBeCloseTo(mean(at(45).air_C) - 11, 6);
    const sun = (sky: 'cloudy' | 'average' | 'clear') =>
      sum(generateWeather(at(44, sky), hillside, 1).global_horizontal_W_m2) / 1000;
    expect(sun('cloudy')).toBeLessThan(sun('average'));
    expect(sun('average')).toBeLessThan(sun('clear'));
  });

  // Common knowledge of yearly sums at 44 N: dull seaboards about 1100, high deserts about 1700 kWh/m2.
  it('has yearly sums of sun as the mid-latitudes know them', () => {
    for (const [sky, low, high] of [
      ['cloudy', 1000, 1200],
      ['average', 1250, 1450],
      ['clear', 1550, 1800],
    ] as const) {
      const total = sum(generateWeather(at(44, sky), hillside, 1).global_horizontal_W_m2) / 1000;
      expect(total).toBeGreaterThan(low);
      expect(total).toBeLessThan(high);
    }
  });

  it('is accepted by the generator over the whole globe, with snow only where it freezes', () => {
    const places = [-80, -45, 0, 45, 80].flatMap((latitude) => [
      { latitude, sky: 'cloudy' as const, altitude: 4500 },
      { latitude, sky: 'clear' as const, altitude: 0 },
    ]);
    for (const { latitude, sky, altitude } of places) {
      const monthly = at(latitude, sky, altitude);
      expect(() =>
        generateWeather(monthly, { ...hillside, latitude_rad: latitude * DEGREE }, 1),
      ).not.toThrow();
      monthly.albedo.forEach((albedo, m) => {
        expect(albedo > 0.3).toBe(monthly.air_C[m] < -1);
      });
    }
  });

  it('says how rough each of its lists is', () => {
    const { air_C, ...others } = at(45);
    expect(air_C).toHaveLength(12);
    expect(Object.keys(LATITUDE_BANDS).sort()).toEqual([...Object.keys(others), 'air_K'].sort());
  });
});

describe('roughDayToDay_K', () => {
  it('is widest in the coldest month and even where there are no seasons', () => {
    const spread = roughDayToDay_K([-8, -6, 0, 6, 12, 17, 20, 19, 14, 8, 2, -5]);
    expect(spread[0]).toBe(4.5);
    expect(spread[6]).toBe(2.5);
    expect(new Set(roughDayToDay_K(new Array(12).fill(27)))).toEqual(new Set([1.5]));
  });
});
