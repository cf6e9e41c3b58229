import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airMass,
  daysSinceJ2000,
  directionFromEquator,
  incidenceCosine,
  refraction_rad,
  sunEphemeris,
  sunPosition,
  sunsetHourAngle_rad,
  wrap,
} from '../../../sim/physics/sun.ts';
import {
  dailyExtraterrestrial_J_m2,
  declinationSpencer_rad,
  equationOfTime_s,
  extraterrestrialNormal_W_m2,
  meanExtraterrestrial_W_m2,
} from '../../../sim/physics/sun-by-day.ts';

const DEGREE = Math.PI / 180;
const angle = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const anywhere = {
  latitude_rad: angle(-1.5, 1.5),
  declination_rad: angle(-0.409, 0.409),
  hour_angle_rad: angle(-3.1, 3.1),
};

/** Unit vector east, north, up of a direction. */
function vector(zenith_rad: number, azimuth_rad: number): [number, number, number] {
  const s = Math.sin(zenith_rad);
  return [s * Math.sin(azimuth_rad), s * Math.cos(azimuth_rad), Math.cos(zenith_rad)];
}

describe('daysSinceJ2000', () => {
  it('gains a day a day over every turn of month and year', () => {
    for (let year = 1999; year <= 2005; year++) {
      const leap = year % 4 === 0;
      const start = daysSinceJ2000({ year, month: 1, day: 1 });
      expect(daysSinceJ2000({ year: year + 1, month: 1, day: 1 }) - start).toBe(leap ? 366 : 365);
      expect(daysSinceJ2000({ year, month: 3, day: 1 }) - daysSinceJ2000({ year, month: 2, day: 28 })).toBe(
        leap ? 2 : 1,
      );
    }
  });
});

describe('directionFromEquator', () => {
  it('agrees with turning the equatorial vector by the latitude', () => {
    fc.assert(
      fc.property(fc.record(anywhere), (at) => {
        const [x, y, z] = [
          Math.cos(at.declination_rad) * Math.cos(at.hour_angle_rad),
          -Math.cos(at.declination_rad) * Math.sin(at.hour_angle_rad),
          Math.sin(at.declination_rad),
        ];
        const up = x * Math.cos(at.latitude_rad) + z * Math.sin(at.latitude_rad);
        const north = z * Math.cos(at.latitude_rad) - x * Math.sin(at.latitude_rad);
        const seen = directionFromEquator(at);
        const [e, n, u] = vector(seen.zenith_rad, seen.azimuth_rad);
        expect(e).toBeCloseTo(y, 7);
        expect(n).toBeCloseTo(north, 7);
        expect(u).toBeCloseTo(up, 7);
      }),
    );
  });
});

describe('incidenceCosine', () => {
  it('is the product of the two unit vectors', () => {
    fc.assert(
      fc.property(angle(0, 3), angle(0, 6.28), angle(0, 1.57), angle(0, 6.28), (z, a, tilt, facing) => {
        const s = vector(z, a);
        const p = vector(tilt, facing);
        const dot = s[0] * p[0] + s[1] * p[1] + s[2] * p[2];
        const plane = { tilt_rad: tilt, azimuth_rad: facing };
        expect(incidenceCosine({ zenith_rad: z, azimuth_rad: a }, plane)).toBeCloseTo(dot, 12);
      }),
    );
  });
});

describe('sunPosition', () => {
  const place = { latitude_rad: 44 * DEGREE, longitude_rad: -72 * DEGREE };

  it('stands due south and highest when its hour angle is nought', () => {
    const noon = daysSinceJ2000({ year: 2027, month: 4, day: 9.5 }) + 72 / 360;
    const transit =
      noon - wrap(sunEphemeris(noon).greenwich_hour_angle_rad + place.longitude_rad) / (2 * Math.PI);
    const seen = sunPosition(transit, place);
    expect(Math.abs(seen.azimuth_rad - Math.PI)).toBeLessThan(1e-4);
    for (const off of [-0.01, 0.01]) {
      expect(sunPosition(transit + off, place).zenith_rad).toBeGreaterThan(seen.zenith_rad);
    }
  });

  it('comes back to the same place after a tropical year', () => {
    const start = daysSinceJ2000({ year: 2010, month: 5, day: 5 });
    const a = sunEphemeris(start);
    const b = sunEphemeris(start + 365.24219);
    expect(Math.abs(a.declination_rad - b.declination_rad) / DEGREE).toBeLessThan(0.006);
  });
});

