/** breaks and season on the command line, with answers made by hand in place of their runs. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { sunnyScenario } from '../../sim/answers/small.ts';
import { tankful } from './fake-terminal.ts';

vi.mock('../../../sim/index.ts', async (original) => {
  const { breaks, season } = await import('../hand-made-failures.ts');
  return {
    ...(await original<typeof import('../../../sim/index.ts')>()),
    breaksAnswer: async () => breaks,
    seasonAnswer: async () => season,
  };
});

let folder = '';
let file = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-breaks-'));
  file = join(folder, 'sunny.json');
  writeFileSync(file, JSON.stringify(sunnyScenario()));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const said = ({ out }: { out: string }) => out.replace(/\s+/g, ' ');

describe('tankful breaks', () => {
  it('prints each failure with what happens, what protects, and what cannot happen here', async () => {
    const report = await tankful('breaks', file, '--plain', '--units', 'si');
    expect([report.code, report.err]).toEqual([0, '']);
    const text = said(report);
    expect(text).toContain('With nobody home in summer the top of the store gets to 88 C (80 to 95 C)');
    expect(text).toContain('3 of 4 failures can happen to this plant');
    expect(text).toContain('within 20 min and gets to 160 C');
    expect(text).toMatch(/the coil "household" gains 800 kPa with every K near 60 C/);
    expect(text).toContain('What protects: A relief valve on every coil');
    expect(text).toMatch(/Cistern without its shelter in the cold the cold water comes from no cistern/);
    expect(text).toContain('! Danger: Water trapped in a coil. *');
    for (const line of report.out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });

  it('says pressures by the reader’s own degree', async () => {
    // 800 kPa/K is 444 kPa to the degree Fahrenheit, 64 psi.
    expect(said(await tankful('breaks', file, '--plain'))).toContain('gains 64 psi with every F near 140 F');
  });

  it('prints a row a failure as CSV, and the whole as JSON', async () => {
    const [head, ...rows] = (await tankful('breaks', file, '--csv', '--units', 'si')).out.trim().split('\n');
    expect(head).toBe('failure,after (min),reached (C),plain (C),more (K)');
    expect(rows[0]).toBe('pump,20,160,,');
    const json = JSON.parse((await tankful('breaks', file, '--json')).out);
    expect(json.key).toBe('breaks');
    expect(json.facts.away_top_C.high).toBe(95);
  });
});

describe('tankful season', () => {
  it('prints the year in a sentence and by months, and the day on which nobody’s water runs dry', async () => {
    const report = await tankful('season', file, '--plain', '--units', 'si');
    const text = said(report);
    expect(text).toContain('In a year the engine runs 730 h and burns 500 L');
    expect(text).toContain('Of 1460 showers 3 ran cold (2 to 41).');
    // Day 181 of the year, counted from 0, is 1 July.
    expect(text).toContain('the store would run dry on Jul 1');
    expect(report.out).toMatch(/\n +Jan +62 +42\.0 /);
    expect(report.out).toMatch(/\n +Dec +62 +42\.0 /);
  });

  it('prints its months as CSV', async () => {
    const lines = (await tankful('season', file, '--csv', '--units', 'si')).out.trim().split('\n');
    expect(lines).toHaveLength(13);
    expect(lines[0]).toBe('month,engine (min),fuel (L),showers_cold,store_top_C_max (C)');
  });
});
