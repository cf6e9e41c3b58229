import { describe, expect, it } from 'vitest';
import { edited } from '../../../../sim/answers/edit.ts';
import {
  type Grip,
  gripEdits,
  gripRange,
  gripsOf,
  moved,
  type SectionFacts,
} from '../../../../sim/answers/section/index.ts';
import type { UnitSystem } from '../../../../sim/quantity/index.ts';
import { readScenario, type Scenario } from '../../../../sim/scenario/index.ts';
import { randomScenario } from '../../scenario/random-scenario.ts';
import { factsOf, tenTurns } from './facts-of.ts';

const inch = 0.0254;

/** The facts after a grip's edits have gone through the reader. */
function asRead(scenario: Scenario, facts: SectionFacts, grip: Grip, value_m: number, system: UnitSystem) {
  return factsOf(edited(scenario, gripEdits(scenario, facts, grip, value_m, system)));
}

const texts = (scenario: Scenario, grip: Grip, value_m: number, system: UnitSystem = 'US') =>
  gripEdits(scenario, factsOf(scenario), grip, value_m, system).map(
    ({ path, value }) => `${path} = ${JSON.stringify(value)}`,
  );

describe('the edits of a grip', () => {
  it('put the water to a depth off the tape, or in whole millimetres', () => {
    expect(texts(tenTurns(), { what: 'water' }, 30.25 * inch)).toEqual(['store.water_depth = "30 1/4 in"']);
    expect(texts(tenTurns(), { what: 'water' }, 0.8, 'SI')).toEqual(['store.water_depth = "800 mm"']);
  });

  it('hang a coil higher, its limit with it', () => {
    const grip: Grip = { what: 'coil', coil: 0, end: 'bottom' };
    expect(texts(tenTurns(), grip, 6 * inch)).toEqual(['coils[0].from = "6 in"']);
    expect(texts(tenTurns({ to: '20 in' }), grip, 6 * inch)).toEqual([
      'coils[0].from = "6 in"',
      'coils[0].to = "22 in"',
    ]);
  });

  it('pull the turns apart, and choose the word that comes nearest', () => {
    const grip: Grip = { what: 'coil', coil: 0, end: 'top' };
    const [pitch, spacing, ...rest] = texts(tenTurns(), grip, 29.5 * inch);
    // 25 in over ten turns, a trifle more since steeper turns are fewer.
    expect(pitch).toMatch(/^coils\[0\]\.pitch = "2\.50\d* in"$/);
    expect(spacing).toBe('coils[0].spacing = "spread"');
    expect(rest).toEqual([]);
    const [, near] = texts(tenTurns(), grip, 10 * inch);
    expect(near).toBe('coils[0].spacing = "touching"');
  });

  it('set only the limit of turns that are drawn out between two heights', () => {
    const drawn = tenTurns({ spacing: 'spread', to: '31 in' });
    delete drawn.coils?.[0].pitch;
    const grip: Grip = { what: 'coil', coil: 0, end: 'top' };
    expect(texts(drawn, grip, 30.5 * inch)).toEqual(['coils[0].to = "30 1/2 in"']);
  });

  it('write out the sheets that held by default', () => {
    expect(texts(tenTurns(), { what: 'sheet', face: 'lid', sheet: 0 }, 6 * inch)).toEqual([
      'store.insulation.lid = [{"material":"fibreglass","thickness":"6 in"}]',
    ]);
  });

  it('thicken the thickest sheet, and the resistance on its label with it', () => {
    const scenario = tenTurns();
    const sides = [
      { material: 'plywood', thickness: '1/2 in' },
      { material: 'EPS', thickness: '4 in', resistance: 'R-15' },
    ] as const;
    scenario.store = { ...scenario.store, insulation: { sides: [...sides] } };
    expect(texts(scenario, { what: 'sheet', face: 'sides', sheet: 1 }, 8 * inch)).toEqual([
      'store.insulation.sides[1].thickness = "8 in"',
      'store.insulation.sides[1].resistance = "R-30"',
    ]);
  });

  it('give a bare face a first sheet', () => {
    const scenario = tenTurns();
    scenario.store = { ...scenario.store, insulation: { sides: [] } };
    expect(texts(scenario, { what: 'sheet', face: 'sides', sheet: 0 }, 2 * inch)).toEqual([
      'store.insulation.sides = [{"material":"mineral wool","thickness":"2 in"}]',
    ]);
  });
});

const faces = (scenario: Scenario) =>
  gripsOf(factsOf(scenario)).flatMap((grip) => (grip.what === 'sheet' ? [grip.face] : []));

describe('a plant moved by hand', () => {
  const grips = gripsOf(factsOf(tenTurns()));

  it('has grips for the water, both ends of its coil and three faces', () => {
    expect(grips).toHaveLength(6);
  });

  it('has no grip for a lid that is off, nor for the bottom of a lying cylinder', () => {
    const open = tenTurns();
    open.store = { ...open.store, lid: 'open' };
    expect(faces(open)).toEqual(['sides', 'bottom']);
    const lying = tenTurns({ coil_diameter: '14 in', roll_length: '20 ft' });
    lying.store = { inside: { shape: 'lying cylinder', diameter: '24 in', length: '60 in' } };
    expect(faces(lying)).toEqual(['sides', 'lid']);
  });

  it('stands where the hand put it', () => {
    const facts = factsOf(tenTurns());
    for (const grip of grips) {
      const { least_m, most_m } = gripRange(facts, grip);
      for (const share of [0, 0.3, 1]) {
        const value_m = least_m + share * (most_m - least_m);
        expect(gripRange(moved(facts, grip, value_m), grip).value_m).toBeCloseTo(value_m, 9);
      }
    }
  });

  it('leaves the given facts as they are', () => {
    const facts = factsOf(tenTurns({ to: '22 in' }));
    const before = JSON.stringify(facts);
    for (const grip of grips) moved(facts, grip, gripRange(facts, grip).most_m);
    expect(JSON.stringify(facts)).toBe(before);
  });

  it.each(['US', 'SI'] as const)(
    'is what the reader makes of the edits, over random scenarios in %s',
    (system) => {
      let compared = 0;
      for (let seed = 0; seed < 40; seed++) {
        const scenario = randomScenario(seed);
        const facts = factsOf(scenario);
        for (const grip of gripsOf(facts)) {
          const { value_m, least_m } = gripRange(facts, grip);
          // A little lower, on the grid of tape and millimetres: always room for it but where it was at its least.
          const step = system === 'US' ? inch / 4 : 0.005;
          const target_m = Math.floor((value_m - 1e-9) / step) * step;
          if (target_m < least_m || (grip.what === 'water' && facts.coils.length > 0)) continue;
          const read = asRead(scenario, facts, grip, target_m, system);
          expect(Math.abs(gripRange(read, grip).value_m - target_m)).toBeLessThan(2e-4);
          compared++;
        }
      }
      expect(compared).toBeGreaterThan(100);
    },
  );

  it('is refused by the reader where its turns are pushed out of the water, and still drawn', () => {
    const scenario = tenTurns();
    const facts = factsOf(scenario);
    const edits = gripEdits(scenario, facts, { what: 'water' }, 13 * inch, 'US');
    const read = readScenario(edited(scenario, edits));
    expect(read.ok).toBe(false);
    expect(read.sketch?.store.water_depth_m).toBeCloseTo(13 * inch, 9);
  });
});