describe('sunsetHourAngle_rad', () => {
  it('puts the Sun on the asked elevation', () => {
    fc.assert(
      fc.property(
        angle(-0.9, 0.9),
        angle(-0.4, 0.4),
        angle(-0.05, 0.3),
        (latitude_rad, declination_rad, e) => {
          const at = { latitude_rad, declination_rad };
          const w = sunsetHourAngle_rad(at, e);
          fc.pre(w > 0 && w < Math.PI);
          const { zenith_rad } = directionFromEquator({ ...at, hour_angle_rad: w });
          expect(Math.PI / 2 - zenith_rad).toBeCloseTo(e, 7);
        },
      ),
    );
  });

  it('knows the polar day and the polar night', () => {
    expect(sunsetHourAngle_rad({ latitude_rad: 1.4, declination_rad: 0.4 })).toBe(Math.PI);
    expect(sunsetHourAngle_rad({ latitude_rad: 1.4, declination_rad: -0.4 })).toBe(0);
  });
});

describe('air', () => {
  it('grows thicker and lifts more towards the horizon, and never lifts a Sun that has set', () => {
    const air = { pressure_Pa: 101325, air_C: 10 };
    for (let z = 0; z < 90; z++) {
      expect(airMass((z + 1) * DEGREE)).toBeGreaterThan(airMass(z * DEGREE));
      expect(refraction_rad((89 - z) * DEGREE, air)).toBeGreaterThan(refraction_rad((90 - z) * DEGREE, air));
    }
    expect(airMass(2)).toBe(airMass(Math.PI / 2));
    expect(refraction_rad(-0.02, air)).toBe(0);
  });
});

describe('the Sun by day of the year', () => {
  it('agrees with the ephemeris as closely as the short series promise', () => {
    for (let day = 1; day <= 365; day += 4) {
      const noon = daysSinceJ2000({ year: 2002, month: 1, day: 1 }) + day - 0.5;
      const sun = sunEphemeris(noon);
      expect(Math.abs(declinationSpencer_rad(day) - sun.declination_rad) / DEGREE).toBeLessThan(0.4);
      const lead_s = (wrap(sun.greenwich_hour_angle_rad) * 86400) / (2 * Math.PI);
      expect(Math.abs(equationOfTime_s(day) - lead_s)).toBeLessThan(50);
      expect(Math.abs(extraterrestrialNormal_W_m2(day, 1) * sun.distance_au ** 2 - 1)).toBeLessThan(1e-3);
    }
  });

  it('sums its hours to its day', () => {
    fc.assert(
      fc.property(angle(-1.4, 1.4), angle(-0.4, 0.4), (latitude_rad, declination_rad) => {
        const sun = { latitude_rad, declination_rad, normal_W_m2: 1361 };
        const sunset = sunsetHourAngle_rad(sun);
        let sum = 0;
        for (let h = -12; h < 12; h++) {
          const from = Math.max(-sunset, (h * Math.PI) / 12);
          const to = Math.min(sunset, ((h + 1) * Math.PI) / 12);
          sum += (meanExtraterrestrial_W_m2(sun, from, to) * Math.max(0, to - from) * 43200) / Math.PI;
        }
        const daily = dailyExtraterrestrial_J_m2(sun);
        expect(Math.abs(sum - daily)).toBeLessThan(1e-6 * daily + 1);
      }),
    );
  });

  it('gives nothing for an empty span', () => {
    expect(meanExtraterrestrial_W_m2({ latitude_rad: 0, declination_rad: 0, normal_W_m2: 1361 }, 1, 1)).toBe(
      0,
    );
  });
});
