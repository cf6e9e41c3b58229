/** Random plants, valid by construction: whatever a file can describe, a run is sound. */
import { describe, expect, it } from 'vitest';
import { randomScenario } from '../scenario/random-scenario.ts';
import { faultsOf, shortened } from './soundness.ts';

const seeds = Array.from({ length: 300 }, (_, i) => i + 1);

describe('a run of a random plant', () => {
  it.each(seeds)('of seed %i is sound', (seed) => {
    expect(faultsOf(shortened(randomScenario(seed), seed))).toEqual([]);
  });
});
