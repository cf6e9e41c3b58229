/**
 * Units of length, area, volume, mass, time, flow, speed, pressure, angle and number.
 *
 * Factors are definitions (inch 25.4 mm, pound 0.45359237 kg, US gallon 231 cubic inches, standard gravity
 * 9.80665 m/s2); conventional water columns are of 1000 kg/m3. Source: NIST SP 811 (2008), appendix B, from memory.
 */
import { dimension, unit } from './unit.ts';

export const m_per_in = 0.0254;
export const m_per_ft = 0.3048;
export const kg_per_lb = 0.45359237;
export const m3_per_gal = 3.785411784e-3;
const m3_per_imperial_gal = 4.54609e-3;
const m_per_s2 = 9.80665;
const kg_m3_water = 1000;
const Pa_per_psi = (kg_per_lb * m_per_s2) / (m_per_in * m_per_in);

const length = dimension(
  'a length',
  'm',
  '3/8 in',
  [
    unit('in', 'US', 254, { over: 1e4, also: ['"', "''"] }),
    unit('ft', 'US', 3048, { over: 1e4, also: ["'"] }),
    unit('yd', 'US', 9144, { over: 1e4 }),
    unit('mi', 'US', 1609.344),
    unit('mil', 'US', 254, { over: 1e7 }),
    unit('mm', 'SI', 1, { over: 1e3 }),
    unit('cm', 'SI', 1, { over: 100 }),
    unit('m', 'SI', 1),
    unit('km', 'SI', 1e3),
  ],
  [['ft', 'in']],
);

const area = dimension('an area', 'm2', '40 ft2', [
  unit('ft2', 'US', m_per_ft ** 2),
  unit('in2', 'US', m_per_in ** 2),
  unit('m2', 'SI', 1),
  unit('cm2', 'SI', 1, { over: 1e4 }),
  unit('mm2', 'SI', 1, { over: 1e6 }),
]);

const volume = dimension('a volume', 'm3', '250 gal', [
  unit('gal', 'US', m3_per_gal),
  unit('qt', 'US', m3_per_gal, { over: 4 }),
  unit('pt', 'US', m3_per_gal, { over: 8 }),
  unit('fl oz', 'US', m3_per_gal, { over: 128 }),
  unit('imp gal', 'both', m3_per_imperial_gal),
  unit('ft3', 'US', m_per_ft ** 2 * m_per_ft),
  unit('in3', 'US', m_per_in ** 2 * m_per_in),
  unit('L', 'SI', 1, { over: 1e3 }),
  unit('mL', 'SI', 1, { over: 1e6 }),
  unit('m3', 'SI', 1),
  unit('cm3', 'SI', 1, { over: 1e6, also: ['cc'] }),
]);

const mass = dimension(
  'a mass',
  'kg',
  '60 kg',
  [
    unit('lb', 'US', kg_per_lb),
    unit('oz', 'US', kg_per_lb, { over: 16 }),
    unit('kg', 'SI', 1),
    unit('g', 'SI', 1, { over: 1e3 }),
    unit('t', 'SI', 1e3),
  ],
  [['lb', 'oz']],
);

const time = dimension(
  'a time',
  's',
  '8 min',
  [
    unit('s', 'both', 1),
    unit('min', 'both', 60),
    unit('h', 'both', 3600),
    unit('day', 'both', 86_400),
    unit('week', 'both', 604_800),
  ],
  [
    ['day', 'h', 'min', 's'],
    ['h', 'min', 's'],
    ['min', 's'],
  ],
);

const clock = dimension('a time of day', 's', '6:30 pm', []);

