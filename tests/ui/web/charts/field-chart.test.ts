import { describe, expect, it } from 'vitest';
import { fieldKey, fieldOverlay } from '../../../../ui/web/charts/field-chart.ts';
import { fieldGrid } from '../../../../ui/web/charts/height-field.ts';
import { lightPalette } from '../../../../ui/web/charts/palette.ts';

const frame = { width: 140, height: 130, left: 20, right: 20, top: 10, bottom: 20 };
const options = {
  frame,
  span: { from_s: 0, to_s: 86_400 },
  timeWords: () => 'when',
  valueWords: (value: number) => `${value} cm`,
  apart_px: 50,
  of: (value: number) => value,
};
const grid = fieldGrid(
  { time_s: [0, 1], height: [25, 75], depth: 100, values: [20, 60, 20, 60] },
  { from_s: 0, to_s: 1 },
  1,
  100,
);

const wide = fieldGrid(
  { time_s: [1, 2, 3], height: [25, 75], depth: 100, values: [20, 60, 20, 60, 20, 60] },
  { from_s: 1, to_s: 3 },
  3,
  100,
);

describe('fieldOverlay', () => {
  it('marks the heights', () => {
    const drawn = fieldOverlay({ grid, depth: 100, usable: null }, options);
    expect(drawn).toContain('y1="70" y2="70"/><text x="14" y="70" class="value">40 cm</text>');
  });

  it('draws the line of usable water over its halo, and neither where nothing is wanted', () => {
    const drawn = fieldOverlay({ grid: wide, depth: 100, usable: 40 }, options);
    expect(drawn.indexOf('class="halo"')).toBeGreaterThan(0);
    expect(drawn.indexOf('class="contour"')).toBeGreaterThan(drawn.indexOf('class="halo"'));
    expect(fieldOverlay({ grid: wide, depth: 100, usable: null }, options)).not.toContain('halo');
  });

  it('draws a pinned design’s line, and the height that was chosen', () => {
    const drawn = fieldOverlay({ grid, depth: 100, usable: 40, ghost: wide, chosen: 25 }, options);
    expect(drawn).toContain('class="ghost contour"');
    expect(drawn).toContain('class="level" d="M20,85H120"');
  });
});

describe('fieldKey', () => {
  const size = { width: 200, height: 30, words: (value: number) => `${value} C` };

  it('runs from the coldest to the hottest water, with the pivot where it belongs', () => {
    const drawn = fieldKey({ low: 20, pivot: 40, high: 100 }, lightPalette, size);
    expect(drawn).toContain('>20 C</text>');
    expect(drawn).toContain('>100 C</text>');
    expect(drawn).toContain('class="pivot" d="M50,0V17"');
  });

  it('starts in a colour between the cold end and the pivot when the water is less cold than it is hot', () => {
    const drawn = fieldKey({ low: 40, pivot: 40, high: 100 }, lightPalette, size);
    const [first] = [...drawn.matchAll(/stop-color="rgb\((\d+), (\d+), (\d+)\)"/g)].map((found) =>
      found.slice(1).map(Number),
    );
    const middle = [0xef, 0xe7, 0xd3];
    expect(first.every((byte, i) => Math.abs(byte - middle[i]) <= 2)).toBe(true);
  });

  it('has no pivot to mark where all water has one temperature', () => {
    const drawn = fieldKey({ low: 40, pivot: 40, high: 40 }, lightPalette, size);
    expect(drawn).not.toContain('NaN');
    expect(drawn).not.toContain('pivot');
  });
});
