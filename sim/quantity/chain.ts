/** Reads a quantity in large and small units: `5 ft 6 in`, `5'-6 1/2"`, `1 h 30 min`, `44° 30'`. */
import { findUnit } from './lookup.ts';
import { readNumber } from './number.ts';
import { type Reading, refuse } from './reading.ts';
import { printedSymbol, toSI, type Unit, withUnit } from './unit.ts';
import { type DimensionKey, dimensions } from './units.ts';

interface Part {
  number: number;
  unit: Unit;
}

const link = /^[ -]?((?:\d+[- ])?\d+ ?\/ ?\d+|\d+\.?\d*|\.\d+) ?([A-Za-z]+\.?|°|''|['"])/;

const examples: Partial<Record<DimensionKey, string>> = {
  length: '5 ft 6 in',
  time: '1 h 30 min',
  mass: '7 lb 4 oz',
};

/** Null if the text is of another kind: one number with one unit, or nothing this dimension knows. */
export function readChain(text: string, key: DimensionKey, raw: string): Reading | null {
  if (dimensions[key].chains.length === 0) return null;
  const sign = /^[+-] ?/.exec(text)?.[0] ?? '';
  const { parts, rest } = takeParts(text.slice(sign.length), key);
  const more = /^[ -]*\d/.test(rest);
  // `5 ft2`: a digit at once behind the unit and nothing more is a power.
  if (parts.length === 0 || (parts.length === 1 && (!more || /^[234]$/.test(rest)))) return null;
  const example = examples[key] ?? "44° 30'";
  if (rest !== '') return refuse(key, raw, `write a unit behind each number, as in ${example}`);
  const complaint = aboutParts(parts, key, example);
  if (complaint !== null) return refuse(key, raw, complaint);
  const minus = sign.startsWith('-');
  const value = total(parts);
  const echo = parts.map(({ number, unit }) => withUnit(number, printedSymbol(unit.symbol))).join(' ');
  return {
    ok: true,
    value: minus && value !== 0 ? -value : value,
    unit: printedSymbol(parts[parts.length - 1].unit.symbol),
    echo: `${minus ? '-' : ''}${echo}`,
  };
}

function takeParts(text: string, key: DimensionKey): { parts: Part[]; rest: string } {
  const parts: Part[] = [];
  let rest = text;
  while (rest !== '') {
    const found = link.exec(rest);
    const unit = found && findUnit(found[2], key);
    const number = found && readNumber(found[1]);
    if (!unit || !number || 'complaint' in number) break;
    parts.push({ number: number.value, unit });
    rest = rest.slice(found[0].length).replace(/^ $/, '');
  }
  return { parts, rest };
}

function aboutParts(parts: readonly Part[], key: DimensionKey, example: string): string | null {
  const symbols = parts.map(({ unit }) => unit.symbol);
  if (!dimensions[key].chains.some((chain) => descends(symbols, chain)))
    return `write one unit, or large and small as in ${example}`;
  for (const [i, { number, unit }] of parts.entries()) {
    if (i < parts.length - 1 && !Number.isInteger(number)) return 'only the last part may have a fraction';
    if (i > 0 && number >= ratio(parts[i - 1].unit, unit))
      return `the last part is a whole ${parts[i - 1].unit.symbol} or more: add it there`;
  }
  return null;
}

/** The symbols are neighbours in the chain, in its order. */
function descends(symbols: readonly string[], chain: readonly string[]): boolean {
  const start = chain.indexOf(symbols[0]);
  return start >= 0 && symbols.every((symbol, i) => chain[start + i] === symbol);
}

/** How many of the small unit make the large one: a whole number in every chain. */
function ratio(large: Unit, small: Unit): number {
  return Math.round(toSI(1, large) / toSI(1, small));
}

/** Summed in the smallest unit, where whole numbers stay whole. */
function total(parts: readonly Part[]): number {
  const last = parts[parts.length - 1].unit;
  return toSI(
    parts.reduce((sum, { number, unit }) => sum + number * ratio(unit, last), 0),
    last,
  );
}
