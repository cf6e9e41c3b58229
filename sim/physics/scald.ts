/** How long hot water may touch skin. */
import { power } from '../numerics/alike.ts';

/**
 * Exposure of adult skin that leaves a deep burn: temperature [C], time [s].
 * Source: Moritz & Henriques 1947 as quoted in shared/trade.md 6 (120, 124, 127, 133, 140, 148, 155 F).
 */
const BURNS: readonly (readonly [number, number])[] = [
  [48.89, 300],
  [51.11, 180],
  [52.78, 60],
  [56.11, 15],
  [60, 5],
  [64.44, 2],
  [68.33, 1],
];

/**
 * Time until running water at t_C [C] leaves a deep burn on an adult [s]; children's skin takes about a quarter of
 * it (from memory). Straight in the time's logarithm between the measured points; null below the first of them, where
 * it takes longer than 5 min; a second, and less, above the last.
 * Source: as `BURNS`.
 */
export function burnTime(t_C: number): number | null {
  if (!(t_C >= BURNS[0][0])) return null;
  for (let i = 1; i < BURNS.length; i++) {
    const [[t0, s0], [t1, s1]] = [BURNS[i - 1], BURNS[i]];
    if (t_C <= t1) return s0 * power(s1 / s0, (t_C - t0) / (t1 - t0));
  }
  return BURNS[BURNS.length - 1][1];
}
