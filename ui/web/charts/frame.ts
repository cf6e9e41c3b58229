/** The rectangle a chart draws in, and the time axis that all charts of a panel share. */
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

export const day_s = 86_400;
const hour_s = 3600;
/** Steps a person counts time in. */
const steps_s = [1, 2, 3, 6, 12]
  .map((hours) => hours * hour_s)
  .concat([1, 2, 7, 14, 28, 56].map((days) => days * day_s));

/** Straight from one range to the other. (d3's own brings parsers of colours and formats along.) */
function linearScale([low, high]: [number, number], [start, end]: [number, number]): Scale {
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

/** Ticks at least `apart_px` apart, on whole hours or midnights counted from the run's first midnight. */
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
