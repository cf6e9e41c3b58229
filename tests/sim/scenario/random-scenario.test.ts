import { describe, expect, it } from 'vitest';
import { readScenario } from '../../../sim/scenario/index.ts';
import { randomScenario } from './random-scenario.ts';

const seeds = Array.from({ length: 300 }, (_, i) => i + 1);

describe('a random scenario', () => {
  it.each(seeds)('of seed %i is valid', (seed) => {
    const read = readScenario(randomScenario(seed));
    expect(read.ok ? [] : read.problems).toEqual([]);
  });

  it('is the same for the same seed', () => {
    expect(randomScenario(7)).toEqual(randomScenario(7));
    expect(randomScenario(7)).not.toEqual(randomScenario(8));
  });

  it('covers every shape, lid, and part', () => {
    const all = seeds.map(randomScenario);
    const seen = (of: (s: (typeof all)[number]) => unknown) => new Set(all.map(of)).size;
    expect(seen((s) => s.store.inside.shape)).toBe(4);
    expect(seen((s) => s.store.lid)).toBe(3);
    expect(seen((s) => s.coils?.length)).toBe(5);
    expect(seen((s) => `${!!s.engine} ${!!s.collector} ${!!s.taps} ${!!s.backup}`)).toBeGreaterThan(9);
    expect(seen((s) => s.weather?.kind)).toBe(2);
    expect(seen((s) => s.supply?.cold?.kind)).toBe(4);
    expect(seen((s) => s.engine?.runs.kind)).toBe(3);
  });
});
