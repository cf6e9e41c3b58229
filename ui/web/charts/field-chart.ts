/** What is drawn over the height-by-time field, and the key to its colours. */
import { ticks } from 'd3';
import { timeAxis, timeTicks, upwardScale, valueAxis } from './frame.ts';
import { fieldContour, type Grid } from './height-field.ts';
import { colourAt, type FieldScale, type Palette, placeOf } from './palette.ts';
import { label, px, tag } from './svg.ts';
import type { TimeChartOptions } from './temperature-chart.ts';

export interface FieldOverlay {
  grid: Grid;
  depth: number;
  /** Warm enough for the tap; null where nobody draws. */
  usable: number | null;
}

/** Axes, and the line of usable water twice: a wide one in the paper's colour keeps it visible on any field. */
export function fieldOverlay({ grid, depth, usable }: FieldOverlay, options: TimeChartOptions): string {
  const { frame, span } = options;
  const y = upwardScale(frame, 0, depth);
  const contour = usable === null ? '' : fieldContour(grid, usable, frame);
  return [
    valueAxis(frame, y, ticks(0, depth, 4), options.valueWords),
    timeAxis(frame, span, timeTicks(frame, span, options.apart_px), options.timeWords, options.apart_px),
    ...(contour === '' ? [] : ['halo', 'contour'].map((name) => tag('path', { class: name, d: contour }))),
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
