/** Inputs that an ensemble varies: the ends each is believed between, and the edits that put it anywhere between them. */
import { spaceFilling } from '../../numerics/random.ts';
import { formatQuantity, parseQuantity } from '../../quantity/index.ts';
import { type EntryField, outlineOf, readEntry } from '../../scenario/index.ts';
import { doubtsOf } from '../band.ts';
import { entered, type File } from '../entered.ts';
import type { Job } from '../job.ts';

export interface Varied {
  path: string;
  label: string;
  field: Extract<EntryField, { kind: 'quantity' | 'number' }>;
  /** As the scenario stands, and the ends: SI. */
  value: number;
  low: number;
  high: number;
  /** The ends as they are told. */
  texts: { low: string; high: string };
  /** The file's author marked it; else it is a default that came with its band. */
  marked: boolean;
  /** How to measure it, where there is a way. */
  measure: string | null;
}

/** Every doubt that matters, as something to vary; inputs that hold no number are left out. */
export function variedOf(file: File, matters: (path: string) => boolean): Varied[] {
  const { scenario, filled, marks } = file;
  const marked = new Set(marks.map(({ path }) => path));
  return doubtsOf(file, matters).flatMap((doubt): Varied[] => {
    const { path } = doubt;
    const entry = outlineOf(scenario, path, filled);
    if (entry?.kind !== 'entry') return [];
    const { field, label, measure } = entry;
    if (field.kind !== 'quantity' && field.kind !== 'number') return [];
    const [low, high] = [doubt.low, doubt.high].map(({ text }) => numberOf(field, text));
    if (low === null || high === null) return [];
    const texts = { low: doubt.low.text, high: doubt.high.text };
    const value = numberOf(field, entry.value) ?? (low + high) / 2;
    return [{ path, label, field, value, low, high, texts, marked: marked.has(path), measure }];
  });
}

export const WEATHER = 'weather.seed';
const MOST_SEED = 4_294_967_295;

/** Seed of weather that is made, as the scenario stands; null where none is. */
export function chanceOf({ scenario, filled }: File): number | null {
  const entry = outlineOf(scenario, WEATHER, filled);
  const { weather } = scenario;
  if (entry?.kind !== 'entry' || (weather?.kind === 'file' && weather.rest === undefined)) return null;
  return Number(entry.value);
}

/** Seed of the `i`th other like year, counted from 1. */
export function likeYear(seed: number, i: number): number {
  return (seed + i) % MOST_SEED;
}

function numberOf(field: Varied['field'], raw: unknown): number | null {
  if (field.kind === 'number') {
    const read = readEntry(field, String(raw));
    return read.ok ? (read.value.means as number) : null;
  }
  const read = parseQuantity(String(raw), field.dimension);
  return read.ok ? read.value : null;
}

/**
 * Value at a place `u` in (0, 1) of an input's ends: half of all places lie below the value as it stands, evenly down
 * to the low end, and half above; evenly between the ends where that value lies outside them. Whole where it counts.
 */
export function valueAt({ field, value, low, high }: Varied, u: number): number {
  const inside = value >= low && value <= high;
  const middle = inside ? value : (low + high) / 2;
  const at = u < 0.5 ? low + (middle - low) * 2 * u : middle + (high - middle) * (2 * u - 1);
  return field.kind === 'number' && field.whole ? Math.round(at) : at;
}

/** Enough that a run does not show it. */
const DIGITS = 9;

/** A value as a file would have it. */
export function written(field: Varied['field'], value: number, digits = DIGITS): string | number {
  return field.kind === 'quantity'
    ? formatQuantity(value, field.dimension, 'SI', { digits, plain: true })
    : Number(value.toPrecision(digits));
}

/**
 * The jobs of an ensemble: each a run with every input somewhere between its ends, evenly spread over all of them at
 * once (a Latin hypercube), and with the weather of another like year. The same for the same seed.
 */
export function ensembleJobs(file: File, varied: readonly Varied[], runs: number, seed: number): Job[] {
  return placesOf(varied, runs, seed).map((places, i) => jobAt(file, varied, places, i));
}

/** Where each input stands in each run, by path. */
export function placesOf(varied: readonly Varied[], runs: number, seed: number): Map<string, number>[] {
  const points = spaceFilling(runs, Math.max(1, varied.length), seed);
  return points.map((point) => new Map(varied.map(({ path }, k) => [path, point[k]])));
}

/** The `i`th run of an ensemble; inputs of which no place is known stand in the middle. */
export function jobAt(
  file: File,
  varied: readonly Varied[],
  places: ReadonlyMap<string, number>,
  i: number,
): Job {
  const chance = chanceOf(file);
  const values = varied.map((each) => {
    return [each.path, written(each.field, valueAt(each, places.get(each.path) ?? 0.5))] as const;
  });
  return { edits: entered(file, chance === null ? values : [...values, [WEATHER, likeYear(chance, i + 1)]]) };
}
