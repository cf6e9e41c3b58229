/** What "Try a range" asks for: two values of an entry and how many between them. */
import { type EntryField, type OutlineEntry, readEntry } from '../../../../sim/index.ts';
import {
  cardWords,
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

/** What the boxes hold at first: the band one would believe, else half as much to half as much again. */
export function usualRange(entry: OutlineEntry, units: Units): Record<RangeBox, string> {
  const { field, assumed, value } = entry;
  const n = '5';
  const band = assumed?.band ?? field.band;
  if (band) return { from: asText(field, band[0], units), to: asText(field, band[1], units), n };
  const read = value === undefined ? null : readEntry(field, String(value));
  if (!read?.ok || typeof read.value.means !== 'number') return { from: '', to: '', n };
  const [low, high] = around(field, read.value.means);
  return { from: written(field, low, units), to: written(field, high, units), n };
}

/** Degrees have no nought to halve towards: a few up and down. */
function around(field: EntryField, value: number): [number, number] {
  if (field.kind !== 'quantity' && field.kind !== 'number') return [value, value];
  const [least, most] = field.range;
  const signed =
    least < 0 || (field.kind === 'quantity' && ['temperature', 'clock'].includes(field.dimension));
  const reach = signed || value === 0 ? (most - least) / 20 : Math.abs(value) / 2;
  const [low, high] = [Math.max(least, value - reach), Math.min(most, value + reach)];
  return field.kind === 'number' && field.whole
    ? [Math.max(least, Math.floor(low)), Math.ceil(high)]
    : [low, high];
}

function asText(field: EntryField, text: string, units: Units): string {
  const read = readEntry(field, text);
  return read.ok && typeof read.value.means === 'number' ? written(field, read.value.means, units) : text;
}

function written(field: EntryField, value: number, units: Units): string {
  return field.kind === 'quantity'
    ? quantityText(value, field.dimension, units, { digits: 3, plain: true })
    : String(Number(value.toPrecision(3)));
}
