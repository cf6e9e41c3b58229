import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { logged, madeLog } from '../../sim/answers/fit/made-log.ts';
import { tankful } from './fake-terminal.ts';

let folder = '';
const at = (name: string) => join(folder, name);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-fit-'));
  writeFileSync(at('box.json'), JSON.stringify(logged()));
  const truth = [
    { path: 'taps', value: undefined },
    { path: 'engine.runs', value: { kind: 'timetable', spans: [] } },
    { path: 'store.bridges', value: 2.2 },
  ];
  const made = { seed: 3, from_h: 20, to_h: 34, every_min: 20, noise_K: 0.1, gaps: 0 };
  writeFileSync(at('night.csv'), madeLog(logged(), { ...made, truth, offsets_K: [0, 0] }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('tankful fit', () => {
  it('says what a cool-down tells and what not, and writes the value into a scenario', async () => {
    const words = [
      'fit',
      at('box.json'),
      at('night.csv'),
      '--cool-down',
      '--plain',
      '--write',
      at('new.json'),
    ];
    const { code, out, err } = await tankful(...words);
    expect([code, err]).toEqual([0, '']);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /The log says: loss multiplier for bridges and leaks 2\.\d\d \(1\.\d\d to 2\.\d\d\)\. The run then strays/,
    );
    expect(out).toMatch(/outside film of coil household +0\.80 +cannot tell/);
    expect(out).toMatch(/Not told: outside film of coil household\. Coil outlet test/);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /A log cannot tell what goes through the walls from .* as vapour\..*tape the lid/,
    );
    expect(out).toMatch(/^[\n\x20-\x7e]+$/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
    const written = JSON.parse(readFileSync(at('new.json'), 'utf8'));
    expect(Math.abs(written.store.bridges - 2.2)).toBeLessThan(0.2);
    expect(written.run).toEqual((logged() as unknown as { run: unknown }).run);
  }, 60_000);

  it('prints measured beside simulated as CSV', async () => {
    const { out } = await tankful('fit', at('box.json'), at('night.csv'), '--cool-down', '--csv');
    expect(out).toMatch(/^time \(s\),probe,measured \(C\),simulated \(C\)\n72000,at 10 cm,[\d.]+,[\d.]+\n/);
  }, 60_000);

  it('refuses a log that it cannot read', async () => {
    writeFileSync(at('bad.csv'), 'time,top (C)\n1:00,warm\n');
    const { code, out, err } = await tankful('fit', at('box.json'), at('bad.csv'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^line 2, top - expected a number, or nothing - got "warm"/);
  });
});
