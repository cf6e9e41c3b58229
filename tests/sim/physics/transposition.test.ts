import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airMass, incidenceCosine } from '../../../sim/physics/sun.ts';
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

const models = { isotropicSky, hayDaviesSky, reindlSky, perezSky };
const total = (sky: SkyOnPlane) => sky.even_W_m2 + sky.around_sun_W_m2 + sky.horizon_W_m2;

function light(over: {
  zenith_rad: number;
  sun_azimuth_rad: number;
  tilt_rad: number;
  direct: number;
  diffuse: number;
}): PlaneLight {
  const { zenith_rad, tilt_rad } = over;
  return {
    cos_incidence: incidenceCosine(
      { zenith_rad, azimuth_rad: over.sun_azimuth_rad },
      { tilt_rad, azimuth_rad: Math.PI },
    ),
    zenith_rad,
    tilt_rad,
    direct_normal_W_m2: over.direct,
    diffuse_horizontal_W_m2: over.diffuse,
    global_horizontal_W_m2: over.diffuse + over.direct * Math.cos(zenith_rad),
    extraterrestrial_W_m2: 1361,
    air_mass: airMass(zenith_rad),
  };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lights = fc
  .record({
    zenith_rad: between(0, 1.55),
    sun_azimuth_rad: between(0, 6.28),
    tilt_rad: between(0, Math.PI / 2),
    direct: between(0, 1000),
    diffuse: between(0, 500),
  })
  .map(light);

describe.each(Object.entries(models))('%s', (_, model) => {
  it('gives the horizontal’s own diffuse light to a plane that lies flat', () => {
    fc.assert(
      fc.property(between(0, 1.4), between(0, 1000), between(1, 500), (zenith_rad, direct, diffuse) => {
        const flat = light({ zenith_rad, sun_azimuth_rad: 3, tilt_rad: 0, direct, diffuse });
        expect(total(model(flat))).toBeCloseTo(diffuse, 8);
      }),
    );
  });

  it('is never negative and never without end', () => {
    fc.assert(
      fc.property(lights, (any) => {
        const sum = total(model(any));
        expect(sum).toBeGreaterThanOrEqual(-1e-9);
        expect(sum).toBeLessThan(3000);
        expect(model(any).around_sun_W_m2).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('sees nothing in the dark', () => {
    const dark = light({ zenith_rad: 1, sun_azimuth_rad: 3, tilt_rad: 0.8, direct: 0, diffuse: 0 });
    expect(total(model(dark))).toBe(0);
  });
});

describe('on a clear morning', () => {
  it('each finer model gives a plane that faces the Sun more than the even sky', () => {
    const facing = light({
      zenith_rad: 1,
      sun_azimuth_rad: Math.PI,
      tilt_rad: 0.8,
      direct: 800,
      diffuse: 90,
    });
    expect(total(hayDaviesSky(facing))).toBeGreaterThan(total(isotropicSky(facing)));
    expect(total(reindlSky(facing))).toBeGreaterThan(total(hayDaviesSky(facing)));
    expect(total(perezSky(facing))).toBeGreaterThan(total(isotropicSky(facing)));
    const away = light({ zenith_rad: 1, sun_azimuth_rad: 0, tilt_rad: 0.8, direct: 800, diffuse: 90 });
    expect(total(perezSky(away))).toBeLessThan(total(isotropicSky(away)));
  });
});

describe('beamOnPlane_W_m2', () => {
  it('is nothing from behind and all of it head on', () => {
    const at = (cos_incidence: number) =>
      beamOnPlane_W_m2({
        ...light({ zenith_rad: 1, sun_azimuth_rad: 3, tilt_rad: 1, direct: 700, diffuse: 1 }),
        cos_incidence,
      });
    expect(at(-0.2)).toBe(0);
    expect(at(1)).toBe(700);
  });
});

describe('groundOnPlane_W_m2', () => {
  it('is nothing on a flat plane and half the reflected light on an upright one', () => {
    expect(groundOnPlane_W_m2({ global_horizontal_W_m2: 500, tilt_rad: 0 }, 0.6)).toBe(0);
    expect(groundOnPlane_W_m2({ global_horizontal_W_m2: 500, tilt_rad: Math.PI / 2 }, 0.6)).toBeCloseTo(
      150,
      10,
    );
  });
});
