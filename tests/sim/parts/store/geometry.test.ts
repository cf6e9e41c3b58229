/** Layers of a store against the shapes they cut. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StoreShape } from '../../../../sim/parts/description.ts';
import { depthOf, insideHeight, storeGeometry, volumeBelow } from '../../../../sim/parts/store/geometry.ts';

const shapes: StoreShape[] = [
  { kind: 'box', length_m: 1.2, width_m: 0.8, height_m: 1 },
  { kind: 'upright cylinder', diameter_m: 0.9, height_m: 1.3 },
  { kind: 'lying cylinder', diameter_m: 1, length_m: 1.6 },
];
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((s, x) => s + x, 0);

describe.each(shapes)('layers of a $kind', (shape) => {
  const depths = fc.double({ min: 0.05, max: insideHeight(shape), noNaN: true });

  it('hold together what the shape holds below the water', () => {
    fc.assert(
      fc.property(depths, fc.integer({ min: 1, max: 60 }), (depth, layers) => {
        const g = storeGeometry(shape, depth, layers);
        expect(sum(g.volume_m3)).toBeCloseTo(volumeBelow(shape, depth), 9);
        expect(g.layer_height_m * layers).toBeCloseTo(depth, 12);
        expect(g.middle_m[0]).toBeCloseTo(depth / layers / 2, 12);
      }),
      { numRuns: 50 },
    );
  });

  it('stand as deep as their water makes them, and no deeper than they may', () => {
    fc.assert(
      fc.property(depths, (depth) => {
        const volume = volumeBelow(shape, depth);
        expect(depthOf(shape, volume, insideHeight(shape))).toBeCloseTo(depth, 9);
        expect(depthOf(shape, volume, depth / 2)).toBeCloseTo(depth / 2, 12);
      }),
      { numRuns: 50 },
    );
  });

  it('lie between sections whose mean, weighed by height, is their volume', () => {
    // Simpson's rule over each layer, from sections at twice as many boundaries.
    const g = storeGeometry(shape, 0.7 * insideHeight(shape), 40);
    const fine = storeGeometry(shape, 0.7 * insideHeight(shape), 80);
    for (let i = 1; i < 40; i++) {
      const [a, b, c] = [fine.section_m2[2 * i], fine.section_m2[2 * i + 1], fine.section_m2[2 * i + 2]];
      expect(((a + 4 * b + c) / 6) * g.layer_height_m).toBeCloseTo(g.volume_m3[i], 5);
    }
  });
});

describe('walls', () => {
  it('of a box and of an upright cylinder are perimeter times depth', () => {
    const box = storeGeometry(shapes[0], 0.5, 10);
    expect(sum(box.side_m2)).toBeCloseTo(2 * (1.2 + 0.8) * 0.5, 12);
    expect(box.bottom_m2).toBeCloseTo(1.2 * 0.8, 12);
    expect(box.surface_m2).toBeCloseTo(1.2 * 0.8, 12);
    const round = storeGeometry(shapes[1], 0.5, 10);
    expect(sum(round.side_m2)).toBeCloseTo(Math.PI * 0.9 * 0.5, 12);
    expect(round.bottom_m2).toBeCloseTo(Math.PI * 0.45 ** 2, 12);
  });

  it('of a lying cylinder half full are half its shell and half its ends, and it has no bottom', () => {
    const half = storeGeometry(shapes[2], 0.5, 10);
    expect(sum(half.side_m2)).toBeCloseTo((Math.PI * 1 * 1.6) / 2 + 2 * ((Math.PI * 0.25) / 2), 9);
    expect(sum(half.volume_m3)).toBeCloseTo((Math.PI * 0.25 * 1.6) / 2, 9);
    expect(half.surface_m2).toBeCloseTo(1 * 1.6, 9);
    expect(half.bottom_m2).toBe(0);
  });

  it('of a lying cylinder filled to the top are the whole of it', () => {
    const full = storeGeometry(shapes[2], 1, 10);
    expect(sum(full.side_m2)).toBeCloseTo(Math.PI * 1.6 + 2 * Math.PI * 0.25, 9);
    expect(full.surface_m2).toBeCloseTo(0, 6);
  });
});
