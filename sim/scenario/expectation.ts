/** What a field wants, in words, and the field that a path leads to. */
import { parseQuantity } from '../quantity/index.ts';
import { quote } from './calendar.ts';
import type { Field } from './field.ts';
import { nearestWord } from './nearest.ts';
import { valueAt } from './value-at.ts';

/** What a field wants, in words, for a value that is of the wrong kind, out of range or missing. */
export function expectation(field: Field | Discriminator, value: unknown): { expected: string; fix: string } {
  const missing = value === undefined;
  switch (field.kind) {
    case 'word': {
      const near = typeof value === 'string' ? nearestWord(value, field.choices) : null;
      return {
        expected: words(field.choices),
        fix: near ? `did you mean "${near}"?` : `choose one, as in ${quote(field.choices[0])}`,
      };
    }
    case 'choice':
      return expectation({ kind: 'word', choices: field.choices }, value);
    case 'quantity': {
      if (typeof value === 'number' || typeof value === 'bigint') {
        const read = parseQuantity(String(value), field.dimension);
        // A share or an angle of a bare number may be readable as text; in the file it still is text.
        if (!read.ok) return { expected: read.expected, fix: read.fix };
      }
      return {
        expected: `${field.label} as text with its unit`,
        fix: `${missing ? 'add it' : 'write it'}, as in "${field.example}"`,
      };
    }
    case 'days':
      return { expected: 'days of the week as text', fix: 'write "every day", "weekdays" or "Mon Wed Fri"' };
    case 'date':
      return { expected: 'a date as text', fix: 'write "2027-01-09" or "01-09"' };
    case 'number': {
      const [low, high] = field.range;
      if (field.per) {
        const { unit } = field.per;
        return {
          expected: `a price from ${low} to ${high}, as a number or with what it is for`,
          fix: `${missing ? 'add it' : 'write it'}, as in "4.50/${unit}"`,
        };
      }
      return {
        expected: `a ${field.whole ? 'whole ' : ''}number from ${low} to ${high}`,
        fix:
          typeof value === 'string'
            ? 'write the number alone, without quotes'
            : missing
              ? 'add it'
              : 'choose a number in the range',
      };
    }
    case 'text':
      return {
        expected: `text of 1 to ${field.longest} characters`,
        fix: missing ? 'add it' : typeof value === 'string' ? fitting(value) : 'write it in double quotes',
      };
    case 'flag':
      return { expected: 'true or false', fix: 'write true or false without quotes' };
    case 'list': {
      const [low, high] = field.count;
      const many = low === high ? `${low}` : `${low} to ${high}`;
      return {
        expected: `a list [ ... ] of ${many}`,
        fix: Array.isArray(value) ? `give ${many}` : missing ? 'add it' : 'write it in square brackets',
      };
    }
    case 'group':
    case 'variants': {
      const keys =
        field.kind === 'group'
          ? Object.keys(field.fields).join(', ')
          : `${field.by} first: ${words(Object.keys(field.cases))}`;
      const one = Array.isArray(value)
        ? 'there can be only one: take it out of the list'
        : missing
          ? 'add it'
          : 'write it in braces';
      return { expected: `{ ... } with ${keys}`, fix: one };
    }
  }
}

function fitting(text: string): string {
  return text === '' ? 'write something, or leave it out' : 'shorten it';
}

function words(choices: readonly string[]): string {
  return choices.map((choice) => `"${choice}"`).join(', ');
}

/** The word that decides between variants. */
interface Discriminator {
  kind: 'word';
  choices: readonly string[];
}

/** The field a path leads to, choosing among variants by what the file says. */
export function fieldAt(
  root: Field,
  steps: readonly PropertyKey[],
  json: unknown,
): Field | Discriminator | null {
  let field: Field = root;
  let value = json;
  for (const [i, step] of steps.entries()) {
    if (field.kind === 'list') field = field.of;
    else if (field.kind === 'group' && Object.hasOwn(field.fields, step)) field = field.fields[String(step)];
    else if (field.kind === 'variants') {
      if (step === field.by)
        return i === steps.length - 1 ? { kind: 'word', choices: Object.keys(field.cases) } : null;
      const word = valueAt(value, [field.by]);
      const fields = typeof word === 'string' && Object.hasOwn(field.cases, word) ? field.cases[word] : null;
      if (!fields || !Object.hasOwn(fields, step)) return null;
      field = fields[String(step)];
    } else return null;
    value = valueAt(value, [step]);
  }
  return field;
}
