import { describe, expect, it } from 'vitest';
import type { Frame } from '../../../../ui/web/charts/frame.ts';
import {
  type FieldData,
  fieldContour,
  fieldGrid,
  fieldPixels,
} from '../../../../ui/web/charts/height-field.ts';
import { colourTable, lightPalette, placeOf } from '../../../../ui/web/charts/palette.ts';

// Two layers in a metre of water, bottom at 20 and top at 60 degrees, for four samples.
const still: FieldData = {
  time_s: [0, 1, 2, 3],
  height: [0.25, 0.75],
  depth: 1,
  values: [20, 60, 20, 60, 20, 60, 20, 60],
};
const frame: Frame = { width: 140, height: 130, left: 20, right: 20, top: 10, bottom: 20 };

const span = { from_s: 0, to_s: 3 };

describe('fieldGrid', () => {
  it('is linear between the layers and level beyond them, top row first', () => {
    const { values } = fieldGrid(still, span, 1, 4);
    // Rows stand at 0.875, 0.625, 0.375 and 0.125 m.
    expect([...values]).toEqual([60, 50, 30, 20]);
  });

  it('averages the samples of a column where they crowd', () => {
    const time_s = Array.from({ length: 9 }, (_, i) => i);
    const rising = { ...still, time_s, values: time_s.flatMap((t) => [10 * t, 10 * t]) };
    // Two columns of eight samples: groups of four, of which the middles are at 1.5 and 5.5.
    const { values } = fieldGrid(rising, { from_s: -0.5, to_s: 7.5 }, 2, 1);
    expect([...values]).toEqual([15, 55]);
  });

  it('goes straight from sample to sample where they are few', () => {
    const rising = { ...still, values: [10, 10, 20, 20, 30, 30, 40, 40] };
    const { values } = fieldGrid(rising, span, 6, 1);
    expect([...values].map((value) => Math.round(10 * value) / 10)).toEqual([
      12.5, 17.5, 22.5, 27.5, 32.5, 37.5,
    ]);
  });

  it('knows nothing beyond what a run has done so far', () => {
    const { values } = fieldGrid(still, { from_s: 0, to_s: 6 }, 2, 1);
    expect([...values]).toEqual([40, Number.NaN]);
  });

  it('shows a store of one layer as one temperature', () => {
    const one = { time_s: [0], height: [0.5], depth: 1, values: [33] };
    expect([...fieldGrid(one, { from_s: -1, to_s: 0 }, 1, 3).values]).toEqual([33, 33, 33]);
  });
});

describe('fieldContour', () => {
  it('lies level at the height where the water is warm enough', () => {
    const grid = fieldGrid(still, span, 8, 100);
    // 40 degrees is half-way up: 50 px below the top of a 100 px plot.
    const points = [...fieldContour(grid, 40, frame).matchAll(/[ML]([\d.]+),([\d.]+)/g)];
    expect(points.length).toBeGreaterThanOrEqual(3);
    for (const [, , y] of points) expect(Number(y)).toBeCloseTo(60, 0);
  });

  it('runs through the places between four neighbours where it is warm enough', () => {
    // Warm at the right, cold at the left: upright, three quarters of the way from 20 to 60.
    const upright = { columns: 2, rows: 2, values: Float64Array.of(20, 60, 20, 60) };
    expect(fieldContour(upright, 50, frame)).toMatch(/^M82.5,(35|85)L82.5,(35|85)$/);
  });

  it('leaves gaps when dashed', () => {
    const grid = fieldGrid(still, span, 64, 20);
    const pieces = (dashed: boolean) => fieldContour(grid, 40, frame, dashed).split('M').length;
    expect(pieces(true)).toBeLessThan(pieces(false));
    expect(pieces(true)).toBeGreaterThan(1);
  });

  it('draws nothing where no water or all water is warm enough', () => {
    const grid = fieldGrid(still, span, 4, 20);
    expect(fieldContour(grid, 70, frame)).toBe('');
    expect(fieldContour(grid, 10, frame)).toBe('');
  });
});

describe('fieldPixels', () => {
  const scale = { low: 20, pivot: 40, high: 60 };

  it('paints the pivot in the middle colour and the ends in the end colours', () => {
    const grid = { columns: 3, rows: 1, values: Float64Array.of(20, 40, 60) };
    const { rgba } = fieldPixels(grid, scale, lightPalette);
    const hex = [0, 1, 2].map(
      (i) =>
        `#${[...rgba.slice(i * 4, i * 4 + 3)].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`,
    );
    expect([hex[0], hex[2]]).toEqual([lightPalette.stops[0], lightPalette.stops[4]]);
    expect(nearness(hex[1], lightPalette.stops[2])).toBeLessThan(4);
    expect(rgba[3]).toBe(255);
  });

  it('leaves what is not known unpainted', () => {
    const { rgba } = fieldPixels(
      { columns: 1, rows: 1, values: Float64Array.of(Number.NaN) },
      scale,
      lightPalette,
    );
    expect(rgba[3]).toBe(0);
  });

  it('measures both sides of the pivot with the same scale', () => {
    const lopsided = { low: 30, pivot: 40, high: 60 };
    expect(placeOf(30, lopsided)).toBe(0.25);
    expect(placeOf(50, lopsided)).toBe(0.75);
    expect(placeOf(200, lopsided)).toBe(1);
  });

  it('has a colour for each of 256 places', () => {
    const table = colourTable(lightPalette);
    expect(table).toHaveLength(768);
    const colours = new Set(Array.from({ length: 256 }, (_, i) => table.slice(i * 3, i * 3 + 3).join()));
    expect(colours.size).toBeGreaterThan(200);
  });
});

/** Largest difference of two colours in any channel. */
function nearness(a: string, b: string): number {
  const bytes = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const [first, second] = [bytes(a), bytes(b)];
  return Math.max(...first.map((byte, i) => Math.abs(byte - second[i])));
}
