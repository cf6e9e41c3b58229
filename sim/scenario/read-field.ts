/** Reads one text of the file by its field: a quantity, days of the week or a date, and checks its range. */
import { type DimensionKey, dimensions, formatBoth, parseQuantity } from '../quantity/index.ts';
import { parseDate, parseDays, quote, type Reading } from './calendar.ts';
import type { DateField, DayOfYear, DaysField, QuantityField } from './field.ts';

export type TextualField = QuantityField | DaysField | DateField;

/**
 * Readings of each field's last texts. A hand that drags, and every answer, has a file read again and again in which
 * all but one of the texts are the same.
 */
const known = new WeakMap<QuantityField, Map<string, Reading<number>>>();
const mostKnown = 32;

export function readText(field: TextualField, text: string): Reading<number | number[] | DayOfYear> {
  if (field.kind === 'days') return parseDays(text);
  if (field.kind === 'date') return parseDate(text);
  let readings = known.get(field);
  if (!readings) {
    readings = new Map();
    known.set(field, readings);
  }
  let reading = readings.get(text);
  if (!reading) {
    reading = readQuantity(field, text);
    if (readings.size >= mostKnown) readings.clear();
    readings.set(text, reading);
  }
  return reading;
}

function readQuantity(field: QuantityField, text: string): Reading<number> {
  const read = parseQuantity(text, field.dimension);
  if (!read.ok) {
    const [expected, fix] = [read.expected, read.fix].map((text) => asInField(text, field));
    return { ok: false, expected, got: read.got, fix };
  }
  const [low, high] = field.range;
  // A hair of tolerance: an allowed end may be written in another unit than the one it was set in.
  const hair = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  if (read.value >= low - hair && read.value <= high + hair)
    return { ok: true, value: Math.min(high, Math.max(low, read.value)) };
  return {
    ok: false,
    expected: rangeText(field),
    got: quote(text),
    fix: `check the number and the unit, as in "${field.example}"`,
  };
}

/** Have examples in their sentences, of every way to write them. */
const written: ReadonlySet<DimensionKey> = new Set(['clock', 'latitude', 'longitude', 'angle']);

/** A flow of fuel is not asked for as the flow of a tap: each field has an example of its own. */
function asInField(text: string, { dimension, example }: QuantityField): string {
  return written.has(dimension)
    ? text
    : text.replace(`as in "${dimensions[dimension].example}"`, `as in "${example}"`);
}

/** `10 F to 212 F (...)`: the range a quantity may have, in both systems. */
function rangeText(field: QuantityField): string {
  const [low, high] = field.range.map((value) => formatBoth(value, field.dimension, { like: field.example }));
  return `${low} to ${high}`;
}
