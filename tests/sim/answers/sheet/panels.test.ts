import { describe, expect, it } from 'vitest';
import { foot, inch, sheetOf, sheetOfFile, withCoils } from './of-scenario.ts';

const square_inches = (area_m2: number) => area_m2 / inch ** 2;
const sized = ({ count, length_m, width_m }: { count: number; length_m: number; width_m: number }) =>
  [count, ...[length_m, width_m].map((each) => Number((each / inch).toFixed(4)))].join(' x ');

describe('the cut list of sheets', () => {
  const { panels, store } = sheetOfFile('demo');
  const of = (material: string, thickness_in: number) => {
    const found = panels.find(
      (cut) => cut.material === material && Math.abs(cut.thickness_m / inch - thickness_in) < 0.01,
    );
    if (!found) throw new Error(`no ${thickness_in} in ${material}`);
    return found;
  };

  it('cuts the demo’s box of 48 x 36 x 36 in from 3/4 in plywood', () => {
    // Sides stand on the bottom: 49.5 x 37.5, two of 49.5 x 36, two of 36 x 36.
    const wall = of('plywood', 0.75);
    expect(wall.panels.map(sized)).toEqual(['1 x 49.5 x 37.5', '2 x 49.5 x 36', '2 x 36 x 36']);
    expect(square_inches(wall.area_m2)).toBeCloseTo(49.5 * 37.5 + 2 * 49.5 * 36 + 2 * 36 * 36, 6);
    // By area two boards of 32 ft2 would do. Of the three pieces 49 1/2 in long no two go in one of 96 x 48: three.
    expect(wall.boards).toBe(3);
    expect(square_inches(wall.buy_m2)).toBeCloseTo(3 * 96 * 48, 6);
    expect(wall.joined).toBe(false);
  });

  it('wraps it in 4 in of polyiso, the lid of the same, and stands it on 3 in', () => {
    // Sides: two of 57.5 x 36.75, two of 37.5 x 36.75; lid 57.5 x 45.5.
    const four = of('polyiso', 4);
    expect(four.panels.map(sized)).toEqual(['2 x 57.5 x 36.75', '2 x 37.5 x 36.75', '1 x 57.5 x 45.5']);
    const area = 2 * 57.5 * 36.75 + 2 * 37.5 * 36.75 + 57.5 * 45.5;
    expect(square_inches(four.area_m2)).toBeCloseTo(area, 6);
    // A long side leaves 38 3/8 in of a board for a short one; the lid has one to itself.
    expect(four.boards).toBe(3);
    expect(of('polyiso', 3).panels.map(sized)).toEqual(['1 x 57.5 x 45.5']);
    expect(of('plywood', 0.5).panels.map(sized)).toEqual(['1 x 57.5 x 45.5']);
  });

  it('folds its liner from one piece: inside, twice the height, 6 in over each rim', () => {
    expect(store.liner?.material).toBe('EPDM');
    expect((store.liner?.length_m ?? 0) / inch).toBeCloseTo(48 + 2 * (36 + 6), 9);
    expect((store.liner?.width_m ?? 0) / inch).toBeCloseTo(36 + 2 * (36 + 6), 9);
  });

  it('wraps a cylinder by its circumference in the middle of the sheet', () => {
    const boat = sheetOfFile('boat').panels;
    expect(boat).toHaveLength(1);
    // 14 in across, 1/16 in of steel, 1 in of foam: a wrap of pi (14 + 1/8 + 1), discs from squares of 16 1/8 in.
    const [{ panels, boards, area_m2, buy_m2 }] = boat;
    expect(boards).toBeNull();
    expect(buy_m2).toBeCloseTo(1.1 * area_m2, 12);
    const wrap = Math.PI * 15.125 * 18.0625;
    expect(square_inches(area_m2)).toBeCloseTo(wrap + 2 * 16.125 ** 2, 6);
    expect(panels.map(({ form }) => form)).toEqual(['wrap', 'disc', 'disc']);
  });

  it('covers a lying cylinder once around', () => {
    const lying = withCoils([]);
    lying.store = {
      inside: { shape: 'lying cylinder', diameter: '24 in', length: '60 in' },
      water_depth: '12 in',
      wall: { material: 'steel', thickness: '0.1 in' },
      insulation: {
        sides: [{ material: 'mineral wool', thickness: '2 in' }],
        lid: [{ material: 'mineral wool', thickness: '2 in' }],
      },
    };
    const [{ panels }] = sheetOf(lying).panels;
    const wraps = panels.filter(({ form }) => form === 'wrap');
    // Half full: half the girth each, pi (24 + 0.2 + 2) in all.
    const girth = wraps.reduce((sum, { length_m }) => sum + length_m, 0);
    expect(girth / inch).toBeCloseTo(Math.PI * 26.2, 6);
    expect(wraps[0].length_m).toBeCloseTo(wraps[1].length_m, 9);
    expect(panels.filter(({ form }) => form === 'disc').map(sized)).toEqual(['2 x 28.2 x 28.2']);
    expect(foot).toBeCloseTo(0.3048, 9);
  });
});
