/** The program as it is shipped: one file, run by plain Node. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const boat = join(root, 'scenarios', 'boat.json');

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-built-'));
  await build({
    root,
    configFile: join(root, 'vite.terminal.config.ts'),
    logLevel: 'error',
    build: { outDir: folder },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function tankful(words: string[], env: Record<string, string> = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, 'tankful.mjs'), ...words], {
    encoding: 'utf8',
    env: { PATH: process.env.PATH, LANG: 'C.UTF-8', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
    maxBuffer: 32 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

describe('the built program', () => {
  it('is one file', () => {
    expect(readdirSync(folder)).toEqual(['tankful.mjs']);
  });

  it('runs a scenario and ends with 0, silent on standard error', () => {
    const { code, out, err } = tankful(['run', boat, '--no-bands']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('█');
    expect(out).not.toContain('\u001b');
  });

  it('keeps to ASCII marks where the locale is not UTF-8', () => {
    const { out } = tankful(['run', boat, '--no-bands'], { LANG: 'C' });
    expect(out).toContain('#');
    expect(out).toMatch(/^[\n\x20-\x7e]+$/);
  });

  it('gives whole JSON through a pipe', () => {
    const { code, out } = tankful(['run', boat, '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out).series.time_s.length).toBeGreaterThan(100);
  });

  it('ends with 2 on a bad file and on wrong use', () => {
    const broken = join(root, 'scenarios', 'units_broken.json');
    expect(tankful(['check', broken])).toMatchObject({ code: 2, out: '' });
    expect(tankful(['run', join(folder, 'none.json')])).toMatchObject({ code: 2, out: '' });
    expect(tankful(['run', boat, '--what'])).toMatchObject({ code: 2, out: '' });
    expect(tankful([])).toMatchObject({ code: 2, out: '' });
  });

  it('ends with 0 on help, version and schema', () => {
    for (const words of [['--help'], ['--version'], ['schema']]) {
      expect([words, tankful(words).code]).toEqual([words, 0]);
    }
  });

  it('says where it is when asked to', () => {
    const path = join(folder, 'boat.json');
    writeFileSync(path, JSON.stringify({ format: 'tankful', version: 1 }));
    expect(tankful(['run', boat, '--no-bands', '--progress']).err).toContain('Running: 100 %');
  });

  it('does not mind a reader that stops early', () => {
    const script = `"${process.execPath}" "${join(folder, 'tankful.mjs')}" run "${boat}" --csv | head -1; echo "\${PIPESTATUS[0]}"`;
    const { stdout, stderr } = spawnSync('bash', ['-c', script], { encoding: 'utf8' });
    expect(stderr).toBe('');
    expect(stdout.trimEnd().split('\n').at(-1)).toBe('0');
  });
});
