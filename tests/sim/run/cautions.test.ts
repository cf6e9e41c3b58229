import { describe, expect, it } from 'vitest';
import type { PlantDescription } from '../../../sim/parts/description.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, collectorOf, engineOf, plantOf, tapsOf } from '../support/plant.ts';

const hot = { days: 1, start: { bottom_C: 92, top_C: 94 } };
const coils = ['charging', 'sun', 'household'].map((name) => coilOf(name));

function cautionsOf(over: Parameters<typeof plantOf>[0]) {
  const plant: PlantDescription = plantOf({ coils, run: hot, ...over });
  return simulate(plant).cautions;
}
const parts = (cautions: ReturnType<typeof cautionsOf>, key: string) =>
  cautions.filter((caution) => caution.key === key).map(({ part }) => part);

describe('a coil that can be shut in', () => {
  it('is a danger with nobody to draw: those of engine and sun, and one with nothing connected', () => {
    const cautions = cautionsOf({ engine: engineOf('charging'), collector: collectorOf('sun') });
    expect(parts(cautions, 'trapped_coil')).toEqual(['charging', 'sun', 'household']);
    expect(cautions.find(({ key }) => key === 'trapped_coil')?.severity).toBe('danger');
  });

  it('is none in a loop that drains back, nor in a cold store', () => {
    const collector = collectorOf('sun', { loop: 'drain-back' });
    expect(parts(cautionsOf({ collector, taps: tapsOf('household') }), 'trapped_coil')).toEqual([
      'charging',
      'household',
    ]);
    const cold = { days: 1, start: { bottom_C: 15, top_C: 15 } };
    expect(parts(cautionsOf({ run: cold }), 'trapped_coil')).toEqual([]);
  });
});

describe('electricity near water', () => {
  it('is minded with a generator and a loop’s pump too, and with nothing of the kind not', () => {
    const all = cautionsOf({ engine: engineOf('charging'), collector: collectorOf('sun') });
    expect(parts(all, 'wiring')).toEqual(['set', 'panels']);
    expect(parts(cautionsOf({ taps: tapsOf('household') }), 'wiring')).toEqual(['supply']);
    expect(parts(cautionsOf({}), 'wiring')).toEqual([]);
  });
});

describe('a store near boiling', () => {
  it('is a danger before it boils', () => {
    expect(cautionsOf({}).find(({ key }) => key === 'boil_over')?.severity).toBe('danger');
  });
});

describe('an engine that never runs', () => {
  it('is as dangerous, for no time at all', () => {
    const cautions = cautionsOf({ engine: engineOf('charging', { runs: { kind: 'timetable', spans: [] } }) });
    for (const key of ['carbon_monoxide', 'hot_engine']) {
      const own = cautions.find((caution) => caution.key === key);
      expect(own, key).toBeDefined();
      expect(own, key).not.toHaveProperty('value');
    }
  });
});
