import { describe, expect, it } from 'vitest';
import { readScenario, type Scenario } from '../../../sim/scenario/index.ts';
import { coil, sound } from './build/support.ts';

function sketchOf(store: Partial<Scenario['store']>, parts: Partial<NonNullable<Scenario['coils']>[number]>) {
  const read = readScenario({
    format: 'tankful',
    version: 1,
    name: 'test',
    site: { latitude: '44 N' },
    store: { inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' }, ...store },
    coils: [{ ...coil, ...parts }],
  });
  return { ok: read.ok, sketch: read.sketch };
}

describe('a sketch', () => {
  it('of a sound file shows the plant’s own store and coils', () => {
    const { plant, sketch } = sound({ coils: [{ ...coil, side_by_side: 2 }] });
    expect(sketch.store).toEqual(plant.store);
    expect(sketch.coils).toEqual([{ ...plant.coils[0], side_by_side: 2, limit_m: null, stretched: false }]);
  });

  it('is made of a file whose turns do not fit, and shows where they would end', () => {
    // 1000 ft of 7/8 in tube on 28 in, 3/4 in apart: 304.8 m / 2.2347 m = 136.4 turns of 41.275 mm.
    const { ok, sketch } = sketchOf({}, { roll_length: '1000 ft', from: '4 in' });
    expect(ok).toBe(false);
    expect(sketch?.coils[0].top_m).toBeCloseTo(0.1016 + 136.4 * 0.041275 + 0.0222, 1);
  });

  it('keeps the limit that the file sets', () => {
    const { ok, sketch } = sketchOf({}, { roll_length: '100 ft', from: '4 in', to: '10 in' });
    expect(ok).toBe(false);
    expect(sketch?.coils[0].limit_m).toBeCloseTo(0.254, 9);
  });

  it('knows turns that are drawn out over a height', () => {
    const spread = { spacing: 'spread', roll_length: '30 ft', from: '4 in', to: '28 in' } as const;
    expect(sketchOf({}, spread).sketch?.coils[0].stretched).toBe(true);
    expect(sketchOf({}, { ...spread, pitch: '4 in' }).sketch?.coils[0].stretched).toBe(false);
  });

  it('is not made where the store itself is refused', () => {
    expect(sketchOf({ water_depth: '50 in' }, {}).sketch).toBeUndefined();
  });
});
