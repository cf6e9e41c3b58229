/** The values of an axis: evenly from one end to the other, or a list. */
import {
  type DimensionKey,
  dimensions,
  formatQuantity,
  fromSI,
  parseQuantity,
  readPrice,
} from '../../quantity/index.ts';
import type { OutlineEntry } from '../../scenario/index.ts';
import { refusal } from '../refusal.ts';

type Field = OutlineEntry['field'];
type NumberField = Extract<Field, { kind: 'number' }>;

const FEWEST = 2;
const MOST = 200;

export interface Values {
  /** What is put at the path, in order. */
  values: (string | number | boolean)[];
  /** The same as numbers, SI, for a curve; null where a value has no size. */
  at: (number | null)[];
  dimension: DimensionKey | 'number' | 'text';
}

/** `20 in:40 in:5`, `1:4:4`, `closed|ajar`. @throws RangeError in the house form */
export function valuesOf(path: string, field: Field, text: string): Values {
  if (text.includes('|'))
    return listed(
      path,
      field,
      text.split('|').map((part) => part.trim()),
    );
  const parts = text.split(':');
  const many = Number(parts[parts.length - 1]);
  if (parts.length < 3 || !Number.isInteger(many)) {
    throw refusal(path, 'values as from:to:number or a|b|c', `"${text}"`, exampleFor(path, field));
  }
  if (many < FEWEST || many > MOST) {
    throw refusal(
      path,
      `${FEWEST} to ${MOST} values`,
      `${many}`,
      'choose the number behind the second colon',
    );
  }
  // A clock time has colons of its own: the two ends are where both can be read.
  for (let k = 1; k < parts.length - 1; k++) {
    const ends = [parts.slice(0, k).join(':').trim(), parts.slice(k, -1).join(':').trim()];
    const spread = spreadOut(path, field, ends[0], ends[1], many);
    if (spread) return spread;
  }
  throw refusal(
    path,
    'two ends that can be read',
    `"${parts.slice(0, -1).join(':')}"`,
    exampleFor(path, field),
  );
}

function exampleFor(path: string, field: Field): string {
  switch (field.kind) {
    case 'quantity':
      return `write it as ${path}="${field.example}:${field.example}:5"`;
    case 'number':
      return `write it as ${path}=${field.range[0]}:${field.range[1]}:5`;
    case 'choice':
      return `write it as ${path}="${field.choices.join('|')}"`;
    case 'flag':
      return `write it as ${path}="true|false"`;
    default:
      return `write the values with | between, as in ${path}="a|b"`;
  }
}

/** Evenly spaced values; null where an end cannot be read. */
function spreadOut(path: string, field: Field, from: string, to: string, many: number): Values | null {
  const between = (a: number, b: number) =>
    Array.from({ length: many }, (_, i) => tidy(a + ((b - a) * i) / (many - 1)));
  if (field.kind === 'number') {
    const [a, b] = [from, to].map((end) => numberIn(field, end) ?? Number.NaN);
    if (!Number.isFinite(a) || !Number.isFinite(b)) return null;
    const values = between(a, b);
    if (field.whole && !values.every(Number.isInteger)) {
      throw refusal(
        path,
        'whole numbers',
        values.slice(0, 3).join(', '),
        'choose ends and number so that each step is whole',
      );
    }
    return { values, at: values, dimension: 'number' };
  }
  if (field.kind !== 'quantity') return null;
  const { dimension } = field;
  const [a, b] = [parseQuantity(from, dimension), parseQuantity(to, dimension)];
  if (!a.ok || !b.ok) return null;
  const at = between(a.value, b.value);
  const unit = dimensions[dimension].units.find(({ symbol }) => {
    const read = parseQuantity(`1 ${symbol}`, dimension);
    return read.ok && read.unit === a.unit;
  });
  // As the first end was written, so that the table reads as the file does.
  const byR = /^R[- ]?[\d.]/i.test(from);
  const values = unit
    ? between(fromSI(a.value, unit), fromSI(b.value, unit)).map((value) =>
        byR ? `R-${value}` : `${value} ${unit.symbol}`,
      )
    : at.map((value) => formatQuantity(value, dimension, 'SI', { digits: 9, plain: true }));
  return { values, at, dimension };
}

/** A number, of a price also as a text that says what it is for. */
function numberIn(field: NumberField, text: string): number | null {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (Number.isFinite(value)) return value;
  const read = field.per ? readPrice(text, field.per) : null;
  return read?.ok ? read.value : null;
}

/** Without the dust of binary fractions. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

function listed(path: string, field: Field, words: string[]): Values {
  if (words.length < FEWEST || words.length > MOST || words.includes('')) {
    throw refusal(
      path,
      `${FEWEST} to ${MOST} values with | between`,
      `"${words.join('|')}"`,
      exampleFor(path, field),
    );
  }
  const read = words.map((word) => one(path, field, word));
  const values = read.map(({ value }) => value);
  const dimension = field.kind === 'quantity' ? field.dimension : field.kind === 'number' ? 'number' : 'text';
  return { values, at: read.map(({ at }) => at), dimension };
}

/** One value as the file has it; what the file's own reader would say of it, the run will. */
function one(
  path: string,
  field: Field,
  word: string,
): { value: string | number | boolean; at: number | null } {
  if (field.kind === 'quantity') {
    const read = parseQuantity(word, field.dimension);
    if (read.ok) return { value: word, at: read.value };
    throw refusal(path, read.expected, read.got, read.fix);
  }
  if (field.kind === 'number') {
    const value = numberIn(field, word);
    if (value !== null) return { value, at: value };
    throw refusal(path, 'a plain number', `"${word}"`, exampleFor(path, field));
  }
  if (field.kind === 'flag') {
    if (word === 'true' || word === 'false') return { value: word === 'true', at: null };
    throw refusal(path, 'true or false', `"${word}"`, exampleFor(path, field));
  }
  if (field.kind === 'choice' && !field.choices.includes(word)) {
    throw refusal(path, `one of ${field.choices.join(', ')}`, `"${word}"`, exampleFor(path, field));
  }
  return { value: word, at: null };
}
