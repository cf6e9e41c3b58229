/**
 * What the air does to the Sun: clear skies, the share of sunlight the sky scatters, and how the sky radiates.
 * Irradiance in W/m2, angles in radians.
 */
import { cosine, power, sine } from '../numerics/alike.ts';

const DEGREE = Math.PI / 180;
const KELVIN = 273.15;

/**
 * Cloudless global irradiance on the horizontal: 1098 cos z exp(-0.059/cos z); 0 with the Sun down.
 *
 * @param zenith_rad zenith angle [rad]
 * @returns [W/m2]
 * @source Haurwitz 1945, from memory; checked against a library
 */
export function clearSkyHaurwitz_W_m2(zenith_rad: number): number {
  const cosZ = cosine(zenith_rad);
  return cosZ > 0 ? 1098 * cosZ * Math.exp(-0.059 / cosZ) : 0;
}

/** Irradiance split as weather files give it. */
export interface Irradiance {
  global_horizontal_W_m2: number;
  direct_normal_W_m2: number;
  diffuse_horizontal_W_m2: number;
}

/**
 * Cloudless irradiance from the Linke turbidity:
 * GHI = (5.09e-5 A + 0.868) G_on cos z exp(-(3.92e-5 A + 0.0387) m (f1 + f2 (TL - 1))), f1 = exp(-A/8000),
 * f2 = exp(-A/1250); DNI = (0.664 + 0.163/f1) G_on exp(-0.09 m (TL - 1)), and no more than the diffuse share
 * (0.1 - 0.2 exp(-TL))/(0.1 + 0.882/f1) leaves.
 *
 * @param sky zenith [rad], absolute air mass m (relative times pressure share), Linke turbidity TL (2 very
 *   clear and cold, 3 clear, 5 hazy), altitude A [m], irradiance above the air facing the Sun [W/m2]
 * @source Ineichen & Perez 2002 with the 2002 limit on direct; from memory; checked against a library
 */
export function clearSkyIneichen(sky: {
  zenith_rad: number;
  air_mass: number;
  turbidity: number;
  altitude_m: number;
  normal_W_m2: number;
}): Irradiance {
  const cosZ = cosine(sky.zenith_rad);
  if (!(cosZ > 0)) return { global_horizontal_W_m2: 0, direct_normal_W_m2: 0, diffuse_horizontal_W_m2: 0 };
  const f1 = Math.exp(-sky.altitude_m / 8000);
  const f2 = Math.exp(-sky.altitude_m / 1250);
  const c1 = 5.09e-5 * sky.altitude_m + 0.868;
  const c2 = 3.92e-5 * sky.altitude_m + 0.0387;
  const haze = sky.turbidity - 1;
  const global = c1 * sky.normal_W_m2 * cosZ * Math.exp(-c2 * sky.air_mass * (f1 + f2 * haze));
  const direct = (0.664 + 0.163 / f1) * sky.normal_W_m2 * Math.exp(-0.09 * sky.air_mass * haze);
  const scattered = (0.1 - 0.2 * Math.exp(-sky.turbidity)) / (0.1 + 0.882 / f1);
  const normal = Math.min(direct, (global * (1 - scattered)) / cosZ);
  return {
    global_horizontal_W_m2: global,
    direct_normal_W_m2: normal,
    diffuse_horizontal_W_m2: global - normal * cosZ,
  };
}

/**
 * Share of the direct beam a cloudless sky of 23 km visibility lets through: a0 + a1 exp(-k/cos z), with
 * a0 = 0.4237 - 0.00821 (6 - A)^2, a1 = 0.5055 + 0.00595 (6.5 - A)^2, k = 0.2711 + 0.01858 (2.5 - A)^2, A in
 * km; no correction for climate. Below 2.5 km.
 *
 * @param zenith_rad zenith angle [rad], below pi/2
 * @param altitude_m altitude [m], 0..2500
 * @returns share [-]
 * @source Hottel 1976 (Duffie & Beckman section 2.8); from memory
 */
export function hottelBeamShare(zenith_rad: number, altitude_m: number): number {
  const a = altitude_m / 1000;
  const a0 = 0.4237 - 0.00821 * (6 - a) ** 2;
  const a1 = 0.5055 + 0.00595 * (6.5 - a) ** 2;
  const k = 0.2711 + 0.01858 * (2.5 - a) ** 2;
  return a0 + a1 * Math.exp(-k / cosine(zenith_rad));
}

