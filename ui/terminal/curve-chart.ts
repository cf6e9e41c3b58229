/** A curve in blocks: each line in a shade of its own, a mark under the design as it stands and at the knee. */
import type { Column, Curve, DimensionKey } from '../../sim/index.ts';
import { fixed, inColumn, instantWords, monthNames, type Say } from '../words/index.ts';
import { axisWidth } from './chart.ts';
import { type Paint, paint, type Screen } from './screen.ts';
import { padLeft } from './text.ts';

const rows = 9;
const LONG_S = 7200;
const DAY_S = 86_400;

export interface CurveWords {
  title: string;
  /** By the lines' names; others are left out. */
  lines: Record<string, string>;
}

const paints: Paint[] = ['yellow', 'cyan', 'blue'];

function glyphs(screen: Screen) {
  return screen.unicode
    ? { marks: ['█', '▒', '░'], axis: '┤', line: '─', tick: '┬', corner: '└', here: '▲', knee: '△' }
    : { marks: ['#', '+', '.'], axis: '|', line: '-', tick: '+', corner: '+', here: '^', knee: 'v' };
}

/** What a column's numbers are; null for texts, months and money. */
function quantityOf({ dimension }: Column): DimensionKey | null {
  if (dimension === 'text' || dimension === 'money' || dimension === 'month') return null;
  return dimension === 'number' ? 'count' : dimension;
}

/** No lines where the curve holds fewer than two numbers. */
export function curveLines(curve: Curve, words: CurveWords, say: Say, screen: Screen): string[] {
  const glyph = glyphs(screen);
  const lines = curve.lines.filter(({ name }) => name in words.lines);
  const [first] = lines;
  const dimension = first && quantityOf(first.y);
  if (!dimension) return [];
  const seen = lines.flatMap(({ values }) => values.filter((value) => value !== null));
  if (seen.length < 2) return [];
  const columns = screen.width - axisWidth;
  const resampled = lines.map(({ values }) => stretched(curve.at, values, columns));
  const [low, high] = [Math.min(...seen), Math.max(...seen)];
  const span = high - low || 1;
  const rowOf = (value: number) =>
    Math.min(rows - 1, Math.max(0, Math.round(((value - low) / span) * (rows - 1))));
  const grid = Array.from({ length: rows }, () => new Array<number>(columns).fill(-1));
  // The first line lies on top of the others.
  for (let line = resampled.length - 1; line >= 0; line--) {
    resampled[line].forEach((value, column) => {
      if (value !== null) grid[rows - 1 - rowOf(value)][column] = line;
    });
  }
  // Minutes of a day's length are hours.
  const hours = dimension === 'time' && high > LONG_S;
  const shown = (value: number) => (hours ? value / 3600 : inColumn(value, dimension, say.units));
  const decimals = shown(high) - shown(low) < 10 ? 1 : 0;
  const body = grid.map((cells, row) => {
    const value = low + (span * (rows - 1 - row)) / (rows - 1);
    const number = row % 2 === 0 ? fixed(shown(value), decimals) : '';
    return `${padLeft(number, axisWidth - 2)} ${glyph.axis}${painted(cells, screen)}`.trimEnd();
  });
  const keys = lines.map(({ name }, i) => `${glyph.marks[i % 3]} ${words.lines[name]}`);
  const unit = hours ? 'h' : say.unit(dimension);
  return [
    `${padLeft(unit, axisWidth - 2)}   ${words.title}${keys.length > 1 ? `   ${keys.join('   ')}` : ''}`,
    ...body,
    ...foot(curve, columns, say, screen),
  ];
}

/** Values at each column, between the curve's points by straight lines; gaps stay gaps. */
function stretched(
  at: readonly number[],
  values: readonly (number | null)[],
  columns: number,
): (number | null)[] {
  const [from, to] = [at[0], at[at.length - 1]];
  let i = 0;
  return Array.from({ length: columns }, (_, column) => {
    const x = from + ((to - from) * column) / Math.max(1, columns - 1);
    while (i < at.length - 2 && at[i + 1] < x) i++;
    const [a, b] = [values[i], values[i + 1]];
    if (a === null || b === null) return null;
    return a + ((b - a) * (x - at[i])) / (at[i + 1] - at[i] || 1);
  });
}

function painted(cells: readonly number[], screen: Screen): string {
  const { marks } = glyphs(screen);
  let text = '';
  for (let from = 0; from < cells.length; ) {
    let to = from;
    while (to < cells.length && cells[to] === cells[from]) to++;
    const line = cells[from];
    text +=
      line < 0 ? ' '.repeat(to - from) : paint(screen, paints[line % 3], marks[line % 3].repeat(to - from));
    from = to;
  }
  return text;
}

/** The axis with its ends, the present design and the knee named beneath. */
function foot(curve: Curve, columns: number, say: Say, screen: Screen): string[] {
  const glyph = glyphs(screen);
  const dimension = quantityOf(curve.x);
  const [from, to] = [curve.at[0], curve.at[curve.at.length - 1]];
  const text = (x: number, digits: number) => {
    if (curve.x.key === 'time_s') return instantWords(x, to - from > DAY_S);
    // Nothing is nothing in any unit, but for temperatures.
    if (x === 0 && dimension !== 'temperature') return '0';
    if (curve.x.dimension === 'month') return monthNames[x - 1];
    return dimension ? say.quantity(x, dimension, digits) : say.money(x);
  };
  const columnOf = (x: number) => Math.round(((x - from) / (to - from || 1)) * (columns - 1));
  const rule = Array.from({ length: columns }, () => glyph.line);
  const words: { column: number; text: string }[] = [];
  const mark = (x: number | null, sign: string, said: string) => {
    if (x === null || x < from || x > to) return;
    rule[columnOf(x)] = glyph.tick;
    words.push({ column: columnOf(x), text: `${sign} ${said}` });
  };
  mark(curve.present, glyph.here, text(curve.present ?? 0, 3));
  mark(curve.knee, glyph.knee, text(curve.knee ?? 0, 2));
  const end = text(to, 3);
  words.push({ column: columns - end.length, text: end }, { column: 0, text: text(from, 3) });
  const under: string[] = new Array<string>(columns).fill(' ');
  // Earlier words hold their place; what would run into them is left off.
  for (const { column, text } of words) {
    const start = Math.max(0, Math.min(column, columns - text.length));
    const free = under.slice(Math.max(0, start - 1), start + text.length + 1).every((sign) => sign === ' ');
    if (free) for (let i = 0; i < text.length; i++) under[start + i] = text[i];
  }
  const indent = ' '.repeat(axisWidth);
  return [`${indent.slice(1)}${glyph.corner}${rule.join('')}`, `${indent}${under.join('')}`.trimEnd()];
}
