import { describe, expect, it } from 'vitest';
import { type GlossaryEntry, glossary } from '../../../sim/quantity/index.ts';
import { dimensions } from '../../../sim/quantity/units.ts';

const named = glossary.map((entry): [string, GlossaryEntry] => [`${entry.of} ${entry.key}`, entry]);

/** SI unit that ends a name, and the dimensions whose values it suits. */
const unitInName: [RegExp, readonly string[]][] = [
  [/_C(_|$)/, ['temperature']],
  [/_J(_|$)/, ['energy', 'electric_energy']],
  [/_W$/, ['power']],
  [/_W_m2$/, ['irradiance']],
  [/_m_s(_|$)/, ['speed']],
  [/_m3_s(_|$)/, ['flow']],
  [/_m3$/, ['volume']],
  [/_kg$/, ['mass']],
  [/_Pa(_|$)/, ['pressure']],
  [/_m(_end)?$/, ['length']],
  [/_s$/, ['time']],
  [/_share$/, ['share']],
];

describe('the glossary', () => {
  it('names each thing once among its kind', () => {
    for (const of of ['channel', 'path', 'figure']) {
      const keys = glossary.filter((entry) => entry.of === of).map(({ key }) => key);
      expect(keys.length).toBeGreaterThan(15);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it('has no key in two kinds, so that one key is one thing', () => {
    expect(new Set(glossary.map(({ key }) => key)).size).toBe(glossary.length);
  });

  it('gives each of a kind its own symbol', () => {
    const symbols = glossary.map(({ of, symbol }) => `${of} ${symbol}`);
    expect(new Set(symbols).size).toBe(symbols.length);
  });

  describe.each(named)('%s', (_, entry) => {
    it('has a key, a symbol, a dimension of the closed list and digits', () => {
      expect(entry.key).toMatch(/^[a-z]+[a-zA-Z0-9]*(_[A-Za-z0-9]+)*$/);
      expect(entry.symbol).toMatch(/^[A-Za-z]+(_[a-z]+(,[a-z]+)?)?$/);
      expect(Object.keys(dimensions)).toContain(entry.dimension);
      expect(entry.digits).toBeGreaterThanOrEqual(2);
    });

    it('has a meaning in plain words', () => {
      expect(entry.meaning).toMatch(/^[a-z0-9]/);
      expect(entry.meaning).not.toMatch(/[.:_]$|_/);
      expect(entry.meaning.split(' ').length).toBeGreaterThanOrEqual(2);
    });

    it('has a range from low to high', () => {
      const [low, high] = entry.range;
      expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
      expect(low).toBeLessThan(high);
    });

    it('has the dimension that its name speaks of', () => {
      const suits = unitInName.find(([pattern]) => pattern.test(entry.key))?.[1];
      if (suits) expect(suits).toContain(entry.dimension);
      else expect(entry.of === 'path' ? 'energy' : 'count').toBe(entry.dimension);
    });
  });
});
