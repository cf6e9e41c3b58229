/** Numbers as the page shows them: whole axes in one unit, single values as text with the unit that suits them. */
import { type DimensionKey, dimensions, fromSI } from '../../../sim/index.ts';
import { bothPowers, numberFormat, systemOf, type Units } from '../../words/index.ts';

/** A unit that a chart's axis is drawn in. */
export interface ScreenUnit {
  symbol: string;
  /** From SI. */
  of: (value: number) => number;
  /** A value already in this unit, to the digits that mean something, with its symbol. */
  text: (value: number) => string;
}

export function screenUnits(
  units: Units,
): Record<'temperature' | 'power' | 'length' | 'flow' | 'irradiance', ScreenUnit> {
  const US = (dimension: DimensionKey) => systemOf(units, dimension) === 'US';
  return {
    temperature: US('temperature') ? unit('temperature', 'F', '°F') : unit('temperature', 'C', '°C'),
    power: US('power') ? unit('power', 'kBtu/h', 'kBtu/h', 1) : unit('power', 'kW', 'kW', 1),
    flow: US('flow') ? unit('flow', 'gpm', 'gpm', 1) : unit('flow', 'L/min', 'L/min', 1),
    irradiance: US('irradiance')
      ? unit('irradiance', 'Btu/(h ft2)', 'Btu/(h·ft²)')
      : unit('irradiance', 'W/m2', 'W/m²'),
    length: US('length') ? unit('length', 'in', 'in') : unit('length', 'cm', 'cm'),
  };
}

function unit(dimension: DimensionKey, name: string, symbol: string, digits = 0): ScreenUnit {
  const found = dimensions[dimension].units.find((each) => each.symbol === name);
  if (!found) throw new Error(`The page - expected a unit of ${dimension} - got "${name}" - report this.`);
  return {
    symbol,
    of: (value) => fromSI(value, found),
    text: (value) => `${plainNumber(value, digits)} ${symbol}`,
  };
}

/** Thousands apart, a true minus, no tail of noughts. */
export function plainNumber(value: number, digits = 2): string {
  let format = formats.get(digits);
  if (!format) {
    format = numberFormat({ maximumFractionDigits: digits });
    formats.set(digits, format);
  }
  return format.format(value).replace('-', '−');
}

/** By digits: to make one takes longer than to use it a hundred times. */
const formats = new Map<number, Intl.NumberFormat>();

/** A power to the whole watt, in both its units: what numerics leave over of nothing is nothing. */
export function powerWords(value_W: number, units: Units): string {
  return bothPowers(Math.round(value_W), units);
}

/** A value in both its units breaks only between the two, however narrow its column. */
export function unbroken(text: string): string {
  return text.includes('(') ? text.replaceAll(' ', '\u00a0').replace('\u00a0(', ' (') : text;
}
