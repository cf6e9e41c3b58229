/** What the parser reads, against hand arithmetic on the definitions of the units. */
import { describe, expect, it } from 'vitest';
import { type DimensionKey, parseQuantity } from '../../../sim/quantity/index.ts';

// Definitions, as numbers on purpose: inch 0.0254 m, foot 0.3048 m, pound 0.45359237 kg, US gallon 3.785411784 L,
// imperial gallon 4.54609 L, Btu(IT) 1055.05585262 J. What follows from them stands beside each group.
const accepted: Record<string, [text: string, SI: number][]> = {
  length: [
    ['3/8 in', 0.009525], // 0.375 x 0.0254
    ['3/8"', 0.009525],
    ['3 / 8 in', 0.009525],
    ['1 1/2 in', 0.0381],
    ['1-1/2 in', 0.0381],
    ['1½ in', 0.0381],
    ['1½"', 0.0381],
    ['1-½"', 0.0381],
    ['½ in', 0.0127],
    ['½ inch', 0.0127],
    ['⅝ in.', 0.015875],
    ['7⁄8 in', 0.022225], // fraction slash
    ['-1 1/2 in', -0.0381],
    ['−½ in', -0.0127], // minus sign
    ['50 ft', 15.24],
    ['50 FT', 15.24],
    ['50 feet', 15.24],
    ['50-ft', 15.24],
    ['3/4-inch', 0.01905],
    ['5-1/2-in', 0.1397],
    ['1 foot', 0.3048],
    ["6'", 1.8288],
    ['6′', 1.8288], // prime
    ['5\' 6"', 1.6764], // 66 in
    ['5’6”', 1.6764],
    ['5′ 6½″', 1.6891], // 66.5 in
    ['5\'-6 1/2"', 1.6891],
    ["5' 6''", 1.6764],
    ['5 ft 6 in', 1.6764],
    ['5ft6in', 1.6764],
    ['5 ft. 6 in.', 1.6764],
    ['-5 ft 6 in', -1.6764],
    ['5 ft 0 in', 1.524],
    ['0 ft', 0],
    ['2 yd', 1.8288],
    ['1 mi', 1609.344],
    ['45 mil', 0.001143], // 45 x 0.0000254
    ['12 mm', 0.012],
    ['12mm', 0.012],
    ['1.5 m', 1.5],
    ['1.5 metres', 1.5],
    ['.5 m', 0.5],
    ['5. m', 5],
    ['90 cm', 0.9],
    ['2 km', 2000],
    ['1e-3 m', 0.001],
    ['+3 m', 3],
    ['10\u00a0mm', 0.01], // no-break space
    ['10\u202fmm', 0.01], // narrow no-break space
    ['  3\t m ', 3],
  ],
  area: [
    ['40 ft2', 3.7161216], // 40 x 0.09290304
    ['40 ft²', 3.7161216],
    ['40 ft^2', 3.7161216],
    ['40 sq ft', 3.7161216],
    ['40 sq. ft.', 3.7161216],
    ['40 sqft', 3.7161216],
    ['40 square feet', 3.7161216],
    ['10 in²', 0.0064516],
    ['2.5 m²', 2.5],
    ['2.5 square metres', 2.5],
    ['100 cm2', 0.01],
  ],
  volume: [
    ['250 gal', 946.352946e-3],
    ['250 gallons', 946.352946e-3],
    ['250 US gal', 946.352946e-3],
    ['250 U.S. gallons', 946.352946e-3],
    ['10 imp gal', 45.4609e-3],
    ['10 imperial gallons', 45.4609e-3],
    ['10 UK gal', 45.4609e-3],
    ['1 qt', 0.946352946e-3],
    ['1 pint', 0.473176473e-3],
    ['16 fl oz', 0.473176473e-3],
    ['16 fl. oz.', 0.473176473e-3],
    ['1 cu ft', 28.316846592e-3],
    ['900 L', 0.9],
    ['900 l', 0.9],
    ['900 litres', 0.9],
    ['1e3 L', 1],
    ['1.5E3L', 1.5],
    ['250 mL', 0.25e-3],
    ['250 ml', 0.25e-3],
    ['0.9 m³', 0.9],
    ['5 cc', 5e-6],
  ],
  mass: [
    ['60 kg', 60],
    ['130 lb', 58.9670081],
    ['130 lbs', 58.9670081],
    ['8 oz', 0.226796185],
    ['7 lb 4 oz', 3.2885446825], // 7.25 lb
    ['500 g', 0.5],
    ['1.2 t', 1200],
  ],
  time: [
    ['8 min', 480],
    ['8 minutes', 480],
    ['90 s', 90],
    ['90 sec', 90],
    ['2 h', 7200],
    ['2 hrs', 7200],
    ['1 h 30 min', 5400],
    ['1h30min', 5400],
    ['1 day 2 h', 93_600],
    ['2 min 30 s', 150],
    ['7 days', 604_800],
    ['1 week', 604_800],
    ['-5 h', -18_000],
    ['-3 h 30 min', -12_600],
  ],
  clock: [
    ['6:30', 23_400],
    ['6:30 pm', 66_600],
    ['6:30pm', 66_600],
    ['6:30 P.M.', 66_600],
    ['18:30', 66_600],
    ['06:30:15', 23_415],
    ['7 am', 25_200],
    ['12:30 am', 1800],
    ['12 pm', 43_200],
    ['noon', 43_200],
    ['0:00', 0],
    ['24:00', 86_400],
  ],
  flow: [
    ['2.5 gpm', 1.57725491e-4], // 2.5 x 3.785411784e-3 / 60
    ['2.5 GPM', 1.57725491e-4],
    ['2.5 gal/min', 1.57725491e-4],
    ['2.5 gallons per minute', 1.57725491e-4],
    ['0.4 gal/h', 4.20601309e-7],
    ['0.4 gph', 4.20601309e-7],
    ['0.4 gal/hr', 4.20601309e-7],
    ['6 L/min', 1e-4],
    ['6 lpm', 1e-4],
    ['6 litres per minute', 1e-4],
    ['36 L/h', 1e-5],
    ['0.1 L/s', 1e-4],
    ['3.6 m³/h', 1e-3],
    ['86.4 L/day', 1e-6],
    ['60 cfm', 0.028316846592],
  ],
  mass_flow: [
    ['360 lb/h', 0.045359237],
    ['0.05 kg/s', 0.05],
    ['180 kg/h', 0.05],
    ['50 g/s', 0.05],
  ],
  speed: [
    ['10 mph', 4.4704],
    ['5 ft/s', 1.524],
    ['5 fps', 1.524],
    ['36 km/h', 10],
    ['3 m/s', 3],
  ],
  pressure: [
    ['45 psi', 310_264.0782], // 45 x 6894.757293
    ['45 PSI', 310_264.0782],
    ['45 lb/in²', 310_264.0782],
    ['10 ft of water', 29_890.6692], // 10 x 0.3048 x 9806.65
    ['10 ft of head', 29_890.6692],
    ['10 ftH2O', 29_890.6692],
    ['1 in of water', 249.08891],
    ['2 m of water', 19_613.3],
    ['2 bar', 200_000],
    ['300 kPa', 300_000],
    ['0.3 MPa', 300_000],
    ['200 mbar', 20_000],
    ['5 Pa', 5],
  ],
  temperature: [
    ['120 F', 440 / 9], // 88 x 5/9
    ['120F', 440 / 9],
    ['120 °F', 440 / 9],
    ['120° F', 440 / 9],
    ['120 ° F', 440 / 9],
    ['120 ºF', 440 / 9], // masculine ordinal
    ['120 ℉', 440 / 9],
    ['120 deg F', 440 / 9],
    ['120 degF', 440 / 9],
    ['120 degrees F', 440 / 9],
    ['120 degrees Fahrenheit', 440 / 9],
    ['10 F', -110 / 9],
    ['212 F', 100],
    ['-40 F', -40],
    ['−40 °C', -40],
    ['82 C', 82],
    ['82 °C', 82],
    ['82 celsius', 82],
    ['300 K', 26.85],
    ['0 K', -273.15],
  ],
  temperature_difference: [
    ['10 F', 50 / 9],
    ['10 °F', 50 / 9],
    ['10 F°', 50 / 9],
    ['10 degF', 50 / 9],
    ['0 F', 0],
    ['6 K', 6],
    ['6 C', 6],
    ['6 C°', 6],
    ['-4.5 K', -4.5],
  ],
  power: [
    ['5 kW', 5000],
    ['5 KW', 5000],
    ['5 kilowatts', 5000],
    ['800 W', 800],
    ['12000 Btu/h', 3516.85284207], // 12000 x 0.29307107017
    ['12000 BTU/hr', 3516.85284207],
    ['12000 Btuh', 3516.85284207],
    ['12 kBtu/h', 3516.85284207],
    ['12000 Btu per hour', 3516.85284207],
    ['1 MW', 1e6],
    ['2 hp', 1491.39974], // 2 x 745.69987158
  ],
  electric_power: [
    ['90 W', 90],
    ['2.5 kW', 2500],
  ],
  energy: [
    ['20 kWh', 7.2e7],
    ['20 kW h', 7.2e7],
    ['20 kW·h', 7.2e7],
    ['20 kilowatt-hours', 7.2e7],
    ['500 Wh', 1.8e6],
    ['3 MJ', 3e6],
    ['1000 Btu', 1_055_055.85262],
    ['1 kBtu', 1_055_055.85262],
    ['7 J', 7],
  ],
  electric_energy: [['1.2 kWh', 4.32e6]],
  conductance: [
    ['300 W/K', 300],
    ['300 W/°C', 300],
    ['0.3 kW/K', 300],
    ['100 Btu/h.F', 52.7527926], // 100 x 0.29307107 x 1.8
    ['100 Btu/(h·°F)', 52.7527926],
    ['100 BTU/hr-F', 52.7527926],
  ],
  conductance_per_length: [
    ['0.25 W/(m K)', 0.25],
    ['0.25 W/mK', 0.25],
    ['0.25 W/m.K', 0.25],
    ['0.25 W·m⁻¹·K⁻¹', 0.25],
    ['0.25 W m-1 K-1', 0.25],
    ['1 Btu/h.ft.F', 1.730734666],
  ],
  conductivity: [
    ['0.035 W/m·K', 0.035],
    ['1 Btu·in/(h·ft²·°F)', 0.144227889],
  ],
  loss_coefficient: [
    ['1.3 W/(m2 K)', 1.3],
    ['1.3 W/m2.K', 1.3],
    ['1.3 W/m²K', 1.3],
    ['1.3 W/m2/K', 1.3],
    ['1.3 W/m²·°C', 1.3],
    ['1.3 watts per square metre per kelvin', 1.3],
    ['1 Btu/h.ft2.F', 5.678263341],
    ['1 BTU/hr-ft²-°F', 5.678263341],
  ],
  loss_second: [
    ['0.006 W/(m2 K2)', 0.006],
    ['0.006 W/m²K²', 0.006],
  ],
  resistance: [
    ['R-20', 3.522203674], // 20 x 0.17611018368
    ['R20', 3.522203674],
    ['r 20', 3.522203674],
    ['R−20', 3.522203674],
    ['20 h.ft2.F/Btu', 3.522203674],
    ['20 ft²·°F·h/Btu', 3.522203674],
    ['RSI-3.5', 3.5],
    ['3.5 m2.K/W', 3.5],
    ['3.5 m²K/W', 3.5],
    ['3.5 (m² K)/W', 3.5],
  ],
  fouling: [
    ['0.0001 m2 K/W', 0.0001],
    ['0.0001 m2K/W', 0.0001],
    ['0.001 h ft2 F/Btu', 1.7611018368e-4],
  ],
  heat_capacity: [
    ['30 kJ/K', 30_000],
    ['10 Btu/F', 18_991.005347], // 10 x 1055.05585262 x 1.8
    ['1 kWh/K', 3.6e6],
  ],
  heat_capacity_per_area: [
    ['8 kJ/(m2 K)', 8000],
    ['8 kJ/m²K', 8000],
  ],
  irradiance: [
    ['800 W/m2', 800],
    ['0.8 kW/m²', 800],
    ['100 Btu/h.ft2', 315.459074],
  ],
  insolation: [
    ['2.1 kWh/m2 per day', 7.56e6],
    ['2.1 kWh/m²/day', 7.56e6],
    ['2.1 kWh/m2.d', 7.56e6],
    ['1000 Btu/ft2 per day', 1.135652668e7], // 1000 x 1055.05585262 / 0.09290304
    ['7.56 MJ/m2 per day', 7.56e6],
  ],
  angle: [
    ['35 deg', (35 * Math.PI) / 180],
    ['35°', (35 * Math.PI) / 180],
    ['35 degrees', (35 * Math.PI) / 180],
    ["35° 30'", (35.5 * Math.PI) / 180],
    ['0.6 rad', 0.6],
    ['N', 0],
    ['NNE', Math.PI / 8],
    ['south', Math.PI],
    ['due south', Math.PI],
    ['SW', 1.25 * Math.PI],
    ['south-west', 1.25 * Math.PI],
    ['W', 1.5 * Math.PI],
    ['20 deg east of south', (160 * Math.PI) / 180],
    ['20° W of S', (200 * Math.PI) / 180],
    ['10 deg west of north', (350 * Math.PI) / 180],
  ],
  latitude: [
    ['44.5 N', (44.5 * Math.PI) / 180],
    ['44.5° N', (44.5 * Math.PI) / 180],
    ['N 44.5', (44.5 * Math.PI) / 180],
    ["44° 30' N", (44.5 * Math.PI) / 180],
    ['44° 30′ 36″ N', (44.51 * Math.PI) / 180],
    ['33 south', (-33 * Math.PI) / 180],
    ['-33 deg', (-33 * Math.PI) / 180],
    ['90 N', Math.PI / 2],
  ],
  longitude: [
    ['73 W', (-73 * Math.PI) / 180],
    ['73W', (-73 * Math.PI) / 180],
    ['73E', (73 * Math.PI) / 180],
    ['180 E', Math.PI],
  ],
  share: [
    ['28 %', 0.28],
    ['28%', 0.28],
    ['28 percent', 0.28],
    ['28 per cent', 0.28],
    ['1/4', 0.25],
    ['½', 0.5],
    ['110 %', 1.1],
  ],
  count: [
    ['6', 6],
    ['2.5', 2.5],
    ['1/2', 0.5],
    ['-3', -3],
  ],
  density: [
    ['0.85 kg/L', 850],
    ['850 kg/m³', 850],
    ['0.85 g/mL', 850],
    ['7 lb/gal', 838.784946],
    ['62.4 lb/ft3', 999.5521],
  ],
  heating_value: [
    ['42.8 MJ/kg', 42.8e6],
    ['18400 Btu/lb', 4.27984e7], // 2326 J/kg exactly
  ],
  heating_value_by_volume: [
    ['129000 Btu/gal', 3.59544e10],
    ['36 MJ/L', 3.6e10],
  ],
};

