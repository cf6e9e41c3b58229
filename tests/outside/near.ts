/** Comparison by share, for checks whose source gives few digits. */
import { expect } from 'vitest';

/** Expects got within `share` (0.01 is 1 %) of expected. */
export function expectWithin(got: number, expected: number, share: number): void {
  const off = Math.abs(got / expected - 1);
  expect(
    off,
    `${got} against ${expected}, off ${(100 * off).toFixed(3)} %, allowed ${100 * share} %`,
  ).toBeLessThanOrEqual(share);
}
