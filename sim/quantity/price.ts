/** Reads and writes a price together with what it is for: `$4.50/gal`, `1.2 per L`, `3 a foot`. */
import { findUnit } from './lookup.ts';
import { readNumber } from './number.ts';
import { quoted } from './reading.ts';
import { tidy } from './tidy.ts';
import { toSI, type Unit, type UnitSystem } from './unit.ts';

/** What something is sold by, and the unit in which a number alone is meant. */
export interface SoldBy {
  dimension: 'volume' | 'mass' | 'length' | 'area';
  unit: string;
}

export interface PriceRead {
  ok: true;
  /** For one of the unit that a number alone has. */
  value: number;
  /** Sign of the currency, as typed; null without one. */
  sign: string | null;
}

export interface PriceRefused {
  ok: false;
  expected: string;
  got: string;
  fix: string;
}

/** What shops sell by in either system. */
const usual: Record<SoldBy['dimension'], Record<UnitSystem, string>> = {
  volume: { US: 'gal', SI: 'L' },
  mass: { US: 'lb', SI: 'kg' },
  length: { US: 'ft', SI: 'm' },
  area: { US: 'ft2', SI: 'm2' },
};

const longest = 60;
const SIGN = '\\p{Sc}|[A-Z]{3}|kr';
const form = new RegExp(
  `^(?<before>${SIGN})? ?(?<number>\\d[\\d.]*|\\.\\d+) ?(?<after>${SIGN})?(?: ?(?:/|\\bper\\b|\\ban?\\b|\\bfor an?\\b) ?(?<unit>.+))?$`,
  'u',
);

/** Never throws. A price without what it is for is refused: a gallon costs nearly four times a litre. */
export function readPrice(text: string, by: SoldBy): PriceRead | PriceRefused {
  const refuse = (fix: string): PriceRefused => ({
    ok: false,
    expected: expected(by),
    got: quoted(text),
    fix,
  });
  const [us, si] = [usual[by.dimension].US, usual[by.dimension].SI];
  const found = text.length > longest ? null : form.exec(tidy(text));
  if (text.includes(',')) return refuse(`write it without a comma, as in "4.50/${us}"`);
  if (!found?.groups) return refuse(`write it as in "4.50/${us}"`);
  const { before, number, after, unit } = found.groups as Record<string, string | undefined>;
  const read = readNumber(number ?? '');
  if ('complaint' in read || read.rest !== '') return refuse(`write it as in "4.50/${us}"`);
  if (unit === undefined) return refuse(`say for how much, as in "${number}/${us}" or "${number}/${si}"`);
  const sold = findUnit(unit, by.dimension);
  if (!sold) return refuse(`${quoted(unit)} is not what it is sold by: write it as in "4.50/${us}"`);
  if (before && after) return refuse('write the sign of the currency once');
  return { ok: true, value: read.value * oneOf(by, sold), sign: before ?? after ?? null };
}

/** `4.54/gal`: a price for one of the unit that a number alone has, in what shops of a system sell by. */
export function formatPrice(value: number, by: SoldBy, system: UnitSystem, digits = 4): string {
  const symbol = usual[by.dimension][system];
  const unit = findUnit(symbol, by.dimension) as Unit;
  return `${Number((value / oneOf(by, unit)).toPrecision(digits))}/${symbol}`;
}

/** Sign of the unit that shops of a system sell by. */
export function soldIn({ dimension }: SoldBy, system: UnitSystem): string {
  return usual[dimension][system];
}

/** Whether a text is a number and nothing else, which does not say for how much. */
export function isBareNumber(text: string): boolean {
  return /^\s*[\d.]+\s*$/.test(text);
}

/** How many of a unit go into the one that a number alone has: what a price for one of them counts. */
function oneOf(by: SoldBy, unit: Unit): number {
  return toSI(1, findUnit(by.unit, by.dimension) as Unit) / toSI(1, unit);
}

function expected({ dimension }: SoldBy): string {
  return `a price and what it is for, as in "4.50/${usual[dimension].US}" or "1.20/${usual[dimension].SI}"`;
}
