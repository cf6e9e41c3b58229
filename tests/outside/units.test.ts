/**
 * Conversion factors against the printed ones. Source of all: NIST Special Publication 811 (2008), appendix B.8,
 * seven digits, from memory; the table's row stands beside each.
 */
import { describe, it } from 'vitest';
import { type DimensionKey, parseQuantity } from '../../sim/quantity/index.ts';
import { expectWithin } from './near.ts';

describe('one unit in SI', () => {
  it.each<[string, DimensionKey, number, string]>([
    ['1 ft', 'length', 0.3048, 'foot'],
    ['1 in', 'length', 0.0254, 'inch'],
    ['1 mil', 'length', 2.54e-5, 'mil (0.001 in)'],
    ['1 mi', 'length', 1609.344, 'mile'],
    ['1 ft2', 'area', 9.290304e-2, 'square foot'],
    ['1 in2', 'area', 6.4516e-4, 'square inch'],
    ['1 gal', 'volume', 3.785412e-3, 'gallon (U.S.)'],
    ['1 imp gal', 'volume', 4.54609e-3, 'gallon (Canadian and U.K. (Imperial))'],
    ['1 fl oz', 'volume', 2.957353e-5, 'ounce (U.S. fluid)'],
    ['1 qt', 'volume', 9.463529e-4, 'quart (U.S. liquid)'],
    ['1 ft3', 'volume', 2.831685e-2, 'cubic foot'],
    ['1 lb', 'mass', 0.4535924, 'pound (avoirdupois)'],
    ['1 oz', 'mass', 2.834952e-2, 'ounce (avoirdupois)'],
    ['1 gpm', 'flow', 6.30902e-5, 'gallon (U.S.) per minute'],
    ['1 gal/day', 'flow', 4.381264e-8, 'gallon (U.S.) per day'],
    ['1 cfm', 'flow', 4.719474e-4, 'cubic foot per minute'],
    ['1 lb/h', 'mass_flow', 1.259979e-4, 'pound per hour'],
    ['1 mph', 'speed', 0.44704, 'mile per hour'],
    ['1 psi', 'pressure', 6894.757, 'psi (pound-force per square inch)'],
    ['1 ft of water', 'pressure', 2989.067, 'foot of water, conventional'],
    ['1 in of water', 'pressure', 249.0889, 'inch of water, conventional'],
    ['1 m of water', 'pressure', 9806.65, 'meter of water, conventional'],
    ['1 Btu', 'energy', 1055.056, 'British thermal unit (IT)'],
    ['1 kcal', 'energy', 4186.8, 'kilocalorie (IT)'],
    ['1 kWh', 'energy', 3.6e6, 'kilowatt hour'],
    ['1 Btu/h', 'power', 0.2930711, 'Btu (IT) per hour'],
    ['1 hp', 'power', 745.6999, 'horsepower (550 ft lbf/s)'],
    ['1 Btu/F', 'heat_capacity', 1899.101, 'Btu (IT) per degree Fahrenheit'],
    ['1 Btu/(h F)', 'conductance', 0.5275279, 'Btu (IT) per hour degree Fahrenheit'],
    ['1 Btu/(h ft2 F)', 'loss_coefficient', 5.678263, 'Btu (IT) per hour square foot degree Fahrenheit'],
    ['1 Btu/(h ft F)', 'conductivity', 1.730735, 'Btu (IT) foot per hour square foot degree Fahrenheit'],
    ['1 Btu in/(h ft2 F)', 'conductivity', 0.1442279, 'Btu (IT) inch per hour square foot degree Fahrenheit'],
    ['R-1', 'resistance', 0.1761102, 'degree Fahrenheit hour square foot per Btu (IT)'],
    ['1 Btu/(h ft2)', 'irradiance', 3.154591, 'Btu (IT) per square foot hour'],
    ['1 Btu/ft2 per day', 'insolation', 1.135653e4, 'Btu (IT) per square foot'],
    ['1 Btu/lb', 'heating_value', 2326, 'Btu (IT) per pound'],
    ['1 lb/ft3', 'density', 16.01846, 'pound per cubic foot'],
    ['1 lb/gal', 'density', 119.8264, 'pound per gallon (U.S.)'],
    ['1 F', 'temperature_difference', 0.5555556, 'degree Fahrenheit, interval'],
  ])('of %s as %s is %f, as printed for the %s', (text, key, printed) => {
    const read = parseQuantity(text, key);
    if (!read.ok) throw new Error(`${text} is refused: ${read.fix}`);
    // Half a unit of the seventh digit.
    expectWithin(read.value, printed, 5e-7);
  });
});

describe('temperature', () => {
  // Freezing and boiling of water on both scales, and where they meet: common knowledge.
  it.each([
    ['32 F', 0],
    ['212 F', 100],
    ['-40 F', -40],
    ['98.6 F', 37],
    ['273.15 K', 0],
  ])('of %s is %f C', (text, celsius) => {
    const read = parseQuantity(text, 'temperature');
    if (!read.ok) throw new Error(`${text} is refused: ${read.fix}`);
    expectWithin(read.value + 273.15, celsius + 273.15, 1e-12);
  });
});
