/** Numbers in the reader's units, for sentences. */
import type { DimensionKey, UnitSystem } from '../../sim/index.ts';
import { quantityText, type Units } from './units.ts';

export type { UnitSystem };

/** Each takes SI (temperatures in degrees Celsius) and gives text with its unit. */
export interface Speak {
  temperature: (value_C: number) => string;
  time: (value_s: number) => string;
  length: (value_m: number) => string;
  mass: (value_kg: number) => string;
  pressure: (value_Pa: number) => string;
  speed: (value_m_s: number) => string;
  electricity: (value_W: number) => string;
  share: (value: number) => string;
  count: (value: number) => string;
}

/** `plain` keeps the units to ASCII. */
export function speakIn(units: Units, { plain = false } = {}): Speak {
  const inUnits = (dimension: DimensionKey) => (value: number) =>
    quantityText(value, dimension, units, { plain });
  return {
    temperature: inUnits('temperature'),
    time: inUnits('time'),
    length: inUnits('length'),
    mass: inUnits('mass'),
    pressure: inUnits('pressure'),
    speed: inUnits('speed'),
    electricity: inUnits('electric_power'),
    share: inUnits('share'),
    count: inUnits('count'),
  };
}
