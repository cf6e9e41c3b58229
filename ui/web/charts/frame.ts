/** The rectangle a chart draws in, and the time axis that all charts of a panel share. */
import { ticks } from 'd3';
import { label, tag } from './svg.ts';

export interface Frame {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface TimeSpan {
  from_s: number;
  to_s: number;
}

export interface TimeTick {
  time_s: number;
  /** Distance to the next tick, so that whoever words it knows whether hours or days are shown. */
  step_s: number;
  midnight: boolean;
}

export type Scale = (value: number) => number;

/** What a chart is drawn in and how its axes are worded. */
export interface ChartOptions {
  frame: Frame;
  span: TimeSpan;
  timeWords: (tick: TimeTick) => string;
  valueWords: (value: number) => string;
  /** Least distance of two ticks. */
  apart_px: number;
  /** From the unit of the data to the axis's. */
  of: Scale;
}

/** Where an axis begins and ends, and its marks. */
export interface Range {
  low: number;
  high: number;
  at: number[];
}

export const day_s = 86_400;
/** Steps a person counts time in. */
const steps_s = [
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * 60),
  ...[1, 2, 3, 6, 12].map((hours) => hours * 3600),
  ...[1, 2, 7, 14, 28, 56].map((days) => days * day_s),
];

/** Straight from one range to the other. (d3's own brings parsers of colours and formats along.) */
export function linearScale([low, high]: [number, number], [start, end]: [number, number]): Scale {
  return (value) => start + ((value - low) / (high - low)) * (end - start);
}

export function timeScale(frame: Frame, span: TimeSpan): Scale {
  return linearScale([span.from_s, span.to_s], [frame.left, frame.width - frame.right]);
}

/** Time under a point of the chart, kept inside the span. */
export function timeAt(x: number, frame: Frame, span: TimeSpan): number {
  const time_s = linearScale([frame.left, frame.width - frame.right], [span.from_s, span.to_s])(x);
  return Math.min(span.to_s, Math.max(span.from_s, time_s));
}

/** Heights grow upwards, pixels downwards. */
export function upwardScale(frame: Frame, low: number, high: number): Scale {
  return linearScale([low, high], [frame.height - frame.bottom, frame.top]);
}

/** Ticks at least `apart_px` apart, on whole minutes, hours or midnights counted from the run's first midnight. */
export function timeTicks(frame: Frame, span: TimeSpan, apart_px: number): TimeTick[] {
  const room = Math.max(1, (frame.width - frame.left - frame.right) / apart_px);
  const wanted = (span.to_s - span.from_s) / room;
  const step_s = steps_s.find((step) => step >= wanted) ?? steps_s[steps_s.length - 1];
  const ticks: TimeTick[] = [];
  for (let time_s = Math.ceil(span.from_s / step_s) * step_s; time_s <= span.to_s; time_s += step_s) {
    ticks.push({ time_s, step_s, midnight: time_s % day_s === 0 });
  }
  return ticks;
}

/** Lines at the ticks and words under them; a word that would run out of the chart at its end is left off. */
export function timeAxis(
  frame: Frame,
  span: TimeSpan,
  ticks: TimeTick[],
  words: (tick: TimeTick) => string,
  apart_px: number,
): string {
  const x = timeScale(frame, span);
  const foot = frame.height - frame.bottom;
  const parts = ticks.map((tick) => {
    const at = x(tick.time_s);
    const line = tag('line', {
      class: tick.midnight ? 'midnight' : 'hour',
      x1: at,
      x2: at,
      y1: frame.top,
      y2: foot + 4,
    });
    const fits = at + apart_px * 0.6 <= frame.width;
    return fits ? line + label(words(tick), at, foot + 15, { class: 'time' }) : line;
  });
  return tag(
    'g',
    { class: 'time-axis' },
    ...parts,
    tag('path', { d: `M${frame.left},${foot}H${frame.width - frame.right}` }),
  );
}

/** What rounding leaves of a value that should stand on a mark. */
const hair = 1e-6;

/** On round numbers, from the lowest to the highest; one value alone gets room above it. */
export function rangeOf(low: number, high: number): Range {
  const marks = ticks(low, high, 5);
  const by = marks.length > 1 ? marks[1] - marks[0] : 1;
  const bottom = Math.floor(low / by + hair) * by;
  const top = Math.max(Math.ceil(high / by - hair) * by, bottom + by);
  return { low: bottom, high: top, at: ticks(bottom, top, 5) };
}

/** Marks closer than this would run into each other. */
const lowestLine_px = 16;

/** Both axes of a chart. */
export function axes({ frame, span, ...options }: ChartOptions, y: Scale, at: number[]): string {
  const { apart_px, timeWords, valueWords } = options;
  const crowded = plotHeight(frame) < at.length * lowestLine_px;
  return (
    valueAxis(frame, y, crowded ? at.filter((_, i) => i % 2 === 0) : at, valueWords) +
    timeAxis(frame, span, timeTicks(frame, span, apart_px), timeWords, apart_px)
  );
}

/** What is drawn inside the axes and cut off at them, in a drawing of its own with the same coordinates. */
export function inside({ left, top, width, height, right, bottom }: Frame, ...drawn: string[]): string {
  const size = { x: left, y: top, width: plotWidth({ width, left, right }), height: height - top - bottom };
  const viewBox = `${left} ${top} ${size.width} ${size.height}`;
  return tag('svg', { ...size, viewBox, class: 'inside' }, ...drawn);
}

export function plotWidth({ width, left, right }: Pick<Frame, 'width' | 'left' | 'right'>): number {
  return Math.max(1, width - left - right);
}

export function plotHeight({ height, top, bottom }: Frame): number {
  return height - top - bottom;
}

/** Level lines with their values at the left. */
export function valueAxis(frame: Frame, y: Scale, ticks: number[], words: (value: number) => string): string {
  const parts = ticks.map((value) => {
    const at = y(value);
    return (
      tag('line', { x1: frame.left, x2: frame.width - frame.right, y1: at, y2: at }) +
      label(words(value), frame.left - 6, at, { class: 'value' })
    );
  });
  return tag('g', { class: 'value-axis' }, ...parts);
}
