import { describe, expect, it } from 'vitest';
import { correlation } from '../../../../sim/numerics/random.ts';
import { MONTH_START } from '../../../../sim/parts/weather/calendar.ts';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import {
  dewPoint_C,
  hourlyShape,
  smoothDays,
  swingFromClearness_K,
} from '../../../../sim/parts/weather/generate-air.ts';
import { clearnessQuantile, clearnessRange } from '../../../../sim/parts/weather/generate-sun.ts';
import { sunOfYear } from '../../../../sim/parts/weather/sun-of-year.ts';
import { clearSkyIneichen } from '../../../../sim/physics/sky.ts';
import { airMass } from '../../../../sim/physics/sun.ts';
import { climate, DEGREE, hillside, mean, sum, worst } from './places.ts';

const weather = generateWeather(climate, hillside, 3);
const sun = sunOfYear(hillside);
const month = (series: Float64Array, m: number) =>
  series.subarray(24 * MONTH_START[m], 24 * MONTH_START[m + 1]);
const months = Array.from({ length: 12 }, (_, m) => m);
const daily = (series: Float64Array) =>
  Array.from({ length: 365 }, (_, day) => sum(series.subarray(24 * day, 24 * day + 24)));
const asked = climate.sun.kind === 'clearness' ? climate.sun.share : [];

