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
