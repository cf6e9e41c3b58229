/**
 * Units of temperature, energy, power and of what conducts, stores or gives heat.
 *
 * The Btu is the International Table's, 1055.05585262 J, which follows from 4.1868 kJ/kg per kelvin and the pound;
 * horsepower is the mechanical one, 550 ft lbf/s. Source: NIST SP 811 (2008), appendix B, from memory.
 */
import { dimension, unit } from './unit.ts';
import { kg_per_lb, m_per_ft, m_per_in, m3_per_gal } from './units-plain.ts';

const J_per_Btu = 1055.05585262;
const W_per_Btu_h = J_per_Btu / 3600;
const W_per_hp = 550 * m_per_ft * kg_per_lb * 9.80665;
const K_per_F = 5 / 9;

const temperature = dimension('a temperature', 'C', '120 F', [
  unit('F', 'US', 5, { over: 9, shift: -32 }),
  unit('C', 'SI', 1),
  unit('K', 'SI', 1, { shift: -273.15 }),
]);

// A difference has no zero point: 10 F as a difference is 5.56 K, as a temperature -12.2 C.
const temperatureDifference = dimension('a temperature difference', 'K', '10 F', [
  unit('F', 'US', 5, { over: 9, also: ['F°'] }),
  unit('K', 'SI', 1, { also: ['C', 'C°'] }),
]);

const watts = [unit('W', 'SI', 1), unit('kW', 'SI', 1e3)];
const power = dimension('a power', 'W', '12 kBtu/h', [
  unit('Btu/h', 'US', J_per_Btu, { over: 3600, also: ['Btuh'] }),
  unit('kBtu/h', 'US', J_per_Btu * 1e3, { over: 3600, also: ['kBtuh'] }),
  ...watts,
  unit('MW', 'SI', 1e6),
  unit('hp', 'US', W_per_hp),
]);
const electricPower = dimension('an electric power', 'W', '90 W', [...watts, unit('hp', 'US', W_per_hp)]);

const wattHours = [unit('Wh', 'SI', 3600), unit('kWh', 'SI', 3.6e6), unit('MWh', 'SI', 3.6e9)];
const joules = [unit('J', 'SI', 1), unit('kJ', 'SI', 1e3), unit('MJ', 'SI', 1e6), unit('GJ', 'SI', 1e9)];
const energy = dimension('an energy', 'J', '20 kWh', [
  unit('Btu', 'US', J_per_Btu),
  unit('kBtu', 'US', J_per_Btu * 1e3),
  ...wattHours,
  ...joules,
  unit('kcal', 'SI', 4186.8),
]);
const electricEnergy = dimension('an electric energy', 'J', '1.2 kWh', [...wattHours, ...joules]);

const conductance = dimension('a conductance', 'W/K', '300 W/K', [
  unit('Btu/(h F)', 'US', W_per_Btu_h / K_per_F),
  unit('W/K', 'SI', 1),
  unit('kW/K', 'SI', 1e3),
]);

const perLengthAndDegree = [
  unit('Btu/(h ft F)', 'US', W_per_Btu_h / (m_per_ft * K_per_F)),
  unit('W/(m K)', 'SI', 1),
];
const conductancePerLength = dimension(
  'a conductance per length',
  'W/(m K)',
  '0.25 W/(m K)',
  perLengthAndDegree,
);
const conductivity = dimension('a conductivity', 'W/(m K)', '0.035 W/(m K)', [
  ...perLengthAndDegree,
  unit('Btu in/(h ft2 F)', 'US', (W_per_Btu_h * m_per_in) / (m_per_ft ** 2 * K_per_F)),
]);

