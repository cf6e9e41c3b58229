/** Cutting a stack of layers anew when its water has become less. */

/**
 * Fills new layers from old ones, bottom first.
 *
 * @param x enthalpy of the old layers over the reference heat capacity [K]; @param masses theirs [kg]
 * @param wanted masses of the new layers [kg], together no more than the old
 * @param y receives the new layers' enthalpies from place `first`
 * @returns what did not fit: mass times enthalpy [kg K]
 */
export function recut(
  x: Float64Array,
  masses: Float64Array,
  wanted: Float64Array,
  y: number[],
  first: number,
): number {
  let old = 0;
  let left = masses[0];
  let total = 0;
  for (let i = 0; i < x.length; i++) total += masses[i] * x[i];
  for (let i = 0; i < wanted.length; i++) {
    let need = wanted[i];
    let energy = 0;
    while (need > 0 && old < x.length) {
      const part = Math.min(need, left);
      energy += part * x[old];
      need -= part;
      left -= part;
      if (left <= 1e-12 && old < x.length - 1) left = masses[++old];
      else if (left <= 1e-12) break;
    }
    y[first + i] = energy / (wanted[i] - Math.max(0, need));
    total -= wanted[i] * y[first + i];
  }
  return total;
}
