import { describe, expect, it } from 'vitest';
import { leastBendRadius } from '../../../../sim/physics/bend-radius.ts';
import { randomScenario } from '../../scenario/random-scenario.ts';
import { foot, inch, pound, sheetOf, sheetOfFile, withCoils } from './of-scenario.ts';

describe('a coil of ten turns on the sheet', () => {
  const [coil] = sheetOf(withCoils([{}])).coils;

  it('has turns times circumference of tube, the rise of each turn with it', () => {
    // 20 in to the middle of the tube, 1.5 in from turn to turn.
    expect(coil.turns).toBeCloseTo(10, 9);
    expect(coil.length_m).toBeCloseTo(coil.turns * Math.hypot(Math.PI * 20, 1.5) * inch, 9);
  });

  it('is wound on a form a tube narrower than its middle, and is a tube wider outside', () => {
    expect(coil.form_m.map((each) => each / inch)).toEqual([
      expect.closeTo(19.5, 9),
      expect.closeTo(19.5, 9),
    ]);
    expect(coil.outside_m / inch).toBeCloseTo(20.5, 9);
    expect(coil.gap_m / inch).toBeCloseTo(1, 9);
  });

  it('has its ports half a tube inside its edges, and tube to come up through the lid', () => {
    // From 4 in: ten turns of 1.5 in and the tube's own half inch end at 19.5 in.
    expect(
      [coil.bottom_m, coil.lower_port_m, coil.upper_port_m, coil.top_m].map((each) => each / inch),
    ).toEqual([
      expect.closeTo(4, 9),
      expect.closeTo(4.25, 9),
      expect.closeTo(19.25, 9),
      expect.closeTo(19.5, 9),
    ]);
    // The rim is 36 in up, its lid the usual 3 1/2 in thick.
    expect(coil.to_lid_m.lower / inch).toBeCloseTo(36 + 3.5 - 4.25, 9);
    expect(coil.to_lid_m.upper / inch).toBeCloseTo(36 + 3.5 - 19.25, 9);
  });

  it('falls its pitch a turn: 1.5 in over 62.9 in are 0.29 in a foot, enough to run empty', () => {
    expect(coil.slope * 12).toBeCloseTo((1.5 / Math.hypot(20 * Math.PI, 1.5)) * 12, 9);
    expect(coil.runs_empty).toBe(true);
    const [flat] = sheetOf(withCoils([{ pitch: '1 in' }])).coils;
    expect(flat.runs_empty).toBe(false);
  });
});

describe('a form', () => {
  // Copper Tube Handbook, table 4.1: annealed type K and L by nominal size.
  it.each([
    ['plumbing L', '3/8 in', 1.5],
    ['plumbing K', '1/2 in', 2.25],
    ['plumbing L', '3/4 in', 3],
    ['plumbing L', '1 in', 4],
    ['plumbing L', '1-1/4 in', 9],
  ] as const)('of %s %s is at least the handbook’s bend of %s in', (kind, size, radius_in) => {
    const [coil] = sheetOf(
      withCoils([{ tube: { kind, size }, coil_diameter: '30 in', pitch: '3 in', from: '1 in' }]),
    ).coils;
    expect(coil.least_form_m).toBeCloseTo(2 * radius_in * inch, 9);
    expect(coil.tight).toBe(false);
  });

  it('tighter than that is flagged, one as wide is not', () => {
    const half = { kind: 'plumbing L' as const, size: '1/2 in' };
    const at = (coil_diameter: string) =>
      sheetOf(withCoils([{ tube: half, coil_diameter, pitch: '1 in', roll_length: '15 ft' }])).coils[0].tight;
    // A form of 4 1/2 in under half-inch tube of 5/8 in: 5 1/8 in to the tube's middle.
    expect(at('5.125 in')).toBe(false);
    expect(at('5 in')).toBe(true);
  });

  it('of a size between two of the table’s is as for the thicker; beyond the table nothing is known', () => {
    expect(leastBendRadius('copper', 0.022)).toBeCloseTo(3 * inch, 9);
    expect(leastBendRadius('copper', 0.054)).toBeNull();
    expect(leastBendRadius('stainless steel', 0.016)).toBeNull();
    // Eight diameters: 5 in for half-inch PEX, as the trade has it.
    expect(leastBendRadius('PEX', 0.625 * inch)).toBeCloseTo(5 * inch, 9);
  });

  it('is not for tube that is sold hard', () => {
    expect(sheetOfFile('tote-sun').coils.map(({ hard }) => hard)).toEqual([false, true]);
    expect(sheetOfFile('boat').coils[0].hard).toBe(false);
  });
});

describe('over random scenarios', () => {
  const coils = Array.from({ length: 60 }, (_, seed) => sheetOf(randomScenario(seed))).flatMap(
    ({ coils }) => coils,
  );

  it('turns times circumference of all windings is the tube there is, or more where turns are drawn out', () => {
    expect(coils.length).toBeGreaterThan(60);
    for (const { turns, windings, middle_diameter_m, pitch_m, length_m } of coils) {
      const wound_m = turns * windings * Math.hypot(Math.PI * middle_diameter_m, pitch_m);
      expect(wound_m / length_m).toBeGreaterThan(1 - 1e-9);
    }
    const exact = coils.filter((c) => {
      const wound = c.turns * c.windings * Math.hypot(Math.PI * c.middle_diameter_m, c.pitch_m);
      return Math.abs(wound / c.length_m - 1) < 1e-9;
    });
    expect(exact.length).toBeGreaterThan(0.8 * coils.length);
  });
});

describe('weights of tube', () => {
  // ASTM B88, type L: pounds a foot (from memory).
  it.each([
    ['3/8 in', 0.198],
    ['1/2 in', 0.285],
    ['3/4 in', 0.455],
    ['1 in', 0.655],
  ])('%s type L weighs as in the table', (size, lb_ft) => {
    const [coil] = sheetOf(
      withCoils([
        {
          tube: { kind: 'plumbing L', size },
          roll_length: '60 ft',
          coil_diameter: '30 in',
          pitch: '1.5 in',
          from: '1 in',
        },
      ]),
    ).coils;
    expect(Math.abs(coil.mass_kg / pound / (coil.length_m / foot) / lb_ft - 1)).toBeLessThan(0.01);
  });
});
