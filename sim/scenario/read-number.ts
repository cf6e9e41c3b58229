/** Reads a plain number, or a price that says what it is for. */
import { formatPrice, readPrice, type UnitSystem } from '../quantity/index.ts';
import type { Reading } from './calendar.ts';
import { expectation } from './expectation.ts';
import type { NumberField } from './field.ts';
import { describeValue } from './problem.ts';

/** A value as a file has it: a number, of a price also a text; a price is told for one of what a number alone means. */
export function readNumberValue(field: NumberField, value: unknown): Reading<number> {
  if (field.per && typeof value === 'string') {
    const read = readPrice(value, field.per);
    return read.ok ? inRange(field, read.value, value) : read;
  }
  return typeof value === 'number' ? inRange(field, value, value) : refused(field, value);
}

/** A number as text, as the ends of a band are written. */
export function readNumberText(field: NumberField, text: string): Reading<number> {
  const number = text.trim() === '' ? Number.NaN : Number(text);
  return readNumberValue(field, Number.isNaN(number) ? text : number);
}

/** A number as text; a price with what it is for. */
export function numberText(field: NumberField, value: number, system: UnitSystem): string {
  return field.per ? formatPrice(value, field.per, system) : String(Number(value.toPrecision(4)));
}

function inRange(field: NumberField, number: number, value: unknown): Reading<number> {
  const [low, high] = field.range;
  const fits = number >= low && number <= high && (!field.whole || Number.isInteger(number));
  return fits ? { ok: true, value: number } : refused(field, value);
}

function refused(field: NumberField, value: unknown): Reading<number> {
  const { expected, fix } = expectation(field, value);
  return { ok: false, expected, got: describeValue(value), fix };
}