describe('generateWeather', () => {
  it('keeps every month’s means of air, sun and wind exactly', () => {
    for (const m of months) {
      expect(mean(month(weather.air_C, m))).toBeCloseTo(climate.air_C[m], 9);
      expect(mean(month(weather.wind_m_s, m))).toBeCloseTo(climate.wind_m_s[m], 9);
      const clearness = sum(month(weather.global_horizontal_W_m2, m)) / sum(month(sun.horizontal_W_m2, m));
      expect(clearness).toBeCloseTo(asked[m], 9);
    }
  });

  it('takes a mean day’s sum in place of clearness', () => {
    const J_m2 = months.map(
      (m) => (sum(month(weather.global_horizontal_W_m2, m)) * 3600) / (MONTH_START[m + 1] - MONTH_START[m]),
    );
    const again = generateWeather({ ...climate, sun: { kind: 'daily sum', J_m2 } }, hillside, 3);
    const off = (h: number) => Math.abs(again.global_horizontal_W_m2[h] - weather.global_horizontal_W_m2[h]);
    expect(worst(off)).toBeLessThan(1e-3);
  });

  it('is the same for the same seed and another for the next', () => {
    expect(generateWeather(climate, hillside, 3)).toEqual(weather);
    const other = generateWeather(climate, hillside, 4);
    expect(other.air_C).not.toEqual(weather.air_C);
    expect(other.global_horizontal_W_m2).not.toEqual(weather.global_horizontal_W_m2);
  });

  it('adds up: global is diffuse plus the direct’s upright part, each at least nought', () => {
    const { direct_normal_W_m2: direct, diffuse_horizontal_W_m2: diffuse } = weather;
    expect(worst((h) => -direct[h])).toBeLessThanOrEqual(0);
    expect(worst((h) => -diffuse[h])).toBeLessThanOrEqual(0);
    const upright = (h: number) => (direct[h] > 0 ? direct[h] * Math.cos(sun.zenith_rad[h]) : 0);
    const open = (h: number) => weather.global_horizontal_W_m2[h] - diffuse[h] - upright(h);
    expect(worst((h) => Math.abs(open(h)))).toBeLessThan(1e-9);
  });

  it('has no beam stronger than very clear air lets through, and none without a Sun', () => {
    const clearest = (h: number) =>
      clearSkyIneichen({
        zenith_rad: sun.zenith_rad[h],
        air_mass: airMass(sun.zenith_rad[h]) * 0.964,
        turbidity: 2,
        altitude_m: hillside.altitude_m,
        normal_W_m2: sun.normal_W_m2[h],
      }).direct_normal_W_m2;
    expect(worst((h) => weather.direct_normal_W_m2[h] - 1.01 * clearest(h))).toBeLessThan(1e-9);
    expect(worst((h) => (sun.up_share[h] === 0 ? weather.global_horizontal_W_m2[h] : 0))).toBe(0);
  });

  it('has dull days and bright ones, in runs', () => {
    const clearness = (seed: number) => {
      const above = daily(sun.horizontal_W_m2);
      const year = generateWeather(climate, hillside, seed);
      return daily(year.global_horizontal_W_m2).map((x, day) => x / above[day]);
    };
    const years = Array.from({ length: 12 }, (_, seed) => clearness(seed));
    const neighbours = years.map((k) => correlation(k.slice(1), k.slice(0, -1)));
    // 0.29 as normal deviates; ranks within a month and its fixed mean take about 0.05 of it.
    expect(Math.abs(mean(neighbours) - 0.24)).toBeLessThan(0.04);
    const july = years.flatMap((k) => k.slice(MONTH_START[6], MONTH_START[7]));
    expect(Math.min(...july)).toBeLessThan(0.15);
    expect(Math.max(...july)).toBeGreaterThan(0.7);
    expect(Math.max(...years.flat())).toBeLessThan(0.85);
  });

  it('has warm and cold spells of the asked spread that last, and no step at the turn of a month', () => {
    const days = Array.from({ length: 8 }, (_, seed) =>
      daily(generateWeather(climate, hillside, seed).air_C).map((x) => x / 24),
    );
    const season = smoothDays(climate.air_C);
    const deviations = days.map((year) => year.map((t, day) => t - season[day]));
    const memory = mean(deviations.map((d) => correlation(d.slice(1), d.slice(0, -1))));
    // 0.75, less what the fixed monthly means take.
    expect(memory).toBeGreaterThan(0.6);
    expect(memory).toBeLessThan(0.78);
    const spread = Math.sqrt(mean(deviations.flat().map((x) => x * x)));
    const asked = mean(climate.day_to_day_K);
    expect(spread).toBeGreaterThan(0.7 * asked);
    expect(spread).toBeLessThan(1.05 * asked);
    const steps = (atTurn: boolean) =>
      days.flatMap((year) =>
        year
          .slice(1)
          .flatMap((t, i) => (MONTH_START.includes(i + 1) === atTurn ? [Math.abs(t - year[i])] : [])),
      );
    expect(mean(steps(true))).toBeLessThan(1.3 * mean(steps(false)));
  });

  it('swings by the asked amount in the mean, more on clear days, warmest in the afternoon', () => {
    const swings = Array.from({ length: 365 }, (_, day) => {
      const hours = weather.air_C.subarray(24 * day, 24 * day + 24);
      return Math.max(...hours) - Math.min(...hours);
    });
    for (const m of [0, 6]) {
      const mine = swings.slice(MONTH_START[m], MONTH_START[m + 1]);
      expect(Math.abs(mean(mine) / climate.swing_K[m] - 1)).toBeLessThan(0.35); // day-to-day drift adds to it
    }
    const july = { from: MONTH_START[6], to: MONTH_START[7] };
    const sunny = daily(weather.global_horizontal_W_m2).slice(july.from, july.to);
    expect(correlation(swings.slice(july.from, july.to), sunny)).toBeGreaterThan(0.5);
    const byHour = Array.from({ length: 24 }, (_, k) => mean(weather.air_C.filter((_, h) => h % 24 === k)));
    expect(byHour.indexOf(Math.max(...byHour))).toBeGreaterThanOrEqual(14);
    expect(byHour.indexOf(Math.max(...byHour))).toBeLessThanOrEqual(16);
    expect(byHour.indexOf(Math.min(...byHour))).toBeLessThanOrEqual(6);
  });

  it('never has air drier than nothing or wetter than full', () => {
    expect(worst((h) => weather.dew_point_C[h] - weather.air_C[h])).toBeLessThanOrEqual(0);
    expect(worst((h) => -weather.dew_point_C[h])).toBeLessThan(60);
    expect(worst((h) => -weather.wind_m_s[h])).toBeLessThan(0);
    expect(worst((h) => weather.wind_m_s[h])).toBeLessThan(20);
  });

  it.each([-55, -10, 0, 23.4, 66.6, 78])('works at latitude %f', (latitude) => {
    const year = generateWeather(climate, { ...hillside, latitude_rad: latitude * DEGREE }, 1);
    for (const series of Object.values(year)) {
      if (series instanceof Float64Array) expect(series.every(Number.isFinite)).toBe(true);
    }
  });

  it('keeps extreme months too', () => {
    for (const share of [0.1, 0.2, 0.7, 0.79]) {
      const year = generateWeather(
        { ...climate, sun: { kind: 'clearness', share: new Array(12).fill(share) } },
        hillside,
        1,
      );
      for (const m of months) {
        const clearness = sum(month(year.global_horizontal_W_m2, m)) / sum(month(sun.horizontal_W_m2, m));
        expect(clearness).toBeCloseTo(share, 9);
      }
    }
  });

  it('refuses what no climate has, naming list and month', () => {
    const bad = (over: object) => () => generateWeather({ ...climate, ...over }, hillside, 1);
    expect(bad({ air_C: climate.air_C.map((t, m) => (m === 2 ? 90 : t)) })).toThrow(
      'weather.air_C, month 3 - expected -60 to 50 C - got 90 - check the value and its unit',
    );
    expect(bad({ wind_m_s: [1, 2] })).toThrow(/weather.wind_m_s - expected 12 monthly values.* - got 2/);
    expect(bad({ sun: { kind: 'clearness', share: new Array(12).fill(0.9) } })).toThrow(
      /weather.sun, month 1.*got 0.9/,
    );
    expect(bad({ sun: { kind: 'daily sum', J_m2: new Array(12).fill(Number.NaN) } })).toThrow(
      /weather.sun, month 1/,
    );
  });
});

