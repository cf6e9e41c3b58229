/** Figures of parts of a run, as its months: each counted by a tally of its own, from one midnight to another. */
import { placeOf } from '../parts/layout.ts';
import type { Plant } from '../plant/plant.ts';
import { figuresOf } from './figures.ts';
import type { Result } from './result.ts';
import { Tally } from './tally.ts';

const DAY = 86_400;

/** The figures of a part; times in them count from the part's beginning, `..._end` holds at its end. */
export interface PartFigures {
  /** Days of the run before it. */
  from_day: number;
  days: number;
  figures: Result['figures'];
}

export class Parts {
  readonly done: PartFigures[] = [];
  /** Counts the present part; null where a run is not told of by parts. */
  tally: Tally | null = null;
  readonly #plant: Plant;
  readonly #begins: readonly number[];
  /** Integrals at the part's beginning. */
  #before: number[] = [];
  #from_day = 0;

  /** @param begins days of the run, ascending, on which a new part begins; none: the run is not told of by parts */
  constructor(plant: Plant, begins: readonly number[], y: readonly number[]) {
    this.#plant = plant;
    this.#begins = begins;
    if (begins.length > 0) this.#begin(0, y);
  }

  #begin(day: number, y: readonly number[]): void {
    this.#from_day = day;
    this.#before = y.slice();
    this.tally = new Tally(this.#plant);
  }

  /** The midnight that ends `day` days of the run. */
  midnight(day: number, y: readonly number[]): void {
    const { days } = this.#plant.description.run;
    if (!this.tally || (day < days && !this.#begins.includes(day))) return;
    const within = y.slice();
    for (const place of Object.values(placeOf)) within[place] -= this.#before[place];
    const figures = figuresOf(this.#plant, this.tally, within);
    for (const key of ['first_cold_s', 'dry_s']) {
      const first = figures[key];
      if (first !== null) figures[key] = Math.max(0, first - this.#from_day * DAY);
    }
    this.done.push({ from_day: this.#from_day, days: day - this.#from_day, figures });
    this.#begin(day, y);
  }
}
