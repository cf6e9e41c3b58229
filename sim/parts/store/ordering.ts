/**
 * Mixing by density. Water that lies under heavier water turns over at once; the store settles into the
 * nearest profile whose density never increases upwards. Pool-adjacent-violators finds it in one pass and
 * keeps the energy: pooled layers share their mass-weighted mean.
 *
 * Source: the pool-adjacent-violators algorithm (Ayer et al. 1955, from memory); as a mixing rule for a
 * layered store it stands for the buoyancy term of the one-dimensional store model (Kleinbach, Beckman and
 * Klein 1993, from memory).
 */

/** Above this enthalpy (as kelvin, about 4.5 C) density falls with temperature throughout, so values compare directly. */
const DENSEST = 4.5;

/**
 * Writes the density-ordered profile of `x` to `ordered`.
 *
 * @param x enthalpy of each layer, bottom first, divided by the reference heat capacity [K]; `first` is the
 *   place of the bottom layer
 * @param mass water of each layer [kg]
 * @param ordered result, bottom first [K]
 * @param density density of water from the same enthalpy [kg/m3], used near 4 C, where it has its maximum
 */
export class Ordering {
  readonly #mean: Float64Array;
  readonly #mass: Float64Array;
  readonly #start: Int32Array;

  constructor(layers: number) {
    this.#mean = new Float64Array(layers);
    this.#mass = new Float64Array(layers);
    this.#start = new Int32Array(layers + 1);
  }

  order(
    x: ArrayLike<number>,
    first: number,
    mass: Float64Array,
    ordered: Float64Array,
    density: (x: number) => number,
  ): void {
    const layers = ordered.length;
    let coldest = Number.POSITIVE_INFINITY;
    let previous = Number.NEGATIVE_INFINITY;
    let sorted = true;
    for (let i = 0; i < layers; i++) {
      const v = x[first + i];
      ordered[i] = v;
      if (v < coldest) coldest = v;
      if (v < previous) sorted = false;
      previous = v;
    }
    const plain = coldest > DENSEST;
    if (sorted && plain) return;
    const mean = this.#mean;
    const pooled = this.#mass;
    const start = this.#start;
    let top = 0;
    for (let i = 0; i < layers; i++) {
      mean[top] = ordered[i];
      pooled[top] = mass[i];
      start[top] = i;
      while (top > 0 && (plain ? mean[top - 1] > mean[top] : density(mean[top - 1]) < density(mean[top]))) {
        const together = pooled[top - 1] + pooled[top];
        mean[top - 1] = (mean[top - 1] * pooled[top - 1] + mean[top] * pooled[top]) / together;
        pooled[top - 1] = together;
        top--;
      }
      top++;
    }
    start[top] = layers;
    for (let p = 0; p < top; p++) {
      for (let i = start[p]; i < start[p + 1]; i++) ordered[i] = mean[p];
    }
  }
}
