import { describe, expect, it } from 'vitest';
import type { TubeCut } from '../../../../sim/answers/sheet/index.ts';
import { foot, sheetOf, sheetOfFile, withCoils } from './of-scenario.ts';

const L = (size: string) => ({ kind: 'plumbing L' as const, size });
const feet = (value_m: number) => Number((value_m / foot).toFixed(6));
const shopping = ({ buy, left_m }: TubeCut) => ({
  buy: buy.map(({ count, of_m, sold }) => `${count} ${sold} of ${feet(of_m)} ft`),
  left: left_m.map(feet),
});
/** Wide, flat coils: any length fits. */
const coil = (size: string, roll_length: string, rolls = 1) => ({
  tube: L(size),
  roll_length,
  rolls,
  ...(rolls > 1 ? { join: 'series' as const } : {}),
  coil_diameter: '30 in',
  pitch: '1 in',
  from: '1 in',
});

describe('the cut list of tube', () => {
  // By hand, from rolls of 60 and 100 ft.
  it.each([
    ['a roll as it is sold', [coil('1/2 in', '60 ft')], ['1 roll of 60 ft'], []],
    ['two of them', [coil('1/2 in', '60 ft', 2)], ['2 roll of 60 ft'], []],
    // 55 ft do not fit twice into 100, so each takes a roll of 60: 120 bought; or two of 100: 200.
    ['two pieces of 55 ft', [coil('1/2 in', '55 ft', 2)], ['2 roll of 60 ft'], [5, 5]],
    // Two of 48 make 96 of one roll of 100; by sixties it would be two rolls.
    ['two pieces of 48 ft', [coil('1/2 in', '48 ft', 2)], ['1 roll of 100 ft'], [4]],
    // 45 + 15 = 60, exactly a roll; 100 would leave 40.
    ['45 ft and 15 ft', [coil('1/2 in', '45 ft'), coil('1/2 in', '15 ft')], ['1 roll of 60 ft'], []],
    // 80 is in no sixty; 100 leaves 20.
    ['80 ft', [coil('1/2 in', '80 ft')], ['1 roll of 100 ft'], [20]],
    [
      'whole rolls beside a piece',
      [coil('1/2 in', '60 ft'), coil('1/2 in', '20 ft')],
      ['2 roll of 60 ft'],
      [40],
    ],
  ])('buys for %s', (_, coils, buy, left) => {
    const { tubes } = sheetOf(withCoils(coils));
    expect(tubes.map(shopping)).toEqual([{ buy, left }]);
  });

  it('bought is what is cut and what is left over', () => {
    const pieces = [57, 41, 33, 28, 12].map((length) => coil('1/2 in', `${length} ft`));
    const [{ buy, length_m, left_m }] = sheetOf(withCoils(pieces)).tubes;
    const all_m = buy.reduce((sum, { count, of_m }) => sum + count * of_m, 0);
    expect(feet(length_m)).toBe(171);
    expect(all_m - left_m.reduce((sum, each) => sum + each, 0)).toBeCloseTo(length_m, 9);
  });

  it('keeps sizes apart, and buys to measure what no roll holds or no trade is known of', () => {
    const own = { kind: 'own' as const, material: 'copper', outside: '5/8 in', inside: '0.545 in' };
    const { tubes } = sheetOf(
      withCoils([
        coil('1/2 in', '130 ft'),
        coil('3/8 in', '60 ft'),
        { ...coil('1/2 in', '20 ft'), tube: own },
      ]),
    );
    expect(tubes.map(shopping).map(({ buy }) => buy[0])).toEqual([
      '1 null of 130 ft',
      '1 roll of 60 ft',
      '1 null of 20 ft',
    ]);
  });

  it('cuts the pipe to the taps from the rolls of its own kind', () => {
    const [household, panels] = sheetOfFile('tote-sun').tubes;
    expect(household.pieces.map(({ coil }) => coil)).toEqual(['household', null]);
    // Three whole rolls of 100 ft and a fourth, of which the usual 30 ft of pipe leave 70.
    expect(shopping(household)).toEqual({ buy: ['4 roll of 100 ft'], left: [70] });
    // Type M comes hard, by 20 ft: two pieces of 60 are bought to measure.
    expect(shopping(panels).buy).toEqual(['2 null of 60 ft']);
    const demo = sheetOfFile('demo').tubes;
    expect(demo.map(shopping)).toEqual([
      { buy: ['3 roll of 60 ft'], left: [] },
      { buy: ['1 roll of 50 ft'], left: [] },
      { buy: ['1 roll of 100 ft'], left: [75] },
    ]);
  });
});
