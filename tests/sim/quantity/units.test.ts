/** The closed list itself: whole, without doubles, and printed as it is read. */
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../sim/quantity/index.ts';
import { findUnit } from '../../../sim/quantity/lookup.ts';
import { printUnits } from '../../../sim/quantity/print-units.ts';
import { tidy } from '../../../sim/quantity/tidy.ts';
import { fromSI, printedSymbol, toSI, type Unit } from '../../../sim/quantity/unit.ts';
import { unitForm } from '../../../sim/quantity/unit-form.ts';
import { type DimensionKey, dimensionKeys, dimensions } from '../../../sim/quantity/units.ts';

const all = dimensionKeys.flatMap((key) =>
  dimensions[key].units.map((unit): [string, DimensionKey, Unit] => [unit.symbol, key, unit]),
);

describe('a unit', () => {
  it.each(all)('%s of %s is found by its symbol, its print and its other writings', (symbol, key, unit) => {
    expect(findUnit(symbol, key)).toBe(unit);
    expect(findUnit(tidy(printedSymbol(symbol)), key)).toBe(unit);
    for (const text of unit.also) expect(findUnit(text, key)).toBe(unit);
  });

  it.each(all)('%s of %s has a factor, and back is back', (_, __, unit) => {
    expect(unit.times / unit.over).toBeGreaterThan(0);
    expect(fromSI(toSI(12.5, unit), unit)).toBeCloseTo(12.5, 9);
  });

  it('has one form in its dimension', () => {
    for (const key of dimensionKeys) {
      const forms = dimensions[key].units.flatMap(({ symbol, also }) => [symbol, ...also]).map(unitForm);
      expect(forms).not.toContain(null);
      expect(new Set(forms).size, key).toBe(forms.length);
    }
  });

  it('has a factor that agrees with the other units of its size', () => {
    // Twelve inches, three feet, 4 qt, 128 fl oz, 60 s, and so on: exact wherever both are in the list.
    const size = (symbol: string, key: DimensionKey) => {
      const read = parseQuantity(symbol, key);
      return read.ok ? read.value : Number.NaN;
    };
    const equal: [string, string, DimensionKey][] = [
      ['1 ft', '12 in', 'length'],
      ['1 yd', '3 ft', 'length'],
      ['1 mi', '5280 ft', 'length'],
      ['1 in', '1000 mil', 'length'],
      ['1 ft2', '144 in2', 'area'],
      ['1 ft3', '1728 in3', 'volume'],
      ['1 gal', '231 in3', 'volume'],
      ['1 gal', '4 qt', 'volume'],
      ['1 gal', '128 fl oz', 'volume'],
      ['1 lb', '16 oz', 'mass'],
      ['1 gpm', '60 gal/h', 'flow'],
      ['1 gpm', '1440 gal/day', 'flow'],
      ['60 L/min', '1 L/s', 'flow'],
      ['1 ft of water', '12 in of water', 'pressure'],
      ['1 bar', '100 kPa', 'pressure'],
      ['1 kBtu', '1000 Btu', 'energy'],
      ['1 kWh', '3.6 MJ', 'energy'],
      ['1 kBtu/h', '1000 Btu/h', 'power'],
      ['1 Btu/(h ft F)', '12 Btu in/(h ft2 F)', 'conductivity'],
      ['1 kg/L', '1 g/cm3', 'density'],
      ['1 lb/gal', '7.480519480519481 lb/ft3', 'density'], // 1728 / 231
      ['1°', "60'", 'angle'],
    ];
    for (const [a, b, key] of equal) expect(size(a, key) / size(b, key), `${a} = ${b}`).toBeCloseTo(1, 12);
  });
});

describe('a dimension', () => {
  it.each(dimensionKeys)('%s has a name with its article and an example that is read', (key) => {
    const { name, example, si } = dimensions[key];
    expect(name).toMatch(/^an? [a-z' ]+$/);
    expect(si).not.toBe('');
    expect(parseQuantity(example, key)).toMatchObject({ ok: true });
  });

  it.each(dimensionKeys)(
    '%s is printed in units of its list, small before large, in the system asked for',
    (key) => {
      for (const system of ['US', 'SI'] as const) {
        const steps = printUnits[key][system];
        const found = steps.map(([symbol]) => findUnit(symbol, key));
        expect(found).not.toContain(null);
        const ends = steps.map(([, below]) => below ?? Number.POSITIVE_INFINITY);
        expect(ends).toEqual([...ends].sort((a, b) => a - b));
        if (steps.length > 0) expect(ends[ends.length - 1]).toBe(Number.POSITIVE_INFINITY);
      }
    },
  );

  it('has chains of its own units, each smaller than the one before by a whole number', () => {
    for (const key of dimensionKeys) {
      for (const chain of dimensions[key].chains) {
        const sizes = chain.map((symbol) => toSI(1, findUnit(symbol, key) as Unit));
        for (let i = 1; i < sizes.length; i++) {
          const ratio = sizes[i - 1] / sizes[i];
          expect(ratio).toBeGreaterThan(1);
          expect(ratio).toBeCloseTo(Math.round(ratio), 9);
        }
      }
    }
  });
});
