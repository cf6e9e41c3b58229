import { describe, expect, it } from 'vitest';
import demo from '../../../../../scenarios/demo.json' with { type: 'json' };
import type { Scenario } from '../../../../../sim/index.ts';
import { insideHeight, moved, type SectionFacts, windingTurns } from '../../../../../sim/index.ts';
import { yAt } from '../../../../../ui/web/charts/section/frame.ts';
import { factsOf, tenTurns } from '../../../../sim/answers/section/facts-of.ts';
import { randomScenario } from '../../../../sim/scenario/random-scenario.ts';
import { drawn, texts, withClass } from './drawn.ts';

const inch = 0.0254;
const number = (text: string) => Number(text);
const demoFacts = factsOf(demo as Scenario);

describe('the scaled drawing', () => {
  const facts = factsOf(tenTurns());
  const { svg, frame } = drawn(facts);
  const inch_px = inch * frame.px_per_m;

  it('has one scale along and up', () => {
    const [air] = withClass(svg, 'air');
    // A pixel more upwards, over the outlines of the sheets behind it.
    expect(number(air.width) / 48).toBeCloseTo(inch_px, 2);
    expect((number(air.height) - 1) / 36).toBeCloseTo(inch_px, 2);
    const [water] = withClass(svg, 'water');
    expect(number(water.height) / 32).toBeCloseTo(inch_px, 2);
  });

  it('draws the coil at its own diameter, pitch and tube', () => {
    const tubes = withClass(svg, 'tube');
    expect(tubes).toHaveLength(20);
    const xs = [...new Set(tubes.map(({ cx }) => number(cx)))].sort((a, b) => a - b);
    expect(xs).toHaveLength(2);
    expect((xs[1] - xs[0]) / 20).toBeCloseTo(inch_px, 1);
    const left = tubes.map(({ cx, cy }) => [number(cx), number(cy)]).filter(([x]) => x === xs[0]);
    expect(left).toHaveLength(10);
    for (let i = 1; i < left.length; i++)
      expect(Math.abs(left[i - 1][1] - left[i][1] - 1.5 * inch_px)).toBeLessThan(0.15);
    expect(number(tubes[0].r)).toBeCloseTo(0.25 * inch_px, 1);
  });

  it('draws insulation by its thickness', () => {
    const [side] = withClass(svg, 'sheet batt');
    // 48 in inside, 3/4 in of plywood and 3 1/2 in of fibreglass on both sides.
    expect(number(side.width) / (48 + 2 * (0.75 + 3.5))).toBeCloseTo(inch_px, 2);
  });

  it('has numbers where it has colours', () => {
    expect(texts(svg)).toEqual(
      expect.arrayContaining([
        '32 in',
        'top 140 °F',
        'middle 104 °F',
        'bottom 68 °F',
        '239 gal, filled 2010 lb',
      ]),
    );
    expect(svg).toContain('<stop offset="0.1667" stop-color="rgb(31,61,77)"/>');
  });

  it('colours no water and writes no temperature where no run is known', () => {
    const { svg } = drawn(facts, { layer_C: [] });
    expect(svg).not.toContain('section-water');
    expect(svg).not.toContain('°F');
    // 239.4 gal of 8.345 lb and 52 ft of 1/2 in copper tube of 0.182 lb, less its own water, 1 lb.
    expect(texts(svg)).toContain('239 gal, filled 2010 lb');
  });

  it('shows the water as deep as it stands, and where the design fills it to', () => {
    const { svg, handles } = drawn(facts, { level_m: 28 * inch });
    const [water] = withClass(svg, 'water');
    expect(number(water.height) / 28).toBeCloseTo(inch_px, 2);
    expect(texts(svg)).toContain('28 in');
    expect(withClass(svg, 'filled-to')).toHaveLength(1);
    expect(handles[0].text).toBe('32 in of water, 239 gal');
    expect(withClass(drawn(facts, { level_m: 32 * inch }).svg, 'filled-to')).toHaveLength(0);
  });

  it('changes its units and not its scale', () => {
    const si = drawn(facts, { units: 'SI' });
    expect(si.frame).toEqual(frame);
    expect(texts(si.svg)).toEqual(
      expect.arrayContaining(['813 mm', 'top 60 °C', '906 L, filled 910 kg', 'cm']),
    );
  });

  it.each([340, 700])('stays inside %d px', (width) => {
    for (const facts of [demoFacts, factsOf(tenTurns())]) {
      const { svg, frame } = drawn(facts, { width, height: 600 });
      expect(frame.height).toBeLessThanOrEqual(600);
      const shapes = ['air', 'water', 'sheet foam', 'sheet batt'].flatMap((name) => withClass(svg, name));
      for (const { x, width: wide } of shapes) {
        expect(number(x)).toBeGreaterThanOrEqual(40);
        expect(number(x) + number(wide)).toBeLessThanOrEqual(width - 60);
      }
    }
  });

  it('holds its scale while a hand moves something', () => {
    const wide = moved(facts, { what: 'sheet', face: 'sides', sheet: 0 }, 12 * inch);
    expect(drawn(wide).frame.px_per_m).toBeLessThan(frame.px_per_m);
    expect(drawn(wide, { frame }).frame).toBe(frame);
  });
});

