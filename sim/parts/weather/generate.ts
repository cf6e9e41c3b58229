/** A whole year of hourly weather out of twelve monthly means and a seed. */
import { seededRandom } from '../../numerics/random.ts';
import type { HourlyWeather } from '../description.ts';
import { DAYS, HOURS, MONTH_START, monthOfDay } from './calendar.ts';
import { dailyAir_C, dailySwing_K, hourlyAir_C, hourlyDewPoint_C, hourlyWind_m_s } from './generate-air.ts';
import { dailyClearness, hourlyGlobal_W_m2 } from './generate-sun.ts';
import { splitGlobal } from './split-global.ts';
import { type SunOfYear, sunOfYear } from './sun-of-year.ts';
import type { MonthlyWeather, WeatherSite } from './types.ts';

/**
 * Generates hourly weather. Every month keeps its mean air temperature, wind and sun exactly; the seed only
 * decides the order of bright and dull, warm and cold days. Cold spells and cloudy runs are not tied to each
 * other, and within a day the sky does not change.
 *
 * @param monthly means by month; clearness 0.1..0.8
 * @param site where
 * @param seed same seed, same year
 * @throws RangeError naming the list and month that is out of range
 */
export function generateWeather(monthly: MonthlyWeather, site: WeatherSite, seed: number): HourlyWeather {
  const sun = sunOfYear(site);
  const above_J_m2 = dailyAbove_J_m2(sun);
  const kt = monthlyClearness(monthly, above_J_m2);
  checkMonthly(monthly, kt);
  const uniform = seededRandom(seed);
  const clearness = dailyClearness(kt, above_J_m2, uniform);
  const global = hourlyGlobal_W_m2(sun, clearness);
  const direct = new Float64Array(HOURS);
  const diffuse = new Float64Array(HOURS);
  for (let h = 0; h < HOURS; h++) {
    const parts = splitGlobal(sun, h, { global_W_m2: global[h], diffuse_W_m2: undefined }, site.altitude_m);
    direct[h] = parts.direct_normal_W_m2;
    diffuse[h] = parts.diffuse_horizontal_W_m2;
  }
  const daily_C = dailyAir_C(monthly, uniform);
  const air_C = hourlyAir_C(daily_C, dailySwing_K(monthly.swing_K, clearness), monthly.air_C);
  return {
    place: site.place,
    made_up: true,
    latitude_rad: site.latitude_rad,
    longitude_rad: site.longitude_rad,
    altitude_m: site.altitude_m,
    time_zone_s: site.time_zone_s,
    global_horizontal_W_m2: global,
    direct_normal_W_m2: direct,
    diffuse_horizontal_W_m2: diffuse,
    air_C,
    dew_point_C: hourlyDewPoint_C(daily_C, air_C, monthly.relative_humidity),
    wind_m_s: hourlyWind_m_s(monthly.wind_m_s, uniform),
    albedo: Float64Array.from({ length: HOURS }, (_, h) => monthly.albedo[monthOfDay(Math.floor(h / 24))]),
  };
}

/** Energy above the air on the horizontal, by day. */
function dailyAbove_J_m2(sun: SunOfYear): Float64Array {
  return Float64Array.from({ length: DAYS }, (_, day) =>
    sun.horizontal_W_m2.subarray(24 * day, 24 * day + 24).reduce((sum, w) => sum + 3600 * w, 0),
  );
}

/** Sun by month as clearness. Where no sun rises the clearness is of no account and taken as a dull 0.3. */
function monthlyClearness(monthly: MonthlyWeather, above_J_m2: Float64Array): number[] {
  const { sun } = monthly;
  if (sun.kind === 'clearness') return [...sun.share];
  return sun.J_m2.map((sum, month) => {
    const part = above_J_m2.subarray(MONTH_START[month], MONTH_START[month + 1]);
    const above = part.reduce((total, x) => total + x, 0) / part.length;
    return above > 0 || sum > 0 ? sum / above : 0.3;
  });
}

/** Ranges of the monthly lists; wide enough for any inhabited place. */
const RANGES: [keyof Omit<MonthlyWeather, 'sun'>, number, number, string][] = [
  ['air_C', -60, 50, 'C'],
  ['swing_K', 0, 30, 'K'],
  ['day_to_day_K', 0, 15, 'K'],
  ['relative_humidity', 0, 1, 'as a share'],
  ['wind_m_s', 0, 30, 'm/s'],
  ['albedo', 0, 1, 'as a share'],
];

function checkMonthly(monthly: MonthlyWeather, kt: readonly number[]): void {
  for (const [key, low, high, unit] of RANGES) checkList(key, monthly[key], low, high, unit);
  checkList('sun', kt, 0.1, 0.8, 'of what arrives above the air');
}

function checkList(key: string, values: readonly number[], low: number, high: number, unit: string): void {
  if (values.length !== 12) {
    throw new RangeError(
      `weather.${key} - expected 12 monthly values, January first - got ${values.length} - give every month`,
    );
  }
  const bad = values.findIndex((x) => !(x >= low && x <= high));
  if (bad >= 0) {
    throw new RangeError(
      `weather.${key}, month ${bad + 1} - expected ${low} to ${high} ${unit} - got ${values[bad]} - ` +
        'check the value and its unit',
    );
  }
}
