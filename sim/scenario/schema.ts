/** The field catalogue's structure as a zod schema, from which the JSON Schema is made. Texts are any text to it. */
import * as z from 'zod/mini';
import type { Field, Fields } from './field.ts';

/** The schema of one field, without regard to whether it may be left out. */
function schemaOf(field: Field): z.ZodMiniType {
  return bareSchema(field).register(z.globalRegistry, metaOf(field));
}

function bareSchema(field: Field): z.ZodMiniType {
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date':
      return z.string();
    case 'number': {
      const range = [z.minimum(field.range[0]), z.maximum(field.range[1])];
      const number = (field.whole ? z.int() : z.number()).check(...range);
      return field.per ? z.union([number, z.string()]) : number;
    }
    case 'choice':
      return z.enum(field.choices as readonly [string, ...string[]]);
    case 'text':
      return z.string().check(z.minLength(1), z.maxLength(field.longest));
    case 'flag':
      return z.boolean();
    case 'list':
      return z.array(schemaOf(field.of)).check(z.minLength(field.count[0]), z.maxLength(field.count[1]));
    case 'group':
      return z.strictObject(shapeOf(field.fields));
    case 'variants': {
      const cases = Object.entries(field.cases).map(([word, fields]) =>
        z.strictObject({ [field.by]: z.literal(word), ...shapeOf(fields) }),
      );
      return z.discriminatedUnion(field.by, cases as unknown as [z.ZodMiniObject, ...z.ZodMiniObject[]]);
    }
  }
}

export function shapeOf(fields: Fields): Record<string, z.ZodMiniType> {
  return Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [
      key,
      field.presence.need === 'required' ? schemaOf(field) : z.optional(schemaOf(field)),
    ]),
  );
}

function metaOf(field: Field): Record<string, unknown> {
  const meta: Record<string, unknown> = { title: field.label };
  if (field.measure) meta.description = field.measure;
  if (field.kind === 'quantity') meta.examples = [field.example];
  if (field.kind === 'text' && field.examples) meta.examples = [...field.examples];
  if (field.presence.need === 'default') meta.default = field.presence.value;
  return meta;
}
