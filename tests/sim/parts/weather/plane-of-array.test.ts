import { describe, expect, it } from 'vitest';
import { MONTH_START } from '../../../../sim/parts/weather/calendar.ts';
import { generateWeather } from '../../../../sim/parts/weather/generate.ts';
import { planeOfArray } from '../../../../sim/parts/weather/plane-of-array.ts';
import { sunOfYear } from '../../../../sim/parts/weather/sun-of-year.ts';
import { climate, DEGREE, hillside, plane, sum, worst } from './places.ts';

const weather = generateWeather(climate, hillside, 5);
const month = (series: Float64Array, m: number) =>
  series.subarray(24 * MONTH_START[m], 24 * MONTH_START[m + 1]);

describe('planeOfArray', () => {
  it('gives a plane lying flat the horizontal’s own sun, hour by hour', () => {
    const flat = planeOfArray(weather, hillside, plane(0));
    const sun = sunOfYear(hillside);
    const bands = [
      { from: 0, to: 85, slack: 1e-9 },
      // Below 5 degrees the published form holds the light around the Sun back.
      { from: 85, to: 181, slack: 2 },
    ];
    for (const { from, to, slack } of bands) {
      const inside = (h: number) => sun.zenith_rad[h] >= from * DEGREE && sun.zenith_rad[h] < to * DEGREE;
      const off = (h: number) => Math.abs(flat.plane_W_m2[h] - weather.global_horizontal_W_m2[h]);
      const offDiffuse = (h: number) => Math.abs(flat.diffuse_W_m2[h] - weather.diffuse_horizontal_W_m2[h]);
      expect(worst((h) => (inside(h) ? off(h) : 0))).toBeLessThan(slack);
      expect(worst((h) => (inside(h) ? offDiffuse(h) : 0))).toBeLessThan(slack);
    }
  });

  it('is beam plus diffuse, never negative, and dark at night', () => {
    const sun = sunOfYear(hillside);
    const tilted = planeOfArray(weather, hillside, plane(60));
    expect(
      worst((h) => Math.abs(tilted.plane_W_m2[h] - tilted.beam_W_m2[h] - tilted.diffuse_W_m2[h])),
    ).toBeLessThan(1e-9);
    expect(worst((h) => -tilted.beam_W_m2[h])).toBeLessThanOrEqual(0);
    expect(worst((h) => -tilted.diffuse_W_m2[h])).toBeLessThanOrEqual(0);
    expect(worst((h) => tilted.plane_W_m2[h])).toBeLessThan(1400);
    expect(worst((h) => (sun.up_share[h] === 0 ? tilted.plane_W_m2[h] : 0))).toBe(0);
  });

  it('wins in winter and loses in summer by standing steep', () => {
    const steep = planeOfArray(weather, hillside, plane(65)).plane_W_m2;
    const low = planeOfArray(weather, hillside, plane(20)).plane_W_m2;
    expect(sum(month(steep, 11))).toBeGreaterThan(1.15 * sum(month(low, 11)));
    expect(sum(month(steep, 5))).toBeLessThan(0.9 * sum(month(low, 5)));
  });

  it('has the morning on an eastern plane and the evening on a western one', () => {
    const east = planeOfArray(weather, hillside, plane(60, { azimuth_rad: Math.PI / 2 })).plane_W_m2;
    const west = planeOfArray(weather, hillside, plane(60, { azimuth_rad: (3 * Math.PI) / 2 })).plane_W_m2;
    const hoursOf = (series: Float64Array, from: number, to: number) =>
      sum(series.filter((_, h) => h % 24 >= from && h % 24 < to));
    expect(hoursOf(east, 6, 11)).toBeGreaterThan(1.5 * hoursOf(west, 6, 11));
    expect(hoursOf(west, 13, 18)).toBeGreaterThan(1.5 * hoursOf(east, 13, 18));
  });

  it('takes in all of it with flat modifiers, and in proportion with others', () => {
    const all = planeOfArray(weather, hillside, plane(50));
    const half = planeOfArray(weather, hillside, plane(50, { diffuse_modifier: 0.5 }));
    expect(worst((h) => Math.abs(all.absorbed_W_m2[h] - all.plane_W_m2[h]))).toBeLessThan(1e-9);
    const expected = (h: number) => all.beam_W_m2[h] + all.diffuse_W_m2[h] / 2;
    expect(worst((h) => Math.abs(half.absorbed_W_m2[h] - expected(h)))).toBeLessThan(1e-9);
  });

  it('weakens slanting beam by b0, and strengthens it where round tubes turn to the Sun', () => {
    const glass = planeOfArray(weather, hillside, plane(50, { incidence: { kind: 'single', b0: 0.15 } }));
    const angle_rad = [0, 30, 60, 80].map((a) => a * DEGREE);
    const tubes = planeOfArray(
      weather,
      hillside,
      plane(50, {
        incidence: { kind: 'two-way', angle_rad, lengthwise: [1, 1, 1, 1], crosswise: [1, 1.1, 1.35, 1.2] },
      }),
    );
    const plain = sum(glass.plane_W_m2);
    expect(sum(glass.absorbed_W_m2)).toBeLessThan(0.98 * plain);
    expect(sum(tubes.absorbed_W_m2)).toBeGreaterThan(1.02 * plain);
  });

  it('loses the month’s share to snow or shade on the glass, and only what is taken in', () => {
    const shade_by_month = [0.4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1];
    const clean = planeOfArray(weather, hillside, plane(50));
    const shaded = planeOfArray(weather, hillside, plane(50, { shade_by_month }));
    expect(shaded.plane_W_m2).toEqual(clean.plane_W_m2);
    expect(sum(month(shaded.absorbed_W_m2, 0))).toBeCloseTo(0.6 * sum(month(clean.absorbed_W_m2, 0)), 6);
    expect(sum(month(shaded.absorbed_W_m2, 6))).toBe(sum(month(clean.absorbed_W_m2, 6)));
    expect(sum(month(shaded.absorbed_W_m2, 11))).toBe(0);
  });

  it('loses the low winter Sun behind a hill in the south, little of the summer’s', () => {
    const horizon = [90, 100, 260, 270].map((azimuth, i) => ({
      azimuth_rad: azimuth * DEGREE,
      elevation_rad: i === 1 || i === 2 ? 28 * DEGREE : 0,
    }));
    const open = planeOfArray(weather, hillside, plane(60));
    const hill = planeOfArray(weather, hillside, plane(60, { horizon }));
    expect(sum(month(hill.beam_W_m2, 11))).toBe(0); // noon Sun at 22.6 degrees in mid December
    expect(sum(month(hill.beam_W_m2, 5))).toBeGreaterThan(0.8 * sum(month(open.beam_W_m2, 5)));
    expect(sum(month(hill.diffuse_W_m2, 5))).toBeLessThan(sum(month(open.diffuse_W_m2, 5)));
    expect(hill.diffuse_W_m2.every((x) => x >= 0)).toBe(true);
  });

  it('gains from snow on the ground', () => {
    const snow = { ...weather, albedo: weather.albedo.map(() => 0.7) };
    const bare = planeOfArray(weather, hillside, plane(70));
    const white = planeOfArray(snow, hillside, plane(70));
    const view = (1 - Math.cos(70 * DEGREE)) / 2;
    const gained = sum(white.plane_W_m2) - sum(bare.plane_W_m2);
    const expected = weather.global_horizontal_W_m2.reduce(
      (s, g, h) => s + g * (0.7 - weather.albedo[h]) * view,
      0,
    );
    expect(gained / expected).toBeCloseTo(1, 9);
  });

  it('takes a glimmer measured with the Sun down as even light from the sky', () => {
    const h = 24 * 180 + 1;
    const dusk = {
      ...weather,
      global_horizontal_W_m2: weather.global_horizontal_W_m2.map((x, i) => (i === h ? 8 : x)),
      diffuse_horizontal_W_m2: weather.diffuse_horizontal_W_m2.map((x, i) => (i === h ? 8 : x)),
    };
    const tilted = planeOfArray(dusk, hillside, plane(60));
    expect(tilted.beam_W_m2[h]).toBe(0);
    expect(tilted.diffuse_W_m2[h]).toBeCloseTo(8 * 0.75 + 8 * 0.25 * weather.albedo[h], 12);
  });

  it('is the same on the days asked for, over New Year too, and 0 on others', () => {
    const whole = planeOfArray(weather, hillside, plane(60)).absorbed_W_m2;
    const part = planeOfArray(weather, hillside, plane(60), { first: 363, count: 4 }).absorbed_W_m2;
    const asked = [...part.subarray(24 * 363), ...part.subarray(0, 48)];
    expect(asked).toEqual([...whole.subarray(24 * 363), ...whole.subarray(0, 48)]);
    expect(sum(part)).toBeCloseTo(sum(Float64Array.from(asked)), 9);
    expect(planeOfArray(weather, hillside, plane(60), { first: -1, count: 9999 }).absorbed_W_m2).toEqual(
      whole,
    );
  });

  it('takes a year in well under a second', () => {
    const started = performance.now();
    planeOfArray(weather, hillside, plane(60));
    expect(performance.now() - started).toBeLessThan(500); // 8 ms on an idle machine
  });
});
