/**
 * Functions that engines of JavaScript compute to different last digits, made of those that they compute alike. A run
 * is a chaos of small switchings: with the platform's own, page and terminal differed by some percent in a month's solar
 * heat. (Tangent, exponential, logarithm and roots agree; checked in the browser against Node.)
 */

/** A power of whole exponent up to this is multiplied out. */
const MOST_MULTIPLIED = 64;

/**
 * `base` to the power `exponent`.
 *
 * @param base any number for a whole exponent, else 0 or more: NaN below
 * @returns within some units in the last place, times the exponent's logarithm of the base where it is not whole
 */
export function power(base: number, exponent: number): number {
  if (!Number.isInteger(exponent) || Math.abs(exponent) > MOST_MULTIPLIED) {
    return Math.exp(exponent * Math.log(base));
  }
  let product = 1;
  for (
    let left = Math.abs(exponent), square = base;
    left > 0;
    left = Math.floor(left / 2), square *= square
  ) {
    if (left % 2 === 1) product *= square;
  }
  return exponent < 0 ? 1 / product : product;
}

/** Sine of an angle [rad], within some units in the last place of 1. */
export function sine(angle_rad: number): number {
  const t = Math.tan(angle_rad / 2);
  return (2 * t) / (1 + t * t);
}

/** Cosine of an angle [rad], within some units in the last place of 1. */
export function cosine(angle_rad: number): number {
  const t = Math.tan(angle_rad / 2);
  return (1 - t * t) / (1 + t * t);
}
