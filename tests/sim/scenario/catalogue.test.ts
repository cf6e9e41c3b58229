import { describe, expect, it } from 'vitest';
import { problemsOf } from '../../../sim/scenario/check.ts';
import { describeDefaults, fieldEntries, problemLine } from '../../../sim/scenario/index.ts';
import { readText } from '../../../sim/scenario/read-field.ts';
import { readNumberText } from '../../../sim/scenario/read-number.ts';

const entries = fieldEntries();
const quantities = entries.flatMap(({ path, field }) => (field.kind === 'quantity' ? [{ path, field }] : []));

function value(field: (typeof quantities)[number]['field'], text: string): number {
  const read = readText(field, text);
  if (!read.ok) throw new Error(`${text}: ${read.expected}, ${read.fix}`);
  return read.value as number;
}

describe('the catalogue', () => {
  it('has each path once, and well over a hundred', () => {
    expect(entries.length).toBeGreaterThan(150);
    expect(new Set(entries.map(({ path }) => path)).size).toBe(entries.length);
  });

  it('labels every field', () => {
    expect(entries.filter(({ field }) => field.label.trim() === '')).toEqual([]);
  });

  it.each(quantities.map(({ path, field }) => [path, field] as const))(
    '%s reads its own example',
    (_, field) => {
      expect(Number.isFinite(value(field, field.example))).toBe(true);
      expect(field.range[0]).toBeLessThan(field.range[1]);
    },
  );

  it('reads every default it names', () => {
    const wrong = entries.flatMap(({ path, field }) => {
      if (field.presence.need !== 'default') return [];
      return problemsOf(field, field.presence.value).map((problem) => `${path}: ${problemLine(problem)}`);
    });
    expect(wrong).toEqual([]);
  });

  it('has bands that rise and hold their default', () => {
    const banded = quantities.filter(({ field }) => field.band);
    expect(banded.length).toBeGreaterThan(30);
    for (const { path, field } of banded) {
      const [low, high] = (field.band ?? []).map((text) => value(field, text));
      expect(low, path).toBeLessThan(high);
      if (field.presence.need !== 'default') continue;
      const at = value(field, field.presence.value as string);
      expect(at, path).toBeGreaterThanOrEqual(low);
      expect(at, path).toBeLessThanOrEqual(high);
    }
  });

  it('has number bands that rise, lie in range and hold their default', () => {
    for (const { path, field } of entries) {
      if (field.kind !== 'number' || !field.band) continue;
      const [low, high] = field.band.map((end) => {
        const read = readNumberText(field, end);
        if (!read.ok) throw new Error(`${path}: ${read.fix}`);
        return read.value;
      });
      expect(low, path).toBeLessThan(high);
      expect(low, path).toBeGreaterThanOrEqual(field.range[0]);
      expect(high, path).toBeLessThanOrEqual(field.range[1]);
      if (field.presence.need === 'default') {
        expect(field.presence.value, path).toBeGreaterThanOrEqual(low);
        expect(field.presence.value, path).toBeLessThanOrEqual(high);
      }
    }
  });
});

describe('the described defaults', () => {
  const described = describeDefaults();

  it('all have a value or rule, a source and a grade', () => {
    expect(described.length).toBeGreaterThan(80);
    for (const { path, value: text, source, grade } of described) {
      expect(text.trim(), path).not.toBe('');
      expect(source.length, path).toBeGreaterThan(3);
      expect(['A', 'B', 'C', 'D', 'invented'], path).toContain(grade);
    }
  });

  // trade.md 3 and physics.md name these as the defaults and bands to apply.
  it.each([
    ['store.bridges', '1.5', ['1.1', '2.5']],
    ['engine.thermostat', '180 F', ['160 F', '195 F']],
    ['engine.jacket_share', '25 % diesel, 28 % otherwise', ['18 %', '33 %']],
    ['coils[].outside_film', '0.8', ['0.5', '1.2']],
    ['coils[].bundling', '0.5 touching, 0.75 finger gap, 0.9 spread', null],
    ['taps.showers[].flow', '1.75 gpm', ['1.25 gpm', '2.5 gpm']],
    ['taps.showers[].lasts', '8 min', ['5 min', '12 min']],
    ['taps.showers[].temperature', '105 F', ['100 F', '108 F']],
    ['collector.on', '8 K', null],
    ['collector.off', '4 K', null],
  ])('%s is %s', (path, text, band) => {
    expect(described.find((d) => d.path === path)).toMatchObject({ value: text, band });
  });
});
