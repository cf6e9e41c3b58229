/**
 * A sweep of 24 whole years on two threads against one, by the built program: seconds and how many times as fast. The
 * aim is 30 s on two cores that nothing else uses; a loaded machine says little, so only the ratio is held.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const POINTS = 24;
const AIM_S = 30;
const root = fileURLToPath(new URL('../../', import.meta.url));
let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-sweep-bench-'));
  await build({
    root,
    configFile: join(root, 'vite.terminal.config.ts'),
    logLevel: 'error',
    build: { outDir: folder },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Wall time, time on the processors and the bytes of a sweep of a year of the demo over its collector. */
function sweep(workers: number): { wall_s: number; out: string } {
  const words = ['range', join(root, 'scenarios', 'demo.json'), '--from', '01-01', '--days', '365', '--csv'];
  const vary = ['--vary', `collector.size.tubes=10:${10 + 2 * (POINTS - 1)}:${POINTS}`];
  const started = performance.now();
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(folder, 'tankful.mjs'), ...words, ...vary],
    {
      encoding: 'utf8',
      env: { ...process.env, TANKFUL_WORKERS: `${workers}` },
    },
  );
  expect([status, stderr]).toEqual([0, '']);
  return { wall_s: (performance.now() - started) / 1000, out: stdout };
}

describe(`${POINTS} years of the demo`, () => {
  it('on two threads take little more than half the time of one, and give the same bytes', () => {
    const two = sweep(2);
    const one = sweep(1);
    const ratio = one.wall_s / two.wall_s;
    const verdict = two.wall_s <= AIM_S ? 'within' : 'over';
    console.log(
      `${POINTS} years: ${one.wall_s.toFixed(1)} s on one thread, ${two.wall_s.toFixed(1)} s on two (${verdict} the ${AIM_S} s aimed at): ${ratio.toFixed(2)} times as fast; ${availableParallelism()} cores`,
    );
    expect(two.out).toBe(one.out);
    expect(two.out.trimEnd().split('\n')).toHaveLength(POINTS + 1);
    expect(ratio).toBeGreaterThan(1.3);
  });
});
