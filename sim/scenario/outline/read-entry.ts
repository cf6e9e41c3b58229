/** Reads what was typed into one entry, strictly, and says what is wrong in the house's shape. */
import { quote, type Reading } from '../calendar.ts';
import { expectation } from '../expectation.ts';
import type { DayOfYear } from '../field.ts';
import { readText } from '../read-field.ts';
import { readNumberText } from '../read-number.ts';
import type { EntryField } from './outline.ts';

export interface EntryValue {
  /** What goes into the file. */
  value: unknown;
  /** What it stands for: SI, days of the week or of the year; null where it is only itself. */
  means: number | number[] | DayOfYear | null;
}

export function readEntry(field: EntryField, typed: string): Reading<EntryValue> {
  const text = typed.trim();
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date': {
      const read = readText(field, text);
      return read.ok ? { ok: true, value: { value: text, means: read.value } } : read;
    }
    case 'number': {
      const number = Number(text);
      const read = text === '' ? null : readNumberText(field, text);
      if (read?.ok) return accept(Number.isNaN(number) ? text : number, read.value);
      return read && field.per ? read : refuse(field, text, number);
    }
    case 'text':
      return text !== '' && text.length <= field.longest ? accept(text) : refuse(field, text, text);
    case 'flag':
      return text === 'true' || text === 'false' ? accept(text === 'true') : refuse(field, text, text);
    case 'choice':
      return field.choices.includes(text) ? accept(text) : refuse(field, text, text);
  }
}

function accept(value: unknown, means: number | null = null): Reading<EntryValue> {
  return { ok: true, value: { value, means } };
}

function refuse(field: EntryField, text: string, value: unknown): Reading<EntryValue> {
  const { expected, fix } = expectation(field, text === '' ? undefined : value);
  return { ok: false, expected, got: text === '' ? 'nothing' : quote(text), fix };
}
