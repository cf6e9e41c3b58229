/** An answer's curve in the reader's units: numbers for the chart, text for the readout and the table. */
import { type Column, type Curve, type DimensionKey, printedSymbol } from '../../../sim/index.ts';
import { answerViewWords, inColumn, monthNames, type Say, type ShownCurve } from '../../words/index.ts';
import { type Range, rangeOf } from '../charts/frame.ts';
import { plainNumber } from './screen-units.ts';

export interface CurveAxis {
  /** Empty for months and money. */
  unit: string;
  range: Range;
  /** A mark of the axis in words. */
  tick: (value: number) => string;
}

export interface AnswerCurve {
  x: CurveAxis;
  y: CurveAxis;
  at: number[];
  /** Each value of x in words, with its unit. */
  atWords: string[];
  lines: AnswerLine[];
  /** Of many alike, drawn thin beneath the others. */
  thin: AnswerLine[];
  present: number | null;
  presentWords: string;
  knee: number | null;
  kneeWords: string;
}

export interface AnswerLine {
  label: string;
  values: (number | null)[];
  words: string[];
}

/** How the numbers of one axis are shown. */
interface Shown {
  unit: string;
  of: (value: number) => number;
  words: (value: number) => string;
  tick: (value: number) => string;
}

/** Past two hours nobody counts in minutes. */
const long_s = 7200;
const nothing = '–';

/** Null where the curve holds fewer than two numbers that there are words for. */
export function answerCurve(
  curve: Curve,
  { lines: names, knee: begins, thin = () => null }: Pick<ShownCurve, 'lines' | 'knee' | 'thin'>,
  say: Say,
): AnswerCurve | null {
  const known = curve.lines.filter(({ name }) => name in names);
  const many = curve.lines.filter(({ name }) => thin(name) !== null);
  const values = [...known, ...many].flatMap((line) => line.values.filter((value) => value !== null));
  if (known.length === 0 || values.length < 2 || curve.at.length < 2) return null;
  const x = shownAs(curve.x, curve.at, say);
  const y = shownAs(known[0].y, values, say);
  const at = curve.at.map(x.of);
  const tall = values.map(y.of);
  const inRange = (value: number | null) =>
    value === null || value < curve.at[0] || value > curve.at[curve.at.length - 1] ? null : value;
  const [present, knee] = [inRange(curve.present), begins ? inRange(curve.knee) : null];
  return {
    x: { unit: x.unit, range: xRange(curve.x, at), tick: x.tick },
    y: { unit: y.unit, range: yRange(known[0].y, tall), tick: y.tick },
    at,
    atWords: curve.at.map(x.words),
    lines: known.map(({ name, values }) => lineOf(names[name], values, y)),
    thin: many.map(({ name, values }) => lineOf(thin(name) ?? name, values, y)),
    present: present === null ? null : x.of(present),
    presentWords: present === null ? '' : `${answerViewWords.present}: ${x.words(present)}`,
    knee: knee === null ? null : x.of(knee),
    kneeWords: knee === null ? '' : answerViewWords.knee(x.words(knee), begins ?? ''),
  };
}

function lineOf(label: string, values: readonly (number | null)[], y: Shown): AnswerLine {
  return {
    label,
    values: values.map((value) => (value === null ? null : y.of(value))),
    words: values.map((value) => (value === null ? nothing : y.words(value))),
  };
}

/** From the first to the last value, with marks on round numbers; a mark for each month. */
function xRange({ dimension }: Column, at: number[]): Range {
  const [low, high] = [at[0], at[at.length - 1]];
  if (dimension === 'month') return { low, high, at };
  return { low, high, at: rangeOf(low, high).at.filter((mark) => mark >= low && mark <= high) };
}

/** On round numbers; what is counted has no halves. */
function yRange({ dimension }: Column, values: number[]): Range {
  const range = rangeOf(Math.min(...values), Math.max(...values));
  return dimension === 'count' ? { ...range, at: range.at.filter(Number.isInteger) } : range;
}

function shownAs({ dimension }: Column, values: readonly number[], say: Say): Shown {
  if (dimension === 'month') {
    const name = (month: number) => monthNames[month - 1] ?? '';
    return { unit: '', of: (value) => value, words: name, tick: (month) => name(month)[0] };
  }
  if (dimension === 'money') return { unit: '', of: (value) => value, words: say.money, tick: say.money };
  if (dimension === 'number' || dimension === 'text' || dimension === 'count') return counted();
  if (dimension === 'time' && Math.max(...values) > long_s) return hours(values);
  return measured(dimension, values, say);
}

function counted(): Shown {
  const words = (value: number) => plainNumber(value);
  return { unit: '', of: (value) => value, words, tick: words };
}

function hours(values: readonly number[]): Shown {
  const of = (value_s: number) => value_s / 3600;
  const digits = digitsFor(values.map(of));
  return {
    unit: 'h',
    of,
    words: (value_s) => `${plainNumber(of(value_s), digits)} h`,
    tick: (value) => plainNumber(value),
  };
}

function measured(dimension: DimensionKey, values: readonly number[], say: Say): Shown {
  const unit = printedSymbol(say.unit(dimension));
  const of = (value: number) => inColumn(value, dimension, say.units);
  const digits = digitsFor(values.map(of));
  // A resistance in US units is read as its R, whatever its unit.
  const words = (value: number) =>
    dimension === 'resistance'
      ? say.quantity(value, dimension, 3)
      : `${plainNumber(of(value), digits)} ${unit}`;
  return { unit, of, words, tick: (value) => plainNumber(value) };
}

/** Three figures of what the axis reaches over, and no more than two decimals. */
function digitsFor(values: readonly number[]): number {
  const reach = Math.max(...values) - Math.min(...values) || 1;
  return Math.min(2, Math.max(0, 2 - Math.floor(Math.log10(reach))));
}
