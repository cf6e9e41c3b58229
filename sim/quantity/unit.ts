/** What a unit and a dimension are, as data. The lists stand in `units-*.ts`; `units.ts` joins them. */

export type UnitSystem = 'US' | 'SI';

export interface Unit {
  /** ASCII, as in `W/(m2 K)`: read, and printed where only ASCII will do. */
  symbol: string;
  /** SI value = (number + shift) x times / over. Two whole numbers keep 5/9 and 1/1000 exact. */
  times: number;
  over: number;
  shift: number;
  system: UnitSystem | 'both';
  /** Other ways to write it that are more than another spelling of a word in it. */
  also: readonly string[];
}

export interface Dimension {
  /** With its article, as in `a length`. */
  name: string;
  /** Unit of the value in `sim`. */
  si: string;
  /** How people write one, for error texts. */
  example: string;
  units: readonly Unit[];
  /** Symbols of units that may follow one another, large to small, as in `5 ft 6 in`. */
  chains: readonly (readonly string[])[];
}

type More = Partial<Pick<Unit, 'over' | 'shift' | 'also'>>;

export function unit(symbol: string, system: Unit['system'], times: number, more: More = {}): Unit {
  return { symbol, system, times, over: 1, shift: 0, also: [], ...more };
}

export function dimension(
  name: string,
  si: string,
  example: string,
  units: readonly Unit[],
  chains: Dimension['chains'] = [],
): Dimension {
  return { name, si, example, units, chains };
}

/** SI value of a number in a unit; for a temperature, degrees Celsius. */
export function toSI(value: number, { shift, times, over }: Unit): number {
  return ((value + shift) * times) / over;
}

/** Number in a unit of an SI value: the inverse of `toSI`. */
export function fromSI(value_SI: number, { shift, times, over }: Unit): number {
  return (value_SI * over) / times - shift;
}

/** `W/(m2 K)` as print has it: `W/(m²·K)`. */
export function printedSymbol(symbol: string): string {
  if (symbol === 'deg') return '°';
  const raised = symbol
    .replace(/(?<=[a-z])2/gi, '²')
    .replace(/(?<=[a-z])3/gi, '³')
    .replace(/(?<![A-Za-z])([FC])(?![A-Za-z])/g, '°$1');
  return raised.includes('/') ? raised.replace(/ (?!per |day)/g, '·') : raised;
}

/** `3 ft`, `35°`: signs of arc stand close to their number. */
export function withUnit(number: number | string, symbol: string): string {
  return `${number}${/^(?:°|'|")$/.test(symbol) ? '' : ' '}${symbol}`;
}
