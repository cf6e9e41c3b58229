/** Temperature over height and time: pixels for a canvas, and the line where it is warm enough for the tap. */
import { contours } from 'd3';
import { type Frame, timeScale, upwardScale } from './frame.ts';
import { colourTable, type FieldScale, type Palette, placeOf } from './palette.ts';
import { px } from './svg.ts';
import { groupBounds } from './thin.ts';

export interface FieldData {
  time_s: ArrayLike<number>;
  /** Middles of the layers, bottom first, and the height of the water. */
  height: ArrayLike<number>;
  depth: number;
  /** Layer k at sample i: values[i * layers + k]. */
  values: ArrayLike<number>;
}

/** Values on a grid of `columns` by `rows`, row 0 at the top, as a picture is laid out. */
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

/** Means over time in each column; between the layers' middles the temperature is taken as linear in height. */
export function fieldGrid(data: FieldData, columns: number, rows: number): Grid {
  const layers = data.height.length;
  const bounds = groupBounds(data.time_s.length, columns);
  const width = bounds.length - 1;
  const values = new Float64Array(width * rows);
  const means = new Float64Array(layers);
  const between = Array.from({ length: rows }, (_, row) => {
    const height = data.depth * (1 - (row + 0.5) / rows);
    let above = 0;
    while (above < layers - 1 && data.height[above] < height) above++;
    const below = Math.max(0, above - 1);
    const gap = data.height[above] - data.height[below];
    const share = gap > 0 ? Math.min(1, Math.max(0, (height - data.height[below]) / gap)) : 0;
    return { below, above, share };
  });
  for (let column = 0; column < width; column++) {
    const count = bounds[column + 1] - bounds[column];
    means.fill(0);
    for (let i = bounds[column]; i < bounds[column + 1]; i++) {
      for (let k = 0; k < layers; k++) means[k] += data.values[i * layers + k] / count;
    }
    for (let row = 0; row < rows; row++) {
      const { below, above, share } = between[row];
      values[row * width + column] = means[below] + share * (means[above] - means[below]);
    }
  }
  return { columns: width, rows, values };
}

export function fieldPixels(grid: Grid, scale: FieldScale, palette: Palette): Pixels {
  const table = colourTable(palette);
  const rgba = new Uint8ClampedArray(grid.values.length * 4);
  for (let i = 0; i < grid.values.length; i++) {
    const entry = Math.round(placeOf(grid.values[i], scale) * 255) * 3;
    rgba[i * 4] = table[entry];
    rgba[i * 4 + 1] = table[entry + 1];
    rgba[i * 4 + 2] = table[entry + 2];
    rgba[i * 4 + 3] = 255;
  }
  return { width: grid.columns, height: grid.rows, rgba };
}

/**
 * Path of the line at `level`. The rings that come back also run along the picture's edge, to close the warm
 * region; a point with a coordinate on the edge (0 or the grid's size) belongs to that part and is left out.
 */
export function fieldContour(grid: Grid, level: number, frame: Frame): string {
  const { columns, rows } = grid;
  const x = timeScale(frame, { from_s: 0, to_s: columns });
  const y = upwardScale(frame, rows, 0);
  const onEdge = ([column, row]: number[]) => column <= 0 || row <= 0 || column >= columns || row >= rows;
  // Typed arrays are accepted at run time; the declarations know only plain ones.
  const [region] = contours().size([columns, rows]).thresholds([level])(Array.from(grid.values));
  let path = '';
  for (const ring of region.coordinates.flat()) {
    let drawing = false;
    for (const point of ring) {
      const inside = !onEdge(point);
      if (inside) path += `${drawing ? 'L' : 'M'}${px(x(point[0]))},${px(y(point[1]))}`;
      drawing = inside;
    }
  }
  return path;
}
