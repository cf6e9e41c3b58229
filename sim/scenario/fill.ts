/** Reads a checked file by the catalogue: every text to SI, every default filled in and told of. */
import type { Band, Defaulted, Derived, Field, Fields, Grade, Value } from './field.ts';
import { pathText } from './problem.ts';
import { readText } from './read-field.ts';
import { numberText, readNumberValue } from './read-number.ts';

/** A value the file left out and the reader filled in. */
export interface FilledDefault {
  path: string;
  label: string;
  /** As it could be written into the file. */
  value: string;
  source: string;
  grade: Grade;
  band: Band | null;
  /** How to measure it, or null. */
  measure: string | null;
}

/**
 * The value of a field that has passed the schema; `json` undefined where the file leaves it out. Absent derived
 * and optional fields are null: the builders complete them. Each default taken is appended to `filled`.
 */
export function fillField<F extends Field>(
  field: F,
  json: unknown,
  steps: readonly PropertyKey[],
  filled: FilledDefault[],
): Value<F> | null {
  return presentOrDefault(field, json, steps, filled, null) as Value<F> | null;
}

type Origin = Pick<Defaulted<unknown>, 'source' | 'grade'> | null;

/** `origin` is set inside a default: its parts were not written by the file's author either. */
function read(
  field: Field,
  json: unknown,
  steps: readonly PropertyKey[],
  filled: FilledDefault[],
  origin: Origin = null,
): unknown {
  if (field.kind === 'group') return fieldsOf(field.fields, json, steps, filled, origin);
  if (field.kind === 'variants') {
    const word = (json as Record<string, string>)[field.by];
    if (origin) filled.push(told(field, [...steps, field.by], origin, word));
    return { [field.by]: word, ...fieldsOf(field.cases[word], json, steps, filled, origin) };
  }
  if (origin) filled.push(told(field, steps, origin, writtenAs(field, json)));
  if (field.kind === 'list') {
    return (json as unknown[]).map((item, i) => read(field.of, item, [...steps, i], filled));
  }
  if (field.kind !== 'quantity' && field.kind !== 'days' && field.kind !== 'date' && field.kind !== 'number')
    return json;
  const text = field.kind === 'number' ? readNumberValue(field, json) : readText(field, json as string);
  if (!text.ok)
    throw new Error(
      `scenario.fill - expected a checked text at ${pathText(steps)} - got ${text.got} - report this`,
    );
  return text.value;
}

/** A price that is assumed says what it is for. */
function writtenAs(field: Field, json: unknown): string {
  if (field.kind === 'number' && field.per) return numberText(field, json as number, 'SI');
  return typeof json === 'string' ? json : JSON.stringify(json);
}

function fieldsOf(
  fields: Fields,
  json: unknown,
  steps: readonly PropertyKey[],
  filled: FilledDefault[],
  origin: Origin,
): Record<string, unknown> {
  const object = json as Record<string, unknown>;
  const entries = Object.entries(fields).map(([key, field]) => {
    const given = Object.hasOwn(object, key) ? object[key] : undefined;
    return [key, presentOrDefault(field, given, [...steps, key], filled, origin)];
  });
  return Object.fromEntries(entries);
}

function presentOrDefault(
  field: Field,
  given: unknown,
  steps: readonly PropertyKey[],
  filled: FilledDefault[],
  origin: Origin,
): unknown {
  if (given !== undefined) return read(field, given, steps, filled, origin);
  const { presence } = field;
  return presence.need === 'default' ? read(field, presence.value, steps, filled, presence) : null;
}

/** The record of a default taken at `steps`. */
export function told(
  field: Field,
  steps: readonly PropertyKey[],
  presence: Pick<Defaulted<unknown> | Derived, 'source' | 'grade'>,
  value: string,
  band: Band | null = field.band ?? null,
): FilledDefault {
  const { source, grade } = presence;
  return {
    path: pathText(steps),
    label: field.label,
    value,
    source,
    grade,
    band,
    measure: field.measure ?? null,
  };
}
