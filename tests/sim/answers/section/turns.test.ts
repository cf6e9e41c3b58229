import { describe, expect, it } from 'vitest';
import {
  crossingsOf,
  misfitOf,
  moved,
  type SectionFacts,
  windingTurns,
  woundTop,
} from '../../../../sim/answers/section/index.ts';
import { readScenario } from '../../../../sim/scenario/index.ts';
import { randomScenario } from '../../scenario/random-scenario.ts';
import { factsOf, tenTurns } from './facts-of.ts';

const inch = 0.0254;
const cut = (facts: SectionFacts) => crossingsOf(facts.coils[0], facts.store);

describe('a coil of ten turns', () => {
  const facts = factsOf(tenTurns());

  it('has ten circles on each side', () => {
    expect(windingTurns(facts.coils[0])).toBeCloseTo(10, 9);
    expect(cut(facts).filter(({ side }) => side === 'left')).toHaveLength(10);
    expect(cut(facts).filter(({ side }) => side === 'right')).toHaveLength(10);
  });

  it('has them one pitch apart, left and right half a pitch, ten inches off the axis', () => {
    const [first, second, third] = cut(facts);
    // Tube's middle a quarter inch above the bottom of the coil, and a quarter of a pitch on.
    expect(first.height_m).toBeCloseTo((4 + 0.25 + 0.375) * inch, 9);
    expect(second.height_m - first.height_m).toBeCloseTo(0.75 * inch, 9);
    expect(third.height_m - first.height_m).toBeCloseTo(1.5 * inch, 9);
    expect(first.out_m).toBeCloseTo(10 * inch, 9);
    expect([first.side, second.side, third.side]).toEqual(['left', 'right', 'left']);
  });

  it('ends fifteen inches and a tube higher', () => {
    expect(woundTop(facts.coils[0])).toBeCloseTo((4 + 15 + 0.5) * inch, 9);
    expect(misfitOf(facts.coils[0], facts.store)).toBeNull();
  });

  it('leaves four turns in the air over 13 1/2 in of water', () => {
    // The sixth turn's right circle has its middle at 4.25 + 5.75 x 1.5 = 12.875 in, its top at 13.125 in.
    const low = moved(facts, { what: 'water' }, 13.5 * inch);
    expect(misfitOf(low.coils[0], low.store)).toMatchObject({ turns: 4, why: 'above the water' });
    expect(cut(low).filter(({ misfit }) => misfit === null)).toHaveLength(12);
  });

  it('has five turns on each of two windings, one inside the other', () => {
    const two = factsOf(tenTurns({ side_by_side: 2 }));
    const crossings = cut(two);
    expect(crossings).toHaveLength(20);
    expect(new Set(crossings.map(({ winding }) => winding))).toEqual(new Set([0, 1]));
    expect(Math.max(...crossings.map(({ out_m }) => out_m))).toBeCloseTo(10.75 * inch, 9);
    expect(woundTop(two.coils[0])).toBeCloseTo((4 + 7.5 + 0.5) * inch, 9);
  });
});

describe('turns that do not fit', () => {
  it('are those above the height the file allows', () => {
    const read = readScenario(tenTurns({ to: '12 in' }));
    expect(read.ok).toBe(false);
    const { store, coils } = read.sketch ?? { store: null, coils: [] };
    if (!store) throw new Error('no sketch');
    // Five whole turns end at 4.5 + 7.5 = 12 in: the sixth's left circle tops out at 4.5 + 5.25 x 1.5 = 12.375 in.
    expect(misfitOf(coils[0], store)).toMatchObject({ turns: 5, why: 'above its limit' });
  });

  it('are all where the coil is wider than the store', () => {
    const { sketch } = readScenario(tenTurns({ coil_diameter: '36 in', roll_length: '90 ft' }));
    if (!sketch) throw new Error('no sketch');
    const misfit = misfitOf(sketch.coils[0], sketch.store);
    expect(misfit?.why).toBe('wider than the store');
    expect(misfit?.turns).toBeGreaterThan(9);
  });

  it('are those near the bottom of a lying cylinder, whose shell is narrower there', () => {
    const lying = tenTurns({ from: '1 in', coil_diameter: '18 in', roll_length: '40 ft' });
    lying.store = { inside: { shape: 'lying cylinder', diameter: '24 in', length: '60 in' } };
    const facts = factsOf(lying);
    // 18.5 in across needs a chord at height z with z (24 - z) = 9.25^2: 4.36 in up.
    for (const { height_m, misfit } of cut(facts)) {
      const low_in = height_m / inch - 0.25;
      if (low_in < 4.3) expect(misfit).toBe('wider than the store');
      if (low_in > 4.4 && low_in < 18) expect(misfit).toBeNull();
    }
  });
});

describe('over random scenarios', () => {
  const all = Array.from({ length: 60 }, (_, seed) => factsOf(randomScenario(seed)));

  it('every turn of a single winding in a sound upright store fits', () => {
    const upright = all.filter(({ store }) => store.shape.kind !== 'lying cylinder');
    const single = upright.flatMap(({ store, coils }) =>
      coils.filter(({ side_by_side }) => side_by_side === 1).map((coil) => ({ coil, store })),
    );
    expect(single.length).toBeGreaterThan(20);
    for (const { coil, store } of single) expect(misfitOf(coil, store)).toBeNull();
  });

  it('circles come in pairs, as many as there are turns, between bottom and top', () => {
    for (const { store, coils } of all) {
      for (const coil of coils) {
        const crossings = crossingsOf(coil, store);
        const pairs = crossings.length / 2 / coil.side_by_side;
        expect(Math.abs(pairs - windingTurns(coil))).toBeLessThanOrEqual(0.5);
        for (const { height_m } of crossings) {
          expect(height_m).toBeGreaterThan(coil.bottom_m);
          expect(height_m).toBeLessThan(woundTop(coil));
        }
      }
    }
  });
});
