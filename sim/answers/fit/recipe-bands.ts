/** Numbers of a recipe with the bands that its readings leave, and how a file writes them. */
import type { Banded } from '../answer.ts';
import type { Measured } from './measured.ts';
import type { Sought } from './recipe-runs.ts';

export interface Found {
  facts: Record<string, Banded>;
  measured: (Measured & { shown: Banded })[];
}

export function banded(value: number, a: number, b: number, dimension: Banded['dimension']): Banded {
  return { value, low: Math.min(a, b), high: Math.max(a, b), numerical: 0, dimension };
}

/** A value and what it is with the reading off by its doubt either way; an end that cannot be is the input's own. */
export function ends(
  of: (reading: number) => number,
  reading: number,
  doubt: number,
  dimension: Banded['dimension'],
  sought?: Sought,
): Banded {
  const value = of(reading);
  const end = (off: number): number => {
    try {
      return of(reading + off);
    } catch (error) {
      if (!(error instanceof RangeError) || !sought) throw error;
      return Number.NaN;
    }
  };
  const tried = [end(-doubt), end(doubt)];
  const known = tried.filter((each) => Number.isFinite(each));
  // An end past what the design can give lies at the nearer end of the input's range.
  const missing = tried.length - known.length;
  const edge = sought && missing > 0 ? (known[0] > value ? sought.least : sought.greatest) : value;
  const all = missing > 0 ? [...known, edge] : known;
  return banded(value, Math.min(value, ...all), Math.max(value, ...all), dimension);
}

const text = (value: number) => Number(value.toPrecision(4));
export const plain = (value: number) => text(value);
export const percent = (share: number) => `${text(100 * share)} %`;
export const litresAMinute = (flow_m3_s: number) => `${text(60_000 * flow_m3_s)} L/min`;

export function input(
  path: string,
  shown: Banded,
  write: (value: number) => string | number,
): Found['measured'][0] {
  return { path, value: write(shown.value), low: `${write(shown.low)}`, high: `${write(shown.high)}`, shown };
}
