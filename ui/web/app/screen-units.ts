/** Numbers as the page shows them: whole axes in one unit, single values as text with the unit that suits them. */
import { type DimensionKey, dimensions, formatQuantity, fromSI, glossary } from '../../../sim/index.ts';
import type { UnitSystem } from '../../words/index.ts';

/** A unit that a chart's axis is drawn in. */
export interface ScreenUnit {
  symbol: string;
  /** From SI. */
  of: (value: number) => number;
  /** A value already in this unit, to the digits that mean something, with its symbol. */
  text: (value: number) => string;
}

export function screenUnits(system: UnitSystem): Record<'temperature' | 'power' | 'length', ScreenUnit> {
  return system === 'US'
    ? {
        temperature: unit('temperature', 'F', '°F'),
        power: unit('power', 'kBtu/h', 'kBtu/h', 1),
        length: unit('length', 'in', 'in'),
      }
    : {
        temperature: unit('temperature', 'C', '°C'),
        power: unit('power', 'kW', 'kW', 1),
        length: unit('length', 'cm', 'cm'),
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
  return value.toLocaleString('en-US', { maximumFractionDigits: digits }).replace('-', '−');
}

const entries = new Map(glossary.map((entry) => [entry.key, entry]));

/** A value of the glossary's `key` in the reader's units. */
export function quantityWords(key: string, value: number, system: UnitSystem): string {
  const entry = entries.get(key);
  return entry ? formatQuantity(value, entry.dimension, system) : plainNumber(value);
}

/** A power to the whole watt: what numerics leave over of nothing is nothing. */
export function powerWords(value_W: number, system: UnitSystem): string {
  return formatQuantity(Math.round(value_W), 'power', system);
}
