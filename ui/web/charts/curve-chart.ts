/** A few lines over a quantity, with the design as it stands dotted, and a mark where more stops paying. */
import { type Frame, inside, linearScale, type Range, type Scale, upwardScale, valueAxis } from './frame.ts';
import { label, px, tag } from './svg.ts';

/** All in the axes' units. */
export interface CurveData {
  at: readonly number[];
  /** Null where nothing is known. */
  lines: readonly (readonly (number | null)[])[];
  /** Lines of many alike, beneath the others. */
  thin?: readonly (readonly (number | null)[])[];
  x: Range;
  y: Range;
  present: number | null;
  knee: number | null;
  /** Index of the line that is drawn stronger; null for none. */
  chosen: number | null;
}

export interface CurveWords {
  x: (value: number) => string;
  y: (value: number) => string;
  /** Of the values. */
  unit: string;
  present: string;
  knee: string;
}

/** Words at a mark stand to its left where it is this near to the right edge [px]. */
const nearEdge_px = 130;
const triangle_px = 6;

export function curveScales({ x, y }: Pick<CurveData, 'x' | 'y'>, frame: Frame): { x: Scale; y: Scale } {
  return {
    x: linearScale([x.low, x.high], [frame.left, frame.width - frame.right]),
    y: upwardScale(frame, y.low, y.high),
  };
}

export function curveChart(data: CurveData, frame: Frame, words: CurveWords): string {
  const { x, y } = curveScales(data, frame);
  const { at, lines, thin = [], present, knee, chosen } = data;
  const many = thin.map((values) => tag('path', { class: 'line thin', d: linePath(at, values, x, y) }));
  const paths = lines.map((values, i) =>
    tag('path', {
      class: `line curve-${i % 4}${i === chosen ? ' chosen' : ''}`,
      d: linePath(at, values, x, y),
    }),
  );
  return [
    valueAxis(frame, y, data.y.at, words.y),
    numberAxis(frame, x, data.x.at, words.x),
    // The first line lies on top of the others.
    inside(frame, ...many, ...paths.reverse()),
    label(words.unit, frame.left - 6, frame.top - 10, { class: 'value' }),
    present === null ? '' : presentMark(present, data, frame, words.present),
    knee === null ? '' : kneeMark(x(knee), frame, words.knee),
  ].join('');
}

/** Gaps stay gaps; a value between two of them is a dot under a round cap. */
function linePath(at: readonly number[], values: readonly (number | null)[], x: Scale, y: Scale): string {
  let path = '';
  let drawing = false;
  values.forEach((value, i) => {
    if (value !== null) {
      const point = `${px(x(at[i]))},${px(y(value))}`;
      path += drawing ? `L${point}` : `M${point}h0`;
    }
    drawing = value !== null;
  });
  return path;
}

function numberAxis(frame: Frame, x: Scale, at: readonly number[], words: (value: number) => string): string {
  const foot = frame.height - frame.bottom;
  const ticks = at.map(
    (value) =>
      tag('line', { class: 'hour', x1: x(value), x2: x(value), y1: frame.top, y2: foot + 4 }) +
      label(words(value), x(value), foot + 15, { class: 'time' }),
  );
  return tag(
    'g',
    { class: 'time-axis' },
    ...ticks,
    tag('path', { d: `M${frame.left},${foot}H${frame.width - frame.right}` }),
  );
}

/** Where a word stands beside a mark. */
function beside(at: number, frame: Frame): { x: number; 'text-anchor': string } {
  const left = at > frame.width - frame.right - nearEdge_px;
  return { x: left ? at - 5 : at + 5, 'text-anchor': left ? 'end' : 'start' };
}

/** Dotted from top to foot, with a dot on each line that it meets. */
function presentMark(present: number, { at, lines, x, y }: CurveData, frame: Frame, words: string): string {
  const scales = curveScales({ x, y }, frame);
  const across = scales.x(present);
  const { x: wordsAt, ...anchor } = beside(across, frame);
  const dots = lines.flatMap((values) => {
    const value = valueAt(present, at, values);
    return value === null ? [] : [tag('circle', { cx: across, cy: scales.y(value), r: 4 })];
  });
  return tag(
    'g',
    { class: 'present-mark' },
    tag('path', { d: `M${px(across)},${frame.top}V${frame.height - frame.bottom}` }),
    ...dots,
    label(words, wordsAt, frame.top + 8, anchor),
  );
}

function kneeMark(across: number, frame: Frame, words: string): string {
  const foot = frame.height - frame.bottom;
  const { x, ...anchor } = beside(across, frame);
  const d = `M${px(across)},${px(foot - 2 * triangle_px)}l${triangle_px},${2 * triangle_px}h${-2 * triangle_px}Z`;
  return tag(
    'g',
    { class: 'knee-mark' },
    tag('path', { d }),
    label(words, x + (anchor['text-anchor'] === 'end' ? -4 : 4), foot - triangle_px, anchor),
  );
}

/** Between two points by a straight line; null outside of them and beside a gap. */
export function valueAt(
  wanted: number,
  at: readonly number[],
  values: readonly (number | null)[],
): number | null {
  const after = at.findIndex((x) => x >= wanted);
  if (after === -1 || (after === 0 && at[0] > wanted)) return null;
  if (at[after] === wanted) return values[after];
  const [a, b] = [values[after - 1], values[after]];
  if (a === null || b === null) return null;
  return a + ((b - a) * (wanted - at[after - 1])) / (at[after] - at[after - 1]);
}
