/** How an answer says its numbers: no finer than its band allows, tables in one unit a column, money as it comes. */
import { type Banded, type DimensionKey, dimensions, formatQuantity, fromSI } from '../../sim/index.ts';
import { fixed, numberText, withPoint } from './locale.ts';
import { quantityText, systemOf, type Units } from './units.ts';

export interface Say {
  units: Units;
  /** A value in SI as text with its unit. */
  quantity: (value: number, dimension: DimensionKey, digits?: number) => string;
  /** With its band, as in `116 °F (107 to 126 °F)`. */
  banded: (fact: Banded) => string;
  /** The value alone, no finer than its band allows. */
  value: (fact: Banded) => string;
  money: (amount: number) => string;
  /** Unit that a table's column has throughout, and a value in it. */
  unit: (dimension: DimensionKey) => string;
  number: (value: number | null, dimension: DimensionKey, decimals?: number) => string;
}

/** Unit of a whole column, by dimension; ASCII. */
const columnUnits: Partial<Record<DimensionKey, { US: string; SI: string }>> = {
  temperature: { US: 'F', SI: 'C' },
  temperature_difference: { US: 'F', SI: 'K' },
  power: { US: 'kBtu/h', SI: 'kW' },
  electric_power: { US: 'kW', SI: 'kW' },
  energy: { US: 'kBtu', SI: 'kWh' },
  electric_energy: { US: 'kWh', SI: 'kWh' },
  flow: { US: 'gpm', SI: 'L/min' },
  volume: { US: 'gal', SI: 'L' },
  length: { US: 'ft', SI: 'm' },
  area: { US: 'ft2', SI: 'm2' },
  mass: { US: 'lb', SI: 'kg' },
  pressure: { US: 'psi', SI: 'kPa' },
  speed: { US: 'ft/s', SI: 'm/s' },
  time: { US: 'min', SI: 'min' },
  share: { US: '%', SI: '%' },
  resistance: { US: 'h ft2 F/Btu', SI: 'm2 K/W' },
};

/** What stands where there is no number. */
export const noNumber = '-';

/** `plain` keeps units and signs to ASCII; `currency` is the scenario's own sign. */
export function sayIn(units: Units, { plain = false, currency = '$' } = {}): Say {
  const quantity: Say['quantity'] = (value, dimension, digits) =>
    quantityText(value, dimension, units, digits === undefined ? { plain } : { plain, digits });
  const money = (amount: number) => moneyText(amount, currency);
  return {
    units,
    quantity,
    banded: (fact) => bandText(fact, units, plain, money),
    value: (fact) =>
      bandText(
        { ...fact, numerical: Math.max(fact.numerical, (fact.high - fact.low) / 2) },
        units,
        plain,
        money,
        false,
      ),
    money,
    unit: (dimension) => columnUnits[dimension]?.[systemOf(units, dimension)] ?? '',
    number: (value, dimension, decimals = 0) => {
      if (value === null || !Number.isFinite(value)) return noNumber;
      const shown = inColumn(value, dimension, units);
      return plain ? withPoint(fixed(shown, decimals)) : fixed(shown, decimals);
    },
  };
}

/** A value in its column's unit. */
export function inColumn(value: number, dimension: DimensionKey, units: Units): number {
  const symbol = columnUnits[dimension]?.[systemOf(units, dimension)];
  const unit = dimensions[dimension].units.find((each) => each.symbol === symbol);
  return unit ? fromSI(value, unit) : value;
}

/** The last digit printed is worth no less than this share of the band. */
const LAST_DIGIT = 0.2;

/** A value, and its band unless both round to it, to a digit that the band allows; the unit once. */
function bandText(fact: Banded, units: Units, plain: boolean, money: Say['money'], withBand = true): string {
  const { value, low, high, numerical, dimension } = fact;
  if (dimension === 'money') {
    const [own, from, to] = [value, low, high].map(money);
    return withBand && from !== to ? `${own} (${from} to ${to})` : own;
  }
  const own = quantityText(value, dimension, units, { plain: true });
  const [, digits, symbol = ''] = /^(-?[\d.]+)(?: (.+))?$/.exec(own) ?? [];
  // Days are printed in the plural.
  const unit = dimensions[dimension].units.find((each) => each.symbol === symbol.replace(/^days$/, 'day'));
  if (digits === undefined || (!unit && symbol !== ''))
    return quantityText(value, dimension, units, { plain });
  const inUnit = (each: number) => (unit ? fromSI(each, unit) : each);
  const width = Math.max(inUnit(high) - inUnit(low), 2 * (inUnit(value + numerical) - inUnit(value)));
  const finest = digits.split('.')[1]?.length ?? 0;
  const allowed = width > 0 ? -Math.floor(Math.log10(LAST_DIGIT * width)) : finest;
  // A thermometer is read to the degree, and so are tables: a headline of 160 °F over a row of 163 °F would be two.
  const least = dimension === 'temperature' ? 0 : Number.NEGATIVE_INFINITY;
  const decimals = Math.min(finest, Math.max(least, allowed));
  const [at, from, to] = [value, low, high].map((each) => {
    const text = rounded(inUnit(each), decimals);
    return plain ? withPoint(text) : text;
  });
  const shown = plain ? symbol : printedSymbol(value, dimension, units);
  const space = shown === '' ? '' : ' ';
  return withBand && from !== to
    ? `${at}${space}${shown} (${from} to ${to}${space}${shown})`
    : `${at}${space}${shown}`;
}

/** The unit as a screen shows it, `°F` for `F`. */
function printedSymbol(value: number, dimension: DimensionKey, units: Units): string {
  return /^-?[\d.]+\s*(.*)$/.exec(formatQuantity(value, dimension, systemOf(units, dimension)))?.[1] ?? '';
}

/** To a number of decimals; fewer than none round to tens and hundreds. */
function rounded(value: number, decimals: number): string {
  const step = 10 ** -decimals;
  const near = Math.round(value / step) * step;
  return fixed(near, Math.max(0, decimals));
}

/** Two digits, since prices are no better; whole units from ten on. */
function moneyText(amount: number, currency: string): string {
  const rounded = Number(amount.toPrecision(2));
  const text = Math.abs(rounded) >= 10 ? fixed(rounded, 0) : numberText(rounded);
  return /^\p{L}/u.test(currency) ? `${text} ${currency}` : `${currency}${text}`;
}
