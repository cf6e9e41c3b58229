/** The field catalogue as a zod schema: checks a file's structure and every text in it, all problems at once. */
import * as z from 'zod/mini';
import type { Field, Fields } from './field.ts';
import { readText, type TextualField } from './read-field.ts';

/** What a text's own reader said, carried through zod's list of issues. */
export interface TextIssue {
  expected: string;
  got: string;
  fix: string;
}

/** The schema of one field, without regard to whether it may be left out. */
export function schemaOf(field: Field): z.ZodMiniType {
  return bareSchema(field).register(z.globalRegistry, metaOf(field));
}

function bareSchema(field: Field): z.ZodMiniType {
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date':
      return textual(field);
    case 'number': {
      const range = [z.minimum(field.range[0]), z.maximum(field.range[1])];
      return (field.whole ? z.int() : z.number()).check(...range);
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

function textual(field: TextualField): z.ZodMiniType {
  return z.string().check((context) => {
    const read = readText(field, context.value);
    if (read.ok) return;
    const { expected, got, fix } = read;
    context.issues.push({
      code: 'custom',
      input: context.value,
      params: { expected, got, fix } satisfies TextIssue,
    });
  });
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
