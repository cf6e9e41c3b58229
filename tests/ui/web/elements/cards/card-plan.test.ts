import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../../sim/index.ts';
import { type CardPlan, nodesIn, planOf } from '../../../../../ui/web/elements/cards/card-plan.ts';
import { randomScenario } from '../../../../sim/scenario/random-scenario.ts';
import { bare, demo, outline, readOf } from './demo.ts';

function plan(scenario: Scenario, path: string): CardPlan {
  const found = planOf(scenario, path, readOf(scenario).filled);
  if (!found) throw new Error(path);
  return found;
}
const asked = (scenario: Scenario, path: string) =>
  plan(scenario, path).everyday.map(({ label, node }) => `${node.path} ${label}`);

describe('the everyday values of a card', () => {
  // Trade notes, section 3: tank inside, depth and foam; tube, roll and rolls; fuel and hours first, then the load;
  // tubes, tilt and which way; cold water and the pump's label; people, minutes and the bucket test.
  it.each([
    ['store', ['inside', 'water_depth', 'insulation.sides']],
    ['coils[0]', ['tube', 'roll_length', 'rolls']],
    ['engine', ['fuel_use', 'runs', 'typical_load']],
    ['collector', ['size', 'tilt', 'facing']],
    ['supply', ['cold.start', 'pump.open_flow', 'pump.cut_out']],
    ['taps', ['showers[0].people', 'showers[0].lasts', 'showers[0].flow']],
    ['taps.draws[0]', ['volume', 'flow', 'temperature']],
    ['taps.draws[1]', ['lasts', 'flow', 'temperature']],
    ['weather', ['kind', 'air', 'sun']],
    ['site', ['latitude', 'altitude', 'longitude']],
    ['run', ['from', 'days', 'start']],
    ['prices', ['diesel_per_litre', 'copper_per_kg', 'foam_per_m2_25mm']],
  ])('of %s are the three that its owner has', (path, three) => {
    expect(plan(demo, path).everyday.map(({ node }) => node.path)).toEqual(
      three.map((each) => `${path}.${each}`),
    );
  });

  it('are three for a scenario that says next to nothing, too', () => {
    for (const path of ['store', 'coils[0]', 'supply', 'taps', 'weather', 'site', 'run', 'prices'])
      expect(plan(bare, path).everyday, path).toHaveLength(3);
  });

  it('are named with the whole they are taken out of', () => {
    expect(asked(demo, 'supply')).toContain('supply.pump.open_flow Pump: flow with nothing in the way');
    expect(asked(demo, 'taps')[0]).toBe('taps.showers[0].people Morning shower: people, one after another');
    expect(asked(demo, 'store')[1]).toBe('store.water_depth Depth of water');
  });

  it('leave out of a whole what follows from the rest, but not what stands in with it', () => {
    const paths = (scenario: Scenario, path: string) =>
      plan(scenario, path).everyday.flatMap(({ node }) => nodesIn(node).map((each) => each.path));
    expect(paths(demo, 'store')).toContain('store.insulation.sides[0].thickness');
    expect(paths(demo, 'store')).not.toContain('store.insulation.sides[0].resistance');
    expect(paths(bare, 'run')).toContain('run.start.top');
  });
});

describe('a card', () => {
  const entriesOf = (node: Parameters<typeof nodesIn>[0]) =>
    nodesIn(node)
      .filter(({ kind }) => kind === 'entry')
      .map(({ path }) => path);

  it('shows every value of its part once', () => {
    const scenarios = [demo, bare, ...[1, 2, 3, 4, 5, 6].map(randomScenario)];
    for (const scenario of scenarios) {
      const parts = ['store', 'supply', 'weather', 'site', 'run', 'prices'];
      const some = (['engine', 'collector', 'taps'] as const).filter((part) => scenario[part]);
      const coils = (scenario.coils ?? []).map((_, i) => `coils[${i}]`);
      for (const part of [...parts, ...some, ...coils]) {
        const { everyday, more } = plan(scenario, part);
        const shown = [...everyday, ...more].flatMap(({ node }) => entriesOf(node));
        expect(shown.sort(), `${scenario.name} ${part}`).toEqual(entriesOf(outline(scenario, part)).sort());
      }
    }
  });

  it('counts what its owner gave and what is assumed', () => {
    const { all, moreCount } = plan(bare, 'site');
    expect(all).toEqual({ given: 1, assumed: 3 });
    // Latitude, altitude and longitude are asked for first.
    expect(moreCount).toEqual({ given: 0, assumed: 1 });
  });

  it('is called by the part and its own name', () => {
    expect(plan(demo, 'coils[1]').title).toBe('Coil: engine');
    expect(plan(demo, 'store').title).toBe('Store');
    expect(plan(demo, 'taps.draws[0]').title).toBe('Draw: breakfast dishes');
  });

  it('is none for a part that the file does not have a place for', () => {
    expect(planOf(demo, 'coils[7]', [])).toBeNull();
    expect(planOf(demo, 'chimney', [])).toBeNull();
  });

  it('of a part that is not there holds nothing to enter', () => {
    expect(plan(demo, 'backup')).toMatchObject({ everyday: [], more: [], all: { given: 0, assumed: 0 } });
  });
});
