/** Random supplies and households. */

import type { Scenario } from '../../../../sim/scenario/index.ts';
import { PATTERN_NAMES } from '../../../../sim/scenario/patterns.ts';
import { type Chance, digits } from './chance.ts';
import { randomPlace } from './store.ts';

type Part<K extends keyof Scenario> = NonNullable<Scenario[K]>;

export function randomSupply(chance: Chance): Part<'supply'> {
  const cold = () => chance.temperature(chance.between(0.5, 25));
  const kinds: (() => NonNullable<Part<'supply'>['cold']>)[] = [
    () => ({ kind: 'fixed', temperature: cold() }),
    () => ({ kind: 'by month', temperature: Array.from({ length: 12 }, cold) }),
    () => ({
      kind: 'cistern',
      volume: chance.volume(chance.between(100, 6000)),
      start: cold(),
      stands: randomPlace(chance),
    }),
  ];
  return {
    cold: chance.pick(kinds)(),
    ...chance.maybe(0.6, () => ({
      pump: {
        open_flow: chance.flow(chance.between(4, 25)),
        cut_out: chance.us ? `${chance.whole(15, 70)} psi` : `${digits(chance.between(1, 5))} bar`,
      },
    })),
    lift: chance.length(chance.between(-2, 8)),
  };
}

export function randomTaps(chance: Chance, coil: string): Part<'taps'> {
  return {
    coil,
    ...chance.maybe(0.8, () => ({
      showers: Array.from({ length: chance.whole(1, 3) }, () => ({
        at: chance.clock(),
        days: chance.days(),
        people: chance.whole(1, 5),
        lasts: `${chance.whole(1, 15)} min`,
        flow: chance.flow(chance.between(3, 14)),
        temperature: chance.temperature(chance.between(35, 45)),
      })),
    })),
    ...chance.maybe(0.6, () => ({
      draws: Array.from({ length: chance.whole(1, 6) }, (_, i) => ({
        name: `draw ${i + 1}`,
        at: chance.clock(),
        days: chance.days(),
        flow: chance.flow(chance.between(1, 15)),
        ...(chance.yes(0.5)
          ? { lasts: `${chance.whole(5, 900)} s` }
          : { volume: chance.volume(chance.between(1, 80)) }),
        temperature: chance.temperature(chance.between(20, 60)),
        outlet: chance.pick(['tap', 'head'] as const),
      })),
    })),
    ...chance.maybe(0.3, () => ({ pattern: { name: chance.pick(PATTERN_NAMES) } })),
    mixing_valve: { fitted: chance.yes(0.7) },
    pipe: { length: chance.length(chance.between(0, 40)), foam: chance.length(chance.between(0, 0.03)) },
  };
}
