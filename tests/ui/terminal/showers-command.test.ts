import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { toteScenario } from '../../sim/answers/scenarios.ts';
import { type Outcome, tankful } from './fake-terminal.ts';

let folder = '';
let file = '';
let report: Outcome;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-showers-'));
  file = join(folder, 'tote.json');
  writeFileSync(file, JSON.stringify(toteScenario()));
  report = await tankful('showers', file, '--dull', '1', '--plain');
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('tankful showers', () => {
  it('says how many in a row, now and after dull days, and how long until the next', () => {
    const { code, out, err } = report;
    expect([code, err]).toEqual([0, '']);
    // Wherever the lines break.
    const said = out.replace(/\s+/g, ' ');
    expect(said).toMatch(
      /\d showers? \(\d+ to \d+\) in a row now \(8 min each, 1\.5 gpm at 105 F\); the next turns cold after [\d.]+ min; after 1 dull day \d showers?/,
    );
    expect(said).toMatch(/The (coil|store) is the limit: /);
    expect(said).toMatch(/The next warm shower after that: .* with the engine started at once; /);
  });

  it('draws the tap second by second and tells of the household’s own day', () => {
    expect(report.out).toMatch(/second by second.*\n( +[\d.]* +\|.*\n){9}/);
    expect(report.out).toMatch(/Turned on now, it is warm after \d+ s/);
    expect(report.out).toMatch(/shower 1 +7:00 am +8\.0 +105/);
  });

  it('keeps to ASCII and to the width', () => {
    expect(report.out).toMatch(/^[\n\x20-\x7e]+$/);
    for (const line of report.out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });

  it.each([['0'], ['7'], ['three'], ['1.5']])('refuses %s dull days', async (dull) => {
    const { code, out, err } = await tankful('showers', file, '--dull', dull);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^--dull - expected a whole number of days, 1 to 6/);
  });

  it('refuses a scenario in which nobody draws', async () => {
    const { taps: _, ...none } = toteScenario();
    const bare = join(folder, 'bare.json');
    writeFileSync(bare, JSON.stringify(none));
    const { code, err } = await tankful('showers', bare);
    expect([code, err]).toEqual([2, expect.stringMatching(/^taps - expected a household that draws water/)]);
  });
});
