/** A weather file by the name the scenario calls it. */
import type { HourlyWeather } from '../../parts/description.ts';
import type { WeatherReading, WeatherSite } from '../../parts/weather/types.ts';
import { quote } from '../calendar.ts';
import type { Desk } from '../desk.ts';

/** Text of weather files by name. */
export type WeatherFiles = Readonly<Record<string, string>>;

/** Reads a file's text as the year at a site, completed by `rest` where it is given. */
export type WeatherReader = (
  text: string,
  site: WeatherSite,
  rest: HourlyWeather | undefined,
) => WeatherReading;

/**
 * The files at hand and what reads them: see `with-weather.ts`. The readers are a good part of the code, and most
 * scenarios name no file.
 */
export type WeatherContext =
  | { weatherFiles?: undefined; readWeather?: undefined }
  | { weatherFiles: WeatherFiles; readWeather: WeatherReader };

const STEPS = ['weather', 'file'] as const;
/** A station further off than this in latitude or longitude is another place's weather. */
const FAR_RAD = (2 * Math.PI) / 180;

/** The year in the file, completed by `rest` where it is given; null where the file is missing or refused. */
export function readWeatherFile(
  desk: Desk,
  name: string,
  site: WeatherSite,
  { weatherFiles, readWeather }: WeatherContext,
  rest: HourlyWeather | undefined,
): HourlyWeather | null {
  if (!weatherFiles || !Object.hasOwn(weatherFiles, name)) {
    const known = Object.keys(weatherFiles ?? {})
      .map(quote)
      .join(', ');
    const expected = known ? `a file at hand: ${known}` : 'a weather file given along with the scenario';
    desk.problem(
      STEPS,
      expected,
      quote(name),
      'give the file, or let the weather be made: { "kind": "by latitude" }',
    );
    return null;
  }
  const reading = readWeather(weatherFiles[name], site, rest);
  if (!reading.ok) {
    for (const { where, expected, got, fix } of reading.problems) {
      desk.problem(STEPS, expected, `${got} (${name}, ${where})`, fix);
    }
    return null;
  }
  for (const note of reading.notes) desk.note(STEPS, note);
  noteFar(desk, site, reading.weather);
  return reading.weather;
}

function noteFar(desk: Desk, site: WeatherSite, { place, latitude_rad, longitude_rad }: HourlyWeather): void {
  const far = Math.max(
    Math.abs(latitude_rad - site.latitude_rad),
    Math.abs(longitude_rad - site.longitude_rad),
  );
  if (far < FAR_RAD) return;
  const degrees = Math.round((far / Math.PI) * 180);
  desk.note(STEPS, `the file’s station, ${quote(place)}, lies ${degrees} degrees away from the site`);
}
