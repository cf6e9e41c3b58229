import { describe, expect, it } from 'vitest';
import { foot, inch, pound, sheetOf, sheetOfFile, withCoils } from './of-scenario.ts';

const gallon = 231 * inch ** 3;

describe('the filled store', () => {
  it('without coils weighs 8.34 lb a gallon and presses with 62.4 lb/ft2 a foot', () => {
    const { weight } = sheetOf(withCoils([]));
    // 48 x 36 x 32 in = 55296 in3 = 239.4 gal; 8.34 lb/gal is water at 15 C, a thousandth lighter than at 4 C.
    expect(weight.to_line_m3 / gallon).toBeCloseTo(55_296 / 231, 6);
    expect(weight.filled_kg / pound / (8.34 * (55_296 / 231))).toBeCloseTo(1, 2);
    const lb_ft2 = (pound * 9.80665) / foot ** 2;
    expect(weight.base_Pa / lb_ft2 / (62.4 * (32 / 12))).toBeCloseTo(1, 2);
    // Walls of 3/4 in and 3 1/2 in of batts around: 56.5 x 44.5 in.
    expect(weight.footprint_m2 / foot ** 2).toBeCloseTo((56.5 * 44.5) / 144, 6);
    expect(weight.floor_Pa).toBeCloseTo((weight.filled_kg * 9.80665) / weight.footprint_m2, 9);
  });

  it('with coils has less water and their copper', () => {
    const { weight, coils } = sheetOfFile('demo');
    const outside_m3 = (Math.PI / 4) * ((0.875 * inch) ** 2 * 180 * foot + (0.5 * inch) ** 2 * 50 * foot);
    expect(weight.to_line_m3 / gallon).toBeCloseTo(55_296 / 231, 6);
    expect(weight.water_kg).toBeCloseTo((55_296 * inch ** 3 - outside_m3) * 999.97, 1);
    // 180 ft of 3/4 in type L at 0.455 lb and 50 ft of refrigeration tube at 0.182 lb (tables, from memory).
    const copper_lb = coils.reduce((sum, { mass_kg }) => sum + mass_kg, 0) / pound;
    expect(Math.abs(copper_lb / (180 * 0.455 + 50 * 0.182) - 1)).toBeLessThan(0.01);
    // Copper sinks: the store gains its weight less that of its own volume of water.
    const empty = sheetOf(withCoils([])).weight.filled_kg;
    const copper_m3 = (copper_lb * pound) / 8940;
    expect(weight.filled_kg - empty).toBeCloseTo(copper_lb * pound - copper_m3 * 1000, 0);
  });
});
