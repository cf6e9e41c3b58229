import {
  collectorEfficiency,
  glassModifier,
  singleModifier,
  stagnationTemperature_C,
} from '../../../sim/physics/collector.ts';
import {
  clearSkyHaurwitz_W_m2,
  clearSkyIneichen,
  diffuseShareErbs,
  diffuseShareOrgillHollands,
  hottelBeamShare,
  hourOfDayDiffuseShare,
  hourOfDayShare,
} from '../../../sim/physics/sky.ts';
import {
  airMass,
  daysSinceJ2000,
  directionFromEquator,
  incidenceCosine,
  refraction_rad,
  sunPosition,
} from '../../../sim/physics/sun.ts';
import {
  dailyExtraterrestrial_J_m2,
  declinationCooper_rad,
  declinationSpencer_rad,
  equationOfTime_s,
  extraterrestrialNormal_W_m2,
} from '../../../sim/physics/sun-by-day.ts';
import {
  beamOnPlane_W_m2,
  groundOnPlane_W_m2,
  hayDaviesSky,
  isotropicSky,
  type PlaneLight,
  perezSky,
  reindlSky,
  type SkyOnPlane,
} from '../../../sim/physics/transposition.ts';
import { type Block, type Check, input } from '../checks.ts';

const DEGREE = Math.PI / 180;

/** The worked example's local time of 12:30:30, seven hours behind universal time. */
const SPA_DAYS = daysSinceJ2000({ year: 2003, month: 10, day: 17 + (19 * 3600 + 30 * 60 + 30) / 86400 });

function planeLight(check: Check): PlaneLight {
  const tilt_rad = input(check, 'tilt') * DEGREE;
  const zenith_rad = input(check, 'zenith') * DEGREE;
  return {
    cos_incidence: incidenceCosine(
      { zenith_rad, azimuth_rad: input(check, 'az_N') * DEGREE },
      { tilt_rad, azimuth_rad: input(check, 'surf_az_N') * DEGREE },
    ),
    zenith_rad,
    tilt_rad,
    direct_normal_W_m2: input(check, 'dni'),
    diffuse_horizontal_W_m2: input(check, 'dhi'),
    global_horizontal_W_m2: input(check, 'ghi'),
    extraterrestrial_W_m2: input(check, 'dni_extra'),
    air_mass: input(check, 'airmass_rel'),
  };
}

function onPlane(check: Check, model: (light: PlaneLight) => SkyOnPlane) {
  const light = planeLight(check);
  const sky = model(light);
  const poa_direct = beamOnPlane_W_m2(light);
  const poa_sky_diffuse = sky.even_W_m2 + sky.around_sun_W_m2 + sky.horizon_W_m2;
  const poa_ground_diffuse = groundOnPlane_W_m2(light, input(check, 'albedo'));
  const poa_diffuse = poa_sky_diffuse + poa_ground_diffuse;
  return {
    poa_global: poa_direct + poa_diffuse,
    poa_direct,
    poa_diffuse,
    poa_sky_diffuse,
    poa_ground_diffuse,
  };
}

const rating = (check: Check) => ({
  eta0: input(check, 'eta0'),
  a1_W_m2K: input(check, 'a1'),
  a2_W_m2K2: input(check, 'a2'),
});

