import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { toteScenario } from '../../sim/answers/scenarios.ts';
import { tankful } from './fake-terminal.ts';

const scenarios = fileURLToPath(new URL('../../../scenarios/', import.meta.url));
const demo = join(scenarios, 'demo.json');

let folder = '';
let tote = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tankful-coil-'));
  tote = place('tote.json', toteScenario());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function place(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(content));
  return path;
}

const flags = {
  '--tube': '3/8 in refrigeration',
  '--length': '50 ft',
  '--flow': '2 gpm',
  '--tank': '140 F',
  '--cold': '45 F',
};
const bare = (over: Record<string, string | undefined> = {}) =>
  Object.entries({ ...flags, ...over }).flatMap(([flag, value]) =>
    value === undefined ? [] : [flag, value],
  );

async function json(...words: string[]) {
  const { code, out, err } = await tankful('coil', ...words, '--json');
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out);
}

describe('tankful coil without a file', () => {
  it('prints the steady coil under its plain keys', async () => {
    const told = await json(...bare());
    for (const key of [
      ...['outlet_C', 'effectiveness', 'UA_W_K', 'pressure_drop_kPa', 'velocity_m_s', 'heat_W'],
      ...['content_m3', 'mass_kg'],
    ]) {
      expect(Number.isFinite(told[key]), key).toBe(true);
    }
    // Definitions: what the keys say must fit together. 2 gpm are 125.2 g/s of water at 40 C.
    expect(told.effectiveness).toBeCloseTo((told.outlet_C - 13 / 1.8) / (60 - 13 / 1.8), 9);
    expect(Math.abs(told.heat_W / (0.1252 * 4182 * (told.outlet_C - 13 / 1.8)) - 1)).toBeLessThan(0.005);
    expect(told.velocity_m_s / 0.3048).toBeCloseTo(8.4, 1);
    expect(told.charging).toBeUndefined();
  });

  it('says it in a sentence with its band, with the reason, a table, a curve and what would change it', async () => {
    const { code, out, err } = await tankful('coil', ...bare());
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /The store must be at \d+ °F \(\d+ to \d+ °F\) or warmer for a shower of 105 °F\s+with\s+what\s+the\s+pump\s+gives/,
    );
    expect(out).toMatch(/The pump is the limit: it pushes only [\d.]+ gpm/);
    expect(out).toMatch(/>\s+3\/8 in refrigeration, 1x50 ft/);
    expect(out).toMatch(/What would change it most \(store\)\n {2}outside film/);
    expect(out).toContain('Measure first: Coil outlet test');
    expect(out).toContain('Two tubes go by this size: 3/8 in refrigeration');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  });

  it('says what burns and what it takes for granted, and speaks of no scenario that was not given', async () => {
    const { out } = await tankful('coil', ...bare({ '--tank': '200 F', '--flow': '0.5 gpm' }));
    const said = out.replace(/\s+/g, ' ');
    expect(said).toMatch(/Danger: Scalding water\..* 5 s at 140 °F, 1 s at 155 °F/);
    expect(said).toContain('A mixing valve set to 120 °F is assumed');
    expect(said).toContain('With a store of 200 °F throughout and a mixing valve set to 120 °F the hot line');
    expect(said).not.toContain('scenario starts');
    expect(said).toContain('Local code and licensed practice decide');
  });

  it('says that a flow beyond the pump cannot be', async () => {
    const { out } = await tankful('coil', ...bare({ '--length': '200 ft', '--flow': '2.5 gpm' }));
    expect(out.replace(/\s+/g, ' ')).toMatch(/At 2\.5 gpm the coil alone takes [^;]*that flow cannot be/);
  });

  it('marks a coil that needs the store hotter than its tube is rated for', async () => {
    const { out } = await tankful('coil', ...bare());
    // PEX is rated to 180 °F; copper to far more.
    const marked = out.split('\n').filter((line) => / PEX, .* ! /.test(line));
    expect(marked.length).toBeGreaterThan(0);
    for (const line of marked) expect(Number(/! +(\d+)/.exec(line)?.[1])).toBeGreaterThan(180);
    expect(out).not.toMatch(/in refrigeration, 2x50 ft[^\n]*!/);
  });

  it('speaks SI when asked, and ASCII when plain', async () => {
    const { out } = await tankful('coil', ...bare(), '--units', 'si', '--plain');
    expect(out).toMatch(/The store must be at \d+ C \(\d+ to \d+ C\)/);
    expect(out).toMatch(/^[\n\x20-\x7e]+$/);
  });

  it('prints every coil one could buy as CSV, units in its head, commas quoted', async () => {
    const { out } = await tankful('coil', ...bare(), '--csv');
    const [head, ...rows] = out.trimEnd().split('\n');
    expect(head).toContain('lowest_tank (F)');
    expect(head).toContain('price ($)');
    expect(rows.length).toBeGreaterThan(50);
    expect(rows.some((row) => row.startsWith('"3/8 in plumbing tube, type L",'))).toBe(true);
    for (const row of rows) {
      expect(row.replace(/"[^"]*"/, 'tube').split(',')).toHaveLength(head.split(',').length);
    }
  });

  it('takes rolls, their join and the shower wanted', async () => {
    const one = await json(...bare());
    const two = await json(...bare({ '--rolls': '2', '--join': 'parallel', '--wanted': '100 F' }));
    expect(two.outlet_C).toBeGreaterThan(one.outlet_C);
    expect(two.velocity_m_s).toBeCloseTo(one.velocity_m_s / 2, 2);
    expect(two.facts.wanted_C.value).toBeCloseTo(68 / 1.8, 9);
  });

  it.each([
    [
      { '--tube': '3/8' },
      /^--tube - expected a size and what tube .* - got "3\/8" - say which: refrigeration/,
    ],
    [{ '--tube': '9/16 refrigeration' }, /^--tube - expected a size of refrigeration tube: .*3\/8 in/],
    [{ '--length': '50 psi' }, /^--length - expected a length/],
    [{ '--flow': '0 gpm' }, /^--flow - expected .* to .* - got "0 gpm"/],
    [{ '--tank': '400 F' }, /^--tank - expected 32 °F to 212 °F - got "400 F"/],
    [{ '--cold': '-5 F' }, /^--cold - expected/],
    [
      { '--tank': '40 F', '--cold': '60 F' },
      /^--tank - expected a store warmer than the cold water of 60 °F \(15\.6 °C\).* - got 40 °F .* - ask/,
    ],
    [
      { '--tube': '1/4 in refrigeration', '--length': '500 ft', '--flow': '8 gpm' },
      /^--flow - expected a flow that this coil stands: .*psi.* - got 8 gpm .*psi.* - ask about less flow/,
    ],
    [{ '--rolls': '2' }, /^--join - expected "series" or "parallel"/],
    [{ '--rolls': 'two' }, /^--rolls - expected a whole number of rolls/],
    [{ '--join': 'sideways', '--rolls': '2' }, /^--join - expected .* - got "sideways"/],
    [{ '--spacing': 'tight' }, /^--spacing - expected/],
    [{ '--turns': '1 in' }, /^--turns - expected/],
    [
      { '--flow': undefined },
      /^command line - expected a scenario file, or --tube.* - got nothing for --flow/,
    ],
    [{ '--units': 'metric' }, /^--units - expected us or si/],
  ])('refuses %j by the name of its option', async (over, message) => {
    const { code, out, err } = await tankful('coil', ...bare(over));
    expect(err).toMatch(message);
    expect([code, out]).toEqual([2, '']);
  });

  it('asks for its options, or a file, when it gets neither', async () => {
    const { code, err } = await tankful('coil');
    expect(code).toBe(2);
    expect(err).toMatch(/got none of them - as in: tankful coil --tube/);
  });

  it('refuses JSON and CSV at once', async () => {
    expect((await tankful('coil', ...bare(), '--json', '--csv')).err).toMatch(
      /expected one of --json, --csv/,
    );
  });
});

