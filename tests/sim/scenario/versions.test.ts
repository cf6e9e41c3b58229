/**
 * A file of every version there was, kept as it was written: each must still read, and to the same plant. Who changes
 * the form of scenarios adds a migration and a file of the new version, and leaves the old ones alone.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../../scripts/build.mjs';
import { migrate, parseJsonText, readScenario, SCENARIO_VERSION } from '../../../sim/scenario/index.ts';
import { frozen } from './files.ts';

const folder = join(root, 'tests/sim/scenario/versions');
const fileOf = (version: number) => `version-${version}.json`;
const textOf = (version: number) => readFileSync(join(folder, fileOf(version)), 'utf8');
const versions = Array.from({ length: SCENARIO_VERSION }, (_, i) => i + 1);

/** Prints of the files as they were when their version was today's: a kept file is never edited. */
const prints: Record<number, string> = {
  1: 'ef6d048907ba7919b561dc1e09fe9ec4132f14c7e616ac348386a8739b405715',
};

function jsonOf(version: number): Record<string, unknown> {
  const parsed = parseJsonText(textOf(version));
  if (!parsed.ok) throw new Error(`expected ${fileOf(version)} to be JSON`);
  return parsed.json as Record<string, unknown>;
}

function plantOf(version: number) {
  const read = readScenario(frozen(jsonOf(version)));
  if (!read.ok) throw new Error(read.problems.map(({ path, got }) => `${path}: ${got}`).join('\n'));
  return read.plant;
}

describe('every version of the form', () => {
  it('has its kept file, and each kept file its version and its print', () => {
    expect(readdirSync(folder).sort()).toEqual(versions.map(fileOf).sort());
    expect(Object.keys(prints).map(Number)).toEqual(versions);
  });

  it.each(versions)('%d is kept as it was written', (version) => {
    expect(createHash('sha256').update(textOf(version)).digest('hex')).toBe(prints[version]);
    expect(jsonOf(version)).toMatchObject({ format: 'tankful', version });
  });

  it.each(versions)('%d reads, and to the same plant as the newest', (version) => {
    expect(plantOf(version)).toEqual(plantOf(SCENARIO_VERSION));
  });

  it.each(versions)('%d says what it said: values worked out by hand', (version) => {
    const { site, run, store, coils, engine, collector, supply, taps, backup } = plantOf(version);
    // 1 ft is 0.3048 m, 1 in 0.0254 m, 1 gal 3.785411784 L, 1 psi 6894.757 Pa, 1 h 3600 s; degrees F by (F - 32) / 1.8.
    expect(site.latitude_rad).toBeCloseTo((44 * Math.PI) / 180, 12);
    expect(site.altitude_m).toBeCloseTo(1200 * 0.3048, 9);
    expect([run.days, run.first_day, run.layers]).toEqual([7, 8, 20]);
    expect(run.start.top_C).toBeCloseTo((120 - 32) / 1.8, 9);
    expect(store.water_depth_m).toBeCloseTo(32 * 0.0254, 9);
    expect(coils.map(({ name }) => name)).toEqual(['household', 'engine', 'sun']);
    expect(engine?.name).toBe('diesel set');
    expect(collector?.coil).toBe('sun');
    expect(supply.pump.cut_out_Pa).toBeCloseTo(50 * 6894.757, -1);
    expect(taps?.coil).toBe('household');
    expect(backup?.set_C).toBeCloseTo((112 - 32) / 1.8, 9);
  });

  it('brings no file of a version to come nearer, and leaves it as it is', () => {
    const newer = frozen({ ...jsonOf(SCENARIO_VERSION), version: SCENARIO_VERSION + 1 });
    expect(migrate(newer)).toMatchObject({ ok: false, problems: [{ path: 'version' }] });
  });
});
