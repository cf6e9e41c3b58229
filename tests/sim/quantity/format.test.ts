import { describe, expect, it } from 'vitest';
import { type DimensionKey, formatBoth, formatQuantity, formatTape } from '../../../sim/quantity/index.ts';

describe('formatQuantity', () => {
  // SI value, dimension, US text, SI text: by hand from the definitions of the units.
  it.each<[number, DimensionKey, string, string]>([
    [0.009525, 'length', '0.375 in', '9.53 mm'],
    [0.9143, 'length', '36 in', '914 mm'],
    [15.24, 'length', '50 ft', '15.2 m'],
    [0, 'length', '0 in', '0 mm'],
    [3.7161216, 'area', '40 ft²', '3.72 m²'],
    [0.946352946, 'volume', '250 gal', '946 L'],
    [60, 'mass', '132 lb', '60 kg'],
    [90, 'time', '90 s', '90 s'],
    [480, 'time', '8 min', '8 min'],
    [27_000, 'time', '7.5 h', '7.5 h'],
    [-18_000, 'time', '-5 h', '-5 h'],
    // Absorbers of evacuated tubes, a row of them: 0.06 m2 is 93 in2, 0.1 m2 is 155.
    [0.06, 'area', '0.646 ft²', '0.06 m²'],
    [0.1, 'area', '1.08 ft²', '0.1 m²'],
    [604_800, 'time', '7 days', '7 days'],
    [190_944, 'time', '2.21 days', '2.21 days'],
    [172_800, 'time', '2 days', '2 days'],
    [66_600, 'clock', '6:30 pm', '18:30'],
    [1800, 'clock', '12:30 am', '0:30'],
    [43_200, 'clock', 'noon', '12:00'],
    [86_400, 'clock', '24:00', '24:00'],
    [23_415, 'clock', '6:30:15 am', '6:30:15'],
    [90_000, 'clock', '1:00 am', '1:00'],
    [1.57725491e-4, 'flow', '2.5 gpm', '9.46 L/min'],
    [4.20601309e-7, 'flow', '0.4 gal/h', '1.51 L/h'],
    [310_264.0782, 'pressure', '45 psi', '310 kPa'],
    [440 / 9, 'temperature', '120 °F', '48.9 °C'],
    [-17.4, 'temperature', '0.7 °F', '-17.4 °C'],
    [0.04, 'temperature', '32.1 °F', '0 °C'],
    [-0.04, 'temperature', '31.9 °F', '0 °C'],
    [50 / 9, 'temperature_difference', '10 °F', '5.56 K'],
    [5000, 'power', '17.1 kBtu/h', '5 kW'],
    [500, 'power', '1710 Btu/h', '500 W'],
    [5000, 'electric_power', '5 kW', '5 kW'],
    [7.2e7, 'energy', '68.2 kBtu', '20 kWh'],
    [7.2e7, 'electric_energy', '20 kWh', '20 kWh'],
    [52.7527926, 'conductance', '100 Btu/(h·°F)', '52.8 W/K'],
    [1.3, 'loss_coefficient', '0.229 Btu/(h·ft²·°F)', '1.3 W/(m²·K)'],
    [3.522203674, 'resistance', 'R-20', '3.52 m²·K/W'],
    [0.0001, 'fouling', '0.000568 h·ft²·°F/Btu', '0.0001 m²·K/W'],
    [7.56e6, 'insolation', '666 Btu/ft² per day', '2.1 kWh/m² per day'],
    [Math.PI / 6, 'angle', '30°', '30°'],
    [-0.5759586531581288, 'latitude', '33° S', '33° S'],
    [-1.2740903539558606, 'longitude', '73° W', '73° W'],
    [0.28, 'share', '28 %', '28 %'],
    [12_345, 'count', '12345', '12345'],
    [2, 'speed', '6.56 ft/s', '2 m/s'],
  ])('prints %f as %s in both systems', (value, key, inUS, inSI) => {
    expect([formatQuantity(value, key, 'US'), formatQuantity(value, key, 'SI')]).toEqual([inUS, inSI]);
  });

  it('rounds once, by digits or by places', () => {
    // 0.108945 degrees: to five digits first it would round up twice.
    expect(formatQuantity((0.108945 * Math.PI) / 180, 'latitude', 'SI', { digits: 5 })).toBe('0.1089° N');
  });

  it('keeps as many digits as it is asked for', () => {
    expect(formatQuantity(440 / 9, 'temperature', 'SI', { digits: 5 })).toBe('48.889 °C');
    expect(formatQuantity(1234.56, 'mass', 'SI', { digits: 2 })).toBe('1200 kg');
  });

  it('prints in ASCII where asked to', () => {
    expect(formatQuantity(1.3, 'loss_coefficient', 'SI', { plain: true })).toBe('1.3 W/(m2 K)');
    expect(formatQuantity(440 / 9, 'temperature', 'US', { plain: true })).toBe('120 F');
    expect(formatQuantity(Math.PI / 6, 'angle', 'US', { plain: true })).toBe('30 deg');
    expect(formatQuantity(0.767944870877505, 'latitude', 'US', { plain: true })).toBe('44 N');
  });

  it('says that what is no number is unknown', () => {
    expect(formatQuantity(Number.NaN, 'length', 'US')).toBe('unknown');
    expect(formatQuantity(Number.POSITIVE_INFINITY, 'clock', 'SI')).toBe('unknown');
  });
});

describe('formatBoth', () => {
  it('puts SI in brackets behind US', () => {
    expect(formatBoth(440 / 9, 'temperature')).toBe('120 °F (48.9 °C)');
    expect(formatBoth(50 / 9, 'temperature_difference', { plain: true })).toBe('10 F (5.56 K)');
  });

  it('says once what is the same in both', () => {
    expect(formatBoth(480, 'time')).toBe('8 min');
    expect(formatBoth(0.28, 'share')).toBe('28 %');
  });
});

describe('formatTape', () => {
  it.each([
    [0, '0 in'],
    [0.0254 * 24.375, '24 3/8 in'],
    [0.0254 * 24.4, '24 3/8 in'],
    [0.0254 * 24.99, '25 in'],
    [0.0254 * 0.5, '1/2 in'],
    [0.0254 * 0.0625, '1/16 in'],
    [0.0254 * 0.01, '0 in'],
    [-0.0254 * 0.01, '0 in'],
    [-0.0254 * 1.75, '-1 3/4 in'],
    [1, '39 3/8 in'], // 39.370 in
    [Number.NaN, 'unknown'],
  ])('shows %f m as %s', (metres, text) => {
    expect(formatTape(metres)).toBe(text);
  });
});
