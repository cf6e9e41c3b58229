/** What the parser reads, against hand arithmetic on the definitions of the units. */
import { describe, expect, it } from 'vitest';
import { type DimensionKey, parseQuantity } from '../../../sim/quantity/index.ts';
import { accepted } from './accepted.ts';

describe.each(Object.entries(accepted))('%s', (key, rows) => {
  it.each(rows)('reads %j as %f', (text, SI) => {
    const read = parseQuantity(text, key as DimensionKey);
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    // Factors above are given with at least seven digits.
    expect(Math.abs(read.value - SI)).toBeLessThanOrEqual(1e-6 * Math.abs(SI) + (SI === -273.15 ? 0 : 1e-15));
  });

  it.each(rows)('echoes %j so that it reads the same', (text) => {
    const read = parseQuantity(text, key as DimensionKey);
    if (!read.ok) throw new Error(`${text} is refused: ${read.fix}`);
    expect(parseQuantity(read.echo, key as DimensionKey)).toMatchObject({ ok: true, value: read.value });
  });
});

describe('an exact value', () => {
  it.each<[string, DimensionKey, number]>([
    ['3/8 in', 'length', 0.009525],
    ['5\' 6"', 'length', 1.6764],
    ['12 mm', 'length', 0.012],
    ['212 F', 'temperature', 100],
    ['-40 F', 'temperature', -40],
    ['18 F', 'temperature_difference', 10],
    ['900 L', 'volume', 0.9],
    ['6 L/min', 'flow', 1e-4],
    ['28 %', 'share', 0.28],
  ])('%s has no rounding in it', (text, key, SI) => {
    expect(parseQuantity(text, key)).toMatchObject({ value: SI });
  });
});

describe('the unit', () => {
  it.each<[string, DimensionKey, string, string]>([
    ['3/8"', 'length', 'in', '0.375 in'],
    ['120 deg F', 'temperature', '°F', '120 °F'],
    ['1.3 W/m2K', 'loss_coefficient', 'W/(m²·K)', '1.3 W/(m²·K)'],
    ['2 US gal', 'volume', 'gal', '2 gal'],
    ['r20', 'resistance', 'h·ft²·°F/Btu', 'R-20'],
    ['5ft6in', 'length', 'in', '5 ft 6 in'],
    ['6:30 pm', 'clock', '', '18:30'],
    ['SSW', 'angle', '°', '202.5°'],
  ])('of %s is told back', (text, key, unit, echo) => {
    expect(parseQuantity(text, key)).toMatchObject({ unit, echo });
  });
});
