import { describe, expect, it } from 'vitest';
import { edited } from '../../../sim/answers/edit.ts';
import { ADDABLE, type Addable, addition, duplication, removal } from '../../../sim/answers/part-edits.ts';
import { problemLine, readScenario, type Scenario } from '../../../sim/scenario/index.ts';
import { randomScenario } from '../scenario/random-scenario.ts';
import { factsOf, tenTurns } from './section/facts-of.ts';

type Change = ReturnType<typeof removal>;

function changed(scenario: Scenario, change: Change): Scenario {
  if ('no' in change) throw new Error(change.no);
  return edited(scenario, change.edits);
}

const add = (scenario: Scenario, kind: Addable, system: 'US' | 'SI' = 'US') =>
  addition(scenario, kind, factsOf(scenario).store, system);

/** Lines of the problems the reader has with a scenario. */
function problems(scenario: Scenario): string[] {
  const read = readScenario(scenario);
  return read.ok ? [] : read.problems.map(problemLine);
}

describe('an added part', () => {
  it('takes the coil that nobody uses, or brings its own', () => {
    const withEngine = changed(tenTurns(), add(tenTurns(), 'engine'));
    expect(withEngine.engine?.coil).toBe('coil');
    const withBoth = changed(withEngine, add(withEngine, 'collector'));
    expect(withBoth.collector?.coil).toBe('collector');
    expect(withBoth.coils?.map(({ name }) => name)).toEqual(['coil', 'collector']);
  });

  it('is of a kind that may come again, or is refused', () => {
    const household = changed(tenTurns(), add(tenTurns(), 'household'));
    expect(add(household, 'household')).toEqual({ no: 'one of its kind' });
    expect(add(tenTurns(), 'backup')).toEqual({ no: 'nobody draws' });
    expect(add(tenTurns(), 'draw')).toEqual({ no: 'nobody draws' });
    const eight = {
      ...tenTurns(),
      coils: Array.from({ length: 8 }, (_, i) => ({ ...coilOf(), name: `${i}` })),
    };
    expect(add(eight, 'coil')).toEqual({ no: 'full', most: 8 });
  });

  it('is opened where it stands', () => {
    const household = changed(tenTurns(), add(tenTurns(), 'household'));
    const one = changed(household, add(household, 'draw'));
    expect(add(one, 'draw')).toMatchObject({ opens: 'taps.draws[1]' });
    expect(add(one, 'coil')).toMatchObject({ opens: 'coils[1]' });
  });

  it.each(['US', 'SI'] as const)('leaves every random scenario sound, in %s', (system) => {
    let added = 0;
    for (let seed = 0; seed < 20; seed++) {
      let scenario = randomScenario(seed);
      for (const kind of ADDABLE) {
        const change = add(scenario, kind, system);
        if ('no' in change) continue;
        scenario = changed(scenario, change);
        expect(problems(scenario)).toEqual([]);
        added++;
      }
    }
    expect(added).toBeGreaterThan(50);
  });
});

const coilOf = () => (tenTurns().coils ?? [])[0];

describe('a doubled part', () => {
  it('follows the first under a free name', () => {
    const two = changed(tenTurns(), duplication(tenTurns(), 'coils[0]'));
    expect(two.coils).toEqual([coilOf(), { ...coilOf(), name: 'coil 2' }]);
    const three = changed(two, duplication(two, 'coils[1]'));
    expect(three.coils?.map(({ name }) => name)).toEqual(['coil', 'coil 2', 'coil 3']);
    expect(problems(three)).toEqual([]);
  });

  it('is refused where a plant has one', () => {
    expect(duplication(tenTurns(), 'engine')).toEqual({ no: 'one of its kind' });
    expect(duplication(tenTurns(), 'store')).toEqual({ no: 'always there' });
  });
});

describe('a removed part', () => {
  const household = changed(tenTurns(), add(tenTurns(), 'household'));

  it('is gone, and the rest is sound', () => {
    expect(changed(tenTurns(), removal(tenTurns(), 'coils[0]')).coils).toEqual([]);
    const without = changed(household, removal(household, 'taps'));
    expect(without.taps).toBeUndefined();
    expect(problems(without)).toEqual([]);
  });

  it('is not a coil that serves somebody, nor what something hangs on', () => {
    expect(removal(household, 'coils[0]')).toEqual({ no: 'in use', by: 'taps' });
    const heated = changed(household, add(household, 'backup'));
    expect(removal(heated, 'taps')).toEqual({ no: 'heats for it' });
    expect(removal(heated, 'store')).toEqual({ no: 'always there' });
    expect(removal(heated, 'supply')).toEqual({ no: 'always there' });
  });

  it('leaves every random scenario sound', () => {
    for (let seed = 0; seed < 20; seed++) {
      const scenario = randomScenario(seed);
      const lists = [
        ...(scenario.coils ?? []).map((_, i) => `coils[${i}]`),
        ...(scenario.taps?.draws ?? []).map((_, i) => `taps.draws[${i}]`),
        ...(scenario.taps?.showers ?? []).map((_, i) => `taps.showers[${i}]`),
      ];
      for (const path of ['engine', 'collector', 'taps', 'backup', ...lists]) {
        const change = removal(scenario, path);
        if (!('no' in change)) expect(problems(changed(scenario, change))).toEqual([]);
      }
    }
  });
});
