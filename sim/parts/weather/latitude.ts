/**
 * A climate for someone who knows only the latitude and how the sky mostly looks. Every number here is a rough
 * default by judgement, to be replaced by the nearest weather station; `LATITUDE_BANDS` says how rough.
 */
import { linearTable } from '../../numerics/interpolation.ts';
import { declinationSpencer_rad, MONTH_DAYS } from '../../physics/sun-by-day.ts';
import { MONTH_START } from './calendar.ts';
import { swingFromClearness_K } from './generate-air.ts';
import type { MonthlyWeather } from './types.ts';

export type Climate = 'cloudy' | 'average' | 'clear';

/**
 * Half-widths within which about nine in ten inhabited places lie; judgement.
 * `sun` is a share of the value, the others are in the unit of the field.
 */
export const LATITUDE_BANDS = {
  air_K: 6,
  swing_K: 4,
  day_to_day_K: 1.5,
  sun: 0.2,
  relative_humidity: 0.15,
  wind_m_s: 1.5,
  albedo: 0.2,
} as const;

/** Mean clearness at midwinter and midsummer by sky; judgement after monthly maps of the mid-latitudes. */
const CLEARNESS: Record<Climate, { winter: number; summer: number }> = {
  cloudy: { winter: 0.32, summer: 0.45 },
  average: { winter: 0.43, summer: 0.52 },
  clear: { winter: 0.56, summer: 0.64 },
};
/** Mean relative humidity by sky; judgement. */
const HUMIDITY: Record<Climate, number> = { cloudy: 0.78, average: 0.68, clear: 0.5 };

/** Degrees of latitude, yearly mean at sea level [C], half the range of monthly means north [K]; judgement. */
const LATITUDE_DEG = [0, 10, 20, 30, 40, 50, 60, 70, 80];
const SEA_LEVEL_C = [27, 26.5, 25, 20, 13.5, 7, 0.5, -9, -17];
const HALF_RANGE_K = [1, 2, 4, 7.5, 11, 12.5, 14, 15, 16];
/** Seas temper the south: its half-range is about half as wide; judgement. */
const SOUTHERN = 0.55;
/** Air cools with height by about this much; standard atmosphere 6.5 K/km, inhabited slopes less. */
const LAPSE_K_M = 0.0055;
/** Months colder than this carry snow in the rule. */
const SNOW_BELOW_C = -1;
/** The coldest and warmest month come about this many days after the solstice. */
const AIR_LAGS_DAYS = 28;

/** Season of a day: -1 at midwinter, 1 at midsummer of that hemisphere. */
function season(day: number, north: boolean): number {
  const declination = declinationSpencer_rad((((day % 365) + 365) % 365) + 1);
  return (declination / ((23.45 * Math.PI) / 180)) * (north ? 1 : -1);
}

/**
 * Spread of daily means for want of better: 4.5 K in the year's coldest month, 2.5 K in the warmest, linear
 * between; judgement for mid-latitudes.
 */
export function roughDayToDay_K(air_C: readonly number[]): number[] {
  const low = Math.min(...air_C);
  const width = Math.max(...air_C) - low;
  return air_C.map((t) => (width > 4 ? 4.5 - (2 * (t - low)) / width : 1.5));
}

/**
 * A rough monthly climate from latitude, sky and altitude.
 *
 * @param latitude_rad north positive, -80..80 degrees
 * @param climate how the sky mostly is
 * @param altitude_m above the sea, 0..4500
 */
export function monthlyFromLatitude(
  latitude_rad: number,
  climate: Climate,
  altitude_m: number,
): MonthlyWeather {
  const degrees = Math.abs((latitude_rad * 180) / Math.PI);
  const north = latitude_rad >= 0;
  const { winter, summer } = CLEARNESS[climate];
  // In the tropics the seasons of the sun fade out.
  const seasonal = Math.min(1, degrees / 30);
  const middles = MONTH_DAYS.map((days, month) => MONTH_START[month] + days / 2);
  const share = middles.map(
    (day) => (winter + summer) / 2 + ((summer - winter) / 2) * seasonal * season(day, north),
  );
  const mean = linearTable(LATITUDE_DEG, SEA_LEVEL_C, degrees) - LAPSE_K_M * altitude_m;
  const half = linearTable(LATITUDE_DEG, HALF_RANGE_K, degrees) * (north ? 1 : SOUTHERN);
  const air_C = middles.map((day) => mean + half * season(day - AIR_LAGS_DAYS, north));
  return {
    air_C,
    swing_K: share.map(swingFromClearness_K),
    day_to_day_K: roughDayToDay_K(air_C),
    sun: { kind: 'clearness', share },
    relative_humidity: share.map(() => HUMIDITY[climate]),
    wind_m_s: share.map(() => 3),
    albedo: air_C.map((t) => (t < SNOW_BELOW_C ? 0.5 : 0.2)),
  };
}
