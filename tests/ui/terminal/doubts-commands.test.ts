/** doubts and next on the command line, with answers made by hand in place of their runs. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { smallScenario } from '../../sim/answers/small.ts';
import { doubts, next } from '../hand-made-doubts.ts';
import { tankful } from './fake-terminal.ts';

const asked = vi.hoisted(() => ({ runs: 0, seed: 0 }));

vi.mock('../../../sim/index.ts', async (original) => {
  const { doubts, next } = await import('../hand-made-doubts.ts');
  return {
    ...(await original<typeof import('../../../sim/index.ts')>()),
    doubtsAnswer: async (question: typeof asked) => {
      Object.assign(asked, { runs: question.runs, seed: question.seed });
      return doubts;
    },
    nextAnswer: async () => next,
  };
});

let folder = '';
let file = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-doubts-'));
  file = join(folder, 'small.json');
  writeFileSync(file, JSON.stringify(smallScenario({ prices: { currency: 'Kr' } })));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const said = ({ out }: { out: string }) => out.replace(/\s+/g, ' ');

describe('tankful doubts', () => {
  it('prints how often, what moves it, what to measure, a picture and tables', async () => {
    const report = await tankful('doubts', file, '--plain');
    expect([report.code, report.err]).toEqual([0, '']);
    expect(report.out).toMatch(/^Doubts\n/);
    expect(said(report)).toContain('In 20 runs with 31 unsure inputs varied a shower ran cold in 6');
    expect(said(report)).toContain('An overnight cool-down test would narrow it most, to 50 %');
    expect(report.out).toMatch(
      / F {3}Top of the store {3}# as it stands {3}\+ least of all runs {3}\. most\n/,
    );
    expect(report.out).toMatch(/\n +4 +Sat 7:57 pm +6 +7\.0\n/);
    expect(report.out).toMatch(/\n +store\.bridges +1\.1 +10 +2\.5 +70\n/);
    for (const line of report.out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });

  it('asks for 20 runs and the first seed, or for what it is told', async () => {
    await tankful('doubts', file);
    expect(asked).toEqual({ runs: 20, seed: 1 });
    await tankful('doubts', file, '--runs', '8', '--seed', '42');
    expect(asked).toEqual({ runs: 8, seed: 42 });
  });

  it('refuses runs and seeds that are none', async () => {
    for (const [flag, text] of [
      ['--runs', '1'],
      ['--runs', 'many'],
      ['--runs', '201'],
      ['--seed', '-3'],
      ['--seed', '1e99'],
    ]) {
      const report = await tankful('doubts', file, flag, text);
      expect(report.code).toBe(2);
      expect(report.err).toMatch(
        new RegExp(`^${flag} - expected a whole number, .* - got "${text}" - write it as in`),
      );
    }
  });

  it('prints its runs as CSV and the whole as JSON', async () => {
    const csv = (await tankful('doubts', file, '--csv', '--units', 'si')).out.trimEnd().split('\n');
    expect(csv).toEqual(['run,cold (min),store_mean (C)', '1,0,58', '2,120,42']);
    const json = JSON.parse((await tankful('doubts', file, '--json')).out);
    expect(json).toEqual({ name: 'small box for tests', ...JSON.parse(JSON.stringify(doubts)) });
  });
});

describe('tankful next', () => {
  it('prints what to do first, in the file’s own currency, and what is for safety', async () => {
    const report = await tankful('next', file);
    expect([report.code, report.err]).toEqual([0, '']);
    expect(said(report)).toContain('Before any money, turns further apart, coil household');
    expect(said(report)).toContain('Then for the money, a seal around the lid for 13 Kr (8.7 Kr to 20 Kr)');
    expect(said(report)).toContain(
      '! Danger: Before all of these, and not weighed against them: a mixing valve',
    );
    expect(report.out).toMatch(
      /\n +3\. a roll more in parallel, coil household +5\.3 +2\.6 +7\.9 +120 Kr to 270 Kr +0 Kr/,
    );
  });

  it('prints its changes as CSV and the whole as JSON', async () => {
    const csv = (await tankful('next', file, '--csv')).out.trimEnd().split('\n');
    expect(csv[0]).toMatch(
      /^rank,change,what,gain \(gal\),gain_low \(gal\),gain_high \(gal\),showers_warm,cost \(Kr\)/,
    );
    expect(csv).toHaveLength(7);
    const json = JSON.parse((await tankful('next', file, '--json')).out);
    expect(json).toEqual({ name: 'small box for tests', ...JSON.parse(JSON.stringify(next)) });
  });
});
