/** Reads what was typed into one entry, strictly, and says what is wrong in the house's shape. */
import type { Reading } from '../calendar.ts';
import { quote } from '../calendar.ts';
import { expectation } from '../issues.ts';
import { readText } from '../read-field.ts';
import type { EntryField } from './outline.ts';

/** `value` is what goes into the file, `read` the number it stands for (SI), where it is one. */
export type EntryRead = Reading<{ value: unknown; read: number | null }>;

export function readEntry(field: EntryField, typed: string): EntryRead {
  const text = typed.trim();
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date': {
      const read = readText(field, text);
      if (!read.ok) return read;
      return {
        ok: true,
        value: { value: text, read: typeof read.value === 'number' ? read.value : null },
      };
    }
    case 'number': {
      const number = Number(text);
      const [low, high] = field.range;
      const fits =
        text !== '' && number >= low && number <= high && (!field.whole || Number.isInteger(number));
      return fits ? accept(number, number) : refuse(field, text, number);
    }
    case 'text':
      return text !== '' && text.length <= field.longest ? accept(text, null) : refuse(field, text, text);
    case 'flag':
      return text === 'true' || text === 'false' ? accept(text === 'true', null) : refuse(field, text, text);
    case 'choice':
      return field.choices.includes(text) ? accept(text, null) : refuse(field, text, text);
  }
}

function accept(value: unknown, read: number | null): EntryRead {
  return { ok: true, value: { value, read } };
}

function refuse(field: EntryField, text: string, value: unknown): EntryRead {
  const { expected, fix } = expectation(field, text === '' ? undefined : value);
  return { ok: false, expected, got: text === '' ? 'nothing' : quote(text), fix };
}
