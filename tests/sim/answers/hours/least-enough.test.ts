import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LeastEnough, searchAll } from '../../../../sim/answers/hours/least-enough.ts';

const MOST = 48;

/** Tries a search makes until it knows, where `least` is the least that is enough. */
function triesFor(search: LeastEnough, least: number): number[] {
  const tries: number[] = [];
  for (let next = search.next; next !== null; next = search.next) {
    tries.push(next);
    search.tell(next, next >= least);
  }
  return tries;
}

describe('LeastEnough', () => {
  it('finds the least that is enough from any guess, without asking twice or out of range', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: MOST + 1 }),
        fc.integer({ min: -5, max: 60 }),
        fc.integer({ min: 0, max: 20 }),
        (least, guess, from) => {
          const search = new LeastEnough(MOST, guess, from);
          const tries = triesFor(search, least);
          expect(search.found).toBe(least > MOST ? null : Math.max(from, least));
          expect(new Set(tries).size).toBe(tries.length);
          expect(tries.every((each) => each >= from && each <= MOST)).toBe(true);
          expect(tries.length).toBeLessThanOrEqual(12);
        },
      ),
    );
  });

  it('needs two tries where the guess is right', () => {
    expect(triesFor(new LeastEnough(MOST, 16), 16)).toEqual([16, 15]);
  });
});

describe('searchAll', () => {
  it('goes on in rounds until every search is at its end', async () => {
    const wants = [0, 7, 16, 49];
    const searches = wants.map(() => new LeastEnough(MOST, 16));
    const rounds: number[] = [];
    const ended = await searchAll(searches, async (tries) => {
      rounds.push(tries.length);
      return tries.map(({ search, steps }) => steps >= wants[search]);
    });
    expect(ended).toEqual([true, true, true, true]);
    expect(searches.map(({ found }) => found)).toEqual([0, 7, 16, null]);
    expect(rounds[0]).toBe(4);
    expect(rounds.length).toBeLessThanOrEqual(10);
  });

  it('gives a search up where a try failed, and finishes the others', async () => {
    const searches = [new LeastEnough(MOST, 4), new LeastEnough(MOST, 4)];
    const ended = await searchAll(searches, async (tries) =>
      tries.map(({ search, steps }) => (search === 0 ? null : steps >= 5)),
    );
    expect(ended).toEqual([false, true]);
    expect(searches[1].found).toBe(5);
  });
});
