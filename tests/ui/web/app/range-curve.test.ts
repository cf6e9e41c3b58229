import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import type { RangeAnswer, Scenario } from '../../../../sim/index.ts';
import { rangeCurve } from '../../../../ui/web/app/range-curve.ts';
import { sayIn } from '../../../../ui/words/index.ts';

const scenario = demo as unknown as Scenario;
const point = (value: string, store_top_C_max: number | null) => ({
  values: [value],
  figures: store_top_C_max === null ? null : { store_top_C_max },
  problem: null,
});
const range = (more: Partial<RangeAnswer['axes'][number]> = {}): RangeAnswer => ({
  axes: [
    {
      path: 'store.water_depth',
      label: 'depth of water',
      values: ['40 in', '30 in', '20 in'],
      at: [1.016, 0.762, 0.508],
      dimension: 'length',
      ...more,
    },
  ],
  figures: ['store_top_C_max'],
  points: [point('40 in', 70), point('30 in', null), point('20 in', 80)],
  done: 2,
});

describe('a range as a curve', () => {
  it('goes from the smallest value to the largest, with a gap where a run is missing', () => {
    const curve = rangeCurve(range(), 'store_top_C_max', scenario, sayIn('SI'));
    expect(curve?.at).toEqual([0.508, 0.762, 1.016]);
    expect(curve?.lines[0].values).toEqual([80, null, 70]);
  });

  it('marks the design as it stands', () => {
    // 32 in of water in the demo.
    const curve = rangeCurve(range(), 'store_top_C_max', scenario, sayIn('SI'));
    expect(curve?.present).toBeCloseTo(32 * 0.0254, 9);
  });

  it('is none for words, which have no size', () => {
    const words = range({ at: [null, null, null], dimension: 'text' });
    expect(rangeCurve(words, 'store_top_C_max', scenario, sayIn('SI'))).toBeNull();
  });
});
