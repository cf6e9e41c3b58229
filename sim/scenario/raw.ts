/** Writes a value back as the file would have it: the inverse of `fill.ts`. */
import { formatQuantity, type UnitSystem } from '../quantity/index.ts';
import type { Field } from './field.ts';
import { WEEKDAYS } from './fields/run.ts';

/** Enough to build by, few enough to read. */
const DIGITS = 4;

/** The text, number or object that stands for a value; absent parts of a group are left out. */
export function rawOf(field: Field, value: unknown, system: UnitSystem): unknown {
  switch (field.kind) {
    case 'quantity':
      return formatQuantity(value as number, field.dimension, system, { digits: DIGITS, plain: true });
    case 'days':
      return (value as number[]).map((day) => WEEKDAYS[day]).join(' ');
    case 'list':
      return (value as unknown[]).map((item) => rawOf(field.of, item, system));
    case 'group':
      return parts(field.fields, value as Record<string, unknown>, system);
    case 'variants': {
      const object = value as Record<string, unknown>;
      const word = object[field.by] as string;
      return { [field.by]: word, ...parts(field.cases[word], object, system) };
    }
    default:
      return value;
  }
}

function parts(fields: Readonly<Record<string, Field>>, object: Record<string, unknown>, system: UnitSystem) {
  const present = Object.entries(fields).filter(([key]) => object[key] !== null);
  return Object.fromEntries(present.map(([key, field]) => [key, rawOf(field, object[key], system)]));
}