describe('turns that do not fit', () => {
  const low = moved(factsOf(tenTurns()), { what: 'water' }, 13.5 * inch);

  it('are drawn no further up than a little over the rim, however many there are', () => {
    const tall = factsOf(tenTurns());
    const [coil] = tall.coils;
    const many = { ...tall, coils: [{ ...coil, rolls: 20 * coil.rolls }] };
    const { svg, frame } = drawn(many);
    const highest = Math.min(...withClass(svg, 'tube misfit').map(({ cy }) => number(cy)));
    expect(highest).toBeGreaterThan(yAt(frame, insideHeight(tall.store.shape)) - 45);
    // 200 turns 1.5 in apart, from where the ten begin, under 32 in of water.
    expect(texts(svg).join()).toMatch(/A: 1[78]\d(\.5)? turns out of the water/);
  });

  it('are hatched, counted and explained', () => {
    const { svg, legend } = drawn(low);
    expect(withClass(svg, 'tube misfit')).toHaveLength(8);
    expect(withClass(svg, 'tube')).toHaveLength(12);
    expect(texts(svg)).toContain('A: 4 turns out of the water');
    expect(legend.filter(({ wrong }) => wrong)).toEqual([
      {
        mark: 'A',
        title: 'Does not fit',
        text: expect.stringMatching(/^4 of 10 turns stand out of the water\. Hang it lower/),
        wrong: true,
      },
    ]);
  });
});

describe('a lid', () => {
  const lid = (lid: 'closed' | 'ajar' | 'open') => {
    const facts = factsOf(tenTurns());
    return drawn({ ...facts, store: { ...facts.store, lid } }).svg;
  };

  it('lies on the rim, stands ajar with vapour at its gap, or is off', () => {
    expect([withClass(lid('closed'), 'lid').length, withClass(lid('closed'), 'vapour').length]).toEqual([
      1, 0,
    ]);
    expect([withClass(lid('ajar'), 'lid ajar').length, withClass(lid('ajar'), 'vapour').length]).toEqual([
      1, 1,
    ]);
    expect([withClass(lid('open'), 'lid').length, withClass(lid('open'), 'vapour').length]).toEqual([0, 1]);
  });
});

describe('the machines outside', () => {
  it('each have a pipe into their coil and one out of it, marked so', () => {
    const { svg } = drawn(demoFacts);
    expect(withClass(svg, 'pipe')).toHaveLength(6);
    expect(withClass(svg, 'flow')).toHaveLength(6);
    expect(texts(svg).filter((text) => text === 'in')).toHaveLength(3 + 2);
    expect(texts(svg).filter((text) => text === 'out')).toHaveLength(3);
    expect(texts(svg).filter((text) => text === 'relief')).toHaveLength(3);
    expect(texts(svg)).toEqual(
      expect.arrayContaining(['diesel set', 'tubes on the south wall', 'household']),
    );
  });

  it('have a check valve only where the design has one', () => {
    const { engine, collector } = demoFacts;
    const count = (facts: SectionFacts) => texts(drawn(facts).svg).filter((text) => text === 'check').length;
    // One at the household's pump in either case.
    expect(count(demoFacts)).toBe(3);
    const none = {
      ...demoFacts,
      engine: engine && { ...engine, standby_loss_W_K: 4 },
      collector: collector && { ...collector, check_valve: false },
    };
    expect(count(none)).toBe(1);
  });
});

