/**
 * One root of a function of one variable between two places where its sign differs.
 */

/** Where to look, how finely, and what to call it in a message. */
export interface RootSearch {
  low: number;
  high: number;
  /** Half-width of the final bracket [unit of x], > 0. */
  tolerance: number;
  /** What is sought, for messages: `collector temperature`. */
  name: string;
  /** Unit of x, for messages. */
  unit: string;
}

/**
 * Root of f between `low` and `high` by interpolating, truncating and projecting the estimate back to where
 * bisection would be: superlinear on smooth functions, never more than one evaluation beyond bisection.
 *
 * Ceiling on iterations: ceil(log2((high - low)/(2 tolerance))) + 1.
 *
 * @param f function of x; f(low) and f(high) finite, of opposite sign or zero
 * @returns x within `tolerance` of a root [unit of x]
 * @throws RangeError when the bracket holds no change of sign, or f gives a value that is not finite
 * @source Oliveira & Takahashi 2020, "An enhancement of the bisection method average performance preserving
 *   minmax optimality" (ITP), kappa1 = 0.2/(b - a), kappa2 = 2, n0 = 1; from memory, the ceiling is tested
 */
export function findRoot(f: (x: number) => number, search: RootSearch): number {
  let { low: a, high: b } = search;
  const eps = search.tolerance;
  if (!(b > a && eps > 0)) complain(search, 'low below high and a tolerance above 0', `${a} to ${b}, ${eps}`);
  let fa = finite(f(a), a, search);
  let fb = finite(f(b), b, search);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) complain(search, 'values of opposite sign at both ends', `${fa} and ${fb}`);
  const rising = fb > 0 ? 1 : -1;
  const most = Math.max(0, Math.ceil(Math.log2((b - a) / (2 * eps)))) + 1;
  const kappa = 0.2 / (b - a);
  for (let j = 0; b - a > 2 * eps && j < most; j++) {
    const middle = 0.5 * (a + b);
    const reach = eps * 2 ** (most - j) - 0.5 * (b - a);
    const falsi = (fb * a - fa * b) / (fb - fa);
    const towards = Math.sign(middle - falsi);
    const delta = kappa * (b - a) ** 2;
    const truncated = delta <= Math.abs(middle - falsi) ? falsi + towards * delta : middle;
    const x = Math.abs(truncated - middle) <= reach ? truncated : middle - towards * reach;
    const fx = finite(f(x), x, search);
    if (fx === 0) return x;
    if (fx * rising > 0) {
      b = x;
      fb = fx;
    } else {
      a = x;
      fa = fx;
    }
  }
  return 0.5 * (a + b);
}

function finite(value: number, x: number, search: RootSearch): number {
  if (!Number.isFinite(value)) complain(search, 'a finite value', `${value} at ${x} ${search.unit}`);
  return value;
}

function complain(search: RootSearch, expected: string, got: string): never {
  throw new RangeError(
    `${search.name} between ${search.low} and ${search.high} ${search.unit} - expected ${expected} - ` +
      `got ${got} - check the inputs it is solved from`,
  );
}
