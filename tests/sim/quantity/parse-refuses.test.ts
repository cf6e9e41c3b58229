/** What the parser refuses, and what it tells the writer to do. */
import { describe, expect, it } from 'vitest';
import { type DimensionKey, parseQuantity } from '../../../sim/quantity/index.ts';

const refused: Record<string, [text: string, key: DimensionKey, fix: RegExp][]> = {
  'a bare number': [
    ['50', 'length', /add the unit: one of in, ft, .*mm.*m/],
    ['3/8', 'length', /add the unit/],
    ['900', 'volume', /gal.*L/],
    ['120', 'temperature', /°F, °C, K/],
    ['0', 'temperature_difference', /°F, K/],
    ['5', 'power', /Btu\/h.*kW/],
    ['2.5', 'flow', /gpm.*L\/min/],
    ['20', 'resistance', /R-20.*m²·K\/W/],
    ['35', 'angle', /°, rad/],
    ['44', 'latitude', /N or S/],
    ['-73', 'longitude', /E or W/],
    ['0.28', 'share', /"0.28 %" or "28 %"/],
    ['1', 'share', /"1 %" or "100 %"/],
  ],
  'a comma': [
    ['1,5 m', 'length', /1\.5 or 15\?/],
    ['1,500 gal', 'volume', /1\.5 or 1500\?/],
    ['1,234,567 Btu', 'energy', /1234567\?/],
    ['1,234.5 gal', 'volume', /1234\.5\?/],
    ['5 ft, 6 in', 'length', /leave out the comma/],
    ['44,5 N', 'latitude', /44\.5 or 445/],
    ['1,5', 'count', /1\.5 or 15/],
  ],
  'no number': [
    ['', 'length', /write it, as in "3\/8 in"/],
    ['   ', 'length', /write it/],
    ['\u00a0', 'volume', /write it/],
    ['ft', 'length', /number and its unit/],
    ['ft 50', 'length', /number first/],
    ['about 50 ft', 'length', /number first/],
    ['~50 ft', 'length', /number first/],
    ['NaN m', 'length', /has an end/],
    ['Infinity m', 'length', /has an end/],
    ['-Infinity m', 'length', /has an end/],
    ['∞ m', 'length', /has an end/],
    ['R-', 'resistance', /number/],
    ['half', 'length', /number and its unit, as in "3\/8 in"/],
    ['half a dozen', 'length', /"dozen" is unknown/],
    ['some gallons', 'volume', /number and its unit, as in/],
    ['half past six', 'clock', /colon/],
    ['null', 'count', /number/],
  ],
  'a number that does not fit': [
    ['1e999 L', 'volume', /smaller number/],
    ['-1e999 L', 'volume', /smaller number/],
    ['1e308 km', 'length', /smaller number/],
    ['1e-999 L', 'volume', /0 or a larger/],
    ['1e-320 mil', 'length', /0 or a larger/],
    [`${'9'.repeat(400)} m`, 'length', /200 characters/],
    ['1/0 in', 'length', /over 0/],
    ['1 1/0 in', 'length', /over 0/],
    ['-500 F', 'temperature', /colder than -459\.67/],
    ['-1 K', 'temperature', /colder/],
  ],
  'more than one number': [
    ['10-12 ft', 'length', /one number/],
    ['10 to 12 ft', 'length', /not a range/],
    ['10 ft - 12 ft', 'length', /unit|range/],
    ['10 000 L', 'volume', /one number, without a space/],
    ['1.2.3 m', 'length', /one number/],
    ['1/2/3 in', 'length', /one number/],
    ['5 - 1/2 in', 'length', /one number/],
    ['--5 m', 'length', /number/],
    ['11/2 in', 'length', /whole number and a fraction/],
    ['1 3/2 in', 'length', /fraction below 1/],
    ['1.5 1/2 in', 'length', /one number/],
    ['3/8½ in', 'length', /one number/],
    ['½½ in', 'length', /one number/],
    ['5² in', 'length', /do you mean "in"/],
    ['½5 in', 'length', /one number/],
  ],
  'two units': [
    ['5 m ft', 'length', /one unit/],
    ['50 psi bar', 'pressure', /one unit/],
    ['5 m 3 cm', 'length', /large and small as in 5 ft 6 in/],
    ['6 in 5 ft', 'length', /large and small/],
    ['5 ft 6 ft', 'length', /large and small/],
    ["5'6", 'length', /unit behind each number/],
    ['1h30', 'time', /unit behind each number, as in 1 h 30 min/],
    ['5 ft 14 in', 'length', /a whole ft or more/],
    ['1 h 90 min', 'time', /a whole h or more/],
    ['5.5 ft 6 in', 'length', /only the last part/],
    ['R20 m2K/W', 'resistance', /leave out the R/],
    ['R-5 per inch', 'resistance', /leave out the R/],
    ['5 W W/W', 'power', /unknown/],
    ['2 x 50 ft', 'length', /one number and one unit/],
    ['2×4 in', 'length', /one number and one unit/],
    ['2 gal 3 L', 'volume', /one number and one unit/],
  ],
  'a unit of something else': [
    ['50 psi', 'length', /"psi" measures a pressure/],
    ['5 ft2', 'length', /measures an area/],
    ['5 ft3', 'length', /measures a volume/],
    ['8 m', 'time', /"m" measures a length/],
    ['5 kWh', 'power', /measures an energy/],
    ['5 kW', 'energy', /measures a power/],
    ['6 K', 'mass', /measures a temperature/],
    ['10 F°', 'temperature', /measures a temperature difference/],
    ['35 deg', 'temperature', /of which scale\? write F or C/],
    ['180°', 'temperature', /of which scale\? write F or C/],
    ['180 degrees', 'temperature', /of which scale\? write F or C/],
    ['10 degrees', 'temperature_difference', /of which scale/],
    ['35 deg C', 'angle', /measures a temperature/],
    ['0.035 W/(m K)', 'loss_coefficient', /measures a conductance per length/],
    ['40 MJ/L', 'heating_value', /by volume/],
    ['16 oz', 'volume', /measures a mass/],
    ['28 %', 'count', /leave out "%"/],
    ['6 people', 'count', /leave out "people"/],
  ],
  'an unknown unit': [
    ['50 fet', 'length', /do you mean "ft"/],
    ['50 inchs', 'length', /one of in, ft|"in"/],
    ['45 pis', 'pressure', /do you mean "psi"/],
    ['2.5 gmp', 'flow', /do you mean "gpm"/],
    ['20 kWt', 'power', /do you mean "kW"/],
    ['5 xyz', 'length', /"xyz" is unknown; use one of in, ft/],
    ['5 x', 'length', /"x" is unknown/],
    ['0x10 m', 'length', /one number and one unit/],
    ['5 furlongs', 'length', /unknown/],
    ['5 m (about)', 'length', /unknown/],
    ['1.3 W/(m2', 'loss_coefficient', /do you mean|unknown/],
    ['1.3 (W/m2) K', 'loss_coefficient', /do you mean|unknown/],
    ['5 /m', 'length', /unknown|do you mean/],
    ['5 $', 'length', /unknown/],
    ['5 m\u200b', 'length', /cannot be seen/], // zero-width space
    ['5\u0000 m', 'length', /cannot be seen/],
    ['5 m\ud800', 'length', /cannot be seen/], // half a letter
    ['5 __proto__', 'length', /unknown/],
    ['5 constructor', 'length', /unknown/],
    ['5 toString', 'count', /leave out/],
  ],
  'a unit whose capitals matter': [
    ['2 mW', 'power', /small and capital letters differ: "MW"/],
    ['2 mJ', 'energy', /small and capital letters differ/],
    ['2 ML', 'volume', /small and capital letters differ: "mL"/],
    ['2 Mm', 'length', /small and capital letters differ: "mm"/],
    ['2 mPa', 'pressure', /small and capital letters differ/],
    ['5 M', 'length', /small and capital letters differ: "m"/],
  ],
  'a unit that means two things': [
    ['4 MBtu/h', 'power', /thousand Btu to some and a million/],
    ['1 MBtu', 'energy', /write kBtu/],
    ['6 L/m', 'flow', /per minute or per metre/],
    ['2 gal/m', 'flow', /write gpm/],
    ['20 R', 'resistance', /"R-20"/],
    ['3.5 RSI', 'resistance', /"RSI-3\.5"/],
    ['2 tons', 'mass', /lb or kg/],
  ],
  'a time of day': [
    ['7', 'clock', /"7:00", "7 am" or "7 pm"/],
    ['midnight', 'clock', /"0:00".*"24:00"/],
    ['25:00', 'clock', /0:00 to 24:00/],
    ['24:01', 'clock', /0:00 to 24:00/],
    ['6:75', 'clock', /00 to 59/],
    ['13:00 pm', 'clock', /1 to 12/],
    ['0:30 am', 'clock', /1 to 12/],
    ['6.30', 'clock', /colon/],
    ['0630', 'clock', /colon/],
    ['6:3', 'clock', /colon/],
    ['-6:30', 'clock', /colon/],
    ['8 h', 'clock', /colon/],
  ],
  'a place': [
    ['44 E', 'latitude', /N or S/],
    ['73 N', 'longitude', /E or W/],
    ['91 N', 'latitude', /0 and 90/],
    ['181 W', 'longitude', /0 and 180/],
    ['-44 N', 'latitude', /leave out the sign or the N/],
    ['44 30 N', 'latitude', /one number/],
    ["44° 75' N", 'latitude', /whole deg or more/],
    ['N', 'latitude', /degrees/],
    ['north-ish', 'angle', /number/],
  ],
};

