/** Numbers as the page shows them: whole axes in one unit, single values as text with the unit that suits them. */
import { formatQuantity, glossary } from '../../../sim/index.ts';
import type { UnitSystem } from '../../words/index.ts';

/** A unit that a chart's axis is drawn in. */
export interface ScreenUnit {
  symbol: string;
  /** From SI. */
  of: (value: number) => number;
  /** A value already in this unit, to the digits that mean something, with its symbol. */
  text: (value: number) => string;
}

const W_per_Btu_h = 0.29307107;
const m_per_in = 0.0254;

export function screenUnits(system: UnitSystem): Record<'temperature' | 'power' | 'length', ScreenUnit> {
  return system === 'US'
    ? {
        temperature: unit('°F', (value_C) => value_C * 1.8 + 32),
        power: unit('Btu/h', (value_W) => value_W / W_per_Btu_h),
        length: unit('in', (value_m) => value_m / m_per_in),
      }
    : {
        temperature: unit('°C', (value_C) => value_C),
        power: unit('kW', (value_W) => value_W / 1000, 1),
        length: unit('cm', (value_m) => value_m * 100),
      };
}

function unit(symbol: string, of: (value: number) => number, digits = 0): ScreenUnit {
  return { symbol, of, text: (value) => `${plainNumber(value, digits)} ${symbol}` };
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
