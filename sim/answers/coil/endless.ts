/** The coil drawn out: what each further metre of it brings at the same flow, and where more stops paying. */
import { findRoot } from '../../numerics/root.ts';
import { type CoilCase, coilOf } from './coil-of.ts';

/** A further metre that brings this share of what the first brought no longer pays (judgement). */
const KNEE_SHARE = 0.25;
const SHORTEST_M = 0.3;
const LONGEST_M = 3000;

/** The case at another total length [m], its rolls alike. */
function at(given: CoilCase, length_m: number): number {
  return coilOf({ ...given, roll_length_m: length_m / given.rolls }).outlet_C;
}

/** Outlet [C] at total lengths [m], flow and number of paths as given; the endless coil's is the tank's. */
export function outletByLength(given: CoilCase, lengths_m: readonly number[]): number[] {
  return lengths_m.map((length) => at(given, length));
}

/**
 * Total length [m] at which a further metre brings a quarter of what the first one brought, at the same flow:
 * about where the coil gives three quarters of an endless one. Null where even the longest looked at pays.
 * Source: judgement; for a constant U it is -ln(1/4) m cp/U'.
 */
export function kneeLength(given: CoilCase): number | null {
  const slope = (length_m: number) =>
    Math.abs(at(given, length_m * 1.01) - at(given, length_m * 0.99)) / (0.02 * length_m);
  const first = slope(SHORTEST_M);
  const above = (log: number) => slope(Math.exp(log)) / first - KNEE_SHARE;
  const [low, high] = [Math.log(SHORTEST_M), Math.log(LONGEST_M)];
  if (above(high) >= 0) return null;
  return Math.exp(
    findRoot(above, { low, high, tolerance: 1e-3, name: 'knee of the coil, log of its length', unit: 'm' }),
  );
}