describe.each(Object.entries(refused))('%s', (_, rows) => {
  it.each(rows)('as in %j for a %s is refused with what to do', (text, key, fix) => {
    const read = parseQuantity(text, key);
    expect(read).toMatchObject({ ok: false, fix: expect.stringMatching(fix) });
  });
});

describe('a refusal', () => {
  it('says what was expected, what was found and what to do', () => {
    expect(parseQuantity('50 psi', 'length')).toEqual({
      ok: false,
      expected: 'a length as a number with its unit (in, ft, yd, mi, mil, mm, cm, m, km), as in "3/8 in"',
      got: '"50 psi"',
      fix: '"psi" measures a pressure; write it as in "3/8 in"',
    });
  });

  it('quotes a long text in short, on one line', () => {
    const read = parseQuantity(`5 a\n${'b'.repeat(150)}`, 'length');
    expect(read.ok ? '' : read.got).toBe(`"5 a ${'b'.repeat(53)}..."`);
  });

  it.each<[DimensionKey, RegExp]>([
    ['clock', /"6:30 pm" or "18:30"/],
    ['count', /without a unit/],
    ['latitude', /"44\.5 N"/],
    ['longitude', /"73 W"/],
    ['angle', /"35 deg" or "SSW"/],
  ])('for a %s shows how one is written', (key, expected) => {
    expect(parseQuantity('?', key)).toMatchObject({ expected: expect.stringMatching(expected) });
  });
});
