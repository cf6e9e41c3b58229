/** Knows no physics: a function of two variables, tabulated where it is asked for. */

/** Knots of one variable: `first`, `first + step`, ... `count` of them. */
export interface Knots {
  first: number;
  step: number;
  count: number;
}

/**
 * A costly function of two variables, bilinear between knots that are computed when first needed. What it
 * returns does not depend on what it was asked before. Off the grid it asks the function itself.
 *
 * Error between knots: at most (dx^2 |f_xx| + dy^2 |f_yy|) / 8 (bilinear interpolation, textbook).
 */
export class LazyGrid {
  readonly #f: (x: number, y: number) => number;
  readonly #x: Knots;
  readonly #y: Knots;
  readonly #values: Float64Array;

  /** @param f finite on the whole grid */
  constructor(f: (x: number, y: number) => number, x: Knots, y: Knots) {
    this.#f = f;
    this.#x = x;
    this.#y = y;
    this.#values = new Float64Array(x.count * y.count).fill(Number.NaN);
  }

  at(x: number, y: number): number {
    const u = (x - this.#x.first) / this.#x.step;
    const v = (y - this.#y.first) / this.#y.step;
    const rows = this.#y.count;
    if (!(u >= 0 && u < this.#x.count - 1 && v >= 0 && v < rows - 1)) return this.#f(x, y);
    const i = u | 0;
    const j = v | 0;
    const k = i * rows + j;
    const values = this.#values;
    if (Number.isNaN(values[k] + values[k + 1] + values[k + rows] + values[k + rows + 1])) this.#fill(i, j);
    const low = values[k] + (v - j) * (values[k + 1] - values[k]);
    const high = values[k + rows] + (v - j) * (values[k + rows + 1] - values[k + rows]);
    return low + (u - i) * (high - low);
  }

  #fill(i: number, j: number): void {
    for (const a of [i, i + 1]) {
      for (const b of [j, j + 1]) {
        const value = this.#f(this.#x.first + a * this.#x.step, this.#y.first + b * this.#y.step);
        this.#values[a * this.#y.count + b] = value;
      }
    }
  }
}
