/**
 * Bands of the figures: the run is repeated with each doubtful assumption at its low and at its high value, one
 * at a time; the deviations up and those down are added in squares, as of independent doubts.
 */
import { type FilledDefault, glossary, type Result, readScenario, simulate } from '../../sim/index.ts';
import { fromSim, spanText } from '../words/index.ts';
import type { Loaded } from './load.ts';

type Figures = Result['figures'];

export interface Bands {
  figures: Map<string, Band>;
  /** Doubtful assumptions that were tried, and those that could not be. */
  tried: FilledDefault[];
  untried: FilledDefault[];
}

export interface Band {
  low: number;
  high: number;
  /** The assumption that moves the figure most. */
  most: FilledDefault;
}

/** A band as a file could say it: `0.5 to 1.2`. */
export function bandWords([low, high]: readonly [string, string]): string {
  return spanText(fromSim(low), fromSim(high));
}

/** Deviations smaller than this share of the figure are the integration's, not the doubt's. */
const leastShare = 0.002;

/** Those that may move a run's figures: prices do not. */
export function doubtful(filled: readonly FilledDefault[]): FilledDefault[] {
  return filled.filter(({ band, path }) => band !== null && !path.startsWith('prices.'));
}

/** `base` are the figures of the run as it stands. */
export function figureBands(loaded: Loaded, base: Figures, onProgress: (fraction: number) => void): Bands {
  const doubts = doubtful(loaded.read.filled);
  const tried: FilledDefault[] = [];
  const untried: FilledDefault[] = [];
  const spreads: { doubt: FilledDefault; runs: Figures[] }[] = [];
  doubts.forEach((doubt, i) => {
    const runs = (doubt.band ?? [])
      .map((text) => figuresWith(loaded, doubt.path, text))
      .filter((figures) => figures !== null);
    onProgress((i + 1) / doubts.length);
    if (runs.length === 0) untried.push(doubt);
    else {
      tried.push(doubt);
      spreads.push({ doubt, runs });
    }
  });
  const figures = new Map<string, Band>();
  for (const [key, value] of Object.entries(base)) {
    const band = value === null ? null : bandOf(key, value, spreads, base);
    if (band) figures.set(key, band);
  }
  return { figures, tried, untried };
}

function bandOf(
  key: string,
  value: number,
  spreads: { doubt: FilledDefault; runs: Figures[] }[],
  base: Figures,
): Band | null {
  let down = 0;
  let up = 0;
  let widest = 0;
  let most: FilledDefault | null = null;
  for (const { doubt, runs } of spreads) {
    const deviations = runs.map((figures) => (figures[key] ?? value) - value);
    const lowest = Math.min(0, ...deviations);
    const highest = Math.max(0, ...deviations);
    down += lowest * lowest;
    up += highest * highest;
    if (highest - lowest > widest) {
      widest = highest - lowest;
      most = doubt;
    }
  }
  if (!most || widest <= leastShare * Math.abs(value)) return null;
  return {
    ...within(key, value - Math.sqrt(down), value + Math.sqrt(up), base),
    most,
  };
}

/** Added in squares, deviations may reach past what a figure can be: below nothing, or more cold showers than showers. */
function within(key: string, low: number, high: number, base: Figures): { low: number; high: number } {
  const entry = glossary.find((candidate) => candidate.key === key);
  const [least, greatest] = entry?.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = key === 'showers_cold' ? (base.showers ?? greatest) : greatest;
  const whole = entry?.dimension === 'count';
  return {
    low: Math.max(least, whole ? Math.floor(low) : low),
    high: Math.min(most, whole ? Math.ceil(high) : high),
  };
}

/** Figures of the run with `text` written at `path`; null where the file then no longer holds together. */
function figuresWith(
  { json, context, read: { filled } }: Loaded,
  path: string,
  text: string,
): Figures | null {
  const changed = structuredClone(json);
  // A part that was filled in as a whole is written out whole: its values need one another.
  const missing = missingPart(changed, path);
  if (missing !== null) {
    for (const other of filled)
      if (other.path.startsWith(`${missing}.`)) writeAt(changed, other.path, other.value);
  }
  writeAt(changed, path, text);
  try {
    const read = readScenario(changed, context);
    return read.ok ? simulate(read.plant).figures : null;
  } catch {
    // A value at the end of its band may be more than a run can bear; the doubt then counts as untried.
    return null;
  }
}

/** The outermost part on the way to `path` that the file leaves out, or null. */
function missingPart(json: Json, path: string): string | null {
  const ends = Array.from(path.matchAll(/(?<=[^.[])(?=[.[])/g), ({ index }) => index);
  return (
    ends.map((end) => path.slice(0, end)).find((part) => valueAt(json, stepsOf(part)) === undefined) ?? null
  );
}

type Json = Record<string | number, unknown>;

/** `coils[0].tube.size` as its steps. */
function stepsOf(path: string): (string | number)[] {
  return Array.from(path.matchAll(/\[(\d+)\]|([^.[\]]+)/g), ([, index, name]) =>
    index === undefined ? name : Number(index),
  );
}

function valueAt(json: Json, steps: (string | number)[]): unknown {
  let at: unknown = json;
  for (const step of steps) at = typeof at === 'object' && at !== null ? (at as Json)[step] : undefined;
  return at;
}

/** Multipliers, counts and flags stand in a file without quotes. */
function writeAt(json: Json, path: string, text: string): void {
  const steps = stepsOf(path);
  let at = json;
  for (const step of steps.slice(0, -1)) {
    if (typeof at[step] !== 'object' || at[step] === null) at[step] = {};
    at = at[step] as Json;
  }
  at[steps[steps.length - 1]] = /^(-?\d+(\.\d+)?(e-?\d+)?|true|false)$/.test(text) ? JSON.parse(text) : text;
}
