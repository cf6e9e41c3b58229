/** Weather made by hand: 8760 equal hours, or 365 equal days. */
import type { HourlyWeather } from '../../../sim/parts/description.ts';

const HOURS = 8760;

/** A year of equal hours. */
export function steadyWeather(
  air_C: number,
  over: { direct?: number; diffuse?: number } = {},
): HourlyWeather {
  const all = (value: number) => new Float64Array(HOURS).fill(value);
  const { direct = 0, diffuse = 0 } = over;
  return {
    place: 'nowhere',
    latitude_rad: 0.77,
    longitude_rad: 0,
    altitude_m: 0,
    time_zone_s: 0,
    global_horizontal_W_m2: all(diffuse),
    direct_normal_W_m2: all(direct),
    diffuse_horizontal_W_m2: all(diffuse),
    air_C: all(air_C),
    dew_point_C: all(air_C - 5),
    wind_m_s: all(0),
    albedo: all(0.2),
  };
}

/** A year of equal days: sun from 7 to 17 h, strongest at noon. */
export function sunnyWeather(air_C: number): HourlyWeather {
  const weather = steadyWeather(air_C);
  for (let h = 0; h < HOURS; h++) {
    const height = Math.max(0, Math.sin((Math.PI * ((h % 24) - 7)) / 10)) * (h % 24 < 17 ? 1 : 0);
    weather.direct_normal_W_m2[h] = 700 * height;
    weather.diffuse_horizontal_W_m2[h] = 120 * height;
    weather.global_horizontal_W_m2[h] = 350 * height;
  }
  return weather;
}
