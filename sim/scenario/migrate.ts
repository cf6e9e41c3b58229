/** The version gate: what a file is, before its fields are looked at. */
import { SCENARIO_FORMAT, SCENARIO_VERSION } from './fields/index.ts';
import { describeValue, type Problem } from './problem.ts';
import { valueAt } from './value-at.ts';

type JsonObject = Record<string, unknown>;
/** Turns a file of one version into the next; gets a copy it may change. */
export type MigrationStep = (json: JsonObject) => JsonObject;

/** Step i leads from version i + 1 to i + 2. Version 1 is the first: there is none yet. */
const STEPS: readonly MigrationStep[] = [];

/** The file in today's version, or why it is not one. The given object is never changed. */
export function migrate(
  json: unknown,
  steps: readonly MigrationStep[] = STEPS,
): { ok: true; json: JsonObject } | { ok: false; problems: Problem[] } {
  const refuse = (path: string, expected: string, got: unknown, fix: string) => {
    const shown = typeof got === 'string' ? got : describeValue(got);
    return {
      ok: false as const,
      problems: [{ path, expected, got: path ? describeValue(got) : shown, fix }],
    };
  };
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    return refuse(
      '',
      'a scenario: { "format": "tankful", ... }',
      describeValue(json),
      'choose a scenario file',
    );
  }
  const format = valueAt(json, ['format']);
  if (format !== SCENARIO_FORMAT) {
    return refuse(
      'format',
      `"${SCENARIO_FORMAT}"`,
      format,
      `a scenario begins with "format": "${SCENARIO_FORMAT}", "version": ${SCENARIO_VERSION}`,
    );
  }
  const version = valueAt(json, ['version']);
  const newest = steps.length + 1;
  const known = newest === 1 ? 'the number 1' : `a whole number from 1 to ${newest}`;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse('version', known, version, `write "version": ${newest}`);
  }
  if (version > newest) {
    return refuse(
      'version',
      known,
      version,
      'a newer Tankful wrote this file, which is left as it is: read it with that one',
    );
  }
  if (version === newest) return { ok: true, json: json as JsonObject };
  const migrated = steps
    .slice(version - 1)
    .reduce((file, step) => step(file), JSON.parse(JSON.stringify(json)) as JsonObject);
  return { ok: true, json: { ...migrated, version: newest } };
}
