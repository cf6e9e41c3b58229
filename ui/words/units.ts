/** Numbers in the reader's units: one system throughout, or the mix that many sheds speak. */
import { type DimensionKey, formatQuantity, type UnitSystem } from '../../sim/index.ts';

/** `mixed`: tape, jugs and thermometers in US units, heat in kilowatts as batteries and generators have it. */
export type Units = UnitSystem | 'mixed';

const heatDimensions: ReadonlySet<DimensionKey> = new Set<DimensionKey>(['power', 'energy', 'insolation']);

/** The system in which a dimension is written. */
export function systemOf(units: Units, dimension: DimensionKey): UnitSystem {
  if (units !== 'mixed') return units;
  return heatDimensions.has(dimension) ? 'SI' : 'US';
}

/** A value in SI (temperatures in degrees Celsius) as text with its unit. `plain` keeps the unit to ASCII. */
export function quantityText(
  value_SI: number,
  dimension: DimensionKey,
  units: Units,
  options: { digits?: number; plain?: boolean } = {},
): string {
  return formatQuantity(value_SI, dimension, systemOf(units, dimension), options);
}

/** Heat flow in both of its units, the reader's own first: `3.1 kW (10.6 kBtu/h)`. */
export function bothPowers(value_W: number, units: Units): string {
  return both(value_W, 'power', units);
}

/** Heat in both of its units, the reader's own first: `12 kWh (40.9 kBtu)`. */
export function bothEnergies(value_J: number, units: Units): string {
  return both(value_J, 'energy', units);
}

function both(value_SI: number, dimension: DimensionKey, units: Units): string {
  const own = systemOf(units, dimension);
  const other = own === 'SI' ? 'US' : 'SI';
  return `${formatQuantity(value_SI, dimension, own)} (${formatQuantity(value_SI, dimension, other)})`;
}
