import { describe, expect, it } from 'vitest';
import {
  type FilledDefault,
  fieldEntries,
  type OutlineEntry,
  type OutlineNode,
  outlineOf,
  readScenario,
  type Scenario,
} from '../../../../sim/scenario/index.ts';
import { soundFiles, textOf } from '../files.ts';
import { randomScenario } from '../random-scenario.ts';
import { nodesOf } from './nodes.ts';

const demo = JSON.parse(textOf('demo.json')) as Scenario;
const PARTS = ['site', 'weather', 'run', 'store', 'coils', 'engine', 'collector', 'supply', 'taps', 'prices'];

function filledOf(json: unknown): FilledDefault[] {
  const read = readScenario(json);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.filled;
}

function outline(path: string, json: unknown = demo): OutlineNode {
  const found = outlineOf(json, path, filledOf(json));
  if (!found) throw new Error(path);
  return found;
}

function entry(path: string, json: unknown = demo): OutlineEntry {
  const found = outlineOf(json, path, filledOf(json));
  if (found?.kind !== 'entry') throw new Error(path);
  return found;
}

/** The value at a path of the file, by plain reading of the path. */
function inFile(json: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter(Boolean)
    .reduce((at: unknown, step) => (at as Record<string, unknown> | undefined)?.[step], json);
}

describe('an outline', () => {
  it('holds every value of the file, as it stands there', () => {
    const leaves = (value: unknown, path: string): [string, unknown][] =>
      typeof value === 'object' && value !== null
        ? Object.entries(value).flatMap(([key, each]) =>
            leaves(each, Array.isArray(value) ? `${path}[${key}]` : `${path}.${key}`),
          )
        : [[path, value]];
    for (const file of soundFiles().filter((name) => name !== 'weather.json')) {
      const json = JSON.parse(textOf(file)) as Record<string, unknown>;
      const nodes = PARTS.flatMap((part) => nodesOf(outlineOf(json, part)));
      const entries = new Map(nodes.filter(({ kind }) => kind === 'entry').map((node) => [node.path, node]));
      for (const [path, value] of PARTS.flatMap((part) => leaves(json[part], part))) {
        if (value === undefined) continue;
        expect(entries.get(path), `${file} ${path}`).toMatchObject({ given: true, value });
      }
    }
  });

  it('has the fields of the catalogue, and no others', () => {
    const known = new Set(fieldEntries().map(({ path }) => path.replace(/\([^)]*\)/g, '')));
    const seen = PARTS.flatMap((part) => nodesOf(outline(part)))
      .filter((node) => node.kind === 'entry' && node.decides === null)
      .map(({ path }) => path.replace(/\[\d+\]/g, '[]'));
    expect(seen.filter((path) => !known.has(path))).toEqual([]);
    expect(seen).toContain('collector.pipes.outdoor_share');
  });

  it('of random plants tells each value that the reading filled in as assumed', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const json = randomScenario(seed);
      const filled = filledOf(json);
      const nodes = PARTS.flatMap((part) => nodesOf(outlineOf(json, part, filled)));
      const byPath = new Map(nodes.map((node) => [node.path, node]));
      for (const { path, source, grade } of filled.filter((each) => !each.path.startsWith('backup'))) {
        expect(byPath.get(path), `${seed} ${path}`).toMatchObject({
          given: false,
          assumed: { source, grade },
        });
      }
      for (const node of nodes.filter(({ given }) => given))
        expect(node.assumed, `${seed} ${node.path}`).toBeNull();
      for (const node of nodes) expect(node.given).toBe(inFile(json, node.path) !== undefined);
    }
  });

  it('knows plain defaults before anything was read, and what others follow from', () => {
    const unread = (path: string) => outlineOf(demo, path);
    expect(unread('store.bridges')).toMatchObject({ value: 1.5, assumed: { grade: 'D' } });
    expect(unread('collector.ceiling')).toMatchObject({
      value: undefined,
      assumed: { how: '180 C flat plate, 250 C tubes' },
    });
  });

  it('hands a whole’s default on to its parts', () => {
    // The engine's shed is at 50 F, where surroundings of others are at 55 F.
    expect(entry('engine.stands.temperature')).toMatchObject({ value: '50 F', given: false });
    expect(nodesOf(outline('engine.stands'))[1]).toMatchObject({ value: 'room', decides: 'where' });
    expect(entry('taps.mixing_valve.fitted', { ...demo, taps: { coil: 'household' } })).toMatchObject({
      value: true,
      assumed: { grade: 'A' },
    });
  });

  it('offers the coils of the file to those who flow through one', () => {
    expect(entry('engine.coil').field).toMatchObject({
      kind: 'choice',
      choices: ['household', 'engine', 'collector'],
    });
  });

  it('leaves a thing that is not there empty, and says what its absence means', () => {
    expect(outline('backup')).toMatchObject({ kind: 'group', nodes: [], absent: 'no backup heater' });
    expect(outline('taps.pattern')).toMatchObject({ nodes: [], absent: 'no published pattern' });
    expect(outlineOf(demo, 'coils[9]')).toBeNull();
    expect(outlineOf(demo, 'store.colour')).toBeNull();
  });

  it('bears any JSON at all', () => {
    for (const json of [null, 5, 'text', [], { store: 7 }, { store: { inside: [] } }, { coils: { '0': 1 } }])
      for (const part of PARTS) expect(() => nodesOf(outlineOf(json, part))).not.toThrow();
    expect(outlineOf({ store: { water_depth: 5 } }, 'store.water_depth')).toMatchObject({ value: 5 });
  });
});
