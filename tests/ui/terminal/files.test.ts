import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readText, scenarioFile, writeAll } from '../../../ui/terminal/files.ts';
import { Refusal } from '../../../ui/terminal/refusal.ts';
import { troubleLine } from '../../../ui/words/index.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-files-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function place(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

function refusal(action: () => unknown): string {
  try {
    action();
  } catch (error) {
    if (error instanceof Refusal) return error.troubles.map(troubleLine).join('\n');
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('readText', () => {
  it('gives the text without a byte order mark', () => {
    expect(readText(place('bom.json', '\ufeff{"a":"½"}'), scenarioFile)).toBe('{"a":"½"}');
  });
  it('names a missing file', () => {
    const path = join(folder, 'nowhere.json');
    expect(refusal(() => readText(path, scenarioFile))).toBe(
      `${path} - expected a scenario file (JSON text) - got no such file - check the path.`,
    );
  });
  it('names a folder', () => {
    expect(refusal(() => readText(folder, scenarioFile))).toContain('got a folder');
  });
  it('names a path through a file', () => {
    const path = join(place('plain.txt', 'x'), 'demo.json');
    expect(refusal(() => readText(path, scenarioFile))).toContain('no folder');
  });
  it('refuses binary data, UTF-16 and broken UTF-8', () => {
    expect(refusal(() => readText(place('a.bin', new Uint8Array([1, 0, 2])), scenarioFile))).toContain(
      'binary data',
    );
    const utf16 = place('b.json', new Uint8Array([0xff, 0xfe, 0x7b, 0]));
    expect(refusal(() => readText(utf16, scenarioFile))).toContain('got UTF-16 - save it again as UTF-8.');
    const latin = place('c.json', new Uint8Array([0x7b, 0xb0, 0x7d]));
    expect(refusal(() => readText(latin, scenarioFile))).toContain('bytes that are no UTF-8');
  });
  it('refuses a file too big, and says how big', () => {
    const path = place('big.json', ' '.repeat(1024 * 1024 + 300_000));
    expect(refusal(() => readText(path, scenarioFile))).toContain('of at most 1.0 MB - got 1.3 MB');
  });
  it('refuses a device before reading it', () => {
    expect(refusal(() => readText('/dev/zero', scenarioFile))).toContain('got a device');
  });
});

describe('writeAll', () => {
  it('makes the folder and gives the paths', () => {
    const into = join(folder, 'new', 'deeper');
    const paths = writeAll(into, { 'a.txt': 'one', 'b.txt': 'two' });
    expect(paths).toEqual([join(into, 'a.txt'), join(into, 'b.txt')]);
    expect(readFileSync(paths[1], 'utf8')).toBe('two');
  });
  it('refuses a folder that is a file', () => {
    const path = place('taken', 'x');
    expect(refusal(() => writeAll(path, { 'a.txt': '' }))).toBe(
      `${path} - expected a folder to write into - got a file of that name - choose another folder.`,
    );
  });
});
