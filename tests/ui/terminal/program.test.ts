import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tankful } from './fake-terminal.ts';

const scenarios = fileURLToPath(new URL('../../../scenarios/', import.meta.url));
const boat = join(scenarios, 'boat.json');
const demo = join(scenarios, 'demo.json');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-program-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function place(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}
const edited = (name: string, change: Record<string, unknown>) =>
  place(name, JSON.stringify({ ...JSON.parse(readFileSync(boat, 'utf8')), ...change }));

describe('tankful run', () => {
  it('prints the picture, the figures, the ledger and the cautions', async () => {
    const { code, out, err } = await tankful('run', boat, '--no-bands');
    expect([code, err]).toEqual([0, '']);
    for (const part of ['Store temperature', 'Engine running', 'Where the heat goes', 'Unaccounted for:']) {
      expect(out).toContain(part);
    }
    expect(out).toMatch(/Danger: Carbon monoxide/);
    expect(out).toMatch(/\d+ assumptions were filled in, \d+ of them doubtful\. List them: tankful check/);
    expect(out).toContain('The bands were left out; --bands works them out.');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('prints bands, and what to measure first, unless told not to', async () => {
    const { code, out } = await tankful('run', boat);
    expect(code).toBe(0);
    expect(out).toMatch(/Heat from the engine to the store .*\d kBtu to [\d.]+ kBtu/);
    expect(out).toMatch(/Bands: \d+ doubtful assumptions taken to their low and high values one at a time/);
    expect(out).toContain('Measure first: ');
  });

  it('keeps to ASCII when plain', async () => {
    for (const words of [
      ['run', demo, '--no-bands'],
      ['check', demo],
    ]) {
      const { code, out } = await tankful(...words, '--plain');
      expect(code).toBe(0);
      expect(out).toMatch(/^[\n\x20-\x7e]+$/);
    }
  });

  it('puts the units asked for first', async () => {
    expect((await tankful('run', boat, '--no-bands', '--units', 'si')).out).toMatch(
      /Store top, hottest +[\d.]+ °C +\([\d.]+ °F\)/,
    );
    expect((await tankful('run', boat, '--no-bands', '--units', 'US')).out).toMatch(
      /Store top, hottest +[\d.]+ °F +\([\d.]+ °C\)/,
    );
  });

  it('runs other days from another date', async () => {
    const { code, out } = await tankful('run', boat, '--no-bands', '--days', '2', '--from', '07-04');
    expect(code).toBe(0);
    expect(out).toContain('2 days from Jul 4');
  });

  it('prints JSON alone', async () => {
    const { code, out } = await tankful('run', boat, '--json');
    expect(code).toBe(0);
    const json = JSON.parse(out);
    expect(Object.keys(json)).toEqual([
      ...['name', 'first_day', 'days', 'figures', 'ledger', 'events', 'cautions', 'series', 'run'],
    ]);
    // The file has the engine run for 3.5 h.
    expect(json.figures.engine_s).toBeCloseTo(3.5 * 3600, 3);
    expect(json.ledger.residual_percent).toBeLessThan(0.01);
    expect(json.run.wall_s).toEqual(expect.any(Number));
  });

  it('prints CSV alone', async () => {
    const { code, out } = await tankful('run', boat, '--csv', '--units', 'si');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines[0]).toMatch(/^time \(h\),store at [\d.]+ m \(C\),/);
    const columns = lines[0].split(',').length;
    expect(lines.every((line) => line.split(',').length === columns)).toBe(true);
    expect(Number(lines.at(-1)?.split(',')[0])).toBe(24);
  });

  it('writes all of them into a folder', async () => {
    const into = join(folder, 'made');
    const { code, out } = await tankful('run', boat, '--no-bands', '--out', into);
    expect(code).toBe(0);
    expect(readdirSync(into).sort()).toEqual(['report.txt', 'result.json', 'series.csv']);
    expect(out).toContain(join(into, 'report.txt'));
    expect(readFileSync(join(into, 'report.txt'), 'utf8')).toContain('Where the heat goes');
  });

  it('shows a name with control characters harmlessly', async () => {
    const path = edited('evil.json', { name: 'Kettle \u001b[2J\u202egone' });
    const { out, err } = await tankful('run', path, '--no-bands');
    expect(out).toContain('Kettle ?[2J?gone');
    for (const sign of ['\u001b', '\u202e']) expect(out + err).not.toContain(sign);
  });
});

describe('tankful check', () => {
  it('lists what was understood and what was filled in', async () => {
    const { code, out, err } = await tankful('check', demo);
    expect([code, err]).toEqual([0, '']);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /is sound: \d+ quantities read, \d+ assumptions filled in, \d+ of them doubtful\./,
    );
    expect(out).toMatch(/ {2}site\.altitude +1150 ft +1150 ft \(351 m\)/);
    expect(out).toMatch(/ {2}weather\.air +12 values +17 °F \(-8\.3 °C\), \.\.\./);
    expect(out).toMatch(/store\.bridges: 1\.5, perhaps 1\.1 to 2\.5 \(D: /);
    expect(out).toContain('Measure it: ');
  });

  it('prints every problem in the house form, and the exit code 2', async () => {
    const path = edited('wrong.json', { sauce: 1, site: { latitude: '50 psi' } });
    const { code, out, err } = await tankful('check', path);
    expect([code, out]).toEqual([2, '']);
    const lines = err.trimEnd().split('\n');
    expect(lines.length).toBeGreaterThanOrEqual(2);
    for (const line of lines) expect(line).toMatch(/^.+: .+ - expected .+ - got .+ - .+[.!?]$/);
    expect(err).toContain(`${path}: site.latitude - expected `);
  });

  it('refuses every broken scenario in the tree with 2, and says why', async () => {
    const broken = readdirSync(scenarios).filter((name) => name.endsWith('_broken.json'));
    expect(broken.length).toBeGreaterThan(10);
    for (const name of broken) {
      const { code, out, err } = await tankful('check', join(scenarios, name));
      expect([name, code, out]).toEqual([name, 2, '']);
      expect(err).toMatch(/ - expected .+ - got .+ - /);
    }
  });

  it('finds every sound scenario sound', async () => {
    const sound = readdirSync(scenarios).filter((name) => !name.endsWith('_broken.json'));
    expect(sound.length).toBeGreaterThanOrEqual(4);
    for (const name of sound)
      expect([name, (await tankful('check', join(scenarios, name))).code]).toEqual([name, 0]);
  });
});

describe('tankful schema', () => {
  it('prints the JSON Schema of scenarios', async () => {
    const { code, out } = await tankful('schema');
    const schema = JSON.parse(out);
    expect([code, schema.type]).toEqual([0, 'object']);
    expect(schema.$schema).toContain('json-schema.org');
    expect(schema.required).toContain('store');
  });
});

describe('wrong use', () => {
  const refused = async (...words: string[]) => {
    const { code, out, err } = await tankful(...words);
    expect([code, out]).toEqual([2, '']);
    return err;
  };

  it('names the file that is missing', async () => {
    expect(await refused('run', join(folder, 'none.json'))).toContain(
      'none.json - expected a scenario file (JSON text) - got no such file',
    );
  });
  it('says line and column of what is no JSON', async () => {
    const path = place('comma.json', '{\n  "format": "tankful",\n  "version": 1,,\n}');
    expect(await refused('run', path)).toContain(`${path}: line 3, column 16 - expected`);
  });
  it('refuses JSON that is no scenario', async () => {
    expect(await refused('run', place('list.json', '[1, 2]'))).toContain('- got a list of 2 -');
    expect(await refused('run', place('null.json', 'null'))).toContain('- got null -');
  });
  it('refuses days that are no number, and a date that is none', async () => {
    expect(await refused('run', boat, '--days', 'many')).toBe(
      '--days - expected a whole number of days - got "many" - write it as in --days 7.\n',
    );
    expect(await refused('run', boat, '--days', '0')).toContain('run.days - expected');
    expect(await refused('run', boat, '--from', '02-31')).toContain('run.from - expected');
  });
  it('refuses units that are none', async () => {
    expect(await refused('run', boat, '--units', 'cgs')).toContain('--units - expected us or si - got "cgs"');
  });
  it('refuses two outputs at once', async () => {
    expect(await refused('run', boat, '--json', '--csv')).toContain(
      'expected one of --json, --csv, --out - got --json and --csv',
    );
  });
  it('refuses an unknown command or option, a missing file name, a second one', async () => {
    for (const words of [
      ['walk', boat],
      ['run', boat, '--dyas', '3'],
      ['run'],
      ['run', boat, boat],
      ['run', boat, '--days'],
    ]) {
      expect(await refused(...words)).toMatch(
        /^command line - expected a command with its options - got .+ - see tankful --help\.\n$/,
      );
    }
    expect(await refused('run', boat, '--dyas', '3')).toContain('Did you mean --days?');
  });
  it('refuses a folder to write into that is a file, and leaves the file', async () => {
    const path = place('taken.txt', 'mine');
    expect(await refused('run', boat, '--no-bands', '--out', path)).toContain(
      'expected a folder to write into',
    );
    expect(readFileSync(path, 'utf8')).toBe('mine');
  });
  it('names the weather file that is missing or unreadable', async () => {
    const path = edited('weather.json', { weather: { kind: 'file', file: 'valley.csv' } });
    expect(await refused('run', path)).toContain(
      `${join(folder, 'valley.csv')} - expected a weather file (CSV text) - got no such file`,
    );
    place('valley.csv', 'nothing,to\nsee,here\n');
    expect(await refused('run', path)).toMatch(/valley\.csv|weather\.file/);
    expect(await refused('run', boat, '--weather', join(folder, 'valley.csv'))).toMatch(/ - expected /);
    expect(existsSync(path)).toBe(true);
  });
});

describe('help', () => {
  it('is no failure', async () => {
    const { code, out } = await tankful('--help');
    expect(code).toBe(0);
    for (const command of ['run', 'check', 'schema']) expect(out).toContain(command);
    expect(await tankful('--version')).toEqual({
      code: 0,
      out: expect.stringMatching(/^\d+\.\d+\.\d+\n$/),
      err: '',
    });
  });
  it('of a command lists its options', async () => {
    const { out } = await tankful('run', '--help');
    for (const option of [
      '--days',
      '--from',
      '--weather',
      '--units',
      '--json',
      '--csv',
      '--out',
      '--plain',
      '--no-bands',
    ]) {
      expect(out).toContain(option);
    }
  });
});