const flow = dimension('a flow', 'm3/s', '2.5 gpm', [
  unit('gpm', 'US', m3_per_gal, { over: 60, also: ['gal/min'] }),
  unit('gal/h', 'US', m3_per_gal, { over: 3600, also: ['gph'] }),
  unit('gal/day', 'US', m3_per_gal, { over: 86_400, also: ['gpd'] }),
  unit('ft3/min', 'US', m_per_ft ** 2 * m_per_ft, { over: 60, also: ['cfm'] }),
  unit('L/min', 'SI', 1, { over: 6e4, also: ['lpm'] }),
  unit('L/h', 'SI', 1, { over: 3.6e6, also: ['lph'] }),
  unit('L/day', 'SI', 1, { over: 8.64e7 }),
  unit('L/s', 'SI', 1, { over: 1e3 }),
  unit('m3/h', 'SI', 1, { over: 3600 }),
  unit('m3/s', 'SI', 1),
]);

const massFlow = dimension('a flow of mass', 'kg/s', '250 lb/h', [
  unit('lb/h', 'US', kg_per_lb, { over: 3600 }),
  unit('lb/min', 'US', kg_per_lb, { over: 60 }),
  unit('kg/s', 'SI', 1),
  unit('kg/min', 'SI', 1, { over: 60 }),
  unit('kg/h', 'SI', 1, { over: 3600 }),
  unit('g/s', 'SI', 1, { over: 1e3 }),
]);

const speed = dimension('a speed', 'm/s', '6 mph', [
  unit('ft/s', 'US', 3048, { over: 1e4, also: ['fps'] }),
  unit('ft/min', 'US', 3048, { over: 6e5 }),
  unit('mph', 'US', 1609.344, { over: 3600, also: ['mi/h'] }),
  unit('m/s', 'SI', 1),
  unit('km/h', 'SI', 1e3, { over: 3600, also: ['kph'] }),
]);

const pressure = dimension('a pressure', 'Pa', '45 psi', [
  unit('psi', 'US', Pa_per_psi, { also: ['lb/in2', 'lbf/in2', 'psig'] }),
  unit('ft of water', 'US', kg_m3_water * m_per_s2 * m_per_ft),
  unit('in of water', 'US', kg_m3_water * m_per_s2 * m_per_in),
  unit('kPa', 'SI', 1e3),
  unit('bar', 'SI', 1e5),
  unit('Pa', 'SI', 1),
  unit('hPa', 'SI', 100),
  unit('MPa', 'SI', 1e6),
  unit('mbar', 'SI', 100),
  unit('m of water', 'SI', kg_m3_water * m_per_s2),
  unit('cm of water', 'SI', kg_m3_water * m_per_s2, { over: 100 }),
]);

const degree = unit('deg', 'both', Math.PI, { over: 180 });
const arcs = [
  unit("'", 'both', Math.PI, { over: 180 * 60 }),
  unit('"', 'both', Math.PI, { over: 180 * 3600, also: ["''"] }),
];
const arcChain = [
  ['deg', "'", '"'],
  ['deg', "'"],
];
const angle = dimension('an angle', 'rad', '35 deg', [degree, unit('rad', 'both', 1), ...arcs], arcChain);
const latitude = dimension('a latitude', 'rad', '44.5 N', [degree, ...arcs], arcChain);
const longitude = dimension('a longitude', 'rad', '73 W', [degree, ...arcs], arcChain);

const share = dimension('a share', '1', '28 %', [unit('%', 'both', 1, { over: 100 })]);
const count = dimension('a number', '1', '6', []);

const density = dimension('a density', 'kg/m3', '0.85 kg/L', [
  unit('lb/ft3', 'US', kg_per_lb / (m_per_ft ** 2 * m_per_ft)),
  unit('lb/gal', 'US', kg_per_lb / m3_per_gal),
  unit('kg/m3', 'SI', 1),
  unit('kg/L', 'SI', 1e3),
  unit('g/cm3', 'SI', 1e3, { also: ['g/mL'] }),
]);

export const plainDimensions = {
  length,
  area,
  volume,
  mass,
  time,
  clock,
  flow,
  mass_flow: massFlow,
  speed,
  pressure,
  angle,
  latitude,
  longitude,
  share,
  count,
  density,
};