describe('clearnessRange', () => {
  it('has a distribution whose mean is the asked clearness within 0.02', () => {
    for (let kt = 0.3; kt <= 0.7; kt += 0.05) {
      const range = clearnessRange(kt);
      const quantiles = Array.from({ length: 2000 }, (_, i) => clearnessQuantile(range, (i + 0.5) / 2000));
      expect(Math.abs(mean(quantiles) - kt)).toBeLessThan(0.02);
      expect(clearnessQuantile(range, 0)).toBeCloseTo(0.05, 12);
      expect(clearnessQuantile(range, 1)).toBeCloseTo(range.k_max, 12);
    }
  });
});

describe('the air’s parts', () => {
  it('have a daily shape without a mean', () => {
    expect(mean(Array.from({ length: 24 }, (_, h) => hourlyShape(h + 0.5)))).toBeCloseTo(0, 12);
  });

  it('have a season that keeps the months', () => {
    const days = smoothDays(climate.air_C);
    for (const m of months) {
      expect(mean(days.subarray(MONTH_START[m], MONTH_START[m + 1]))).toBeCloseTo(climate.air_C[m], 10);
    }
    for (let day = 1; day < 365; day++) expect(Math.abs(days[day] - days[day - 1])).toBeLessThan(0.4);
  });

  it('have a dew point at the air’s temperature when saturated and far below when dry', () => {
    for (const air of [-20, 0, 15, 35]) {
      expect(dewPoint_C(air, 1)).toBeCloseTo(air, 6);
      expect(dewPoint_C(air, 0.5)).toBeLessThan(air - 7);
    }
    // Psychrometric tables: 20 C and 50 % have their dew point at 9.3 C (common, from memory).
    expect(dewPoint_C(20, 0.5)).toBeCloseTo(9.3, 1);
  });

  it('have a swing that grows with clearness', () => {
    expect(swingFromClearness_K(0.6)).toBeCloseTo(25.8 * 0.6 - 5.21, 12);
    expect(swingFromClearness_K(0.1)).toBe(2);
  });
});
