/** Temperatures over time as lines, with the wanted temperature and the minutes that ran cold. */
import { area, line, ticks } from 'd3';
import {
  day_s,
  type Frame,
  type Scale,
  type TimeSpan,
  type TimeTick,
  timeAxis,
  timeScale,
  timeTicks,
  upwardScale,
  valueAxis,
} from './frame.ts';
import { label, px, tag } from './svg.ts';
import { groupBounds, groupExtremes, groupMeans, samplesToDraw } from './thin.ts';

export interface TemperatureLine {
  /** Class of the line; colours and dashes live in the style sheet. */
  key: string;
  label: string;
  values: ArrayLike<number>;
}

export interface TemperatureData {
  time_s: ArrayLike<number>;
  lines: TemperatureLine[];
  /** The wanted temperature; null where nothing is wanted. */
  reference: number | null;
  /** Spans in which water arrived colder than wanted. */
  cold: TimeSpan[];
}

export interface TimeChartOptions {
  frame: Frame;
  span: TimeSpan;
  timeWords: (tick: TimeTick) => string;
  valueWords: (value: number) => string;
  apart_px: number;
}

/** Marks shorter than this could not be seen. */
const narrowestMark_px = 2;
const endLabelApart_px = 14;
/** A day narrower than this shows no curve within it. */
const bandsBelow_px = 12;
const narrowestGroup_px = 3;

/** Lowest and highest value to show, with room for the reference, on round numbers. */
export function temperatureRange(data: TemperatureData): { low: number; high: number; at: number[] } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const meet = (value: number) => {
    if (value < low) low = value;
    if (value > high) high = value;
  };
  for (const { values } of data.lines) for (let i = 0; i < values.length; i++) meet(values[i]);
  if (data.reference !== null) meet(data.reference);
  if (low > high) return { low: 0, high: 1, at: [0, 1] };
  const step = ticks(low, high, 5);
  const by = step.length > 1 ? step[1] - step[0] : 1;
  const bottom = Math.floor(low / by) * by;
  const top = Math.max(Math.ceil(high / by) * by, bottom + by);
  return { low: bottom, high: top, at: ticks(bottom, top, 5) };
}

export function temperatureChart(data: TemperatureData, options: TimeChartOptions): string {
  const { frame, span } = options;
  const { low, high, at } = temperatureRange(data);
  const x = timeScale(frame, span);
  const y = upwardScale(frame, low, high);
  const columns = frame.width - frame.left - frame.right;
  const bounds = groupBounds(data.time_s.length, Math.min(daysOf(span), columns / narrowestGroup_px));
  return [
    valueAxis(frame, y, at, options.valueWords),
    timeAxis(frame, span, timeTicks(frame, span, options.apart_px), options.timeWords, options.apart_px),
    coldMarks(data.cold, frame, x),
    data.reference === null ? '' : referenceLine(y(data.reference), frame),
    ...(showsBands(frame, span)
      ? [
          ...data.lines.map((each) => dayBand(each, data.time_s, bounds, x, y)),
          ...data.lines.map((each) => dayMeans(each, data.time_s, bounds, x, y)),
        ]
      : data.lines.map((each) => curve(each, data.time_s, columns, x, y))),
    endLabels(data.lines, frame, y),
  ].join('');
}

/** Whether days are too narrow for their curves, and are drawn as the mean of each in a band of its reach. */
export function showsBands({ width, left, right }: Frame, span: TimeSpan): boolean {
  return (width - left - right) / daysOf(span) < bandsBelow_px;
}

function daysOf({ from_s, to_s }: TimeSpan): number {
  return (to_s - from_s) / day_s;
}

function curve(
  { key, values }: TemperatureLine,
  time_s: ArrayLike<number>,
  columns: number,
  x: Scale,
  y: Scale,
) {
  const draw = line<number>()
    .defined((i) => Number.isFinite(values[i]))
    .x((i) => x(time_s[i]))
    .y((i) => y(values[i]))
    .digits(1);
  return tag('path', { class: `line ${key}`, d: draw(samplesToDraw(values, columns)) ?? '' });
}

/** From the lowest to the highest sample of each group. */
function dayBand(
  { key, values }: TemperatureLine,
  time_s: ArrayLike<number>,
  bounds: number[],
  x: Scale,
  y: Scale,
) {
  const { low, high } = groupExtremes(values, bounds);
  const draw = area<number>()
    .defined((group) => Number.isFinite(low[group]))
    .x((group) => x(middleOf(group, bounds, time_s)))
    .y0((group) => y(low[group]))
    .y1((group) => y(high[group]))
    .digits(1);
  return tag('path', { class: `band ${key}`, d: draw(Array.from(low.keys())) ?? '' });
}

function dayMeans(
  { key, values }: TemperatureLine,
  time_s: ArrayLike<number>,
  bounds: number[],
  x: Scale,
  y: Scale,
) {
  const means = groupMeans(values, bounds, Number.NaN);
  const draw = line<number>()
    .defined((group) => Number.isFinite(means[group]))
    .x((group) => x(middleOf(group, bounds, time_s)))
    .y((group) => y(means[group]))
    .digits(1);
  return tag('path', { class: `line ${key}`, d: draw(Array.from(means.keys())) ?? '' });
}

function middleOf(group: number, bounds: number[], time_s: ArrayLike<number>): number {
  return (time_s[bounds[group]] + time_s[bounds[group + 1] - 1]) / 2;
}

/** Ticks on the floor of the chart: a band would hide the lines, and many draws are minutes long. */
function coldMarks(cold: TimeSpan[], frame: Frame, x: (value: number) => number): string {
  if (cold.length === 0) return '';
  const foot = frame.height - frame.bottom;
  const marks = cold.map(({ from_s, to_s }) => {
    const width = Math.max(narrowestMark_px, x(to_s) - x(from_s));
    return tag('rect', { x: x(from_s), y: foot - 9, width, height: 9 });
  });
  return tag('g', { class: 'cold-marks' }, ...marks);
}

function referenceLine(at: number, frame: Frame): string {
  return tag('path', { class: 'reference', d: `M${frame.left},${px(at)}H${frame.width - frame.right}` });
}

/** Names at the lines' ends, pushed apart so that they never cover each other. */
function endLabels(lines: TemperatureLine[], frame: Frame, y: (v: number) => number): string {
  const ends = lines
    .map(({ key, label: words, values }) => ({ key, words, at: y(values[values.length - 1] ?? Number.NaN) }))
    .filter(({ at }) => Number.isFinite(at))
    .sort((a, b) => a.at - b.at);
  const foot = frame.height - frame.bottom;
  for (let i = 1; i < ends.length; i++) ends[i].at = Math.max(ends[i].at, ends[i - 1].at + endLabelApart_px);
  for (let i = ends.length - 1; i >= 0; i--) {
    const ceiling = i === ends.length - 1 ? foot : ends[i + 1].at - endLabelApart_px;
    ends[i].at = Math.min(ends[i].at, ceiling);
  }
  const words = ends.map(({ key, words, at }) =>
    label(words, frame.width - frame.right + 6, at, { class: `end ${key}` }),
  );
  return tag('g', { class: 'end-labels' }, ...words);
}
