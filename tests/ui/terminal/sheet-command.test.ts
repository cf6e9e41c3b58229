import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Outcome, tankful } from './fake-terminal.ts';

const flat = (text: string) => text.replace(/\s+/g, ' ');

describe('tankful sheet of a boat', () => {
  let plain: Outcome;
  beforeAll(async () => {
    plain = await tankful('sheet', 'scenarios/boat.json', '--plain');
  }, 60_000);

  it('says what it is, of what day, and that it approves nothing', () => {
    expect([plain.code, plain.err]).toEqual([0, '']);
    expect(plain.out).toMatch(
      /^Build sheet: Eleven gallons aboard\nTankful \d+\.\d+\.\d+, January 9, 2027\n/,
    );
    expect(flat(plain.out)).toMatch(/An estimate, not an approval\. Local code and licensed practice decide/);
  });

  it('has its measures in both systems', () => {
    // 14 in across and 16 1/2 in deep are 2540 in3, 11.0 gal, 41.6 L, 91.8 lb less what 3 ft of tube displace.
    const out = flat(plain.out);
    expect(out).toMatch(/Inside 14 in \(356 mm\) across, 18 in \(457 mm\) high\./);
    expect(out).toMatch(/Water line 16 1\/2 in \(419 mm\) up, 1 1\/2 in \(38 mm\) under the rim\./);
    expect(out).toMatch(
      /Filled to its line, 11 gal \(41\.6 L\) with the coils in it, it weighs 9\d(\.\d)? lb .*: water 91\.\d lb \(41\.\d kg\)/,
    );
    // 16 1/2 in of water at 62.4 lb/ft2 a foot.
    expect(out).toMatch(/presses 86 lb\/ft2 \(4\.1 kPa\) down/);
    // 3 ft round 9 in, 2 5/8 in apart: 36 / hypot(28.27, 2.625) turns.
    expect(out).toMatch(/Turns: 1\.3;/);
  });

  it('counts fittings, tells answers with bands, cautions with cause first, assumptions with grade and source', () => {
    const out = flat(plain.out);
    expect(out).toMatch(/Union, own stainless steel.*?: count 2 \+ 1 spare; for engine loop/);
    expect(out).toMatch(/Check valve \(the design has none: fit it\): count 1; for engine loop/);
    expect(out).toMatch(
      /The engine's coil\. At 2 kW .*? Btu\/h \(\d+ to \d+ Btu\/h\) \/ [\d.]+ kW \([\d.]+ to [\d.]+ kW\)/,
    );
    const [cause, standing] = ['With cause in this run:', 'No cause seen in this run'].map((each) =>
      out.indexOf(each),
    );
    expect(cause).toBeGreaterThan(0);
    expect(out.slice(cause, standing)).toMatch(/Danger: Carbon monoxide\. The engine runs for 3\.5 h here/);
    // An engine with its generator is cause enough.
    expect(out.slice(cause, standing)).toMatch(/Note: Wiring\. /);
    expect(out.slice(standing)).toMatch(/Freezing\. /);
    expect(out).toMatch(/\(D: [^)]+/);
    expect(out).toMatch(/\d+ more stand in the file: tankful check lists them/);
  });

  it('is ASCII where asked, and no wider than the screen but for a long word', () => {
    expect(plain.out).toMatch(/^[\n\x20-\x7e]+$/);
    for (const line of plain.out.split('\n')) expect(line.length).toBeLessThanOrEqual(84);
  });

  it('gives the same in SI as JSON', async () => {
    const { out } = await tankful('sheet', 'scenarios/boat.json', '--json');
    const sheet = JSON.parse(out);
    expect(sheet.date).toBe('2027-01-09');
    expect(sheet.store.water_depth_m).toBeCloseTo(16.5 * 0.0254, 9);
    // Spread turns lie 51 mm clear, 2 in to a fifth of a millimetre.
    expect(sheet.coils[0].turns).toBeCloseTo(36 / Math.hypot(9 * Math.PI, 2.625), 3);
    expect(sheet.cautions.map(({ key }: { key: string }) => key)).toContain('carbon_monoxide');
    expect(sheet.answers.map(({ key }: { key: string }) => key)).toEqual(['charging']);
    expect(sheet.assumptions.length).toBeGreaterThan(40);
  }, 60_000);
});

describe('tankful sheet of what was measured and doubted', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'tankful-sheet-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('prints both as such, and neither as an assumption', async () => {
    const scenario = {
      format: 'tankful',
      version: 1,
      name: 'measured',
      site: { latitude: '44 N' },
      run: { days: 1 },
      store: {
        inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' },
        water_depth: '32 in',
        bridges: 2.2,
      },
      doubts: [
        { unsure: 'between', input: 'store.bridges', from: '2', to: '2.5' },
        { unsure: 'a lot', input: 'store.water_depth' },
      ],
    };
    writeFileSync(join(folder, 'box.json'), JSON.stringify(scenario));
    const { out, err } = await tankful('sheet', join(folder, 'box.json'), '--plain');
    expect(err).toBe('');
    expect(flat(out)).toMatch(
      /Measured or set: loss multiplier for bridges and leaks 2\.2, between 2 and 2\.5\./,
    );
    expect(flat(out)).toMatch(/In doubt: store, depth of water 32 in \(813 mm\), unsure a lot\./);
    expect(out.slice(out.indexOf('Assumptions'))).not.toMatch(/multiplier on the conducted loss/);
  });
});
