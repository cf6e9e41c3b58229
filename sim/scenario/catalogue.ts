/** The catalogue as a flat list, for documents, part cards and rule tests. */
import type { Band, Field, Fields, Grade } from './field.ts';
import { scenario } from './fields/index.ts';

export interface FieldEntry {
  /** As in `coils[].tube(own).outside`: brackets for a list's items, round brackets for a variant. */
  path: string;
  field: Field;
}

/** Every field that holds a value of its own, and every part that a rule can fill as a whole; in the file's order. */
export function fieldEntries(field: Field = scenario, path = ''): FieldEntry[] {
  const own = [{ path, field }];
  const parts = (fields: Fields, at: string) =>
    Object.entries(fields).flatMap(([key, part]) => fieldEntries(part, at === '' ? key : `${at}.${key}`));
  const filledWhole = field.presence.need === 'derived';
  switch (field.kind) {
    case 'group':
      return [...(filledWhole ? own : []), ...parts(field.fields, path)];
    case 'list':
      return [...(field.presence.need === 'required' ? [] : own), ...fieldEntries(field.of, `${path}[]`)];
    case 'variants': {
      const cases = Object.entries(field.cases).flatMap(([word, fields]) =>
        parts(fields, `${path}(${word})`),
      );
      return [...(filledWhole || field.presence.need === 'default' ? own : []), ...cases];
    }
    default:
      return own;
  }
}

export interface DescribedDefault {
  path: string;
  label: string;
  /** The value, or the rule it follows from. */
  value: string;
  source: string;
  grade: Grade;
  band: Band | null;
  measure: string | null;
}

/** Every default and rule, with its source, grade, band and how to measure it. */
export function describeDefaults(): DescribedDefault[] {
  return fieldEntries().flatMap(({ path, field }) => {
    const { presence, label } = field;
    if (presence.need !== 'default' && presence.need !== 'derived') return [];
    const value = presence.need === 'derived' ? presence.how : shown(presence.value);
    const { source, grade } = presence;
    return [{ path, label, value, source, grade, band: field.band ?? null, measure: field.measure ?? null }];
  });
}

function shown(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value);
}
