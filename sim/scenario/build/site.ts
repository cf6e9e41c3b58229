/** The place, its year of weather and the run. */
import type { Fault, HourlyWeather, PlantDescription, RunDescription } from '../../parts/description.ts';
import { generateWeather } from '../../parts/weather/generate.ts';
import { type Climate, monthlyFromLatitude, roughDayToDay_K } from '../../parts/weather/latitude.ts';
import type { MonthlyWeather, WeatherSite } from '../../parts/weather/types.ts';
import type { Desk } from '../desk.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { run as runField, WEEKDAYS } from '../fields/run.ts';
import { site as siteField, weather as weatherField } from '../fields/site.ts';
import { rememberLast } from '../remember.ts';
import { readWeatherFile, type WeatherContext } from './weather-file.ts';

type Site = PlantDescription['site'];
type WeatherRead = ScenarioValues['weather'];

const HOUR_RAD = Math.PI / 12;

export function siteFrom(desk: Desk, read: ScenarioValues['site']): Site {
  const steps = ['site'];
  const zone_s = () => (read.longitude === null ? 0 : 3600 * Math.round(read.longitude / HOUR_RAD));
  const time_zone_s = desk.complete(siteField, steps, 'time_zone', read.time_zone, () => ({
    value: zone_s(),
  }));
  const middle_rad = () => Math.max(-Math.PI, Math.min(Math.PI, (time_zone_s / 3600) * HOUR_RAD));
  const longitude_rad = desk.complete(siteField, steps, 'longitude', read.longitude, () => ({
    value: middle_rad(),
  }));
  const apart_h = Math.abs(time_zone_s / 3600 - longitude_rad / HOUR_RAD);
  if (Math.min(apart_h, 24 - apart_h) > 3.5) {
    desk.problem(
      [...steps, 'time_zone'],
      'standard time within 3 hours of the sun’s',
      `${time_zone_s / 3600} h at this longitude`,
      'west of Greenwich both are negative: "-5 h" goes with "75 W"',
    );
  }
  return { latitude_rad: read.latitude, longitude_rad, altitude_m: read.altitude, time_zone_s };
}

/** The year's weather, or null where the file or a monthly value is refused. */
export function weatherFrom(
  desk: Desk,
  read: WeatherRead,
  site: Site,
  place: string,
  context: WeatherContext,
): HourlyWeather | null {
  const at = { ...site, place };
  if (read.kind === 'file') {
    const rest =
      read.rest === null ? undefined : madeWeather(desk, at, roughMonthly(site, read.rest), read.seed);
    return rest === null ? null : readWeatherFile(desk, read.file, at, context, rest);
  }
  if (read.kind === 'monthly') return madeWeather(desk, at, monthlyFrom(desk, read, site), read.seed);
  return madeWeather(desk, at, roughMonthly(site, read.climate), read.seed);
}

const rememberedYear = rememberLast(generateWeather, (monthly, at, seed) => [
  JSON.stringify([monthly, at, seed]),
]);

function madeWeather(
  desk: Desk,
  at: WeatherSite,
  monthly: MonthlyWeather,
  seed: number,
): HourlyWeather | null {
  if (Math.abs(at.latitude_rad) > LIMIT_RAD) {
    const degrees = Math.round((at.latitude_rad / Math.PI) * 180);
    const fix = 'give a weather file that covers the year';
    desk.problem(
      ['site', 'latitude'],
      'a latitude within 80 degrees for made weather',
      `${degrees} degrees`,
      fix,
    );
    return null;
  }
  try {
    return rememberedYear(monthly, at, seed);
  } catch (error) {
    // Months that contradict the sun above the air are found by the generator.
    if (!(error instanceof RangeError)) throw error;
    const [where, expected, got, fix] = error.message.split(' - ');
    const month = Number(/month (\d+)/.exec(where)?.[1]) - 1;
    desk.problem(
      ['weather', where.includes('.sun') ? 'sun' : 'air', month],
      expected.replace('expected ', ''),
      String(Number(Number(got.replace('got ', '')).toPrecision(3))),
      fix,
    );
    return null;
  }
}

function roughMonthly(site: Site, climate: Climate): MonthlyWeather {
  return monthlyFromLatitude(site.latitude_rad, climate, Math.max(0, site.altitude_m));
}

