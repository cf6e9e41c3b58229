import { describe, expect, it } from 'vitest';
import { problemsWith, sound } from './support.ts';

const degrees = (rad: number) => (rad * 180) / Math.PI;

describe('the site', () => {
  it('without a longitude keeps clock noon near sun noon', () => {
    const { site } = sound({ site: { latitude: '44 N', time_zone: '-7 h' } }).plant;
    expect(degrees(site.longitude_rad)).toBeCloseTo(-105, 9);
    expect(sound({}).plant.site).toMatchObject({ longitude_rad: 0, time_zone_s: 0 });
  });

  it('without a time zone takes the nearest whole hour', () => {
    expect(sound({ site: { latitude: '44 N', longitude: '73.5 W' } }).plant.site.time_zone_s).toBe(-5 * 3600);
    expect(sound({ site: { latitude: '44 N', longitude: '11 E' } }).plant.site.time_zone_s).toBe(3600);
  });
});

describe('the weather', () => {
  it('made by latitude is of the site', () => {
    const { plant } = sound({ site: { latitude: '30 S', altitude: '1000 m' } });
    expect(plant.weather.air_C).toHaveLength(8760);
    expect(degrees(plant.weather.latitude_rad)).toBeCloseTo(-30, 9);
    const january = plant.weather.air_C.slice(0, 744).reduce((a, b) => a + b) / 744;
    const july = plant.weather.air_C.slice(4344, 5088).reduce((a, b) => a + b) / 744;
    expect(january).toBeGreaterThan(july + 3);
  });

  it('is another year for another seed and the same for the same', () => {
    const year = (seed: number) => sound({ weather: { kind: 'by latitude', seed } }).plant.weather.air_C;
    const first = year(1);
    expect(year(2)).not.toEqual(first);
    // Made anew: the year of seed 2 was the last.
    const again = year(1);
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });

  it('has snow’s albedo by its share of the month', () => {
    const snow = ['100 %', '50 %', ...Array(10).fill('0 %')];
    const monthly = {
      kind: 'monthly',
      air: Array(12).fill('5 C'),
      sun: Array(12).fill('1.3 kWh/m2 per day'),
      snow,
    } as const;
    const { albedo } = sound({ weather: monthly }).plant.weather;
    // 0.2 grass, 0.6 snow: common practice.
    expect([albedo[0], albedo[800], albedo[4000]].map((x) => Number(x.toFixed(6)))).toEqual([0.6, 0.4, 0.2]);
  });
});

describe('the run', () => {
  it('left out is a week from the first of January', () => {
    expect(sound({}).plant.run).toMatchObject({
      first_day: 0,
      first_weekday: 0,
      days: 7,
      interval_s: 300,
      layers: 20,
    });
  });

  it('knows the weekday of a date with its year, and takes the file’s word without', () => {
    expect(sound({ run: { from: '2027-01-09' } }).plant.run.first_weekday).toBe(5);
    expect(sound({ run: { from: '01-09', first_weekday: 'Wednesday' } }).plant.run.first_weekday).toBe(2);
  });

  it('plays failures until its end where no other is said, and refuses one that ends before it begins', () => {
    const { faults } = sound({ run: { days: 4, faults: [{ kind: 'engine', from: '2 days' }] } }).plant.run;
    expect(faults).toEqual([{ kind: 'engine', from_s: 172_800, to_s: 345_600 }]);
    const turned = { kind: 'household', from: '2 days', to: '1 day' } as const;
    expect(problemsWith({ run: { days: 4, faults: [turned] } })).toMatchObject([
      { path: 'run.faults[0].to' },
    ]);
  });

  it('begins with a stirred store where only the bottom is given', () => {
    const { start } = sound({ run: { start: { bottom: '50 C' } } }).plant.run;
    expect(start).toEqual({ bottom_C: 50, top_C: 50 });
  });
});
