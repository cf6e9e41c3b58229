/**
 * From the horizontal to a tilted plane: what of the direct, scattered and reflected light falls on it. Four
 * published models of the scattered part, from the plainest to the one the tool uses; their spread is its band.
 */
import { cosine, power, sine } from '../numerics/alike.ts';

/** A moment's light and geometry. */
export interface PlaneLight {
  /** Cosine of the angle between the Sun and the plane's normal (may be negative). */
  cos_incidence: number;
  zenith_rad: number;
  tilt_rad: number;
  direct_normal_W_m2: number;
  diffuse_horizontal_W_m2: number;
  global_horizontal_W_m2: number;
  /** Above the air, facing the Sun. */
  extraterrestrial_W_m2: number;
  air_mass: number;
}

/** The scattered light on a plane, by where in the sky it comes from; the ground's is separate. */
export interface SkyOnPlane {
  /** From the whole vault evenly; may be cut by what stands in the view. */
  even_W_m2: number;
  /** From around the Sun. */
  around_sun_W_m2: number;
  /** From the band above the horizon (negative under a dark horizon). */
  horizon_W_m2: number;
}

/** Cosine below which the ratio of tilted to horizontal beam is held: 85 degrees for Perez. */
const COS_85 = cosine((85 * Math.PI) / 180);
/** The same guard for Hay & Davies and Reindl, at 89 degrees: it only keeps the ratio finite at the horizon. */
const COS_89 = 0.01745;

/**
 * Direct light on the plane: DNI cos(incidence), 0 from behind; by definition.
 *
 * @returns [W/m2]
 */
export function beamOnPlane_W_m2(light: PlaneLight): number {
  return light.direct_normal_W_m2 * Math.max(0, light.cos_incidence);
}

/**
 * Light the ground throws on the plane: albedo GHI (1 - cos tilt)/2.
 *
 * @param light global on the horizontal [W/m2] and the tilt [rad]
 * @param albedo share the ground reflects [-]: grass 0.2, old snow 0.4-0.6, fresh snow 0.65-0.75
 * @returns [W/m2]
 * @source Liu & Jordan 1963; from memory
 */
export function groundOnPlane_W_m2(
  light: Pick<PlaneLight, 'global_horizontal_W_m2' | 'tilt_rad'>,
  albedo: number,
): number {
  return (albedo * light.global_horizontal_W_m2 * (1 - cosine(light.tilt_rad))) / 2;
}

/**
 * Scattered light of an evenly bright sky: DHI (1 + cos tilt)/2.
 *
 * @source Liu & Jordan 1963 (Hottel & Woertz 1942); from memory
 */
export function isotropicSky(light: PlaneLight): SkyOnPlane {
  return {
    even_W_m2: (light.diffuse_horizontal_W_m2 * (1 + cosine(light.tilt_rad))) / 2,
    around_sun_W_m2: 0,
    horizon_W_m2: 0,
  };
}

/**
 * Scattered light with a share A = DNI/G_on coming from the Sun's direction:
 * DHI (A cos th/cos z + (1 - A)(1 + cos tilt)/2).
 *
 * @source Hay & Davies 1980; from memory; checked against a library
 */
export function hayDaviesSky(light: PlaneLight): SkyOnPlane {
  const anisotropy = light.direct_normal_W_m2 / light.extraterrestrial_W_m2;
  const ratio = Math.max(0, light.cos_incidence) / Math.max(COS_89, cosine(light.zenith_rad));
  return {
    even_W_m2: isotropicSky(light).even_W_m2 * (1 - anisotropy),
    around_sun_W_m2: light.diffuse_horizontal_W_m2 * anisotropy * ratio,
    horizon_W_m2: 0,
  };
}

/**
 * Hay & Davies with a brighter horizon: the even part is raised by 1 + sqrt(DNI cos z/GHI) sin^3(tilt/2).
 *
 * @source Reindl, Beckman & Duffie 1990; from memory; checked against a library
 */
export function reindlSky(light: PlaneLight): SkyOnPlane {
  const sky = hayDaviesSky(light);
  const beam = light.direct_normal_W_m2 * Math.max(0, cosine(light.zenith_rad));
  const modulation = light.global_horizontal_W_m2 > 0 ? Math.sqrt(beam / light.global_horizontal_W_m2) : 0;
  return { ...sky, horizon_W_m2: sky.even_W_m2 * modulation * power(sine(light.tilt_rad / 2), 3) };
}

/** Upper edges of the bins of sky clearness; the eighth is open. */
const CLEARNESS_EDGES = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];
/** Brightness around the Sun, F1 = f11 + f12 Delta + f13 z, by bin. */
const F1 = [
  [-0.008, 0.588, -0.062],
  [0.13, 0.683, -0.151],
  [0.33, 0.487, -0.221],
  [0.568, 0.187, -0.295],
  [0.873, -0.392, -0.362],
  [1.132, -1.237, -0.412],
  [1.06, -1.6, -0.359],
  [0.678, -0.327, -0.25],
];
/** Brightness of the horizon, F2 = f21 + f22 Delta + f23 z, by bin. */
const F2 = [
  [-0.06, 0.072, -0.022],
  [-0.019, 0.066, -0.029],
  [0.055, -0.064, -0.026],
  [0.109, -0.152, -0.014],
  [0.226, -0.462, 0.001],
  [0.288, -0.823, 0.056],
  [0.264, -1.127, 0.131],
  [0.156, -1.377, 0.251],
];
/** Constant of the clearness, for zenith angles in radians. */
const KAPPA = 1.041;

/**
 * Scattered light by the model the tool uses: clearness eps = ((DHI + DNI)/DHI + k z^3)/(1 + k z^3) and
 * brightness Delta = DHI m/G_on choose how much comes from around the Sun and from the horizon:
 * DHI ((1 - F1)(1 + cos tilt)/2 + F1 max(0, cos th)/max(cos 85, cos z) + F2 sin tilt), in all not below 0.
 *
 * @source Perez, Ineichen, Seals, Michalsky & Stewart 1990, coefficients "all sites composite"; from the
 *   project's physics notes; checked against a library
 */
export function perezSky(light: PlaneLight): SkyOnPlane {
  const dhi = light.diffuse_horizontal_W_m2;
  if (!(dhi > 0)) return { even_W_m2: 0, around_sun_W_m2: 0, horizon_W_m2: 0 };
  const z = light.zenith_rad;
  const kz3 = KAPPA * power(z, 3);
  const clearness = ((dhi + light.direct_normal_W_m2) / dhi + kz3) / (1 + kz3);
  let bin = 0;
  while (bin < 7 && clearness >= CLEARNESS_EDGES[bin]) bin++;
  const brightness = (dhi * light.air_mass) / light.extraterrestrial_W_m2;
  const sun = F1[bin];
  const band = F2[bin];
  const f1 = Math.max(0, sun[0] + sun[1] * brightness + sun[2] * z);
  const f2 = band[0] + band[1] * brightness + band[2] * z;
  const even_W_m2 = (dhi * (1 - f1) * (1 + cosine(light.tilt_rad))) / 2;
  const around_sun_W_m2 = (dhi * f1 * Math.max(0, light.cos_incidence)) / Math.max(COS_85, cosine(z));
  const horizon_W_m2 = Math.max(-even_W_m2 - around_sun_W_m2, dhi * f2 * sine(light.tilt_rad));
  return { even_W_m2, around_sun_W_m2, horizon_W_m2 };
}
