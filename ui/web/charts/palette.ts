/**
 * Colours of the height-by-time field. Temperature turns around the one that is warm enough for the tap: slate
 * water below it, copper above it, so that the colour answers the person's question and not a chart's.
 */
import { interpolateLab, piecewise } from 'd3';

export interface Palette {
  /** Coldest first, odd in number: the middle one stands for the pivot. */
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

/** Colour of a place along the palette, as the style sheet writes it. */
export function colourScale(palette: Palette): (place: number) => string {
  return piecewise(interpolateLab, palette.stops);
}

/** 256 colours along the palette as red, green, blue bytes: a field has a hundred thousand points. */
export function colourTable(palette: Palette): Uint8ClampedArray {
  const colour = colourScale(palette);
  const table = new Uint8ClampedArray(256 * 3);
  for (let i = 0; i < 256; i++) {
    table.set((colour(i / 255).match(/\d+/g) ?? []).slice(0, 3).map(Number), i * 3);
  }
  return table;
}