const lossCoefficient = dimension('a loss coefficient', 'W/(m2 K)', '1.3 W/(m2 K)', [
  unit('Btu/(h ft2 F)', 'US', W_per_Btu_h / (m_per_ft ** 2 * K_per_F)),
  unit('W/(m2 K)', 'SI', 1),
]);
const lossSecond = dimension('a second loss coefficient', 'W/(m2 K2)', '0.006 W/(m2 K2)', [
  unit('Btu/(h ft2 F2)', 'US', W_per_Btu_h / (m_per_ft ** 2 * K_per_F ** 2)),
  unit('W/(m2 K2)', 'SI', 1),
]);

const areaAndDegreePerPower = [
  unit('h ft2 F/Btu', 'US', (m_per_ft ** 2 * K_per_F) / W_per_Btu_h),
  unit('m2 K/W', 'SI', 1),
];
const resistance = dimension('a thermal resistance', 'm2 K/W', 'R-20', areaAndDegreePerPower);
const fouling = dimension('a fouling resistance', 'm2 K/W', '0.0001 m2 K/W', areaAndDegreePerPower);

const heatCapacity = dimension('a heat capacity', 'J/K', '30 kJ/K', [
  unit('Btu/F', 'US', J_per_Btu / K_per_F),
  unit('J/K', 'SI', 1),
  unit('kJ/K', 'SI', 1e3),
  unit('MJ/K', 'SI', 1e6),
  unit('Wh/K', 'SI', 3600),
  unit('kWh/K', 'SI', 3.6e6),
]);
const heatCapacityPerArea = dimension('a heat capacity per area', 'J/(m2 K)', '8 kJ/(m2 K)', [
  unit('Btu/(ft2 F)', 'US', J_per_Btu / (m_per_ft ** 2 * K_per_F)),
  unit('J/(m2 K)', 'SI', 1),
  unit('kJ/(m2 K)', 'SI', 1e3),
  unit('Wh/(m2 K)', 'SI', 3600),
]);

const irradiance = dimension('a strength of sunshine', 'W/m2', '800 W/m2', [
  unit('Btu/(h ft2)', 'US', W_per_Btu_h / m_per_ft ** 2),
  unit('W/m2', 'SI', 1),
  unit('kW/m2', 'SI', 1e3),
]);
const insolation = dimension("a day's sunshine", 'J/m2 per day', '2.1 kWh/m2 per day', [
  unit('Btu/ft2 per day', 'US', J_per_Btu / m_per_ft ** 2),
  unit('kWh/m2 per day', 'SI', 3.6e6),
  unit('Wh/m2 per day', 'SI', 3600),
  unit('MJ/m2 per day', 'SI', 1e6),
  unit('J/m2 per day', 'SI', 1),
]);

const heatingValue = dimension('a heating value by mass', 'J/kg', '42.8 MJ/kg', [
  unit('Btu/lb', 'US', J_per_Btu / kg_per_lb),
  unit('MJ/kg', 'SI', 1e6),
  unit('kJ/kg', 'SI', 1e3),
  unit('J/kg', 'SI', 1),
  unit('kWh/kg', 'SI', 3.6e6),
]);
const heatingValueByVolume = dimension('a heating value by volume', 'J/m3', '129000 Btu/gal', [
  unit('Btu/gal', 'US', J_per_Btu / m3_per_gal),
  unit('kBtu/gal', 'US', (J_per_Btu * 1e3) / m3_per_gal),
  unit('MJ/L', 'SI', 1e9),
  unit('kWh/L', 'SI', 3.6e9),
  unit('MJ/m3', 'SI', 1e6),
]);

export const heatDimensions = {
  temperature,
  temperature_difference: temperatureDifference,
  power,
  electric_power: electricPower,
  energy,
  electric_energy: electricEnergy,
  conductance,
  conductance_per_length: conductancePerLength,
  conductivity,
  loss_coefficient: lossCoefficient,
  loss_second: lossSecond,
  resistance,
  fouling,
  heat_capacity: heatCapacity,
  heat_capacity_per_area: heatCapacityPerArea,
  irradiance,
  insolation,
  heating_value: heatingValue,
  heating_value_by_volume: heatingValueByVolume,
};
