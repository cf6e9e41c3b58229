/** Weather files written from generated years, as stations and loggers would write them. */
import type { HourlyWeather } from '../../../../sim/parts/description.ts';
import { MONTH_START, monthOfDay } from '../../../../sim/parts/weather/calendar.ts';

const two = (n: number) => String(n).padStart(2, '0');

/** Month and day (both from 1) of a day of the year. */
export function dateOf(day: number): { month: number; day: number } {
  const month = monthOfDay(day);
  return { month: month + 1, day: day - MONTH_START[month] + 1 };
}

export const TMY3_HEAD =
  'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dew-point (C),Wspd (m/s),Alb (unitless)';

/** Lines of a file in the open TMY3 layout: station, head, 8760 rows. */
export function tmy3Lines(weather: HourlyWeather, yearOf: (month: number) => number = () => 1999): string[] {
  const degrees = (rad: number) => ((rad * 180) / Math.PI).toFixed(3);
  const station = [
    '000001',
    '"HILLSIDE, UPPER"',
    'ZZ',
    weather.time_zone_s / 3600,
    degrees(weather.latitude_rad),
    degrees(weather.longitude_rad),
    weather.altitude_m,
  ].join(',');
  const rows = Array.from({ length: 8760 }, (_, h) => {
    const { month, day } = dateOf(Math.floor(h / 24));
    return [
      `${two(month)}/${two(day)}/${yearOf(month)}`,
      `${two((h % 24) + 1)}:00`,
      0,
      weather.global_horizontal_W_m2[h].toFixed(0),
      1,
      weather.direct_normal_W_m2[h].toFixed(0),
      weather.diffuse_horizontal_W_m2[h].toFixed(0),
      weather.air_C[h].toFixed(1),
      weather.dew_point_C[h].toFixed(1),
      weather.wind_m_s[h].toFixed(1),
      weather.albedo[h].toFixed(2),
    ].join(',');
  });
  return [station, TMY3_HEAD, ...rows];
}

/** Stamp of an hour's start in a year: `2027-01-31 13:00`. */
export function isoStamp(hour: number, year = 2027): string {
  const { month, day } = dateOf(Math.floor(hour / 24));
  return `${year}-${two(month)}-${two(day)} ${two(hour % 24)}:00`;
}

/** Lines of a plain table: the head, and one row an hour. */
export function tableLines(
  head: string,
  row: (hour: number) => (string | number)[],
  separator = ',',
  hours = 8760,
): string[] {
  return [head, ...Array.from({ length: hours }, (_, h) => row(h).join(separator))];
}

/** Columns of `plainTable`. */
const PLAIN_HEAD = 'time (start),air (C),sun (W/m2)';

/** One row of a plain table: stamp, air, sun. */
export function plainRow(weather: HourlyWeather, h: number): string[] {
  return [isoStamp(h), weather.air_C[h].toFixed(2), weather.global_horizontal_W_m2[h].toFixed(1)];
}

/** A year as the plainest table that is read. */
export function plainTable(weather: HourlyWeather): string[] {
  return tableLines(PLAIN_HEAD, (h) => plainRow(weather, h));
}
