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

describe('fieldGrid', () => {
  it('is linear between the layers and level beyond them, top row first', () => {
    const { values } = fieldGrid(still, 1, 4);
    // Rows stand at 0.875, 0.625, 0.375 and 0.125 m.
    expect([...values]).toEqual([60, 50, 30, 20]);
  });

  it('averages the samples of a column', () => {
    const rising = { ...still, values: [10, 10, 20, 20, 30, 30, 40, 40] };
    const { columns, values } = fieldGrid(rising, 2, 1);
    expect(columns).toBe(2);
    expect([...values]).toEqual([15, 35]);
  });

  it('shows a store of one layer as one temperature', () => {
    const one = { time_s: [0], height: [0.5], depth: 1, values: [33] };
    expect([...fieldGrid(one, 5, 3).values]).toEqual([33, 33, 33]);
  });
});

describe('fieldContour', () => {
  it('lies level at the height where the water is warm enough', () => {
    const grid = fieldGrid(still, 4, 100);
    // 40 degrees is half-way up: 50 px below the top of a 100 px plot.
    const points = [...fieldContour(grid, 40, frame).matchAll(/[ML]([\d.]+),([\d.]+)/g)];
    expect(points.length).toBeGreaterThanOrEqual(3);
    for (const [, , y] of points) expect(Number(y)).toBeCloseTo(60, 0);
  });

  it('draws nothing where no water or all water is warm enough', () => {
    const grid = fieldGrid(still, 4, 20);
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
