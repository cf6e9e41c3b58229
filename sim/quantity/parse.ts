/** Reads a quantity written as text with its unit. Nothing is guessed: what is unclear is refused and asked about. */

import { readChain } from './chain.ts';
import { readClock } from './clock.ts';
import { readCompass, readPlace } from './direction.ts';
import { findUnit, measures, nearestUnit } from './lookup.ts';
import { NO_NUMBER, readNumber } from './number.ts';
import { quoted, type Reading, refuse, unitsOf } from './reading.ts';
import { tidy } from './tidy.ts';
import { printedSymbol, toSI, type Unit, withUnit } from './unit.ts';
import { type DimensionKey, dimensions } from './units.ts';
import { inDigits } from './word-number.ts';

const longest = 200;
const absoluteZero_C = -273.15;

/** Never throws. The value is SI, degrees Celsius for a temperature, seconds after midnight for a clock time. */
export function parseQuantity(text: string, key: DimensionKey): Reading {
  if (text.length > longest) return refuse(key, text, `write it in at most ${longest} characters`);
  const plain = tidy(text);
  if (plain === '') return refuse(key, text, `write it, as in "${dimensions[key].example}"`);
  if (/\p{C}/u.test(plain)) return refuse(key, text, 'leave out the letters in it that cannot be seen');
  const commas = aboutCommas(plain);
  if (commas !== null) return refuse(key, text, commas);
  switch (key) {
    case 'clock':
      return readClock(plain, text);
    case 'latitude':
    case 'longitude':
      return readPlace(key, plain, text, (arc) => readWithUnits(arc, key, text));
    case 'angle':
      return readCompass(plain) ?? readWithUnits(plain, key, text);
    case 'resistance':
      return readRValue(plain, text) ?? readWithUnits(plain, key, text);
    default:
      return readWithUnits(inDigits(plain), key, text);
  }
}

/** A comma parts thousands in one country and decimals in another: ask which. */
function aboutCommas(text: string): string | null {
  const found = /\d[\d,. ]*,[\d,. ]*/.exec(text)?.[0].trim();
  if (found === undefined) return text.includes(',') ? 'leave out the comma' : null;
  const without = found.replace(/[, ]/g, '');
  const pointed = /^\d+,\d+$/.test(found) ? Number(found.replace(',', '.')) : null;
  return `do you mean ${pointed === null ? '' : `${pointed} or `}${without}? write it without a comma`;
}

function readWithUnits(text: string, key: DimensionKey, raw: string): Reading {
  const chained = readChain(text, key, raw);
  if (chained) return chained;
  const number = readNumber(text);
  if ('complaint' in number)
    return refuse(key, raw, number.complaint === NO_NUMBER ? noNumber(key) : number.complaint);
  const { value, rest } = number;
  if (rest === '') return bare(text, value, key, raw);
  const unit = findUnit(rest, key);
  if (!unit) return refuse(key, raw, aboutUnit(rest, key));
  return accept(toSI(value, unit), value, unit, key, raw);
}

function noNumber(key: DimensionKey): string {
  return `${NO_NUMBER}, as in "${dimensions[key].example}"`;
}

function accept(value: number, written: number, unit: Unit, key: DimensionKey, raw: string): Reading {
  if (!Number.isFinite(value)) return refuse(key, raw, 'write a smaller number');
  if (value === 0 && written !== 0 && unit.shift === 0) return refuse(key, raw, 'write 0 or a larger number');
  if (key === 'temperature' && value < absoluteZero_C)
    return refuse(key, raw, 'nothing is colder than -459.67 °F or -273.15 °C');
  const symbol = printedSymbol(unit.symbol);
  return { ok: true, value, unit: symbol, echo: withUnit(written, symbol) };
}

/** Only a count has no unit. A fraction written as such, as in `1/4`, is a share all the same. */
function bare(text: string, value: number, key: DimensionKey, raw: string): Reading {
  if (key === 'count') return { ok: true, value, unit: '', echo: String(value) };
  if (key === 'share' && text.includes('/')) return { ok: true, value, unit: '%', echo: text };
  if (key === 'share')
    return refuse(key, raw, `write ${quoted(`${text} %`)} or ${quoted(`${percent(value)} %`)}`);
  if (key === 'resistance')
    return refuse(key, raw, `write ${quoted(`R-${text}`)} or ${quoted(`${text} m²·K/W`)}`);
  return refuse(key, raw, `add the unit: one of ${unitsOf(key)}`);
}

function percent(value: number): number {
  return Number((value * 100).toPrecision(12));
}

/** What is wrong with the text after a number. */
function aboutUnit(rest: string, key: DimensionKey): string {
  const example = dimensions[key].example;
  if (key === 'count') return `leave out ${quoted(rest)}`;
  if (/^(?:-|to\b|\.\.)/i.test(rest)) return 'write one number, not a range';
  if (/^temperature/.test(key) && findUnit(rest, 'angle')?.symbol === 'deg')
    return 'of which scale? write F or C behind the number';
  const hint = hints.get(rest.toLowerCase());
  if (hint !== undefined) return hint;
  const other = measures(rest);
  if (other !== null) return `${quoted(rest)} measures ${other}; write it as in "${example}"`;
  if (rest.includes(' ') && rest.split(' ').every((word) => measures(word) !== null))
    return `write one unit, as in "${example}"`;
  if (/\d/.test(rest.replace(/(?<=[a-z°]\^?-?)\d/gi, '')))
    return `write one number and one unit, as in "${example}"`;
  const near = nearestUnit(rest, key);
  if (near?.toLowerCase() === rest.toLowerCase())
    return `small and capital letters differ: ${quoted(near)} is known, ${quoted(rest)} is not`;
  if (near !== null) return `do you mean "${near}"?`;
  return `the unit ${quoted(rest)} is unknown; use one of ${unitsOf(key)}`;
}

/** Units that mean one thing to some and another to others. */
const hints: ReadonlyMap<string, string> = new Map([
  ['mbtu', 'it is a thousand Btu to some and a million to others: write kBtu'],
  ['mbtu/h', 'it is a thousand Btu to some and a million to others: write kBtu/h'],
  ['mbh', 'write kBtu/h'],
  ['l/m', 'per minute or per metre? write L/min'],
  ['gal/m', 'per minute or per mile? write gpm'],
  ['r', 'write the R first, as in "R-20"'],
  ['rsi', 'write it first, as in "RSI-3.5"'],
  ['ton', 'tons differ: write lb or kg'],
  ['tons', 'tons differ: write lb or kg'],
]);

/** `R-20` counts h·ft²·°F/Btu. */
function readRValue(text: string, raw: string): Reading | null {
  const found = /^(rsi|r)(?: ?- ?| )?(?=[\d.])(.*)$/i.exec(text);
  if (!found) return null;
  const number = readNumber(found[2]);
  if ('complaint' in number) return refuse('resistance', raw, number.complaint);
  if (number.rest !== '') return refuse('resistance', raw, `leave out the R or ${quoted(number.rest)}`);
  const unit = findUnit(found[1].toLowerCase() === 'r' ? 'h ft2 F/Btu' : 'm2 K/W', 'resistance') as Unit;
  const read = accept(toSI(number.value, unit), number.value, unit, 'resistance', raw);
  return read.ok ? { ...read, echo: `${unit.system === 'US' ? 'R' : 'RSI'}-${number.value}` } : read;
}
