import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { glossary } from '../../../sim/index.ts';
import {
  cautionWords,
  channelWords,
  eventLabel,
  eventWords,
  figureGroups,
  figureWords,
  ledgerWords,
} from '../../../ui/words/index.ts';

const keysOf = (of: 'figure' | 'channel' | 'path') =>
  glossary
    .filter((entry) => entry.of === of)
    .map(({ key }) => key)
    .sort();

const source = (path: string) => readFileSync(new URL(`../../../sim/${path}`, import.meta.url), 'utf8');
const found = (text: string, pattern: RegExp) =>
  [...new Set(Array.from(text.matchAll(pattern), ([, key]) => key))].sort();

describe('words and glossary', () => {
  it('name the same figures', () => {
    expect(Object.keys(figureWords).sort()).toEqual(keysOf('figure'));
  });
  it('name the same channels', () => {
    expect(Object.keys(channelWords).sort()).toEqual(keysOf('channel'));
  });
  it('name the same ledger paths', () => {
    expect(Object.keys(ledgerWords).sort()).toEqual(keysOf('path'));
  });
  it('put a figure into every group', () => {
    const used = new Set(Object.values(figureWords).map(({ group }) => group));
    expect([...used].sort()).toEqual(Object.keys(figureGroups).sort());
  });
  it('say no two figures alike', () => {
    const labels = Object.values(figureWords).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});

describe('words and the engine room', () => {
  it('cover every caution a run can give, beside the same figure', () => {
    const text = source('run/cautions.ts');
    const given = Array.from(
      text.matchAll(/add\(\s*'(\w+)',[^,]+?(?:,\s*'(\w+)')?[,)]/g),
      ([, key, figure]) => ({
        key,
        figure: figure ?? null,
      }),
    );
    expect(given.length).toBeGreaterThan(15);
    for (const { key, figure } of given) {
      expect(cautionWords, key).toHaveProperty(key);
      expect(cautionWords[key as keyof typeof cautionWords].figure, key).toBe(figure);
    }
    for (const kind of ['liner', 'foam', 'wall'] as const) {
      expect(cautionWords[`${kind}_limit`].figure).toBe(`${kind}_C_max`);
    }
  });

  it('cover every event a run can log', () => {
    const texts = source('plant/watch.ts') + source('run/simulation.ts') + source('run/play-faults.ts');
    const names = found(texts, /'((?:engine|collector|store|cistern|taps|fault|spell)\.[a-z_.]+)'/g);
    expect(names.length).toBeGreaterThan(8);
    expect(Object.keys(eventWords).sort()).toEqual(names);
  });
});

it('eventLabel shows an event without words by its name', () => {
  expect(eventLabel('engine.start')).toBe('started');
  expect(eventLabel('moon.rose')).toBe('moon.rose');
});
