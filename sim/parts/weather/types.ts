/** What a place's weather is made from. */
import type { HourlyWeather, PlantDescription } from '../description.ts';

/** Where the weather is, with a name for reports. */
export type WeatherSite = PlantDescription['site'] & { place: string };

/** A climate by month, January first: twelve numbers in every list. */
export interface MonthlyWeather {
  /** Mean over days and nights. */
  air_C: number[];
  /** Mean of the days' warmest less coldest. */
  swing_K: number[];
  /** Standard deviation of the daily mean about its season. */
  day_to_day_K: number[];
  /** Global sun on the horizontal: as a share of what arrives above the air, or as a mean day's sum. */
  sun: { kind: 'clearness'; share: number[] } | { kind: 'daily sum'; J_m2: number[] };
  relative_humidity: number[];
  wind_m_s: number[];
  /** Share of the light the ground reflects: grass 0.2, snow cover 0.5-0.7. */
  albedo: number[];
}

/** What is wrong in a weather file, in the house form. */
export interface Problem {
  where: string;
  expected: string;
  got: string;
  fix: string;
}

/** A weather file read, with what was mended or assumed; or everything wrong with it. */
export type WeatherReading =
  | { ok: true; weather: HourlyWeather; notes: string[] }
  | { ok: false; problems: Problem[] };
