/** Invented places and climates the weather tests share. */
import { monthlyFromLatitude } from '../../../../sim/parts/weather/latitude.ts';
import type { CollectorAspect } from '../../../../sim/parts/weather/plane-of-array.ts';
import type { MonthlyWeather, WeatherSite } from '../../../../sim/parts/weather/types.ts';

export const DEGREE = Math.PI / 180;

/** A cold hillside at 44 N whose clock is close to its Sun. */
export const hillside: WeatherSite = {
  place: 'Hillside',
  latitude_rad: 44 * DEGREE,
  longitude_rad: -74 * DEGREE,
  altitude_m: 300,
  time_zone_s: -5 * 3600,
};

export const climate: MonthlyWeather = monthlyFromLatitude(
  hillside.latitude_rad,
  'average',
  hillside.altitude_m,
);

/** A plane facing south that takes in all light from every side. */
export function plane(tilt_deg: number, over: Partial<CollectorAspect> = {}): CollectorAspect {
  return {
    tilt_rad: tilt_deg * DEGREE,
    azimuth_rad: Math.PI,
    horizon: [],
    shade_by_month: new Array<number>(12).fill(0),
    incidence: { kind: 'single', b0: 0 },
    diffuse_modifier: 1,
    ...over,
  };
}

export const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((s, x) => s + x, 0);
export const mean = (values: ArrayLike<number>): number => sum(values) / values.length;

/** The largest of a figure over the hours of the year: one assertion for 8760 hours. */
export function worst(figure: (hour: number) => number): number {
  let largest = Number.NEGATIVE_INFINITY;
  for (let h = 0; h < 8760; h++) {
    const value = figure(h);
    if (!(value <= largest)) largest = value;
  }
  return largest;
}
