/**
 * Times, and what hangs less on the machine: counts, and ratios to each other and to a fixed piece of arithmetic
 * measured in the same process. See support/measure.ts.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/build.mjs';
import type { Measured, Timed } from './support/measure.ts';

const folder = mkdtempSync(join(tmpdir(), 'tankful-bench-'));

async function measure(scenario: string): Promise<Measured> {
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      ssr: 'tests/bench/support/measure.ts',
      outDir: folder,
      target: 'node20',
      rolldownOptions: { output: { codeSplitting: false, entryFileNames: 'measure.mjs' } },
    },
    ssr: { noExternal: true },
  });
  const words = [join(folder, 'measure.mjs'), join(root, 'scenarios', `${scenario}.json`)];
  return JSON.parse(execFileSync(process.execPath, words, { encoding: 'utf8' })) as Measured;
}

/** Turns of the fixed loop that one evaluation takes as long as. */
const turns = ({ cpu_ms, run }: Timed, turn_ns: number) => (1e6 * cpu_ms) / run.evaluations / turn_ns;

describe('the demo', () => {
  let measured: Measured;

  beforeAll(async () => {
    measured = await measure('demo');
    for (const what of ['cold', 'warm', 'year'] as const) {
      const { ms, cpu_ms, run } = measured[what];
      console.log(
        `${what}: ${ms.toFixed(0)} ms, ${cpu_ms.toFixed(0)} ms of processors, ${run.evaluations} evaluations, ${run.steps} steps, ${run.restarts} restarts, ` +
          `${((1000 * cpu_ms) / run.evaluations).toFixed(2)} us an evaluation = ` +
          `${turns(measured[what], measured.turn_ns).toFixed(0)} turns of ${measured.turn_ns.toFixed(1)} ns`,
      );
    }
    const { cold, warm, year, read_ms } = measured;
    console.log(
      `read cold: ${read_ms.toFixed(0)} ms; cold / warm ${(cold.cpu_ms / warm.cpu_ms).toFixed(1)}; ` +
        `year / week ${(year.cpu_ms / warm.cpu_ms).toFixed(1)}`,
    );
  }, 300_000);

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('costs the same evaluations cold and warm', () => {
    expect(measured.warm.run).toEqual(measured.cold.run);
  });

  it('takes cold no more than fifteen times a warm week', () => {
    expect(measured.cold.cpu_ms / measured.warm.cpu_ms).toBeLessThan(15);
  });

  it('takes for a year about what 52 weeks take', () => {
    expect(measured.year.run.evaluations / measured.warm.run.evaluations).toBeLessThan(60);
    expect(measured.year.cpu_ms / measured.warm.cpu_ms).toBeLessThan(120);
  });

  it('takes at most a thousand turns of the fixed loop an evaluation', () => {
    expect(turns(measured.warm, measured.turn_ns)).toBeLessThan(1000);
  });
});
