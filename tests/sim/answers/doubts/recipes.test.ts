import { describe, expect, it } from 'vitest';
import {
  coolDownDoubt,
  coolingOf,
  heatUpDoubt,
  measurementsOf,
  outletDoubt,
  readingDoubt,
} from '../../../../sim/answers/doubts/recipes.ts';
import { variedOf } from '../../../../sim/answers/doubts/varied.ts';
import { movesHeat } from '../../../../sim/answers/matters.ts';
import { readScenario } from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

describe('what a measurement leaves', () => {
  it('is the doubt of two readings over the drop of a night, in the part that is conducted', () => {
    // Ten hours of 12 K a day are 5 K; sqrt(2) 0.25 K of that, all in the two thirds that bridges multiply.
    expect(coolDownDoubt({ drop_K: 12, conducted_share: 2 / 3 })).toBeCloseTo(
      (Math.SQRT2 * 0.25) / 5 / (2 / 3),
      12,
    );
    // A night of half a kelvin says little: two days then.
    expect(coolDownDoubt({ drop_K: 1.2, conducted_share: 1 })).toBeCloseTo((Math.SQRT2 * 0.25) / 2.4, 12);
  });

  it('is two readings and a mark on the fuel tank after a heat-up', () => {
    expect(heatUpDoubt(10)).toBeCloseTo(Math.hypot(0.035355, 0.05), 5);
    expect(heatUpDoubt(1e9)).toBeCloseTo(0.05, 9);
  });

  it('is large for a coil whose outlet hardly knows its film', () => {
    const told = outletDoubt(0.5, { film_K: 8, flow_K: -6 });
    expect(told).toBeCloseTo(Math.hypot(0.25 * Math.hypot(1, 0.5, 0.5), 0.3) / 8, 9);
    expect(outletDoubt(0.97, { film_K: 0.8, flow_K: -1 })).toBeGreaterThan(0.4);
  });

  it('is a thermometer’s half kelvin, a tape’s fiftieth, and nothing of what is counted', () => {
    const quantity = (dimension: 'temperature' | 'length' | 'flow', value: number) =>
      readingDoubt({ field: { kind: 'quantity', dimension } as never, value });
    expect([quantity('temperature', 40), quantity('length', 10), quantity('flow', 2)]).toEqual([
      0.5, 0.2, 0.1,
    ]);
    expect(readingDoubt({ field: { kind: 'number', whole: true } as never, value: 3 })).toBe(0);
  });
});

describe('measurements of a plant', () => {
  const scenario = smallScenario();
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('refused');
  const { plant, filled, marks } = read;
  const varied = variedOf({ scenario, filled, marks }, movesHeat);
  const found = measurementsOf(plant, varied, 55, { drop_K: 6, conducted_share: 0.9 });
  const of = (path: string) => found.find((each) => each.path === path);

  it('leave less than there was, inside what there was', () => {
    expect(found.length).toBeGreaterThan(2);
    for (const { leaves } of found) {
      for (const [path, { low, high }] of leaves) {
        const before = varied.find((each) => each.path === path);
        if (!before) throw new Error(path);
        expect(high - low).toBeLessThan(before.high - before.low);
        expect(low).toBeGreaterThanOrEqual(before.low);
        expect(high).toBeLessThanOrEqual(before.high);
      }
    }
  });

  it('tell of the household’s coil all that hinders its heat at once, and nothing of a coil that no tap draws through', () => {
    const test = of('coils[0].outside_film');
    expect(test?.recipe).toBe('outlet_test');
    expect([...(test?.leaves.keys() ?? [])]).toEqual(
      expect.arrayContaining(['coils[0].outside_film', 'coils[0].bundling', 'coils[0].fouling']),
    );
    expect(of('coils[1].outside_film')).toBeUndefined();
  });

  it('tell both shares of the jacket with one heat-up', () => {
    expect([...(of('engine.jacket_share')?.leaves.keys() ?? [])]).toEqual([
      'engine.jacket_share',
      'engine.jacket_share_light',
    ]);
    expect(of('engine.jacket_share_light')).toBeUndefined();
  });

  it('tell nothing of losses where nothing cools', () => {
    expect(measurementsOf(plant, varied, 55, null).some(({ path }) => path === 'store.bridges')).toBe(false);
    expect(coolingOf(null, 55)).toBeNull();
  });
});
