/** The energy balance of a run, from the integrals that are part of its state. */
import { PATHS, type PathKey, placeOf } from '../parts/layout.ts';
import type { Ledger } from './result.ts';

/**
 * @param y state at the end; @param start_J, end_J energy held by the plant then and now
 * @returns every path and what is left over: in - out - change of store [J]
 */
export function ledgerOf(y: ArrayLike<number>, start_J: number, end_J: number): Ledger {
  const paths = (Object.keys(PATHS) as PathKey[]).map((key) => ({
    key,
    energy_J: y[placeOf[key]],
    side: PATHS[key],
  }));
  const total = (side: 'in' | 'out') =>
    paths.filter((p) => p.side === side).reduce((sum, p) => sum + p.energy_J, 0);
  const stored_change_J = end_J - start_J;
  const residual_J = total('in') - total('out') - stored_change_J;
  const crossed = paths.filter((p) => p.side !== 'inside').reduce((sum, p) => sum + Math.abs(p.energy_J), 0);
  const throughput_J = Math.max(crossed / 2, Math.abs(stored_change_J));
  return {
    paths,
    stored_change_J,
    residual_J,
    residual_percent: throughput_J > 0 ? (100 * Math.abs(residual_J)) / throughput_J : 0,
    throughput_J,
  };
}
