/** Lines over time, with what is wanted, the minutes that ran cold, and a pinned design's lines as ghosts. */
import {
  axes,
  type ChartOptions,
  day_s,
  type Frame,
  inside,
  plotWidth,
  type Range,
  type Scale,
  type TimeSpan,
  timeScale,
  upwardScale,
} from './frame.ts';
import { label, px, tag } from './svg.ts';
import { type Groups, groupSize, groupsInView, groupsOf, groupTime, sampleAt, stepFor } from './thin.ts';

export interface Line {
  /** Class of the line; colours and dashes live in the style sheet. */
  key: string;
  label: string;
  values: ArrayLike<number>;
}

export interface LinesData {
  time_s: ArrayLike<number>;
  lines: Line[];
  /** In the axis's unit. */
  range: Range;
  /** Values are means over the interval before each sample: drawn as steps, not joined. */
  steps?: boolean;
  /** A level to compare with, as the temperature wanted; null where there is none. */
  reference: number | null;
  /** Spans in which water arrived colder than wanted. */
  cold: TimeSpan[];
  /** Names at the lines' ends; without, the key above the chart names them. */
  named?: boolean;
  /** The same lines of a pinned design. */
  ghosts?: { time_s: ArrayLike<number>; lines: Line[] } | undefined;
  /** Key of the line that is drawn stronger. */
  chosen?: string | undefined;
}

/** Marks shorter than this could not be seen. */
const narrowestMark_px = 2;
const endLabelApart_px = 14;
/** A day narrower than this shows no curve within it. */
const bandsBelow_px = 12;
const narrowestGroup_px = 3;
/** Within a pixel column, less than this is no reach: half as many points are drawn and painted. */
const leastSeen_px = 0.5;

export function linesChart(data: LinesData, options: ChartOptions): string {
  const { frame, span, of } = options;
  const { low, high, at } = data.range;
  const place = upwardScale(frame, low, high);
  const x = timeScale(frame, span);
  const y: Scale = (value) => place(of(value));
  const bands = !data.steps && showsBands(frame, span);
  const curves = (time_s: ArrayLike<number>, lines: Line[], name: (key: string) => string) => {
    if (time_s.length === 0) return [];
    const days = bands ? daysInGroup(time_s, frame, span) : 0;
    const step = days || stepFor(time_s, span, plotWidth(frame));
    const [first, last] = groupsInView(time_s, span, step);
    const drawn: Drawn = { time_s, step, first, last, x, y };
    return lines.map(({ key, values }) =>
      tag('path', {
        class: name(key),
        d: days
          ? meansPath(values, drawn)
          : data.steps && step === 1
            ? stepsPath(values, drawn)
            : reachPath(values, drawn),
      }),
    );
  };
  const stronger = (key: string) => `line ${key}${key === data.chosen ? ' chosen' : ''}`;
  return [
    axes(options, place, at),
    inside(
      frame,
      coldMarks(data.cold, frame, span),
      data.reference === null ? '' : referenceLine(y(data.reference), frame),
      ...(bands ? data.lines.map((line) => dayBand(line, data.time_s, frame, span, y)) : []),
      ...(data.ghosts ? curves(data.ghosts.time_s, data.ghosts.lines, (key) => `ghost ${key}`) : []),
      ...curves(data.time_s, data.lines, stronger),
    ),
    data.named ? endLabels(data, span, frame, y) : '',
  ].join('');
}

/** Whether days are too narrow for their curves, and are drawn as the mean of each in a band of its reach. */
export function showsBands(frame: Frame, span: TimeSpan): boolean {
  return dayWidth(frame, span) < bandsBelow_px;
}

function dayWidth(frame: Frame, { from_s, to_s }: TimeSpan): number {
  return (plotWidth(frame) * day_s) / (to_s - from_s);
}

/** Samples in as many whole days as are wide enough to be seen. */
function daysInGroup(time_s: ArrayLike<number>, frame: Frame, span: TimeSpan): number {
  const days = Math.ceil(narrowestGroup_px / dayWidth(frame, span));
  return Math.max(1, Math.round((days * day_s) / (time_s[1] - time_s[0] || day_s)));
}

interface Drawn {
  time_s: ArrayLike<number>;
  /** Samples in a group, and the groups to draw. */
  step: number;
  first: number;
  last: number;
  x: Scale;
  y: Scale;
}

