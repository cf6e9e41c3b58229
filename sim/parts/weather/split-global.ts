/** Direct and diffuse sun where only the global was measured or generated. */
import { cosine } from '../../numerics/alike.ts';
import { clearSkyIneichen, diffuseShareErbs } from '../../physics/sky.ts';
import { airMass } from '../../physics/sun.ts';
import { standardPressure } from '../../physics/water.ts';
import type { SunOfYear } from './sun-of-year.ts';

/** Linke turbidity of the clearest air direct sun is allowed to come through. */
const CLEAREST_AIR = 2;

/**
 * Splits an hour's global sun: by the diffuse part where that is known, else by its clearness (Erbs). Direct
 * sun is held to what a very clear sky lets through at that height and altitude; what exceeds it counts as
 * diffuse, so the sum stays as given.
 *
 * @param light hour's means on the horizontal; `diffuse_W_m2` undefined if it was not measured
 * @returns hour means; direct is that through the whole hour, also when the Sun is up for part of it
 */
export function splitGlobal(
  sun: SunOfYear,
  hour: number,
  light: { global_W_m2: number; diffuse_W_m2: number | undefined },
  altitude_m: number,
): { direct_normal_W_m2: number; diffuse_horizontal_W_m2: number } {
  const { global_W_m2 } = light;
  const above = sun.horizontal_W_m2[hour];
  const cosZ = cosine(sun.zenith_rad[hour]);
  if (!(above > 0 && cosZ > 0 && global_W_m2 > 0)) {
    return { direct_normal_W_m2: 0, diffuse_horizontal_W_m2: Math.max(0, global_W_m2) };
  }
  const scattered = light.diffuse_W_m2 ?? global_W_m2 * diffuseShareErbs(Math.min(1, global_W_m2 / above));
  const beam = Math.max(0, global_W_m2 - scattered);
  const clearest = clearSkyIneichen({
    zenith_rad: sun.zenith_rad[hour],
    air_mass: (airMass(sun.zenith_rad[hour]) * standardPressure(altitude_m)) / standardPressure(0),
    turbidity: CLEAREST_AIR,
    altitude_m,
    normal_W_m2: sun.normal_W_m2[hour],
  });
  const direct = Math.min(beam / cosZ, clearest.direct_normal_W_m2 * sun.up_share[hour]);
  return { direct_normal_W_m2: direct, diffuse_horizontal_W_m2: global_W_m2 - direct * cosZ };
}
