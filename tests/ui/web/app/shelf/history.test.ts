import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../../../../sim/index.ts';
import {
  deepest,
  type History,
  nothingDone,
  recorded,
  redoable,
  redone,
  undoable,
  undone,
} from '../../../../../ui/web/app/shelf/history.ts';

/** What a file may hold, whether it makes sense or not: sections come and go and change inside. */
const scenarios = fc.dictionary(
  fc.constantFrom('store', 'coils', 'engine', 'run', 'name'),
  fc.jsonValue(),
) as unknown as fc.Arbitrary<Scenario>;

const named = (name: string) => ({ name }) as Scenario;

/** Gestures that lead through the states, one after the other. */
function through(states: Scenario[], start: History = nothingDone): History {
  return states
    .slice(1)
    .reduce((history, state, i) => recorded(history, states[i], state, `to ${i + 1}`, i), start);
}

describe('what was done', () => {
  it('is undone gesture by gesture to where it began, and done again to where it ended', () => {
    fc.assert(
      fc.property(fc.array(scenarios, { minLength: 1, maxLength: 12 }), (states) => {
        const file = (scenario: Scenario) => JSON.parse(JSON.stringify(scenario)) as Scenario;
        let history = through(states);
        let scenario = file(states[states.length - 1]);
        for (let step = undone(history, scenario); step; step = undone(history, scenario))
          ({ history, scenario } = step);
        expect(file(scenario)).toEqual(file(states[0]));
        for (let step = redone(history, scenario); step; step = redone(history, scenario))
          ({ history, scenario } = step);
        expect(file(scenario)).toEqual(file(states[states.length - 1]));
      }),
    );
  });

  it('is called by its gesture', () => {
    const history = through([named('a'), named('b'), named('c')]);
    expect(undoable(history)?.gesture).toBe('to 2');
    expect(redoable(history)).toBeUndefined();
    const step = undone(history, named('c'));
    expect(step).toMatchObject({ gesture: 'to 2', scenario: { name: 'b' } });
    expect(undoable(step?.history ?? nothingDone)?.gesture).toBe('to 1');
    expect(redoable(step?.history ?? nothingDone)?.gesture).toBe('to 2');
  });

  it('keeps only the sections that a gesture has changed', () => {
    const before = { name: 'a', coils: [{ name: 'x' }] } as Scenario;
    const { entries } = recorded(nothingDone, before, { ...before, name: 'b' }, 'call it b', 5);
    expect(entries).toEqual([
      { n: 1, gesture: 'call it b', at_ms: 5, was: { name: 'a' }, is: { name: 'b' } },
    ]);
  });

  it('is no more than was done: a gesture that changes nothing is none', () => {
    const once = through([named('a'), named('b')]);
    expect(recorded(once, named('b'), named('b'), 'again', 9)).toEqual(once);
  });

  it('gives up what was undone when something else is done', () => {
    const step = undone(through([named('a'), named('b'), named('c')]), named('c'));
    const history = recorded(step?.history ?? nothingDone, named('b'), named('d'), 'to d', 9);
    expect(history.entries.map(({ n, gesture }) => [n, gesture])).toEqual([
      [1, 'to 1'],
      [2, 'to d'],
    ]);
    expect(redoable(history)).toBeUndefined();
  });

  it('reaches back over 200 gestures, and its numbers go on', () => {
    const states = Array.from({ length: 251 }, (_, i) => named(String(i)));
    let history = through(states);
    expect(deepest).toBe(200);
    expect(history.entries).toHaveLength(200);
    expect(history.done).toBe(250);
    let scenario = named('250');
    for (let step = undone(history, scenario); step; step = undone(history, scenario))
      ({ history, scenario } = step);
    expect(scenario.name).toBe('50');
  });
});