const LIMIT_RAD = (80 * Math.PI) / 180;
const GRASS_ALBEDO = 0.2;
/** Old and new snow mixed, with trees and roofs among it. */
const SNOW_ALBEDO = 0.6;
/** Months colder than this lie under snow three days in four. */
const SNOW_BELOW_C = -1;
const SNOW_SHARE = 0.75;

function monthlyFrom(
  desk: Desk,
  read: Extract<WeatherRead, { kind: 'monthly' }>,
  site: Site,
): MonthlyWeather {
  const rough = roughMonthly(site, 'average');
  const steps = ['weather'];
  const fields = { fields: weatherField.cases.monthly };
  const snow = desk.complete(fields, steps, 'snow', read.snow, () => ({
    value: read.air.map((t) => (t < SNOW_BELOW_C ? SNOW_SHARE : 0)),
  }));
  return {
    air_C: read.air,
    swing_K: desk.complete(fields, steps, 'swing', read.swing, () => ({ value: rough.swing_K })),
    day_to_day_K: roughDayToDay_K(read.air),
    sun: { kind: 'daily sum', J_m2: read.sun },
    relative_humidity: desk.complete(fields, steps, 'humidity', read.humidity, () => ({
      value: rough.relative_humidity,
    })),
    wind_m_s: desk.complete(fields, steps, 'wind', read.wind, () => ({ value: rough.wind_m_s })),
    albedo: snow.map((share) => GRASS_ALBEDO + share * (SNOW_ALBEDO - GRASS_ALBEDO)),
  };
}

export function runFrom(desk: Desk, read: ScenarioValues['run']): RunDescription {
  const steps = ['run'];
  const weekday = desk.complete(runField, steps, 'first_weekday', read.first_weekday, () => ({
    value: WEEKDAYS[read.from.weekday ?? 0],
  }));
  if (read.from.weekday !== null && WEEKDAYS[read.from.weekday] !== weekday) {
    desk.problem(
      [...steps, 'first_weekday'],
      `${WEEKDAYS[read.from.weekday]}, as the calendar has it`,
      `"${weekday}"`,
      'remove it, or leave the year out of the date',
    );
  }
  const samples = (read.days * 86_400) / read.interval;
  if (samples > MOST_SAMPLES) {
    desk.problem(
      [...steps, 'interval'],
      `at most ${MOST_SAMPLES} samples`,
      `${Math.round(samples)}`,
      'sample less often or run fewer days',
    );
  }
  const { bottom, top } = desk.complete(runField, steps, 'start', read.start, () => ({
    value: { bottom: 100 * F + ZERO_F_C, top: 120 * F + ZERO_F_C },
  }));
  const top_C = desk.complete(runField.fields.start, [...steps, 'start'], 'top', top, () => ({
    value: bottom,
  }));
  return {
    first_day: read.from.day,
    first_weekday: WEEKDAYS.indexOf(weekday),
    days: read.days,
    interval_s: read.interval,
    layers: read.layers,
    tolerance: desk.complete(runField, steps, 'tolerance', read.tolerance, () => ({
      value: read.days > MANY_DAYS ? LOOSE : USUAL,
    })),
    start: { bottom_C: bottom, top_C },
    faults: faultsFrom(desk, read),
  };
}

function faultsFrom(desk: Desk, { faults, days }: ScenarioValues['run']): Fault[] {
  const end_s = days * 86_400;
  return (faults ?? []).map((read, i) => {
    const { from: from_s } = read;
    const to_s = read.to ?? Math.max(end_s, from_s);
    if (!(to_s >= from_s)) {
      desk.problem(
        ['run', 'faults', i, 'to'],
        'a time after it begins',
        `${to_s / 3600} h, where it begins at ${from_s / 3600} h`,
        'count both from the start of the run',
      );
    }
    if (read.kind === 'cold spell') return { kind: read.kind, from_s, to_s, temperature_C: read.temperature };
    return { kind: read.kind, from_s, to_s };
  });
}

/** Relative tolerances: single draws are looked at in a run of days, sums in a run of months. */
const USUAL = 1e-4;
const LOOSE = 2e-3;
const MANY_DAYS = 60;
const F = 1 / 1.8;
const ZERO_F_C = -32 / 1.8;
/** A year of five-minute samples and some. */
const MOST_SAMPLES = 200_000;
