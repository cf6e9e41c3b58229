import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import tote from '../../../../scenarios/tote-sun.json';
import { edited } from '../../../../sim/answers/edit.ts';
import { type Change, changesFor } from '../../../../sim/answers/next/changes.ts';
import { readScenario, type Scenario } from '../../../../sim/index.ts';
import { smallScenario, sunnyScenario } from '../small.ts';

function found(scenario: Scenario) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { plant: read.plant, changes: changesFor({ scenario, context: {}, plant: read.plant }) };
}
function plantWith(scenario: Scenario, { edits }: Change) {
  const read = readScenario(edited(scenario, edits));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plant;
}
const keysOf = (scenario: Scenario) => found(scenario).changes.map(({ key }) => key);
function change(scenario: Scenario, key: string, what?: string) {
  const one = found(scenario).changes.find(
    (each) => each.key === key && (what === undefined || each.what === what),
  );
  if (!one) throw new Error(key);
  return one;
}

describe('affordable changes', () => {
  it.each([
    ['the demo', demo],
    ['the tote', tote],
    ['a small box', smallScenario()],
    ['a small box in the sun', sunnyScenario()],
  ])('of %s can all be read, and each changes the plant', (_, file) => {
    const scenario = file as unknown as Scenario;
    const { plant, changes } = found(scenario);
    expect(changes.length).toBeGreaterThan(4);
    for (const each of changes) {
      const { weather: _w, ...changed } = plantWith(scenario, each);
      const { weather: _b, ...before } = plant;
      expect(changed, each.key).not.toEqual(before);
    }
  });

  it('are those that the design has a place for', () => {
    // Its only roll may go in either way; it has no collector, no valve to fit, and its lid is closed.
    expect(new Set(keysOf(smallScenario()))).toEqual(
      new Set(['roll_series', 'roll_parallel', 'spread', 'foam', 'seal_lid', 'hour_less', 'hour_more']),
    );
    const valveless = smallScenario();
    const open = edited(valveless, [
      { path: 'engine.check_valve', value: false },
      { path: 'store.lid', value: 'open' },
      { path: 'coils[0].bundling', value: 0.7 },
    ]);
    expect(keysOf(open)).toEqual(expect.arrayContaining(['engine_valve', 'close_lid']));
    expect(found(open).changes.filter(({ key, what }) => key === 'spread' && what === 'household')).toEqual(
      [],
    );
    expect(keysOf(sunnyScenario())).toContain('more_area');
    expect(keysOf(demo as unknown as Scenario)).toEqual(
      expect.arrayContaining(['to_parallel', 'more_tubes']),
    );
  });

  it('do what they say', () => {
    const small = smallScenario();
    expect(plantWith(small, change(small, 'roll_parallel', 'household')).coils[0]).toMatchObject({
      rolls: 2,
      join: 'parallel',
    });
    expect(plantWith(small, change(small, 'spread', 'household')).coils[0].spacing).toBe('spread');
    const longer = plantWith(small, change(small, 'hour_more')).engine?.runs;
    expect(longer).toMatchObject({ spans: [{ from_s: 16 * 3600, to_s: 19 * 3600 }] });
    const shorter = plantWith(small, change(small, 'hour_less')).engine?.runs;
    expect(shorter).toMatchObject({ spans: [{ from_s: 16 * 3600, to_s: 17 * 3600 }] });
    const foam = plantWith(small, change(small, 'foam')).store.insulation.sides[0].thickness_m;
    expect(foam).toBeCloseTo(0.15, 9);
    const tubes = plantWith(demo as unknown as Scenario, change(demo as unknown as Scenario, 'more_tubes'));
    expect(tubes.collector?.tubes).toBe(50);
  });

  it('cost tube by its weight and joints by their number', () => {
    const small = smallScenario();
    const { plant } = found(small);
    const { prices } = plant;
    const roll = change(small, 'roll_series', 'household').cost(prices) ?? Number.NaN;
    // 60 ft of 1/2 in type L at 0.285 lb/ft (Copper Tube Handbook) and a coupling more.
    expect(roll).toBeCloseTo(60 * 0.285 * 0.4536 * prices.copper_per_kg + prices.fitting_per_joint, -1);
    const both = change(small, 'roll_parallel', 'household').cost(prices) ?? Number.NaN;
    // Two ends and both ends of each roll at a manifold, where one roll had two ends.
    expect(both - roll).toBeCloseTo(3 * prices.fitting_per_joint, 6);
    expect(change(small, 'spread', 'household').cost(prices)).toBe(0);
    expect(change(small, 'hour_less').cost(prices)).toBe(0);
    // 0.8 m square: 3.2 m around.
    expect(change(small, 'seal_lid').cost(prices)).toBeCloseTo(3.2 * prices.lid_seal_per_m, 6);
  });
});
