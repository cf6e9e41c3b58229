/** Light on a collector's plane, and what of it the collector's glass takes in, for every hour of the year. */
import { cosine } from '../../numerics/alike.ts';
import { singleModifier, tubeAngles, tubeModifier } from '../../physics/collector.ts';
import { airMass, incidenceCosine, refraction_rad, type SkyDirection } from '../../physics/sun.ts';
import {
  beamOnPlane_W_m2,
  groundOnPlane_W_m2,
  type PlaneLight,
  perezSky,
} from '../../physics/transposition.ts';
import { standardPressure } from '../../physics/water.ts';
import type { CollectorDescription, HourlyWeather, PlantDescription } from '../description.ts';
import { DAYS, HOURS, monthOfDay } from './calendar.ts';
import { horizonElevation_rad, skyShare } from './horizon.ts';
import { sunOfYear } from './sun-of-year.ts';

/** What of a collector the light depends on. */
export type CollectorAspect = Pick<
  CollectorDescription,
  'tilt_rad' | 'azimuth_rad' | 'horizon' | 'shade_by_month' | 'incidence' | 'diffuse_modifier'
>;

/** Hour means, 8760 entries. */
export interface PlaneSun {
  /** Direct light on the plane, past the horizon line. */
  beam_W_m2: Float64Array;
  /** From sky and ground on the plane, past the horizon line. */
  diffuse_W_m2: Float64Array;
  /** Their sum: what an unshaded instrument in the plane would read. */
  plane_W_m2: Float64Array;
  /** Kb beam + Kd diffuse, times 1 - shade of the month: to be multiplied by eta0. */
  absorbed_W_m2: Float64Array;
}

/** Days of the year to transpose, 0 = 1 January; they may run over New Year. */
export interface YearDays {
  first: number;
  count: number;
}

/**
 * Transposes a year of weather (Perez 1990) to the collector's plane.
 *
 * The Sun stands at the middle of the hour's sun-up part. Direct light and the light around the Sun end where
 * the horizon line begins; the evenly bright sky is cut by its share. Light around the Sun counts as diffuse
 * for the incidence modifier, as it does where the modifier is measured.
 *
 * @param days which days to transpose; the hours of all others are left at 0
 */
export function planeOfArray(
  weather: HourlyWeather,
  site: PlantDescription['site'],
  collector: CollectorAspect,
  days: YearDays = { first: 0, count: DAYS },
): PlaneSun {
  const sun = sunOfYear(site);
  const out: PlaneSun = {
    beam_W_m2: new Float64Array(HOURS),
    diffuse_W_m2: new Float64Array(HOURS),
    plane_W_m2: new Float64Array(HOURS),
    absorbed_W_m2: new Float64Array(HOURS),
  };
  const open = skyShare(collector.horizon, collector);
  const pressure_Pa = standardPressure(site.altitude_m);
  for (let k = 0; k < Math.min(DAYS, days.count); k++) {
    const day = (days.first + k + DAYS) % DAYS;
    const clean = 1 - collector.shade_by_month[monthOfDay(day)];
    for (let h = 24 * day; h < 24 * day + 24; h++) {
      const global = weather.global_horizontal_W_m2[h];
      const scattered = weather.diffuse_horizontal_W_m2[h];
      const normal = weather.direct_normal_W_m2[h];
      if (!(global > 0 || scattered > 0 || normal > 0)) continue;
      if (!(sun.up_share[h] > 0)) {
        twilight(out, h, { scattered, global, albedo: weather.albedo[h] }, collector, open, clean);
        continue;
      }
      const direction: SkyDirection = { zenith_rad: sun.zenith_rad[h], azimuth_rad: sun.azimuth_rad[h] };
      const elevation = Math.PI / 2 - direction.zenith_rad;
      const lifted = elevation + refraction_rad(elevation, { pressure_Pa, air_C: weather.air_C[h] });
      const light: PlaneLight = {
        cos_incidence: incidenceCosine(direction, collector),
        zenith_rad: direction.zenith_rad,
        tilt_rad: collector.tilt_rad,
        direct_normal_W_m2: normal,
        diffuse_horizontal_W_m2: scattered,
        global_horizontal_W_m2: global,
        extraterrestrial_W_m2: sun.normal_W_m2[h],
        air_mass: airMass(Math.PI / 2 - lifted),
      };
      const visible = elevation >= horizonElevation_rad(collector.horizon, direction.azimuth_rad) ? 1 : 0;
      const sky = perezSky(light);
      const beam = beamOnPlane_W_m2(light) * visible;
      const diffuse =
        Math.max(0, sky.even_W_m2 * open + sky.around_sun_W_m2 * visible + sky.horizon_W_m2) +
        groundOnPlane_W_m2(light, weather.albedo[h]);
      const kb = beam > 0 ? beamModifier(collector, direction, light.cos_incidence) : 0;
      put(out, h, { beam, diffuse, absorbed: (kb * beam + collector.diffuse_modifier * diffuse) * clean });
    }
  }
  return out;
}

/** Incidence modifier of direct light for either form of curve. */
function beamModifier(collector: CollectorAspect, sun: SkyDirection, cos_incidence: number): number {
  const { incidence } = collector;
  return incidence.kind === 'single'
    ? singleModifier(incidence.b0, cos_incidence)
    : tubeModifier(incidence, tubeAngles(sun, collector));
}

/** A measured glimmer with the Sun below the horizon comes evenly from the sky. */
function twilight(
  out: PlaneSun,
  h: number,
  light: { scattered: number; global: number; albedo: number },
  collector: CollectorAspect,
  open: number,
  clean: number,
): void {
  const diffuse =
    (light.scattered * open * (1 + cosine(collector.tilt_rad))) / 2 +
    groundOnPlane_W_m2({ global_horizontal_W_m2: light.global, tilt_rad: collector.tilt_rad }, light.albedo);
  put(out, h, { beam: 0, diffuse, absorbed: collector.diffuse_modifier * diffuse * clean });
}

function put(out: PlaneSun, h: number, hour: { beam: number; diffuse: number; absorbed: number }): void {
  out.beam_W_m2[h] = hour.beam;
  out.diffuse_W_m2[h] = hour.diffuse;
  out.plane_W_m2[h] = hour.beam + hour.diffuse;
  out.absorbed_W_m2[h] = hour.absorbed;
}