describe('another design', () => {
  it('is dashed on the same scale, and only where it differs', () => {
    const facts = factsOf(tenTurns());
    const ghost = moved(facts, { what: 'water' }, 20 * inch);
    const plain = drawn(facts);
    const { svg, frame, legend } = drawn(facts, { ghost });
    expect(frame).toEqual(plain.frame);
    const line = frame.bottom_y - 20 * inch * frame.px_per_m;
    expect(svg).toContain(`,${Math.round(line * 10) / 10}H`);
    expect(svg.split('class="ghost"')[1]).not.toContain('<rect');
    const higher = moved(facts, { what: 'coil', coil: 0, end: 'bottom' }, 8 * inch);
    expect(drawn(facts, { ghost: higher }).svg.split('class="ghost"')[1]).toContain('<rect');
    expect(legend.map(({ text }) => text)).toContain('the pinned design');
  });
});

describe('over random scenarios', () => {
  const all = Array.from({ length: 60 }, (_, seed) => factsOf(randomScenario(seed)));

  it.each([340, 700])('nothing is without a number at %d px', (width) => {
    for (const [seed, facts] of all.entries()) {
      const { svg, handles, legend, sentence } = drawn(facts, {
        width,
        units: seed % 2 === 0 ? 'US' : 'SI',
        ghost: all[(seed + 1) % all.length],
      });
      expect(`${svg}${sentence}${JSON.stringify([handles, legend])}`).not.toMatch(
        /NaN|Infinity|undefined|null|unknown/,
      );
      expect(svg.match(/<(text|path|circle|rect|g|tspan)\b/g)?.length).toBeGreaterThan(20);
    }
  });

  it('every whole turn is a pair of circles', () => {
    for (const facts of all) {
      const circles =
        withClass(drawn(facts).svg, 'tube').length + withClass(drawn(facts).svg, 'tube misfit').length;
      const turns = facts.coils.map(
        (coil) => 2 * Math.round(2 * windingTurns(coil)) * 0.5 * coil.side_by_side,
      );
      const halves = facts.coils.reduce((sum, coil) => sum + coil.side_by_side, 0);
      expect(Math.abs(circles - turns.reduce((a, b) => a + b, 0))).toBeLessThanOrEqual(halves);
    }
  });
});

describe('the drawing in words', () => {
  it('says all there is of the demo', () => {
    // By hand: 36.576 m in turns of pi 0.762 m are 15.3; they end at 3 + 15.28 x 1.625 + 0.875 = 28.7 in; 5.5 R per
    // inch of polyiso (trade.md).
    expect(drawn(demoFacts).legend.map(({ mark, title, text }) => [mark, title, text].join(' | '))).toEqual([
      ' | Store | 48 in long, 36 in wide, 36 in high inside; 3/4 in plywood, EPDM liner',
      ' | Water | 32 in deep: 239 gal, filled 2080 lb',
      ' | Sides | 4 in of polyiso: R-22',
      ' | Bottom | 3 in of polyiso: R-17',
      ' | Lid | 4 in of polyiso, 1/2 in of plywood: R-23',
      'A | Coil household | 2 × 60 ft in series of 3/4 in plumbing tube, type L; 15.3 turns 1 5/8 in apart, 30 in across; from 3 in to 28 11/16 in up, in at the bottom',
      'B | Coil engine | 60 ft of 3/4 in plumbing tube, type L; 9.5 turns 1 5/8 in apart, 24 in across; from 3 in to 19 3/8 in up, in at the top',
      'C | Coil collector | 50 ft of 1/2 in refrigeration tube; 10.6 turns 1 1/4 in apart, 18 in across; from 3 in to 16 3/4 in up, in at the top',
      '1 | Probe | 3 in up; the collector’s pump starts 14.4 °F above it and stops at 7.2 °F',
      '2 | Probe | at the top; the collector’s pump stays off above 185 °F',
      expect.stringMatching(/^ \| Drawing \| .*to scale/),
    ]);
  });

  it('is one sentence for those who do not see it', () => {
    expect(drawn(demoFacts).sentence).toBe(
      'Section of the store to scale: 239 gal, filled 2080 lb, 32 in deep; coils household from 3 in to 28 11/16 in, engine from 3 in to 19 3/8 in, collector from 3 in to 16 3/4 in; piped to diesel set, tubes on the south wall, the household.',
    );
  });
});