describe.each(Object.entries(accepted))('%s', (key, rows) => {
  it.each(rows)('reads %j as %f', (text, SI) => {
    const read = parseQuantity(text, key as DimensionKey);
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    // Factors above are given with at least seven digits.
    expect(Math.abs(read.value - SI)).toBeLessThanOrEqual(1e-6 * Math.abs(SI) + (SI === -273.15 ? 0 : 1e-15));
  });

  it.each(rows)('echoes %j so that it reads the same', (text) => {
    const read = parseQuantity(text, key as DimensionKey);
    if (!read.ok) throw new Error(`${text} is refused: ${read.fix}`);
    expect(parseQuantity(read.echo, key as DimensionKey)).toMatchObject({ ok: true, value: read.value });
  });
});

describe('an exact value', () => {
  it.each<[string, DimensionKey, number]>([
    ['3/8 in', 'length', 0.009525],
    ['5\' 6"', 'length', 1.6764],
    ['12 mm', 'length', 0.012],
    ['212 F', 'temperature', 100],
    ['-40 F', 'temperature', -40],
    ['18 F', 'temperature_difference', 10],
    ['900 L', 'volume', 0.9],
    ['6 L/min', 'flow', 1e-4],
    ['28 %', 'share', 0.28],
  ])('%s has no rounding in it', (text, key, SI) => {
    expect(parseQuantity(text, key)).toMatchObject({ value: SI });
  });
});

describe('the unit', () => {
  it.each<[string, DimensionKey, string, string]>([
    ['3/8"', 'length', 'in', '0.375 in'],
    ['120 deg F', 'temperature', '°F', '120 °F'],
    ['1.3 W/m2K', 'loss_coefficient', 'W/(m²·K)', '1.3 W/(m²·K)'],
    ['2 US gal', 'volume', 'gal', '2 gal'],
    ['r20', 'resistance', 'h·ft²·°F/Btu', 'R-20'],
    ['5ft6in', 'length', 'in', '5 ft 6 in'],
    ['6:30 pm', 'clock', '', '18:30'],
    ['SSW', 'angle', '°', '202.5°'],
  ])('of %s is told back', (text, key, unit, echo) => {
    expect(parseQuantity(text, key)).toMatchObject({ unit, echo });
  });
});
