/** What sim writes is printed as the language’s table has it: problems, what was filled in, notes. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import demo from '../../../scenarios/demo.json';
import { simTexts } from '../../../scripts/sim-texts.mjs';
import { telltales } from '../../browser/support/english-left.ts';
import { brokenFiles } from '../../sim/scenario/files.ts';
import { greekTable } from '../support/greek.ts';
import type * as Fake from './fake-terminal.ts';

let tankful: typeof Fake.tankful;
let tales: string[] = [];
const folder = mkdtempSync(join(tmpdir(), 'tankful-greek-'));
const file = join(folder, 'spare.json');

beforeAll(async () => {
  const texts = await simTexts();
  tales = telltales(texts);
  vi.doMock('../../../ui/words/sim-texts.ts', () => ({ simTexts: greekTable(texts) }));
  ({ tankful } = await import('./fake-terminal.ts'));
  // A coil through which nothing flows is worth a note.
  const spare = { name: 'spare', tube: { kind: 'refrigeration', size: '3/8 in' }, roll_length: '20 ft' };
  writeFileSync(file, JSON.stringify({ ...demo, coils: [...demo.coils, spare] }));
}, 60_000);
afterAll(() => {
  rmSync(folder, { recursive: true });
  vi.doUnmock('../../../ui/words/sim-texts.ts');
});

/** English texts of sim in what was printed, however it was wrapped. */
function left(text: string): string[] {
  const plain = text.replace(/\s+/g, ' ').replace(/"[^"]*"/g, '');
  return tales.filter((tale) => plain.includes(tale));
}

describe('the terminal in another language', () => {
  it.each(brokenFiles())('prints what is wrong with %s in it', async (name) => {
    const { code, err } = await tankful('check', join('scenarios', name));
    expect(code).toBe(2);
    expect(err).toMatch(/[α-ω]{4}/);
    expect(left(err)).toEqual([]);
  });

  it('prints what was filled in, where it comes from, how to measure it, and notes', async () => {
    const { code, out } = await tankful('check', file);
    expect(code).toBe(0);
    expect(out.match(/[α-ω]{4}/g)?.length).toBeGreaterThan(200);
    expect(left(out)).toEqual([]);
  });

  it.each([
    ['a run', ['run', file, '--days', '1', '--bands']],
    ['an answer', ['coil', file]],
    ['a range', ['range', file, '--vary', 'run.days=1:2:2', '--figure', 'showers_cold']],
    ['a build sheet', ['sheet', file]],
  ])(
    'prints %s',
    async (_, words) => {
      const { code, out } = await tankful(...words);
      expect(code).toBe(0);
      expect(out).toMatch(/[α-ω]{4}/);
      expect(left(out)).toEqual([]);
    },
    60_000,
  );

  it.each([
    ['a range of nothing', ['range', file, '--vary', 'store.water_depth=1']],
    [
      'a question that cannot be asked',
      [
        'coil',
        '--tube',
        '3/8 in refrigeration',
        '--length',
        '5 psi',
        '--flow',
        '2 gpm',
        '--tank',
        '140 F',
        '--cold',
        '45 F',
      ],
    ],
  ])('refuses %s', async (_, words) => {
    const { code, err } = await tankful(...words);
    expect(code).toBe(2);
    expect(err).toMatch(/[α-ω]{4}/);
    expect(left(err)).toEqual([]);
  });
});
