import { describe, expect, it } from 'vitest';
import { scenarioJsonSchema } from '../../../sim/scenario/index.ts';
import { brokenFiles, soundFiles, textOf } from './files.ts';
import { randomScenario } from './random-scenario.ts';

type Schema = Record<string, unknown>;

const KNOWN = new Set(
  '$schema type properties required additionalProperties items minItems maxItems minLength maxLength minimum maximum enum const oneOf title description examples default'.split(
    ' ',
  ),
);

/** Whether a value fits, by the keywords the schema uses; any other keyword is an error of this test. */
function fits(schema: Schema, value: unknown): boolean {
  const unknown = Object.keys(schema).filter((key) => !KNOWN.has(key));
  if (unknown.length > 0) throw new Error(`keywords this test does not know: ${unknown}`);
  const num = (key: string, otherwise: number) => (schema[key] as number | undefined) ?? otherwise;
  if (schema.oneOf) return (schema.oneOf as Schema[]).filter((part) => fits(part, value)).length === 1;
  if (schema.enum) return (schema.enum as unknown[]).includes(value);
  if (schema.const !== undefined) return schema.const === value;
  switch (schema.type) {
    case 'string':
      return (
        typeof value === 'string' &&
        value.length >= num('minLength', 0) &&
        value.length <= num('maxLength', 1e9)
      );
    case 'boolean':
      return typeof value === 'boolean';
    case 'integer':
    case 'number':
      if (typeof value !== 'number' || (schema.type === 'integer' && !Number.isInteger(value))) return false;
      return value >= num('minimum', -Infinity) && value <= num('maximum', Infinity);
    case 'array':
      if (!Array.isArray(value) || value.length < num('minItems', 0) || value.length > num('maxItems', 1e9))
        return false;
      return value.every((item) => fits(schema.items as Schema, item));
    case 'object': {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
      const properties = schema.properties as Record<string, Schema>;
      expect(schema.additionalProperties).toBe(false);
      const missing = ((schema.required as string[] | undefined) ?? []).filter(
        (key) => !Object.hasOwn(value, key),
      );
      return (
        missing.length === 0 &&
        Object.entries(value).every(
          ([key, part]) => Object.hasOwn(properties, key) && fits(properties[key], part),
        )
      );
    }
    default:
      throw new Error(`a type this test does not know: ${schema.type}`);
  }
}

describe('the JSON Schema', () => {
  const schema = scenarioJsonSchema();

  it('is plain JSON of the 2020-12 draft', () => {
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it.each(soundFiles())('accepts %s', (name) => {
    expect(fits(schema, JSON.parse(textOf(name)))).toBe(true);
  });

  it.each(Array.from({ length: 100 }, (_, i) => 1000 + i))(
    'accepts the random scenario of seed %i',
    (seed) => {
      expect(fits(schema, JSON.parse(JSON.stringify(randomScenario(seed))))).toBe(true);
    },
  );

  // Wrong in structure; the others are wrong in a unit or in what fits, which is the reader's to see.
  it.each(
    ['names', 'two-engines', 'huge', 'prototype', 'months', 'newer', 'empty', 'draws', 'dates'].map(
      (name) => `${name}_broken.json`,
    ),
  )('refuses %s', (name) => {
    expect(brokenFiles()).toContain(name);
    expect(fits(schema, JSON.parse(textOf(name)))).toBe(false);
  });

  it('tells an editor what a field is, how it is written and how to measure it', () => {
    const store = (schema.properties as Record<string, Schema>).store.properties as Record<string, Schema>;
    expect(store.water_depth).toMatchObject({ title: 'depth of water', examples: ['32 in'] });
    expect(store.bridges).toMatchObject({
      default: 1.5,
      minimum: 1,
      description: expect.stringContaining('cool-down'),
    });
  });
});
