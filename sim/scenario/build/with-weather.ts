/** What reads weather files: TMY3 years and plain tables. */
import { isTmy3, parseTmy3 } from '../../parts/weather/tmy3.ts';
import { parseWeatherCsv } from '../../parts/weather/weather-csv.ts';
import { rememberLast } from '../remember.ts';
import type { WeatherContext, WeatherFiles, WeatherReader } from './weather-file.ts';

const readWeather: WeatherReader = rememberLast(
  (text, site, rest) => (isTmy3(text) ? parseTmy3(text) : parseWeatherCsv(text, site, rest)),
  (text, site, rest) => [text, JSON.stringify(site), rest],
);

/** What to read a scenario with that may name weather files: their texts, by the names it calls them. */
export function withWeather(weatherFiles: WeatherFiles): WeatherContext {
  return { weatherFiles, readWeather };
}
