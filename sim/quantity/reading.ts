/** What reading a quantity gives, and the house's shape of a refusal. */
import { printedSymbol } from './unit.ts';
import { type DimensionKey, dimensions } from './units.ts';

export interface Accepted {
  ok: true;
  /** SI; degrees Celsius for a temperature. */
  value: number;
  /** Symbol of the unit it was written in; the empty text if it has none. */
  unit: string;
  /** What was understood, written so that it reads back to the same value. */
  echo: string;
}

export interface Refused {
  ok: false;
  expected: string;
  got: string;
  fix: string;
}

export type Reading = Accepted | Refused;

export function refuse(key: DimensionKey, text: string, fix: string): Refused {
  return { ok: false, expected: expectation(key), got: quoted(text), fix };
}

/** `a length as a number with its unit: in, ft, ...` */
function expectation(key: DimensionKey): string {
  const { name, example } = dimensions[key];
  switch (key) {
    case 'clock':
      return `${name}, as in "6:30 pm" or "18:30"`;
    case 'count':
      return `${name} without a unit, as in "6"`;
    case 'latitude':
      return `${name} in degrees with N or S, as in "44.5 N"`;
    case 'longitude':
      return `${name} in degrees with E or W, as in "73 W"`;
    case 'angle':
      return `${name} with its unit (deg, rad) or a compass direction, as in "35 deg" or "SSW"`;
    default:
      return `${name} as a number with its unit (${unitsOf(key)}), as in "${example}"`;
  }
}

/** The symbols a bare number could have. */
export function unitsOf(key: DimensionKey): string {
  return dimensions[key].units.map(({ symbol }) => printedSymbol(symbol)).join(', ');
}

/** In quotes, short, on one line. */
export function quoted(text: string): string {
  const line = text.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ');
  const letters = [...line];
  return `"${letters.length > 60 ? `${letters.slice(0, 57).join('')}...` : line}"`;
}