export const sun: Block = {
  name: 'sun, sky and collector',
  atLeast: 142,
  answers: {
    'solar.spa': (check) => {
      const seen = sunPosition(
        SPA_DAYS,
        { latitude_rad: input(check, 'lat') * DEGREE, longitude_rad: input(check, 'lon') * DEGREE },
        input(check, 'delta_t'),
      );
      const air = { pressure_Pa: input(check, 'P_Pa'), air_C: input(check, 'T_C') };
      return {
        zenith_apparent: (seen.zenith_rad - refraction_rad(Math.PI / 2 - seen.zenith_rad, air)) / DEGREE,
        azimuth_N: seen.azimuth_rad / DEGREE,
      };
    },
    'solar.decl.': (check) => {
      const day = input(check, 'day_of_year');
      return {
        decl_cooper_deg: declinationCooper_rad(day) / DEGREE,
        decl_spencer_deg: declinationSpencer_rad(day) / DEGREE,
        EoT_spencer_min: equationOfTime_s(day) / 60,
        G_on_W_m2: extraterrestrialNormal_W_m2(day, 1366.1),
      };
    },
    'solar.db.1.6.1': (check) => {
      const direction = directionFromEquator({
        latitude_rad: input(check, 'lat') * DEGREE,
        declination_rad: input(check, 'delta_deg') * DEGREE,
        hour_angle_rad: input(check, 'omega_deg') * DEGREE,
      });
      const plane = {
        tilt_rad: input(check, 'beta') * DEGREE,
        azimuth_rad: Math.PI + input(check, 'gamma') * DEGREE,
      };
      return { theta_deg: Math.acos(incidenceCosine(direction, plane)) / DEGREE };
    },
    'solar.H0.': (check) => {
      const day = input(check, 'n');
      // The printed sums go with Cooper's declination and the one-term distance, D&B eq. 1.4.1a.
      const normal_W_m2 = input(check, 'Gsc') * (1 + 0.033 * Math.cos((2 * Math.PI * day) / 365));
      const latitude_rad = input(check, 'lat') * DEGREE;
      const declination_rad = declinationCooper_rad(day);
      return dailyExtraterrestrial_J_m2({ latitude_rad, declination_rad, normal_W_m2 }) / 1e6;
    },
    'solar.clear.': (check) => {
      const zenith_rad = input(check, 'zenith_deg') * DEGREE;
      const clear = clearSkyIneichen({
        zenith_rad,
        air_mass: airMass(zenith_rad),
        turbidity: input(check, 'TL'),
        altitude_m: input(check, 'alt_m'),
        normal_W_m2: input(check, 'Gon'),
      });
      return {
        airmass_KY: airMass(zenith_rad),
        // The table gives whole watts with their fractions cut off, not rounded.
        haurwitz_ghi: Math.floor(clearSkyHaurwitz_W_m2(zenith_rad)),
        ineichen: {
          ghi: clear.global_horizontal_W_m2,
          dni: clear.direct_normal_W_m2,
          dhi: clear.diffuse_horizontal_W_m2,
        },
      };
    },
    'solar.hottel.': (check) =>
      hottelBeamShare(input(check, 'zenith') * DEGREE, input(check, 'alt_km') * 1000),
    'solar.dfrac.': (check) => ({
      erbs: diffuseShareErbs(input(check, 'kt')),
      orgill_hollands: diffuseShareOrgillHollands(input(check, 'kt')),
    }),
    'solar.cpr.': (check) => {
      const omega = input(check, 'omega_deg') * DEGREE;
      const sunset = input(check, 'ws_deg') * DEGREE;
      return { rt: hourOfDayShare(omega, sunset), rd: hourOfDayDiffuseShare(omega, sunset) };
    },
    'solar.transp.': (check) => ({
      isotropic: onPlane(check, isotropicSky),
      haydavies: onPlane(check, hayDaviesSky),
      reindl: onPlane(check, reindlSky),
      perez: onPlane(check, perezSky),
    }),
    'solar.iam.': (check) => {
      const theta = input(check, 'theta') * DEGREE;
      return {
        'ashrae_b0.1': singleModifier(0.1, Math.cos(theta)),
        'ashrae_b0.05': singleModifier(0.05, Math.cos(theta)),
        'physical_n1.526_K4_L.002': glassModifier(theta),
      };
    },
    'coll.stag.': (check) => stagnationTemperature_C(rating(check), { kept_W_m2: 1000, air_C: 30 }),
    'coll.eta.': (check) => collectorEfficiency(rating(check), input(check, 'dT'), input(check, 'G')),
  },
};
