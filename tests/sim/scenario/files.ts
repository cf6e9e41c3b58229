/** The example files on disk. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const folder = join(fileURLToPath(import.meta.url), '../../../../scenarios');
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort();

export function brokenFiles(): string[] {
  return names.filter((name) => name.endsWith('_broken.json'));
}

export function soundFiles(): string[] {
  return names.filter((name) => !name.endsWith('_broken.json'));
}

export function textOf(name: string): string {
  return readFileSync(join(folder, name), 'utf8');
}

/** The value, frozen to its depth: whoever writes to it throws. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    for (const part of Object.values(value)) frozen(part);
  }
  return value;
}

/** `coils[0].tube.size` as its steps. */
function stepsOf(path: string): (string | number)[] {
  return [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key]) =>
    index === undefined ? key : Number(index),
  );
}

/** Puts a value at a path, making the objects on the way; `asJson` says whether its text is JSON. */
export function withValue(
  json: unknown,
  path: string,
  text: string,
  asJson: (steps: (string | number)[]) => boolean,
): void {
  const steps = stepsOf(path);
  const last = steps.pop();
  let at = json as Record<string | number, unknown>;
  for (const step of steps) {
    at[step] ??= {};
    at = at[step] as Record<string | number, unknown>;
  }
  if (last !== undefined) at[last] = asJson([...steps, last]) ? JSON.parse(text) : text;
}
