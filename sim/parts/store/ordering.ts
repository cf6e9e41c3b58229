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
/** A mixture this much warmer is wholly mixed [K]. */
const BLEND = 1;
const warmer = (below: number, above: number) => below > above;

/** Both orders take: `x` enthalpy of each layer over the reference heat capacity [K], bottom first, from place `first`; `mass` [kg]. */
export class Ordering {
  readonly #mean: Float64Array;
  readonly #mass: Float64Array;
  readonly #start: Int32Array;
  readonly #whole: Float64Array;

  constructor(layers: number) {
    this.#mean = new Float64Array(layers);
    this.#mass = new Float64Array(layers);
    this.#start = new Int32Array(layers + 1);
    this.#whole = new Float64Array(layers);
  }

  /**
   * Writes the density-ordered profile to `ordered`: no layer is denser than the one below.
   *
   * @param density density of water from the same enthalpy [kg/m3], used near 4 C, where it has its maximum
   */
  order(
    x: ArrayLike<number>,
    first: number,
    mass: Float64Array,
    ordered: Float64Array,
    density: (x: number) => number,
  ): void {
    const { coldest, sorted } = copy(x, first, ordered);
    if (coldest > DENSEST) {
      if (!sorted) this.#pool(mass, ordered, warmer);
    } else this.#pool(mass, ordered, (below, above) => density(below) < density(above));
  }

  /**
   * The same while all water is warmer than its densest, and a continuous function of `x` throughout, as a
   * right-hand side must be. Across 4 C the density order is not: water at 2 C and at 6 C is equally dense, and
   * the least push mixes the two to 4 C. There only what a layer holds above 4.5 C rises and mixes, and the rest
   * stays; where a mixture would end well above 4.5 C it is mixed whole. What remains out of order (hundredths
   * of kg/m3) is left for `order` at the next restart. Own rule.
   */
  orderSmoothly(x: ArrayLike<number>, first: number, mass: Float64Array, ordered: Float64Array): void {
    const { coldest, sorted } = copy(x, first, ordered);
    if (sorted) return;
    this.#pool(mass, ordered, warmer);
    if (coldest > DENSEST) return;
    const whole = this.#whole;
    for (let i = 0; i < ordered.length; i++) {
      whole[i] = ordered[i];
      ordered[i] = Math.max(DENSEST, x[first + i]);
    }
    this.#pool(mass, ordered, warmer);
    for (let i = 0; i < ordered.length; i++) {
      const parted = ordered[i] + Math.min(0, x[first + i] - DENSEST);
      const share = Math.min(1, Math.max(0, (whole[i] - DENSEST) / BLEND));
      ordered[i] = parted + share * (whole[i] - parted);
    }
  }

  #pool(
    mass: Float64Array,
    ordered: Float64Array,
    violates: (below: number, above: number) => boolean,
  ): void {
    const mean = this.#mean;
    const pooled = this.#mass;
    const start = this.#start;
    let top = 0;
    for (let i = 0; i < ordered.length; i++) {
      mean[top] = ordered[i];
      pooled[top] = mass[i];
      start[top] = i;
      while (top > 0 && violates(mean[top - 1], mean[top])) {
        const together = pooled[top - 1] + pooled[top];
        mean[top - 1] = (mean[top - 1] * pooled[top - 1] + mean[top] * pooled[top]) / together;
        pooled[top - 1] = together;
        top--;
      }
      top++;
    }
    start[top] = ordered.length;
    for (let p = 0; p < top; p++) {
      for (let i = start[p]; i < start[p + 1]; i++) ordered[i] = mean[p];
    }
  }
}

/** Copies the profile and says how cold its coldest layer is, and whether it rises upwards. */
function copy(
  x: ArrayLike<number>,
  first: number,
  ordered: Float64Array,
): { coldest: number; sorted: boolean } {
  let coldest = Number.POSITIVE_INFINITY;
  let previous = Number.NEGATIVE_INFINITY;
  let sorted = true;
  for (let i = 0; i < ordered.length; i++) {
    const v = x[first + i];
    ordered[i] = v;
    if (v < coldest) coldest = v;
    if (v < previous) sorted = false;
    previous = v;
  }
  return { coldest, sorted };
}
