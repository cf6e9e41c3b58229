/** Temperature over height and time: pixels for a canvas, and the line where it is warm enough for the tap. */
import { type Frame, type TimeSpan, timeScale, upwardScale } from './frame.ts';
import { colourTable, type FieldScale, type Palette, placeOf } from './palette.ts';
import { px } from './svg.ts';
import { groupTime, layerMeans, sampleAt, stepFor } from './thin.ts';

export interface FieldData {
  time_s: ArrayLike<number>;
  /** Middles of the layers, bottom first, and the height of the water. */
  height: ArrayLike<number>;
  depth: number;
  /** Layer k at sample i: values[i * layers + k]. */
  values: ArrayLike<number>;
}

/** Values on a grid of `columns` by `rows`, row 0 at the top, as a picture is laid out. Not a number: nothing known. */
export interface Grid {
  columns: number;
  rows: number;
  values: Float64Array;
}

export interface Pixels {
  width: number;
  height: number;
  rgba: Uint8ClampedArray<ArrayBuffer>;
}

/**
 * One column a pixel over the span: means where samples crowd, straight between them where they are few. Between
 * the layers' middles the temperature is taken as linear in height.
 */
export function fieldGrid(data: FieldData, span: TimeSpan, columns: number, rows: number): Grid {
  const { time_s } = data;
  const layers = data.height.length;
  const values = new Float64Array(columns * rows);
  const step = stepFor(time_s, span, columns);
  const means = layerMeans(data.values, layers, step);
  const between = Array.from({ length: rows }, (_, row) => {
    const height = data.depth * (1 - (row + 0.5) / rows);
    let above = 0;
    while (above < layers - 1 && data.height[above] < height) above++;
    const below = Math.max(0, above - 1);
    const gap = data.height[above] - data.height[below];
    const share = gap > 0 ? Math.min(1, Math.max(0, (height - data.height[below]) / gap)) : 0;
    return { below, above, share };
  });
  const last = Math.ceil(time_s.length / step) - 1;
  const column = new Float64Array(layers);
  // A run that is still going on has nothing to show beyond what it has done.
  const end_s = time_s[time_s.length - 1];
  for (let c = 0; c < columns; c++) {
    const at_s = span.from_s + ((c + 0.5) / columns) * (span.to_s - span.from_s);
    if (at_s > end_s) {
      for (let row = 0; row < rows; row++) values[row * columns + c] = Number.NaN;
      continue;
    }
    let group = Math.min(last, Math.floor(sampleAt(time_s, at_s) / step));
    if (group > 0 && groupTime(time_s, group, step) > at_s) group--;
    const next = Math.min(last, group + 1);
    const [from_s, to_s] = [groupTime(time_s, group, step), groupTime(time_s, next, step)];
    const along = to_s > from_s ? Math.min(1, Math.max(0, (at_s - from_s) / (to_s - from_s))) : 0;
    for (let k = 0; k < layers; k++) {
      const value = means[group * layers + k];
      column[k] = value + along * (means[next * layers + k] - value);
    }
    for (let row = 0; row < rows; row++) {
      const { below, above, share } = between[row];
      values[row * columns + c] = column[below] + share * (column[above] - column[below]);
    }
  }
  return { columns, rows, values };
}

export function fieldPixels(grid: Grid, scale: FieldScale, palette: Palette): Pixels {
  const table = colourTable(palette);
  const rgba = new Uint8ClampedArray(grid.values.length * 4);
  for (let i = 0; i < grid.values.length; i++) {
    if (Number.isNaN(grid.values[i])) continue;
    const entry = Math.round(placeOf(grid.values[i], scale) * 255) * 3;
    rgba[i * 4] = table[entry];
    rgba[i * 4 + 1] = table[entry + 1];
    rgba[i * 4 + 2] = table[entry + 2];
    rgba[i * 4 + 3] = 255;
  }
  return { width: grid.columns, height: grid.rows, rgba };
}

/** The sides of a cell that the line crosses, by which of its four corners are warm: pairs of sides, top clockwise. */
const crossings = [
  '',
  '30',
  '01',
  '31',
  '12',
  '3012',
  '02',
  '32',
  '23',
  '20',
  '0123',
  '21',
  '13',
  '10',
  '03',
  '',
];

/** A grid of more columns than this has its line drawn through every other one: two pixels are fine enough. */
const narrowColumns = 200;

/**
 * Path of the line at `level`: through each square of four neighbours, straight between the places it crosses.
 * Its pieces are not joined, so a dashed line leaves out columns.
 */
export function fieldContour(
  { columns, rows, values }: Grid,
  level: number,
  frame: Frame,
  dashed = false,
): string {
  const x = timeScale(frame, { from_s: 0, to_s: columns });
  const y = upwardScale(frame, rows, 0);
  let path = '';
  const wide = columns > narrowColumns ? 2 : 1;
  for (let row = 0; row < rows - 1; row++) {
    for (let column = 0; column < columns - wide; column += wide) {
      if (dashed && column % 8 > 4) continue;
      const at = row * columns + column;
      // Corners clockwise from the top left, in bits.
      const corner = [values[at], values[at + wide], values[at + columns + wide], values[at + columns]];
      const sides =
        crossings[
          Number(corner[0] >= level) +
            2 * Number(corner[1] >= level) +
            4 * Number(corner[2] >= level) +
            8 * Number(corner[3] >= level)
        ];
      for (let i = 0; i < sides.length; i++) {
        const side = Number(sides[i]);
        const [a, b] = [corner[side], corner[(side + 1) % 4]];
        const along = (level - a) / (b - a);
        // Each value stands in the middle of its square.
        const right = wide * [along, 1, 1 - along, 0][side] + 0.5;
        const down = [0, along, 1, 1 - along][side] + 0.5;
        path += `${i % 2 === 0 ? 'M' : 'L'}${px(x(column + right))},${px(y(row + down))}`;
      }
    }
  }
  return path;
}
