/** The whole file's schema, as JSON Schema for editors. Reading a file needs no more than the catalogue: `check.ts`. */
import * as z from 'zod/mini';
import { SCENARIO_VERSION, scenario } from './fields/index.ts';
import { shapeOf } from './schema.ts';

let built: z.ZodMiniObject | null = null;

/** Built on first use. */
export function scenarioSchema(): z.ZodMiniObject {
  built ??= z.strictObject({ ...shapeOf(scenario.fields), version: z.literal(SCENARIO_VERSION) });
  return built;
}

/** JSON Schema (2020-12) of a scenario file. Structure, choices and counts; units and fit are the reader's to check. */
export function scenarioJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(scenarioSchema(), { io: 'input' }) as Record<string, unknown>;
}
