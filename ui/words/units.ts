/** Numbers in the reader's units: one system throughout, or the mix that many sheds speak. */
import {
  type DimensionKey,
  formatBoth,
  formatPrice,
  formatQuantity,
  formatTape,
  type SoldBy,
  type UnitSystem,
} from '../../sim/index.ts';
import { fromSim } from './from-sim.ts';

/** `mixed`: tape, jugs and thermometers in US units, heat in kilowatts as batteries and generators have it. */
export type Units = UnitSystem | 'mixed';

const heatDimensions: ReadonlySet<DimensionKey> = new Set<DimensionKey>(['power', 'energy', 'insolation']);

/** The system in which a dimension is written. */
export function systemOf(units: Units, dimension: DimensionKey): UnitSystem {
  if (units !== 'mixed') return units;
  return heatDimensions.has(dimension) ? 'SI' : 'US';
}

interface Writing {
  digits?: number;
  /** As a file has it: ASCII, with a decimal point. */
  plain?: boolean;
}

/** A value in SI (temperatures in degrees Celsius) as text with its unit. */
export function quantityText(
  value_SI: number,
  dimension: DimensionKey,
  units: Units,
  options: Writing = {},
): string {
  return shown(formatQuantity(value_SI, dimension, systemOf(units, dimension), options), options);
}

/** In US units with SI in brackets, as in `120 °F (48.9 °C)`; once where both are the same. */
export function bothText(value_SI: number, dimension: DimensionKey, options: Writing = {}): string {
  return shown(formatBoth(value_SI, dimension, options), options);
}

/** A length as a tape shows it: `24 3/8 in`. */
export function inchesText(value_m: number): string {
  return fromSim(formatTape(value_m));
}

/** A price for what shops in the reader's units sell by: `4.54/gal`. */
export function priceText(value: number, by: SoldBy, units: Units, options: Writing = {}): string {
  return shown(formatPrice(value, by, systemOf(units, by.dimension), options.digits), options);
}

/** Between two ends: `40 °F to 70 °F`. */
export function spanText(low: string, high: string): string {
  return `${low} to ${high}`;
}

function shown(text: string, { plain = false }: Writing): string {
  return plain ? text : fromSim(text);
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
  const [first, second] = ([own, other] as const).map((system) =>
    fromSim(formatQuantity(value_SI, dimension, system)),
  );
  return `${first} (${second})`;
}
