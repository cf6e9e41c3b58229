/**
 * Colours of the height-by-time field. Temperature turns around the one that is warm enough for the tap: slate
 * water below it, copper above it, so that the colour answers the person's question and not a chart's.
 */

export interface Palette {
  /** As in "#1f3d4d", coldest first, odd in number: the middle one stands for the pivot. */
  stops: string[];
}

export const lightPalette: Palette = { stops: ['#1f3d4d', '#5f8794', '#efe7d3', '#d08a52', '#7d2f12'] };
export const darkPalette: Palette = { stops: ['#a9cdd6', '#4f7886', '#262521', '#a95f2f', '#ffc08f'] };

export interface FieldScale {
  low: number;
  pivot: number;
  high: number;
}

/** Place of a temperature along the palette, 0 to 1: the pivot in the middle, both sides to the same scale. */
export function placeOf(value: number, { low, pivot, high }: FieldScale): number {
  const reach = Math.max(pivot - low, high - pivot, Number.EPSILON);
  return Math.min(1, Math.max(0, 0.5 + (value - pivot) / (2 * reach)));
}

/** Colour of a place along the palette as red, green and blue bytes: straight between neighbouring stops. */
export function colourAt({ stops }: Palette, place: number): [number, number, number] {
  const along = place * (stops.length - 1);
  const from = Math.min(stops.length - 2, Math.floor(along));
  const share = along - from;
  const [a, b] = [bytesOf(stops[from]), bytesOf(stops[from + 1])];
  const mix = (i: number) => Math.round(a[i] + share * (b[i] - a[i]));
  return [mix(0), mix(1), mix(2)];
}

function bytesOf(colour: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}

/** 256 colours along the palette: a field has a hundred thousand points. */
export function colourTable(palette: Palette): Uint8ClampedArray {
  const table = new Uint8ClampedArray(256 * 3);
  for (let i = 0; i < 256; i++) table.set(colourAt(palette, i / 255), i * 3);
  return table;
}
