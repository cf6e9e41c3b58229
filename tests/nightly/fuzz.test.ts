/** As tests/sim/run/fuzz.test.ts, with many more plants. Each test is a block of seeds, so that the report stays short. */
import { describe, expect, it } from 'vitest';
import { faultsOf, shortened } from '../sim/run/soundness.ts';
import { randomScenario } from '../sim/scenario/random-scenario.ts';

const PLANTS = 10_000;
const BLOCK = 500;
/** Seeds the everyday test does not use. */
const FIRST = 1_000_001;
const blocks = Array.from({ length: PLANTS / BLOCK }, (_, i) => FIRST + i * BLOCK);

describe('a run of a random plant', () => {
  it.each(blocks)(`of the ${BLOCK} seeds from %i is sound`, (from) => {
    const faults: string[] = [];
    for (let seed = from; seed < from + BLOCK; seed++) {
      for (const fault of faultsOf(shortened(randomScenario(seed), seed))) faults.push(`${seed}: ${fault}`);
    }
    expect(faults).toEqual([]);
  });
});
