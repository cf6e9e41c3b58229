/** What holds for any text and any number. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DimensionKey,
  formatBoth,
  formatQuantity,
  formatTape,
  parseQuantity,
} from '../../../sim/quantity/index.ts';
import { printedSymbol } from '../../../sim/quantity/unit.ts';
import { dimensionKeys, dimensions } from '../../../sim/quantity/units.ts';

const key = fc.constantFrom(...dimensionKeys);
const system = fc.constantFrom('US' as const, 'SI' as const);

/** Texts made of what quantities are made of, so that they come near to what is read. */
const pieces = [
  ...'0123456789',
  ...[
    '.',
    ',',
    '-',
    '−',
    '+',
    '/',
    ' ',
    '\u00a0',
    '½',
    '²',
    '⁻¹',
    '°',
    "'",
    '"',
    '(',
    ')',
    '^',
    '·',
    '%',
    'e',
    ':',
  ],
  ...[
    'R-',
    'per ',
    'of ',
    'deg ',
    'sq ',
    'cubic ',
    'am',
    'N',
    'W',
    'east',
    '__proto__',
    'NaN',
    'to',
    '\ud83d',
  ],
  ...dimensionKeys.flatMap((name) => dimensions[name].units.map(({ symbol }) => symbol)),
];
const nearlyQuantity = fc.array(fc.constantFrom(...pieces), { maxLength: 14 }).map((parts) => parts.join(''));
const anyText = fc.oneof(
  nearlyQuantity,
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary', maxLength: 300 }),
);

function spellingsOf(name: DimensionKey): string[] {
  return dimensions[name].units.flatMap(({ symbol, also }) => [symbol, printedSymbol(symbol), ...also]);
}

describe('parseQuantity', () => {
  it('never throws, and answers with a finite value or a whole refusal', () => {
    fc.assert(
      fc.property(anyText, key, (text, dimension) => {
        const read = parseQuantity(text, dimension);
        if (read.ok) return Number.isFinite(read.value);
        return [read.expected, read.got, read.fix].every((part) => part.length > 0 && part.length < 400);
      }),
      { numRuns: 10_000 },
    );
  });

  it('echoes what it understood so that it reads the same', () => {
    const number = fc.oneof(
      fc.double({ min: 0, max: 1e9, noNaN: true }).map(String),
      fc.tuple(fc.nat(99), fc.nat(14)).map(([whole, above]) => `${whole} ${above + 1}/16`),
      fc.tuple(fc.nat(8), fc.nat(90)).map(([above, below]) => `${above + 1}/${below + 1}`),
    );
    const unit = key.chain((name) => fc.tuple(fc.constant(name), fc.constantFrom('', ...spellingsOf(name))));
    const blank = fc.constantFrom('', ' ', '\u00a0');
    fc.assert(
      fc.property(
        fc.constantFrom('', '-', '−'),
        number,
        blank,
        unit,
        (sign, written, gap, [name, symbol]) => {
          const read = parseQuantity(`${sign}${written}${gap}${symbol}`, name);
          if (!read.ok) return;
          expect(parseQuantity(read.echo, name)).toMatchObject({ ok: true, value: read.value });
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('reads every unit as its factor says', () => {
    const number = fc.oneof(
      fc.integer({ min: -1e6, max: 1e6 }),
      fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
    );
    const unit = fc.constantFrom(
      ...dimensionKeys
        .filter((name) => name !== 'temperature')
        .flatMap((name) => dimensions[name].units.map((unit) => ({ name, unit }))),
    );
    fc.assert(
      fc.property(number, unit, (written, { name, unit: { symbol, times, over } }) => {
        const place = { latitude: 90, longitude: 180 }[name as string];
        fc.pre(place === undefined || (Math.abs(written) <= place && symbol === 'deg'));
        const read = parseQuantity(`${written} ${symbol}`, name);
        const SI = (written * times) / over;
        return read.ok && Math.abs(read.value - SI) <= 1e-12 * Math.abs(SI);
      }),
      { numRuns: 5000 },
    );
  });

  it('is not moved by case, where case does not matter, nor by blanks', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        fc.constantFrom('gal', 'gpm', 'psi', 'Btu/h', 'F', 'ft', 'in'),
        fc.constantFrom('', ' ', '\u00a0', '  '),
        (number, symbol, blank) => {
          const name = dimensionKeys.find((k) => parseQuantity(`1 ${symbol}`, k).ok) ?? 'length';
          expect(parseQuantity(`${number}${blank}${symbol.toUpperCase()}`, name)).toEqual(
            parseQuantity(`${number} ${symbol}`, name),
          );
        },
      ),
    );
  });
});

/** Values a plant has, and some it has not. */
function plausible(name: string): fc.Arbitrary<number> {
  if (name === 'temperature') return fc.double({ min: -200, max: 1000, noNaN: true });
  if (name === 'latitude') return fc.double({ min: -Math.PI / 2, max: Math.PI / 2, noNaN: true });
  if (name === 'longitude') return fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  if (name === 'clock') return fc.integer({ min: 0, max: 86_400 });
  return fc
    .tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.constantFrom(1, -1))
    .map(([power, sign]) => sign * 10 ** power);
}

describe('formatQuantity', () => {
  const value = key.chain((name) => fc.record({ name: fc.constant(name), SI: plausible(name) }));

  it('prints what parseQuantity reads back within the digits printed', () => {
    fc.assert(
      fc.property(
        value,
        system,
        fc.integer({ min: 2, max: 8 }),
        fc.boolean(),
        ({ name, SI }, units, digits, plain) => {
          const text = formatQuantity(SI, name, units, { digits, plain });
          const read = parseQuantity(text, name);
          if (!read.ok) throw new Error(`${name} ${SI} prints as ${text}, which is refused: ${read.fix}`);
          if (name === 'clock') return read.value === (units === 'US' && SI === 86_400 ? 86_400 : SI);
          // Degrees of a place have one digit before the point at least and six behind it at most.
          if (/^(latitude|longitude)$/.test(name))
            return (
              Math.abs(read.value - SI) <=
              0.501 * 10 ** (1 - digits) * Math.max(Math.abs(SI), Math.PI / 180) + (0.501e-6 * Math.PI) / 180
            );
          // A temperature's zero point is no zero: half a unit of the last digit of the number as printed.
          const scale = name === 'temperature' ? Math.abs(SI) + 32 : Math.abs(SI);
          return Math.abs(read.value - SI) <= 0.501 * 10 ** (1 - digits) * scale;
        },
      ),
      { numRuns: 10_000 },
    );
  });

  it('uses ASCII only where asked to', () => {
    fc.assert(
      fc.property(value, system, ({ name, SI }, units) =>
        /^[ -~]+$/.test(formatQuantity(SI, name, units, { plain: true })),
      ),
    );
  });

  it('never throws, whatever the number', () => {
    fc.assert(
      fc.property(fc.double(), key, system, (SI, name, units) => {
        expect(formatQuantity(SI, name, units)).not.toBe('');
        expect(formatBoth(SI, name)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});

describe('formatTape', () => {
  it('reads back within half a sixteenth of an inch', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (metres) => {
        const read = parseQuantity(formatTape(metres), 'length');
        return read.ok && Math.abs(read.value - metres) <= 0.0254 / 32 + 1e-12;
      }),
      { numRuns: 2000 },
    );
  });
});
