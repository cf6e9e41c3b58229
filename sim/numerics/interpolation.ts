/**
 * Values between knots: hourly means made continuous without losing a mean, and linear tables.
 * Knows no physics: the unit of a value is the caller's.
 */

/** One quadratic per hour: v(tau) = c0[h] + c1[h] tau + c2[h] tau^2, tau 0..1 inside hour h. */
export interface HourlyCurve {
  c0: Float64Array;
  c1: Float64Array;
  c2: Float64Array;
}

/**
 * Quadratics through hourly means that are continuous at every hour's edge and keep each hour's mean exactly.
 *
 * Edge value between the means p and m: e = (p + m)/2; where the quantity cannot be negative
 * e = min((p + m)/2, 2 p, 2 m), which keeps the curve at or above zero: with both edges in [0, 2m] the
 * quadratic of mean m has its lowest value between them no lower than 0. Inside an hour with edges a and b
 * and mean m: c0 = a, c1 = 6m - 4a - 2b, c2 = 3(a + b) - 6m (from v(0) = a, v(1) = b, integral = m).
 * The last hour is followed by the first: a year closes on itself.
 *
 * @param hourly means by hour [any unit], at least one, all finite; not below 0 when `nonNegative`
 * @param nonNegative true where a value below zero has no meaning (irradiance, wind)
 * @returns coefficients [the same unit]
 * @throws RangeError at the first hour that is not finite, or is negative where it may not be
 * @source own derivation (three conditions, three coefficients); exactness is tested
 */
export function meanPreserving(hourly: Float64Array, nonNegative: boolean): HourlyCurve {
  const n = hourly.length;
  if (n === 0)
    throw new RangeError('hourly means - expected at least 1 value - got none - give a whole year');
  const c0 = new Float64Array(n);
  const c1 = new Float64Array(n);
  const c2 = new Float64Array(n);
  let before = hourly[n - 1];
  for (let h = 0; h < n; h++) {
    const m = hourly[h];
    if (!Number.isFinite(m) || (nonNegative && m < 0)) {
      throw new RangeError(
        `hourly means, hour ${h} - expected a finite number${nonNegative ? ', 0 or more' : ''} - got ${m} - ` +
          'mend the series before it is interpolated',
      );
    }
    c0[h] = edgeBetween(before, m, nonNegative);
    before = m;
  }
  for (let h = 0; h < n; h++) {
    const a = c0[h];
    const b = c0[h + 1 < n ? h + 1 : 0];
    c1[h] = 6 * hourly[h] - 4 * a - 2 * b;
    c2[h] = 3 * (a + b) - 6 * hourly[h];
  }
  return { c0, c1, c2 };
}

function edgeBetween(before: number, after: number, nonNegative: boolean): number {
  const middle = 0.5 * (before + after);
  return nonNegative ? Math.min(middle, 2 * before, 2 * after) : middle;
}

/**
 * Value of an hourly curve; allocates nothing.
 *
 * @param curve from `meanPreserving`
 * @param hour whole number, 0 .. length - 1
 * @param tau place in the hour [-], 0..1
 */
export function curveAt(curve: HourlyCurve, hour: number, tau: number): number {
  return curve.c0[hour] + tau * (curve.c1[hour] + tau * curve.c2[hour]);
}

/**
 * Linear interpolation in a table, held at the first and last value outside it.
 *
 * @param x ascending knots [any unit], at least one
 * @param y values at the knots
 * @param at where to read [unit of x]
 * @returns y between the neighbouring knots, linearly
 */
export function linearTable(x: ArrayLike<number>, y: ArrayLike<number>, at: number): number {
  const last = x.length - 1;
  if (!(at > x[0])) return y[0];
  if (at >= x[last]) return y[last];
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle] <= at) low = middle;
    else high = middle;
  }
  return y[low] + ((y[high] - y[low]) * (at - x[low])) / (x[high] - x[low]);
}
