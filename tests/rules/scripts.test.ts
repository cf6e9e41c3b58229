import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { root } from './support/sources.ts';

describe('a script', () => {
  it('refuses a port that is none', () => {
    const { status, stderr } = run('scripts/start.mjs', ['--port', '70000']);
    expect(status).toBe(2);
    expect(stderr).toBe('--port - expected a whole number from 1 to 65535 - got 70000.\n');
  });

  it('refuses to build what it does not know', () => {
    const { status, stderr } = run('scripts/build.mjs', ['pgae']);
    expect(status).toBe(2);
    expect(stderr).toBe('build - expected page, single or terminal - got pgae.\n');
  });

  it('names the Chromium that CHROMIUM_PATH misses', () => {
    const { status, stderr } = run('scripts/chromium.mjs', [], { CHROMIUM_PATH: '/no/such/chromium' });
    expect(status).toBe(1);
    expect(stderr).toContain('expected the path of a Chromium - got "/no/such/chromium"');
  });

  it('takes the Chromium that CHROMIUM_PATH names', () => {
    const { status, stdout } = run('scripts/chromium.mjs', [], { CHROMIUM_PATH: process.execPath });
    expect(status).toBe(0);
    expect(stdout).toBe(`${process.execPath} (CHROMIUM_PATH)\n`);
  });
});

function run(script: string, words: string[], env: Record<string, string> = {}) {
  return spawnSync(process.execPath, [script, ...words], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, ...env },
  });
}