/**
 * Diffuse share of an hour's horizontal sun from its clearness kt (global over extraterrestrial):
 * kt <= 0.22: 1 - 0.09 kt; to 0.8: 0.9511 - 0.1604 kt + 4.388 kt^2 - 16.638 kt^3 + 12.336 kt^4; above: 0.165.
 *
 * @param kt clearness of the hour [-], 0..1
 * @returns share [-]
 * @source Erbs, Klein & Duffie 1982 (Duffie & Beckman eq. 2.10.1); from memory; checked against a library
 */
export function diffuseShareErbs(kt: number): number {
  if (kt <= 0.22) return 1 - 0.09 * kt;
  if (kt > 0.8) return 0.165;
  return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
}

/**
 * Diffuse share of an hour's horizontal sun, the straight-line fit: 1 - 0.249 kt below 0.35, 1.557 - 1.84 kt
 * to 0.75, 0.177 above. Beside Erbs it shows how far two published fits lie apart.
 *
 * @param kt clearness of the hour [-], 0..1
 * @source Orgill & Hollands 1977; from memory
 */
export function diffuseShareOrgillHollands(kt: number): number {
  if (kt < 0.35) return 1 - 0.249 * kt;
  return kt <= 0.75 ? 1.557 - 1.84 * kt : 0.177;
}

/**
 * How an hour's clearness stands to its day's: a + b cos w, with a = 0.409 + 0.5016 sin(ws - 60 deg) and
 * b = 0.6609 - 0.4767 sin(ws - 60 deg); above 1 around noon, below in the morning and evening.
 *
 * @param hour_angle_rad middle of the hour [rad], inside (-ws, ws)
 * @param sunset_rad hour angle of sunset ws [rad], 0..pi
 * @returns ratio [-], not below 0
 * @source Collares-Pereira & Rabl 1979; from memory
 */
export function clearnessOverDay(hour_angle_rad: number, sunset_rad: number): number {
  const slant = sine(sunset_rad - 60 * DEGREE);
  return Math.max(0, 0.409 + 0.5016 * slant + (0.6609 - 0.4767 * slant) * cosine(hour_angle_rad));
}

/**
 * An hour's share of a day's global sun on the horizontal: `clearnessOverDay` times `hourOfDayDiffuseShare`.
 *
 * @param hour_angle_rad middle of the hour [rad], inside (-ws, ws)
 * @param sunset_rad hour angle of sunset ws [rad], 0..pi
 * @returns share of the day [-]; multiply by the day's sum to get the hour's
 * @source Collares-Pereira & Rabl 1979; from memory
 */
export function hourOfDayShare(hour_angle_rad: number, sunset_rad: number): number {
  return clearnessOverDay(hour_angle_rad, sunset_rad) * hourOfDayDiffuseShare(hour_angle_rad, sunset_rad);
}

/**
 * An hour's share of a day's diffuse sun, and of the sun above the air:
 * (pi/24)(cos w - cos ws)/(sin ws - ws cos ws); 0 outside daylight.
 *
 * @param hour_angle_rad middle of the hour [rad]
 * @param sunset_rad hour angle of sunset ws [rad], 0..pi
 * @source Liu & Jordan 1960; from memory
 */
export function hourOfDayDiffuseShare(hour_angle_rad: number, sunset_rad: number): number {
  const above = cosine(hour_angle_rad) - cosine(sunset_rad);
  if (!(above > 0)) return 0;
  return ((Math.PI / 24) * above) / (sine(sunset_rad) - sunset_rad * cosine(sunset_rad));
}

/**
 * Temperature a clear sky radiates at:
 * Ta (0.711 + 0.0056 Td + 0.000073 Td^2 + 0.013 cos(15 degrees t))^(1/4), Ta in kelvin.
 *
 * @param air air temperature [C], dew point [C] (-20..30), hours from midnight [h]
 * @returns [C]
 * @source Berdahl & Martin 1984 (Duffie & Beckman eq. 3.9.2); physics notes, read in text
 */
export function clearSkyTemperature_C(air: { air_C: number; dew_point_C: number; hour_h: number }): number {
  const td = air.dew_point_C;
  const emissivity = 0.711 + 0.0056 * td + 0.000073 * td * td + 0.013 * cosine(15 * DEGREE * air.hour_h);
  return (air.air_C + KELVIN) * power(emissivity, 0.25) - KELVIN;
}
