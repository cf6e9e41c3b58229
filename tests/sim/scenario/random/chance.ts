/** Seeded choices, and quantities written as people write them. */
import { seededRandom } from '../../../../sim/numerics/random.ts';

/** A seeded source of choices, in the units of one of the two systems. */
export class Chance {
  readonly #uniform: () => number;
  readonly us: boolean;

  constructor(seed: number) {
    this.#uniform = seededRandom(seed);
    this.us = this.yes(0.5);
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.#uniform();
  }
  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }
  yes(share: number): boolean {
    return this.#uniform() < share;
  }
  pick<T>(items: readonly T[]): T {
    return items[Math.floor(this.#uniform() * items.length)];
  }
  shuffled<T>(items: readonly T[]): T[] {
    return items
      .map((item) => [this.#uniform(), item] as const)
      .sort(([a], [b]) => a - b)
      .map(([, item]) => item);
  }
  /** The part, or nothing: to be spread into an object. */
  maybe<T extends object>(share: number, part: () => T): Partial<T> {
    return this.yes(share) ? part() : {};
  }

  length(m: number): string {
    return this.us ? `${digits(m / 0.0254)} in` : `${digits(m)} m`;
  }
  temperature(t_C: number): string {
    return this.us ? `${digits(t_C * 1.8 + 32)} F` : `${digits(t_C)} C`;
  }
  difference(k: number): string {
    return this.us ? `${digits(k * 1.8)} F` : `${digits(k)} K`;
  }
  flow(litres_a_minute: number): string {
    return this.us ? `${digits(litres_a_minute / 3.785411784)} gpm` : `${digits(litres_a_minute)} L/min`;
  }
  volume(litres: number): string {
    return this.us ? `${digits(litres / 3.785411784)} gal` : `${digits(litres)} L`;
  }
  power(watts: number): string {
    return `${digits(watts)} W`;
  }
  share(low: number, high: number): string {
    return `${digits(100 * this.between(low, high))} %`;
  }
  clock(low_h = 0, high_h = 23.9): string {
    const minutes = Math.floor(60 * this.between(low_h, high_h));
    return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  }
  days(): string {
    return this.pick(['every day', 'weekdays', 'weekends', 'Mon Wed Fri', 'Sat']);
  }
}

/** Six digits, never in a form a reader could mistake. */
export function digits(x: number): string {
  return String(Number(x.toPrecision(6)));
}
