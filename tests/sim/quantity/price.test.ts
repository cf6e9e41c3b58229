import { describe, expect, it } from 'vitest';
import { formatPrice, readPrice, type SoldBy } from '../../../sim/quantity/index.ts';

const fuel: SoldBy = { dimension: 'volume', unit: 'L' };
/** A US gallon [L]: 231 cubic inches. */
const gallon = 231 * 0.254 ** 3;

describe('a price', () => {
  it.each<[string, number, string | null]>([
    ['4.50/gal', 4.5 / gallon, null],
    ['$4.50/gal', 4.5 / gallon, '$'],
    ['$ 4.50 per gallon', 4.5 / gallon, '$'],
    ['4.50 a gallon', 4.5 / gallon, null],
    ['1.20 €/L', 1.2, '€'],
    ['19 kr per litre', 19, 'kr'],
    ['USD 1.2 per qt', (1.2 * 4) / gallon, 'USD'],
  ])('is read with what it is for: %s', (text, value, sign) => {
    const read = readPrice(text, fuel);
    if (!read.ok) throw new Error(read.fix);
    expect(read.value).toBeCloseTo(value, 9);
    expect(read.sign).toBe(sign);
  });

  it.each([
    ['4.50', 'say for how much, as in "4.50/gal" or "4.50/L"'],
    ['$4.50', 'say for how much, as in "4.50/gal" or "4.50/L"'],
    ['4.50/lb', '"lb" is not what it is sold by: write it as in "4.50/gal"'],
    ['4,50/gal', 'write it without a comma, as in "4.50/gal"'],
    ['-3/gal', 'write it as in "4.50/gal"'],
    ['cheap', 'write it as in "4.50/gal"'],
    ['$4.50 $/gal', 'write the sign of the currency once'],
  ])('is refused where one has to guess: %s', (text, fix) => {
    expect(readPrice(text, fuel)).toMatchObject({ ok: false, got: `"${text}"`, fix });
  });

  it('is written in what shops of a system sell by, and read back the same', () => {
    expect(formatPrice(1.2, fuel, 'US')).toBe('4.542/gal');
    expect(formatPrice(1.2, fuel, 'SI')).toBe('1.2/L');
    const read = readPrice(formatPrice(1.2, fuel, 'US'), fuel);
    expect(read.ok && read.value).toBeCloseTo(1.2, 3);
  });
});