describe('tankful coil FILE', () => {
  it('tells of the household’s coil and of the engine’s', async () => {
    const { code, out } = await tankful('coil', demo);
    expect(code).toBe(0);
    expect(out).toContain('The household coil');
    expect(out).toMatch(
      /The engine’s coil\nAt 4 kW all the engine’s heat fits into the store until it is at/,
    );
  });

  it('carries both answers in its JSON', async () => {
    const told = await json(tote);
    expect([told.name, told.key, told.charging.key]).toEqual(['tote for tests', 'coil', 'charging']);
    expect(told.outlet_C).toBe(told.facts.outlet_C.value);
    expect(told.pressure_drop_kPa).toBeCloseTo(told.facts.pressure_drop_Pa.value / 1000, 9);
  });

  it('tries another coil, store, cold and shower in the file’s place', async () => {
    const [usual, long, warm, thin, thrifty] = await Promise.all([
      json(tote),
      json(tote, '--length', '60 ft'),
      json(tote, '--cold', '60 F', '--tank', '150 F'),
      json(tote, '--tube', '1/2 in plumbing L', '--rolls', '1'),
      json(tote, '--flow', '1.2 gpm', '--wanted', '100 F'),
    ]);
    const lowest = (told: typeof usual) => told.facts.lowest_tank_C.value;
    expect(lowest(long)).toBeLessThan(lowest(usual));
    expect([warm.facts.cold_C.value, warm.facts.tank_C.value].map(Math.round)).toEqual([16, 66]);
    expect(thin.tables.joined.rows[0][0]).toBe('1/2 in plumbing tube, type L');
    expect(lowest(thrifty)).toBeLessThan(lowest(usual));
  });

  it('tells of the engine alone where nobody draws', async () => {
    const { taps: _, ...none } = toteScenario();
    const told = await json(place('engine.json', none));
    expect(told.key).toBe('charging');
    const { err } = await tankful('coil', place('engine.json', none), '--tube', '1/2 PEX');
    expect(err).toMatch(/^--tube - expected a scenario with a household - got none/);
  });

  it('refuses a file with neither, and a shower’s option where none is named', async () => {
    const { taps: _, engine: __, coils: ___, ...none } = toteScenario();
    const { code, err } = await tankful('coil', place('none.json', none));
    expect([code, err]).toEqual([2, expect.stringMatching(/^taps, engine - expected .* - got neither/)]);
    const unnamed = place('unnamed.json', toteScenario({ taps: { coil: 'household' } }));
    expect((await tankful('coil', unnamed, '--flow', '1 gpm')).err).toMatch(
      /^--flow - expected .* names showers/,
    );
  });
});
