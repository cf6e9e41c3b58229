/** Units of whole columns: an axis, a CSV column or a table keeps one unit however its numbers run. */
import { type DimensionKey, dimensions, fromSI, glossary } from '../../sim/index.ts';
import type { UnitSystem } from '../words/index.ts';

export interface ColumnUnit {
  /** ASCII, as in `F` or `W/m2`. */
  symbol: string;
  /** From SI. */
  of: (value: number) => number;
}

const symbols = {
  temperature: { US: 'F', SI: 'C' },
  power: { US: 'Btu/h', SI: 'W' },
  energy: { US: 'kBtu', SI: 'kWh' },
  flow: { US: 'gpm', SI: 'L/min' },
  volume: { US: 'gal', SI: 'L' },
  length: { US: 'in', SI: 'm' },
  irradiance: { US: 'W/m2', SI: 'W/m2' },
} as const satisfies Partial<Record<DimensionKey, Record<UnitSystem, string>>>;

export type ColumnDimension = keyof typeof symbols;

export function columnUnit(dimension: ColumnDimension, units: UnitSystem): ColumnUnit {
  const symbol = symbols[dimension][units];
  const unit = dimensions[dimension].units.find((candidate) => candidate.symbol === symbol);
  if (!unit)
    throw new Error(
      `terminal units - expected ${symbol} among the units of ${dimension} - got none - report this`,
    );
  return { symbol, of: (value) => fromSI(value, unit) };
}

/** The unit of a glossary key's column, or null where it has none of its own here. */
export function unitOfKey(key: string, units: UnitSystem): ColumnUnit | null {
  const dimension = glossary.find((entry) => entry.key === key)?.dimension;
  return dimension && dimension in symbols ? columnUnit(dimension as ColumnDimension, units) : null;
}
