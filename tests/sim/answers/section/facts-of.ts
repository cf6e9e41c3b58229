/** Facts of scenarios for tests of the drawing. */
import { type SectionFacts, sectionFacts } from '../../../../sim/answers/section/index.ts';
import { readScenario, type Scenario } from '../../../../sim/scenario/index.ts';

/** A box of 48 x 36 x 36 in, 32 in of water, one coil of exactly ten turns, 1 1/2 in apart, from 4 in up. */
export function tenTurns(parts: Partial<NonNullable<Scenario['coils']>[number]> = {}): Scenario {
  // Ten turns of 20 in across and 1.5 in rise: 10 sqrt((20 pi)^2 + 1.5^2) in.
  const length_in = 10 * Math.hypot(20 * Math.PI, 1.5);
  return {
    format: 'tankful',
    version: 1,
    name: 'ten turns',
    site: { latitude: '44 N' },
    store: {
      inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' },
      water_depth: '32 in',
    },
    coils: [
      {
        name: 'coil',
        tube: { kind: 'refrigeration', size: '1/2 in' },
        roll_length: `${length_in} in`,
        coil_diameter: '20 in',
        pitch: '1.5 in',
        from: '4 in',
        ...parts,
      },
    ],
  };
}

export function factsOf(scenario: Scenario): SectionFacts {
  const read = readScenario(scenario);
  if (read.ok) return sectionFacts(read.plant, read.sketch);
  throw new Error(JSON.stringify(read.problems));
}
