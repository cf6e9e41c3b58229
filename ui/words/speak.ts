/** Numbers in the reader's units, for sentences. */
import { formatQuantity } from '../../sim/index.ts';

export type UnitSystem = 'US' | 'SI';

/** Each takes SI (kelvin-free: temperatures in degrees Celsius) and gives text with its unit. */
export interface Speak {
  temperature: (value_C: number) => string;
  time: (value_s: number) => string;
  length: (value_m: number) => string;
  mass: (value_kg: number) => string;
  pressure: (value_Pa: number) => string;
  speed: (value_m_s: number) => string;
  power: (value_W: number) => string;
  share: (value: number) => string;
  count: (value: number) => string;
}

const m_s_per_ft_s = 0.3048;

export function speakIn(system: UnitSystem): Speak {
  const inUnits = (dimension: Parameters<typeof formatQuantity>[1]) => (value: number) =>
    formatQuantity(value, dimension, system);
  return {
    temperature: inUnits('temperature'),
    time: inUnits('time'),
    length: inUnits('length'),
    mass: inUnits('mass'),
    pressure: inUnits('pressure'),
    speed: (value) =>
      system === 'US' ? `${(value / m_s_per_ft_s).toFixed(1)} ft/s` : `${value.toFixed(1)} m/s`,
    power: inUnits('power'),
    share: inUnits('share'),
    count: inUnits('count'),
  };
}
