/** hours, sun and store on the command line, with answers made by hand in place of their runs. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { runProgram } from '../../../ui/terminal/program.ts';
import { smallScenario } from '../../sim/answers/small.ts';
import { collector, hours, store } from '../hand-made-answers.ts';
import { fakeTerminal, tankful } from './fake-terminal.ts';

const asked = vi.hoisted(() => ({ name: '', runs: 0 }));

vi.mock('../../../sim/index.ts', async (original) => {
  const { hours, collector, store } = await import('../hand-made-answers.ts');
  const answered = (answer: unknown) => async (question: Parameters<typeof Object>[0]) => {
    asked.name = question.scenario.name;
    // One run, so that threads and progress have something to do.
    const [done] = await question.doJobs([{ edits: [] }], question.onProgress);
    asked.runs += done ? 1 : 0;
    return answer;
  };
  return {
    ...(await original<typeof import('../../../sim/index.ts')>()),
    hoursAnswer: answered(hours),
    collectorAnswer: answered(collector),
    storeAnswer: answered(store),
  };
});

let folder = '';
let file = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-sweep-'));
  file = join(folder, 'small.json');
  writeFileSync(file, JSON.stringify(smallScenario({ prices: { currency: 'Kr' } })));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const said = ({ out }: { out: string }) => out.replace(/\s+/g, ' ');

describe('tankful hours', () => {
  it('prints sentence, reason, curve, table, levers, cautions and what it takes for granted', async () => {
    const report = await tankful('hours', file, '--plain');
    expect([report.code, report.err, asked.name]).toEqual([0, '', 'small box for tests']);
    const { out } = report;
    expect(out).toMatch(/^Hours of engine a day\n/);
    expect(said(report)).toContain('keep the showers warm in Dec, the month that needs most');
    expect(said(report)).toContain('28 Kr (0 Kr to 670 Kr)');
    // The axis runs from January to December, in hours.
    expect(out).toMatch(/ h {3}Hours a day by month {3}# needed {3}\+ charging\n/);
    expect(out).toMatch(/\n +Jan +Dec\n/);
    expect(out).toMatch(/\n +Jan +4\.00 +4\.00 +0\.00 /);
    expect(said(report)).toContain('What would change it most (hours in the month that needs most)');
    expect(said(report)).toMatch(/5\.5 h at 18 %, 3\.3 h at 33 % \(engine\.jacket_share\)/);
    expect(out).toContain('! Danger: Carbon monoxide. *');
    expect(said(report)).toContain('Somebody keeps the water level where it is.');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });

  it('prints its months as CSV and the whole as JSON', async () => {
    const csv = (await tankful('hours', file, '--csv')).out.trimEnd().split('\n');
    expect(csv[0]).toBe(
      'month,hours (min),charging (min),extra (min),extra_fuel (gal),cold_share (%),solar_share (%)',
    );
    expect(csv).toHaveLength(13);
    expect(csv[1]).toBe('1,240,240,0,0,0,20');
    const json = JSON.parse((await tankful('hours', file, '--json')).out);
    expect(json).toEqual({ name: 'small box for tests', ...JSON.parse(JSON.stringify(hours)) });
  });
});

describe('tankful sun', () => {
  it('prints the sizes, the months and the year over the area', async () => {
    const report = await tankful('sun', file, '--units', 'si');
    expect(report.code).toBe(0);
    expect(report.out).toMatch(/^The sun over the year\n/);
    expect(said(report)).toContain('3.2 m² of collector bring 1300 kWh (700 to 1900 kWh) a year');
    expect(report.out).toMatch(/\n> +3\.2 +40 +1324 +20 +800 Kr +30\n/);
    expect(report.out).toMatch(/month +1\.6 m² +3\.2 m²\n/);
    expect(report.out).toMatch(/\n +0 +▲? ?3\.2 m²\n/);
  });

  it('prints a row a size and month as CSV', async () => {
    const { out } = await tankful('sun', file, '--csv', '--units', 'si');
    expect(out).toBe('area (m2),month,heat (kWh)\n1.6,1,46\n3.2,1,85\n');
    expect(collector.tables.long.rows).toHaveLength(2);
  });
});

describe('tankful store', () => {
  it('prints what the store loses, and how insulation changes it', async () => {
    const report = await tankful('store', file, '--units', 'si');
    expect(report.code).toBe(0);
    expect(said(report)).toContain('the store cools by 2.5 K (1.7 to 4.0 K) a day');
    expect(report.out).toMatch(/\n> +100 +.* closed +2\.5/);
    expect(report.out).toContain('! Note: Weight. *');
  });

  it('prints every variant as CSV', async () => {
    expect((await tankful('store', file, '--csv', '--units', 'si')).out).toBe(
      'volume (L),lid,loss (kW)\n900,closed,0.109\n',
    );
    expect(store.tables.all.rows).toHaveLength(1);
  });
});

describe('a sweep', () => {
  it.each(['hours', 'sun', 'store'])('%s takes its runs from the pool, and closes it', async (command) => {
    const terminal = fakeTerminal();
    const closed = vi.fn(async () => {});
    const { openPool } = terminal;
    terminal.openPool = (...given) => ({ ...openPool(...given), close: closed });
    asked.runs = 0;
    expect(await runProgram([command, file], terminal)).toBe(0);
    expect(asked.runs).toBe(1);
    expect(closed).toHaveBeenCalledOnce();
  });

  it('that somebody stopped prints what it has and ends with 130', async () => {
    const terminal = fakeTerminal();
    terminal.openPool = () => ({
      doJobs: async (jobs) => jobs.map(() => null),
      stopped: true,
      close: async () => {},
    });
    expect(await runProgram(['store', file], terminal)).toBe(130);
    expect(terminal.written.out).toContain('Store and insulation');
    expect(terminal.written.err).toBe('');
  });

  it.each(['hours', 'sun', 'store'])('%s refuses a bad file and two forms at once', async (command) => {
    expect(await tankful(command, join(folder, 'none.json'))).toMatchObject({ code: 2, out: '' });
    expect(await tankful(command, file, '--json', '--csv')).toMatchObject({ code: 2, out: '' });
  });
});