/** Joins points, and starts anew after one that is not a number. */
function joiner(): { to(x: number, y: number): void; path(): string } {
  let path = '';
  let drawing = false;
  return {
    to(x, y) {
      const known = !Number.isNaN(y);
      // A line of no length is a dot under a round cap: a single sample is seen too.
      if (known) path += drawing ? `L${px(x)},${px(y)}` : `M${px(x)},${px(y)}h0`;
      drawing = known;
    },
    path: () => path,
  };
}

/** Through the lowest and the highest sample of each group, the nearer one first. */
function reachPath(values: ArrayLike<number>, { time_s, step, first, last, x, y }: Drawn): string {
  const { low, high } = groupsOf(values, step);
  const { to, path } = joiner();
  let before = Number.NaN;
  for (let group = first; group <= last; group++) {
    const at = x(groupTime(time_s, group, step));
    const [a, b] = [low[group], high[group]];
    const [near, far] = Math.abs(b - before) < Math.abs(a - before) ? [b, a] : [a, b];
    to(at, y(near));
    const seen = Math.abs(y(far) - y(near)) >= leastSeen_px;
    if (seen) to(at, y(far));
    before = seen ? far : near;
  }
  return path();
}

/** Each value level over the interval that its sample closes. */
function stepsPath(values: ArrayLike<number>, { time_s, first, last, x, y }: Drawn): string {
  const { to, path } = joiner();
  for (let i = first; i <= last; i++) {
    if (i > 0) to(x(time_s[i - 1]), y(values[i]));
    to(x(time_s[i]), y(values[i]));
  }
  return path();
}

function meansPath(values: ArrayLike<number>, { time_s, step, first, last, x, y }: Drawn): string {
  const { sum } = groupsOf(values, step);
  const { to, path } = joiner();
  for (let group = first; group <= last; group++) {
    to(x(groupTime(time_s, group, step)), y(sum[group] / groupSize(values.length, group, step)));
  }
  return path();
}

/** From the lowest to the highest sample of each group. */
function dayBand({ key, values }: Line, time_s: ArrayLike<number>, frame: Frame, span: TimeSpan, y: Scale) {
  if (time_s.length === 0) return '';
  const step = daysInGroup(time_s, frame, span);
  const [first, last] = groupsInView(time_s, span, step);
  const x = timeScale(frame, span);
  const { low, high }: Groups = groupsOf(values, step);
  const edge = (of: ArrayLike<number>) =>
    Array.from({ length: last - first + 1 }, (_, i) => first + i)
      .filter((group) => !Number.isNaN(of[group]))
      .map((group) => `${px(x(groupTime(time_s, group, step)))},${px(y(of[group]))}`);
  const outline = [...edge(high), ...edge(low).reverse()];
  return outline.length === 0 ? '' : tag('path', { class: `band ${key}`, d: `M${outline.join('L')}Z` });
}

/** Ticks on the floor of the chart: a band would hide the lines, and many draws are minutes long. */
function coldMarks(cold: TimeSpan[], frame: Frame, span: TimeSpan): string {
  const foot = frame.height - frame.bottom;
  const marks = marksInView(cold, frame, span).map(([x, width]) =>
    tag('rect', { x, y: foot - 9, width, height: 9 }),
  );
  return marks.length > 0 ? tag('g', { class: 'cold-marks' }, ...marks) : '';
}

/** Left edges and widths of the spans in view, ascending in time: those that would touch are one. */
export function marksInView(spans: TimeSpan[], frame: Frame, span: TimeSpan): [x: number, width: number][] {
  const x = timeScale(frame, span);
  const marks: [number, number][] = [];
  for (const { from_s, to_s } of spans) {
    if (to_s < span.from_s || from_s > span.to_s) continue;
    const at = Math.max(x(from_s), frame.left);
    const end = Math.max(at + narrowestMark_px, Math.min(x(to_s), frame.width - frame.right));
    const before = marks[marks.length - 1];
    if (before && at <= before[0] + before[1]) before[1] = Math.max(before[1], end - before[0]);
    else marks.push([at, end - at]);
  }
  return marks;
}

function referenceLine(at: number, frame: Frame): string {
  return tag('path', { class: 'reference', d: `M${frame.left},${px(at)}H${frame.width - frame.right}` });
}

/** Names at the lines' ends in view, pushed apart so that they never cover each other. */
function endLabels({ lines, time_s }: LinesData, { to_s }: TimeSpan, frame: Frame, y: Scale): string {
  const end = sampleAt(time_s, to_s);
  const ends = lines
    .map(({ key, label: words, values }) => ({ key, words, at: y(values[end] ?? Number.NaN) }))
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
