/** What "Try a range" asks for: two values of an entry and how many between them. */
import {
  type EntryField,
  edited,
  entering,
  type FilledDefault,
  type OutlineEntry,
  readEntry,
  readScenario,
  type Scenario,
} from '../../../../sim/index.ts';
import {
  cardWords,
  priceText,
  quantityText,
  readTyped,
  type Trouble,
  typedText,
  type Units,
} from '../../../words/index.ts';
import type { RangeSpec } from '../../app/page-state.ts';

export type RangeBox = 'from' | 'to' | 'n';

export type RangeRead = { ok: true; spec: RangeSpec } | { ok: false; box: RangeBox; trouble: Trouble };

const mostValues = 200;

/** A design, and what reading it filled in. */
export interface ReadDesign {
  scenario: Scenario;
  filled: readonly FilledDefault[];
}

/** Whether an entry lies on a line that can be walked along. */
export function hasRange({ kind }: EntryField): boolean {
  return kind === 'quantity' || kind === 'number';
}

export function readRange({ path, field }: OutlineEntry, typed: Record<RangeBox, string>): RangeRead {
  const words = cardWords.range;
  const ends: number[] = [];
  for (const box of ['from', 'to'] as const) {
    const read = readTyped(field, typed[box]);
    if (!read.ok) return refuse(box, words[box], read.expected, read.got, read.fix);
    ends.push(read.value.means as number);
  }
  const n = Number(typed.n);
  if (!Number.isInteger(n) || n < 2 || n > mostValues) {
    return refuse('n', words.steps, words.count.expected, `"${typed.n}"`, words.count.fix);
  }
  if (ends[0] === ends[1])
    return refuse('to', words.to, words.same.expected, `"${typed.to}"`, words.same.fix);
  const asFile = (text: string) => typedText(field, text).trim();
  return { ok: true, spec: { path, from: asFile(typed.from), to: asFile(typed.to), n } };
}

function refuse(box: RangeBox, where: string, expected: string, got: string, fix: string): RangeRead {
  return { ok: false, box, trouble: { where, expected, got, fix } };
}

/**
 * What the boxes hold at first: the band one would believe, else half as much to half as much again; each end as near
 * to the value as lets the rest of the design be what it is.
 */
export function usualRange(entry: OutlineEntry, units: Units, of: ReadDesign): Record<RangeBox, string> {
  const { field, assumed, value } = entry;
  const band = assumed?.band ?? field.band;
  const now = meaning(field, value);
  const wide = band?.map((end) => meaning(field, end)) ?? (now === null ? [] : around(field, now));
  const near = wide.map((end) => (now === null || end === null ? end : nearest(entry, now, end, units, of)));
  // Where nothing fits on either side, the person is to see what is wrong with it.
  const ends = near.every((end) => end === now) ? wide : near;
  const [from, to] = [0, 1].map((i) => written(field, ends[i] ?? null, units));
  return { from, to, n: String(isWhole(field) ? wholeSteps(Number(to) - Number(from)) : usualSteps) };
}

const usualSteps = 5;
const steps = 8;

function isWhole(field: EntryField): boolean {
  return field.kind === 'number' && field.whole;
}

/** As many values as may be, each of them whole. */
function wholeSteps(apart: number): number {
  let n = usualSteps;
  while (n > 2 && apart % (n - 1) !== 0) n--;
  return n;
}

/** The farthest step from a value towards an end at which nothing is wrong that was right before; the value if none is. */
function nearest(
  entry: OutlineEntry,
  now: number,
  end: number,
  units: Units,
  { scenario, filled }: ReadDesign,
): number {
  const { path, field } = entry;
  const wrongIn = (design: Scenario) => {
    const read = readScenario(design);
    return read.ok ? [] : read.problems.map((problem) => problem.path);
  };
  const before = wrongIn(scenario);
  const fits = (at: number) => {
    const { edits } = entering(scenario, path, fileValue(field, written(field, at, units)), filled);
    return wrongIn(edited(scenario, edits)).every((each) => before.includes(each));
  };
  const tried = Array.from({ length: steps }, (_, i) => ((end - now) * (steps - i)) / steps).map(
    (away) => now + (isWhole(field) ? Math.trunc(away) : away),
  );
  return tried.find(fits) ?? now;
}

/** Degrees have no nought to halve towards: a few up and down. */
function around(field: EntryField, value: number): [number, number] {
  if (field.kind !== 'quantity' && field.kind !== 'number') return [value, value];
  const [least, most] = field.range;
  const signed =
    least < 0 || (field.kind === 'quantity' && ['temperature', 'clock'].includes(field.dimension));
  const reach = signed || value === 0 ? (most - least) / 20 : Math.abs(value) / 2;
  const [low, high] = [Math.max(least, value - reach), Math.min(most, value + reach)];
  return isWhole(field) ? [Math.max(least, Math.floor(low)), Math.ceil(high)] : [low, high];
}

function meaning(field: EntryField, value: unknown): number | null {
  const read = value === undefined ? null : readEntry(field, String(value));
  return read?.ok && typeof read.value.means === 'number' ? read.value.means : null;
}

function fileValue(field: EntryField, text: string): unknown {
  const read = readEntry(field, text);
  return read.ok ? read.value.value : text;
}

function written(field: EntryField, value: number | null, units: Units): string {
  if (value === null) return '';
  return field.kind === 'quantity'
    ? quantityText(value, field.dimension, units, { digits: 3, plain: true })
    : field.kind === 'number' && field.per
      ? priceText(value, field.per, units, { digits: 3, plain: true })
      : String(Number(value.toPrecision(3)));
}
