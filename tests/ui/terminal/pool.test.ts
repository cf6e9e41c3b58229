/** Threads of the built file: the same bytes on any number of them, and an interrupt that keeps what is finished. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { workersIn } from '../../../ui/terminal/pool.ts';
import { Refusal } from '../../../ui/terminal/refusal.ts';
import { smallScenario } from '../../sim/answers/small.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
let folder = '';
let file = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-pool-'));
  file = join(folder, 'small.json');
  writeFileSync(file, JSON.stringify(smallScenario()));
  await build({
    root,
    configFile: join(root, 'vite.terminal.config.ts'),
    logLevel: 'error',
    build: { outDir: join(folder, 'built') },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const program = () => join(folder, 'built', 'tankful.mjs');
const envWith = (workers: string) => ({ PATH: process.env.PATH, LANG: 'C.UTF-8', TANKFUL_WORKERS: workers });

function tankful(workers: string, ...words: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program(), ...words], {
    encoding: 'utf8',
    env: envWith(workers),
  });
  return { code: status, out: stdout, err: stderr };
}

/** Interrupts once so many runs are told of on standard error. */
function interrupted(after: number, words: string[]): Promise<{ code: number | null; out: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [program(), ...words], { env: envWith('1') });
    let out = '';
    let err = '';
    child.stdout.on('data', (data) => {
      out += data;
    });
    child.stderr.on('data', (data) => {
      err += data;
      if (new RegExp(`^${after} of `, 'm').test(err)) child.kill('SIGINT');
    });
    child.on('close', (code) => resolve({ code, out }));
  });
}

describe('a sweep on threads', () => {
  const words = () => ['range', file, '--vary', 'store.bridges=1:3:6', '--json'];

  it('gives the same bytes on one thread, two and more than there are runs', () => {
    const one = tankful('1', ...words());
    expect([one.code, one.err]).toEqual([0, '']);
    expect(JSON.parse(one.out).done).toBe(6);
    for (const workers of ['2', '9']) expect(tankful(workers, ...words())).toEqual(one);
  });

  it('works answers out in rounds, the same on any number of threads', () => {
    const one = tankful('1', 'store', file, '--csv');
    expect([one.code, one.err]).toEqual([0, '']);
    expect(tankful('2', 'store', file, '--csv')).toEqual(one);
  }, 60_000);

  it('keeps what is finished when it is interrupted, and says so', async () => {
    const slow = ['--days', '120', '--vary', 'store.bridges=1:3:20'];
    const { code, out } = await interrupted(2, ['range', file, ...slow, '--progress', '--json']);
    expect(code).toBe(130);
    const { points, done } = JSON.parse(out);
    expect(done).toBeGreaterThanOrEqual(2);
    expect(done).toBeLessThan(20);
    const finished = points.filter(({ figures }: { figures: unknown }) => figures !== null);
    expect(finished).toHaveLength(done);
    // As if it had not been interrupted.
    const whole = tankful('1', 'range', file, '--days', '120', '--vary', 'store.bridges=1|1.5', '--json');
    expect(finished[0].figures).toEqual(JSON.parse(whole.out).points[0].figures);
  }, 60_000);

  it('marks a report that was interrupted', async () => {
    const words = ['range', file, '--days', '120', '--vary', 'store.bridges=1:3:20', '--progress'];
    const { code, out } = await interrupted(2, words);
    expect(code).toBe(130);
    expect(out).toMatch(/Stopped: \d+ of 20 runs were done\./);
  }, 60_000);

  it('refuses a number of threads that is none', () => {
    expect(tankful('none', ...words())).toEqual({
      code: 2,
      out: '',
      err: 'TANKFUL_WORKERS - expected a whole number of threads, 1 to 64 - got "none" - leave it out for as many as there are cores.\n',
    });
  });
});

describe('workersIn', () => {
  it('takes the number said, else the cores there are', () => {
    expect(workersIn({ TANKFUL_WORKERS: '3' })).toBe(3);
    expect(workersIn({})).toBeGreaterThanOrEqual(1);
  });
  it.each(['0', '65', '2.5', 'x'])('refuses %s', (said) => {
    expect(() => workersIn({ TANKFUL_WORKERS: said })).toThrow(Refusal);
  });
});
