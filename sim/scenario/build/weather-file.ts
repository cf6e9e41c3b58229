/** A weather file by the name the scenario calls it: a TMY3 year or a plain table. */
import type { HourlyWeather } from '../../parts/description.ts';
import { parseTmy3 } from '../../parts/weather/tmy3.ts';
import type { WeatherSite } from '../../parts/weather/types.ts';
import { parseWeatherCsv } from '../../parts/weather/weather-csv.ts';
import { quote } from '../calendar.ts';
import type { Desk } from '../desk.ts';
import { rememberLast } from '../remember.ts';

/** Text of weather files by name. */
export type WeatherFiles = Readonly<Record<string, string>>;

const STEPS = ['weather', 'file'] as const;
/** A TMY3 file's second line names its columns, the first of them so. */
const TMY3_HEAD = /^[^\n]*\n"?Date \(MM\/DD\/YYYY\)/i;
/** A station further off than this in latitude or longitude is another place's weather. */
const FAR_RAD = (2 * Math.PI) / 180;

const rememberedReading = rememberLast(
  (text: string, site: WeatherSite, rest: HourlyWeather | undefined) =>
    TMY3_HEAD.test(text) ? parseTmy3(text) : parseWeatherCsv(text, site, rest),
  (text, site, rest) => [text, JSON.stringify(site), rest],
);

/** The year in the file, completed by `rest` where it is given; null where the file is missing or refused. */
export function readWeatherFile(
  desk: Desk,
  name: string,
  site: WeatherSite,
  files: WeatherFiles,
  rest: HourlyWeather | undefined,
): HourlyWeather | null {
  if (!Object.hasOwn(files, name)) {
    const known = Object.keys(files).map(quote).join(', ');
    const expected = known ? `a file at hand: ${known}` : 'a weather file given along with the scenario';
    desk.problem(
      STEPS,
      expected,
      quote(name),
      'give the file, or let the weather be made: { "kind": "by latitude" }',
    );
    return null;
  }
  const text = files[name];
  const reading = rememberedReading(text, site, rest);
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
