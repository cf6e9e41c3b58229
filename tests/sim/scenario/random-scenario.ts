/** Random scenarios, valid by construction, over the whole space a file can describe. Same seed, same scenario. */
import type { Scenario } from '../../../sim/scenario/index.ts';
import { Chance } from './random/chance.ts';
import { randomCoils } from './random/coils.ts';
import { randomSupply, randomTaps } from './random/household.ts';
import { randomRun, randomSite, randomWeather } from './random/place.ts';
import { randomCollector, randomEngine } from './random/sources.ts';
import { randomStore } from './random/store.ts';

/** Inputs that every scenario has or may have; a mark on a coil that is not there waits. */
const UNSURE = ['store.bridges', 'coils[0].outside_film', 'supply.pump.cut_out'];

function randomDoubts(chance: Chance): NonNullable<Scenario['doubts']> {
  const [input, other] = chance.shuffled(UNSURE);
  return [
    { input, unsure: chance.yes(0.5) ? 'a little' : 'a lot' },
    ...(other === 'store.bridges'
      ? [{ input: other, unsure: 'between' as const, from: '1', to: '2.5' }]
      : []),
  ];
}

export function randomScenario(seed: number): Scenario {
  const chance = new Chance(seed);
  const latitude = chance.between(-58, 62);
  const store = randomStore(chance);
  const coils = randomCoils(chance, store);
  const [a, b, c] = chance.shuffled(coils).map((coil) => coil.name);
  const taps = a !== undefined && chance.yes(0.85) ? { taps: randomTaps(chance, a) } : {};
  return {
    format: 'tankful',
    version: 1,
    name: `random ${seed}`,
    site: randomSite(chance, latitude),
    weather: randomWeather(chance, latitude),
    run: randomRun(chance),
    store: store.part,
    coils,
    ...(b !== undefined && chance.yes(0.75) ? { engine: randomEngine(chance, b, store.depth_m) } : {}),
    ...(c !== undefined && chance.yes(0.75) ? { collector: randomCollector(chance, c) } : {}),
    ...chance.maybe(0.8, () => ({ supply: randomSupply(chance) })),
    ...taps,
    ...(taps.taps && chance.yes(0.3)
      ? {
          backup: {
            max_heat: chance.power(chance.between(2000, 25_000)),
            set: chance.temperature(chance.between(35, 55)),
          },
        }
      : {}),
    ...chance.maybe(0.3, () => ({ doubts: randomDoubts(chance) })),
  };
}
