/** What reads weather files: TMY3 years and plain tables. */
import { parseTmy3 } from '../../parts/weather/tmy3.ts';
import { parseWeatherCsv } from '../../parts/weather/weather-csv.ts';
import { rememberLast } from '../remember.ts';
import type { WeatherContext, WeatherFiles, WeatherReader } from './weather-file.ts';

/** A TMY3 file's second line names its columns, the first of them so. */
const TMY3_HEAD = /^[^\n]*\n"?Date \(MM\/DD\/YYYY\)/i;

const readWeather: WeatherReader = rememberLast(
  (text, site, rest) => (TMY3_HEAD.test(text) ? parseTmy3(text) : parseWeatherCsv(text, site, rest)),
  (text, site, rest) => [text, JSON.stringify(site), rest],
);

/** What to read a scenario with that may name weather files: their texts, by the names it calls them. */
export function withWeather(weatherFiles: WeatherFiles): WeatherContext {
  return { weatherFiles, readWeather };
}
