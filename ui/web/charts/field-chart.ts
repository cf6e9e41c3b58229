/** What is drawn over the height-by-time field, and the key to its colours. */
import { ticks } from 'd3';
import { axes, type ChartOptions, inside, upwardScale } from './frame.ts';
import { fieldContour, type Grid } from './height-field.ts';
import { colourAt, type FieldScale, type Palette, placeOf } from './palette.ts';
import { label, px, tag } from './svg.ts';

export interface FieldOverlay {
  grid: Grid;
  /** Height of the water in the axis's unit. */
  depth: number;
  /** Warm enough for the tap; null where nobody draws. */
  usable: number | null;
  /** A pinned design's field, of which only the line is drawn. */
  ghost?: Grid | undefined;
  /** Height that the reader is at, in the axis's unit. */
  chosen?: number | undefined;
}

/** Axes, and the line of usable water twice: a wide one in the paper's colour keeps it visible on any field. */
export function fieldOverlay(
  { grid, depth, usable, ghost, chosen }: FieldOverlay,
  options: ChartOptions,
): string {
  const { frame } = options;
  const y = upwardScale(frame, 0, depth);
  const line = (name: string, of: Grid, dashed = false) => {
    const d = usable === null ? '' : fieldContour(of, usable, frame, dashed);
    return d === '' ? '' : tag('path', { class: 'halo', d }) + tag('path', { class: name, d });
  };
  const level = chosen === undefined ? '' : `M${frame.left},${px(y(chosen))}H${frame.width - frame.right}`;
  return [
    axes(options, y, ticks(0, depth, 4)),
    inside(frame, ghost ? line('ghost contour', ghost, true) : '', line('contour', grid)),
    level === '' ? '' : tag('path', { class: 'level', d: level }),
  ].join('');
}

/** Enough that the colours between them, mixed by the browser, look the same as the field's. */
const keyStops = 16;

export interface FieldKeyOptions {
  width: number;
  height: number;
  words: (value: number) => string;
}

/** A bar of the colours between the coldest and the hottest water of the run, with a mark at the pivot. */
export function fieldKey(scale: FieldScale, palette: Palette, options: FieldKeyOptions): string {
  const { width, height, words } = options;
  const bar = height - 16;
  const from = placeOf(scale.low, scale);
  const to = placeOf(scale.high, scale);
  const stops = Array.from({ length: keyStops + 1 }, (_, i) => {
    const offset = i / keyStops;
    return tag('stop', {
      offset: offset.toFixed(3),
      'stop-color': `rgb(${colourAt(palette, from + offset * (to - from)).join(', ')})`,
    });
  });
  const pivot = to > from ? ((0.5 - from) / (to - from)) * width : 0;
  const ends = [
    label(words(scale.low), 0, height - 3, { class: 'key-from' }),
    label(words(scale.high), width, height - 3, { class: 'key-to' }),
  ];
  const room = width * 0.25;
  const between = pivot > room && pivot < width - room;
  return [
    tag('linearGradient', { id: 'field-colours' }, ...stops),
    tag('rect', { width, height: bar, fill: 'url(#field-colours)' }),
    pivot > 0 && pivot < width ? tag('path', { class: 'pivot', d: `M${px(pivot)},0V${bar + 3}` }) : '',
    ...ends,
    between ? label(words(scale.pivot), pivot, height - 3, { class: 'key-pivot' }) : '',
  ].join('');
}
