/**
 * Leading terms of the Earth's place around the Sun, heliocentric, mean equinox of date: amplitude
 * [1e-8 rad or 1e-8 au], phase [rad], rate [rad per Julian millennium]. A coordinate is
 * 1e-8 (S0 + S1 t + S2 t^2), each S the sum of A cos(B + C t).
 *
 * Source: Bretagnon & Francou 1988 (VSOP87), as abridged by Meeus, "Astronomical Algorithms", and printed in
 * Reda & Andreas 2008 (NREL/TP-560-34302), table A4.2; from memory, so kept honest by the worked example of
 * that report (0.0001 degree). Terms below 1e-6 rad (0.00006 degree) are left out.
 */
import { cosine } from '../numerics/alike.ts';

type Term = readonly [amplitude: number, phase: number, rate: number];

/** Longitude, by power of t. */
export const LONGITUDE: readonly (readonly Term[])[] = [
  [
    [175347046, 0, 0],
    [3341656, 4.6692568, 6283.07585],
    [34894, 4.6261, 12566.1517],
    [3497, 2.7441, 5753.3849],
    [3418, 2.8289, 3.5231],
    [3136, 3.6277, 77713.7715],
    [2676, 4.4181, 7860.4194],
    [2343, 6.1352, 3930.2097],
    [1324, 0.7425, 11506.7698],
    [1273, 2.0371, 529.691],
    [1199, 1.1096, 1577.3435],
    [990, 5.233, 5884.927],
    [902, 2.045, 26.298],
    [857, 3.508, 398.149],
    [780, 1.179, 5223.694],
    [753, 2.533, 5507.553],
    [505, 4.583, 18849.228],
    [492, 4.205, 775.523],
    [357, 2.92, 0.067],
    [317, 5.849, 11790.629],
    [284, 1.899, 796.298],
    [271, 0.315, 10977.079],
    [243, 0.345, 5486.778],
    [206, 4.806, 2544.314],
    [205, 1.869, 5573.143],
    [202, 2.458, 6069.777],
    [156, 0.833, 213.299],
    [132, 3.411, 2942.463],
    [126, 1.083, 20.775],
    [115, 0.645, 0.98],
    [103, 0.636, 4694.003],
    [102, 0.976, 15720.839],
    [102, 4.267, 7.114],
  ],
  [
    [628331966747, 0, 0],
    [206059, 2.678235, 6283.07585],
    [4303, 2.6351, 12566.1517],
    [425, 1.59, 3.523],
  ],
  [
    [52919, 0, 0],
    [8720, 1.0721, 6283.0758],
  ],
];

/** Latitude. */
export const LATITUDE: readonly (readonly Term[])[] = [
  [
    [280, 3.199, 84334.662],
    [102, 5.422, 5507.553],
    [80, 3.88, 5223.69],
    [44, 3.7, 2352.87],
    [32, 4, 1577.34],
  ],
];

/** Distance. */
export const DISTANCE: readonly (readonly Term[])[] = [
  [
    [100013989, 0, 0],
    [1670700, 3.0984635, 6283.07585],
    [13956, 3.05525, 12566.1517],
    [3084, 5.1985, 77713.7715],
    [1628, 1.1739, 5753.3849],
    [1576, 2.8469, 7860.4194],
    [925, 5.453, 11506.77],
  ],
  [[103019, 1.10749, 6283.07585]],
];

/**
 * Value of a series: 1e-8 sum over k of t^k sum of A cos(B + C t) [rad or au].
 *
 * @param series one list of terms per power of t
 * @param t Julian millennia since J2000.0 in terrestrial time
 * @source as the tables above
 */
export function seriesAt(series: readonly (readonly Term[])[], t: number): number {
  let total = 0;
  let power = 1;
  for (const terms of series) {
    let sum = 0;
    for (const [amplitude, phase, rate] of terms) sum += amplitude * cosine(phase + rate * t);
    total += sum * power;
    power *= t;
  }
  return total * 1e-8;
}
