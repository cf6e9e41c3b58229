/** The field catalogue as a zod schema: checks a file's structure and every text in it, all problems at once. */
import * as z from 'zod';
import type { Field, Fields } from './field.ts';
import { readText, type TextualField } from './read-field.ts';

/** What a text's own reader said, carried through zod's list of issues. */
export interface TextIssue {
  expected: string;
  got: string;
  fix: string;
}

/** The schema of one field, without regard to whether it may be left out. */
export function schemaOf(field: Field): z.ZodType {
  return bareSchema(field).meta(metaOf(field));
}

function bareSchema(field: Field): z.ZodType {
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date':
      return textual(field);
    case 'number': {
      const number = z.number().min(field.range[0]).max(field.range[1]);
      return field.whole ? number.int() : number;
    }
    case 'choice':
      return z.enum(field.choices as readonly [string, ...string[]]);
    case 'text':
      return z.string().min(1).max(field.longest);
    case 'flag':
      return z.boolean();
    case 'list':
      return z.array(schemaOf(field.of)).min(field.count[0]).max(field.count[1]);
    case 'group':
      return z.strictObject(shapeOf(field.fields));
    case 'variants': {
      const cases = Object.entries(field.cases).map(([word, fields]) =>
        z.strictObject({ [field.by]: z.literal(word), ...shapeOf(fields) }),
      );
      return z.discriminatedUnion(field.by, cases as unknown as [z.ZodObject, ...z.ZodObject[]]);
    }
  }
}

function textual(field: TextualField): z.ZodType {
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

export function shapeOf(fields: Fields): Record<string, z.ZodType> {
  return Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [
      key,
      field.presence.need === 'required' ? schemaOf(field) : schemaOf(field).optional(),
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
