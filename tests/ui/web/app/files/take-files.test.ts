import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../../../../scripts/build.mjs';
import { problemLine, type Scenario } from '../../../../../sim/index.ts';
import type { FileLike } from '../../../../../ui/web/app/files/read-text.ts';
import { mostFiles, takeFiles } from '../../../../../ui/web/app/files/take-files.ts';
import { scenario, setUp } from '../held-page.ts';

const scenarioText = (name: string) => readFileSync(join(root, 'scenarios', name), 'utf8');
const weather = 'time (start),air (C),sun (W/m2)\n2027-01-01 00:00,1,0\n';
const log = 'time,top (F)\n2027-01-09 21:00,140\n';
const named = { ...scenario, name: 'named', weather: { kind: 'file', file: 'valley.csv' } };

function file(name: string, text: string): FileLike {
  const data = new TextEncoder().encode(text);
  return { name, size: data.length, arrayBuffer: async () => data.buffer };
}

/** Takes files while the worker finds the designs in them sound. */
async function take(files: FileLike[], stand = setUp()) {
  const taking = takeFiles(stand.page, files);
  const before = stand.runs.length;
  for (let turn = 0; turn < 50; turn++) {
    await Promise.resolve();
    await new Promise((done) => setTimeout(done, 0));
    if (stand.runs.length > before && stand.last().scenario !== stand.get().design.scenario) stand.read();
  }
  return { ...stand, taken: await taking };
}

describe('a design in a file', () => {
  it('becomes a new design', async () => {
    const { taken, get } = await take([file('boat.json', scenarioText('boat.json'))]);
    expect(taken).toEqual([{ name: 'boat.json', as: 'design', problems: [], encoding: null }]);
    expect(get().design).toMatchObject({ id: 'own', scenario: JSON.parse(scenarioText('boat.json')) });
  });

  it('is called by its file where it has no name, and known by its text where its name says nothing', async () => {
    const { name: _, ...nameless } = scenario as Scenario & { name: string };
    const { get } = await take([file('my tank.txt', JSON.stringify(nameless))]);
    expect(get().design.name).toBe('my tank');
  });

  it('brings along the weather that it names, when both are dropped', async () => {
    const { taken, get, attached } = await take([
      file('valley.csv', weather),
      file('other.csv', log),
      file('named.json', JSON.stringify(named)),
    ]);
    expect(taken.map(({ name, as }) => [name, as])).toEqual([
      ['named.json', 'design'],
      ['valley.csv', 'weather'],
      ['other.csv', 'log'],
    ]);
    expect(get().design.attached).toEqual({ 'valley.csv': weather });
    expect(attached.at(-1)).toEqual({ 'valley.csv': weather });
    expect(get().log).toEqual({ name: 'other.csv', text: log });
  });

  it.each([
    ['no.json', '{ "format": "tankful", }', 'no.json: line 1, column 24'],
    ['other.json', '{ "format": "other", "version": 1 }', 'other.json: format'],
    ['newer.json', '{ "format": "tankful", "version": 9 }', 'newer.json: version'],
    ['list.json', '[]', 'list.json'],
    ['words.json', 'to my friend', 'words.json: line 1, column 1'],
    ['deep.json', '['.repeat(100_000), 'deep.json: line 1, column 42'],
    ['huge.json', '{"format":"tankful","version":1e400}', 'huge.json: version'],
    ['own.json', '{"__proto__":{"format":"tankful","version":1}}', 'own.json: format'],
  ])('is refused as %s, and the page stays as it was', async (name, text, where) => {
    const stand = setUp();
    const before = stand.get().design;
    const { taken, get } = await take([file(name, text)], stand);
    expect(taken[0].as).toBe('refused');
    expect(problemLine(taken[0].problems[0])).toContain(
      where.replace('no.json: format', 'other.json: format'),
    );
    expect(get().design).toBe(before);
    expect(Object.prototype).not.toHaveProperty('format');
  });
});

describe('weather in a file', () => {
  it('goes into the design that stands in the page, its text with it', async () => {
    const { taken, get, attached } = await take([file('valley.csv', weather)]);
    expect(taken[0]).toMatchObject({ as: 'weather', problems: [] });
    expect(get().design.scenario).toMatchObject({ weather: { kind: 'file', file: 'valley.csv' } });
    expect(get().design.attached).toEqual({ 'valley.csv': weather });
    expect(attached.at(-1)).toEqual({ 'valley.csv': weather });
  });

  it('takes no other text’s place: one of the same name gets another', async () => {
    const stand = setUp();
    await take([file('valley.csv', weather)], stand);
    await take([file('valley.csv', `${weather}2027-01-01 01:00,2,0\n`)], stand);
    expect(Object.keys(stand.get().design.attached ?? {})).toEqual(['valley.csv', 'valley-2.csv']);
    expect(stand.get().design.scenario).toMatchObject({ weather: { file: 'valley-2.csv' } });
    await take([file('valley.csv', weather)], stand);
    expect(stand.get().design.scenario).toMatchObject({ weather: { file: 'valley.csv' } });
  });

  it('keeps what the design says of the rest of the year', async () => {
    const stand = setUp();
    stand.page.commit([{ path: 'weather', value: { kind: 'file', file: 'old.csv', rest: 'cloudy' } }], 'x');
    await take([file('new.csv', weather)], stand);
    expect(stand.get().design.scenario).toMatchObject({
      weather: { kind: 'file', file: 'new.csv', rest: 'cloudy' },
    });
  });

  it('is told to be kept out of a design that may not be changed here', async () => {
    const stand = setUp();
    stand.page.store.set({ readOnly: true });
    const { taken } = await take([file('valley.csv', weather)], stand);
    expect(taken[0].as).toBe('kept');
  });
});

describe('other files', () => {
  it('are refused with what they begin with and what would be read', async () => {
    const { taken } = await take([file('notes.txt', `${'words '.repeat(50)}\n`)]);
    expect(taken[0].as).toBe('refused');
    expect(problemLine(taken[0].problems[0])).toMatch(/^notes\.txt - .*"words words.*…".*time,air/);
  });

  it('are looked at up to so many', async () => {
    const many = Array.from({ length: mostFiles + 5 }, (_, i) => file(`${i}.txt`, 'x'));
    expect((await take(many)).taken).toHaveLength(mostFiles);
  });
});
