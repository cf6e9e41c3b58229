/** Which unit a value is printed in, by dimension, system and size. */
import type { DimensionKey } from './units.ts';

/** A unit's symbol and the SI value below which it is used; the last has no end. */
export type Step = readonly [symbol: string, below_SI?: number];

interface PrintUnits {
  US: readonly Step[];
  SI: readonly Step[];
  /** Significant digits unless asked for others; 3 if not given. */
  digits?: number;
  /** Most decimals at that number of digits: a tenth of a degree is as fine as anyone reads. */
  decimals?: number;
}

const same = (steps: readonly Step[], more: Pick<PrintUnits, 'digits'> = {}): PrintUnits => ({
  US: steps,
  SI: steps,
  ...more,
});
const wattHours = [['Wh', 3.6e6], ['kWh']] as const;
const watts = [['W', 1000], ['kW']] as const;
const areaAndDegreePerPower = { US: [['h ft2 F/Btu']], SI: [['m2 K/W']] } as const;
const perLengthAndDegree = { US: [['Btu/(h ft F)']], SI: [['W/(m K)']] } as const;

/** Clock, count, latitude and longitude are printed in their own ways; their steps are empty. */
export const printUnits: Readonly<Record<DimensionKey, PrintUnits>> = {
  // A tape is read in inches up to a yard.
  length: { US: [['in', 0.9144], ['ft']], SI: [['mm', 1], ['m', 1e4], ['km']] },
  // A row of absorbers of 0.06 to 0.1 m2 is in one unit: only what is smaller than a hand is in small ones.
  area: { US: [['in2', 0.01], ['ft2']], SI: [['cm2', 0.01], ['m2']] },
  volume: { US: [['fl oz', 0.000946], ['gal']], SI: [['mL', 1e-4], ['L', 10], ['m3']] },
  mass: { US: [['oz', 0.4536], ['lb']], SI: [['g', 0.1], ['kg']] },
  time: same([['s', 120], ['min', 7200], ['h', 172_800], ['day']]),
  clock: same([]),
  // Fuel lines count in gallons an hour, taps in gallons a minute.
  flow: { US: [['gal/h', 6.3e-6], ['gpm']], SI: [['L/h', 1.6e-6], ['L/min']] },
  mass_flow: { US: [['lb/h']], SI: [['kg/h']] },
  speed: { US: [['ft/s']], SI: [['m/s']] },
  pressure: { US: [['psi']], SI: [['Pa', 1000], ['kPa', 1e6], ['bar']] },
  angle: same([['deg']]),
  latitude: same([], { digits: 5 }),
  longitude: same([], { digits: 5 }),
  share: same([['%']]),
  count: same([], { digits: 9 }),
  density: { US: [['lb/gal']], SI: [['kg/m3']] },
  temperature: { US: [['F']], SI: [['C']], decimals: 1 },
  temperature_difference: { US: [['F']], SI: [['K']] },
  power: { US: [['Btu/h', 2930], ['kBtu/h']], SI: watts },
  electric_power: same(watts),
  energy: { US: [['Btu', 1.055e6], ['kBtu']], SI: wattHours },
  electric_energy: same(wattHours),
  conductance: { US: [['Btu/(h F)']], SI: [['W/K']] },
  conductance_per_length: perLengthAndDegree,
  conductivity: perLengthAndDegree,
  loss_coefficient: { US: [['Btu/(h ft2 F)']], SI: [['W/(m2 K)']] },
  loss_second: { US: [['Btu/(h ft2 F2)']], SI: [['W/(m2 K2)']] },
  resistance: areaAndDegreePerPower,
  fouling: areaAndDegreePerPower,
  heat_capacity: { US: [['Btu/F']], SI: [['J/K', 1000], ['kJ/K', 1e6], ['MJ/K']] },
  heat_capacity_per_area: { US: [['Btu/(ft2 F)']], SI: [['kJ/(m2 K)']] },
  irradiance: { US: [['Btu/(h ft2)']], SI: [['W/m2']] },
  insolation: { US: [['Btu/ft2 per day']], SI: [['kWh/m2 per day']] },
  heating_value: { US: [['Btu/lb']], SI: [['MJ/kg']] },
  heating_value_by_volume: { US: [['Btu/gal']], SI: [['MJ/L']] },
};
