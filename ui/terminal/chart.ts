/**
 * The store over the days as nested blocks. A row is filled where the water is at least as hot as the row's
 * number: full blocks where even the bottom is, half-tone where the middle is, light where only the top is.
 */
import { type Paint, paint, type Screen } from './screen.ts';
import { padLeft } from './text.ts';

export interface StoreTrace {
  /** One value a column, in the unit on screen. */
  top: readonly number[];
  middle: readonly number[];
  bottom: readonly number[];
  unit: string;
  wanted: { value: number; words: string } | null;
  words: { title: string; top: string; middle: string; bottom: string };
}

/** Columns left of the chart's first: a number, a space and the axis. */
export const axisWidth = 9;

const mostRows = 14;
const rowSteps = [0.5, 1, 2, 5, 10, 20, 50, 100];

type Shade = 'top' | 'middle' | 'bottom' | 'wanted' | 'empty';

const paints: Record<Shade, Paint | null> = {
  top: 'yellow',
  middle: 'yellow',
  bottom: 'red',
  wanted: 'cyan',
  empty: null,
};

function glyphs(screen: Screen) {
  return screen.unicode
    ? { top: '░', middle: '▒', bottom: '█', wanted: '┄', empty: ' ', axis: '┤' }
    : { top: '.', middle: '+', bottom: '#', wanted: '-', empty: ' ', axis: '|' };
}

/** Rows from hottest to coldest on round numbers, a few at least even when the store hardly changes. */
export function rowValues(trace: StoreTrace): number[] {
  const seen = [...trace.top, ...trace.middle, ...trace.bottom].filter(Number.isFinite);
  if (seen.length === 0) return [];
  if (trace.wanted) seen.push(trace.wanted.value);
  const low = Math.min(...seen);
  const high = Math.max(...seen);
  const step = rowSteps.find((size) => Math.floor(high / size) - Math.floor(low / size) < mostRows) ?? 200;
  const first = Math.floor(low / step);
  // A row for the wanted temperature stands at or above it, even where the store stays below.
  const wantedRow = trace.wanted ? Math.ceil(trace.wanted.value / step) : first;
  const last = Math.max(first + 3, Math.floor(high / step), wantedRow);
  return Array.from({ length: last - first + 1 }, (_, row) => (last - row) * step);
}

export function storeChart(trace: StoreTrace, screen: Screen): string[] {
  const glyph = glyphs(screen);
  const rows = rowValues(trace);
  // From this row up, a filled row promises the wanted temperature.
  const wanted = trace.wanted?.value ?? Number.POSITIVE_INFINITY;
  const wantedRow = rows.findLastIndex((value) => value >= wanted);
  const step = rows[0] - rows[1];
  const lines = rows.map((value, row) => {
    const shades = trace.top.map((_, column): Shade => {
      if (trace.bottom[column] >= value) return 'bottom';
      if (trace.middle[column] >= value) return 'middle';
      if (trace.top[column] >= value) return 'top';
      return row === wantedRow ? 'wanted' : 'empty';
    });
    const numbered = Number.isInteger(value / (2 * step)) || row === wantedRow;
    const number = numbered ? String(value) : '';
    return `${padLeft(number, axisWidth - 2)} ${glyph.axis}${painted(shades, screen)}`.trimEnd();
  });
  return [legend(trace, screen), ...lines];
}

/** Each stretch of one shade is painted once. */
function painted(shades: Shade[], screen: Screen): string {
  const glyph = glyphs(screen);
  let text = '';
  for (let from = 0; from < shades.length; ) {
    let to = from;
    while (to < shades.length && shades[to] === shades[from]) to++;
    const stretch = glyph[shades[from]].repeat(to - from);
    const how = paints[shades[from]];
    text += how ? paint(screen, how, stretch) : stretch;
    from = to;
  }
  return text;
}

function legend({ words, unit, wanted }: StoreTrace, screen: Screen): string {
  const glyph = glyphs(screen);
  const key = (shade: 'top' | 'middle' | 'bottom' | 'wanted') =>
    paint(screen, paints[shade] ?? 'dim', glyph[shade]);
  const keys = [
    `${key('top')} ${words.top}`,
    `${key('middle')} ${words.middle}`,
    `${key('bottom')} ${words.bottom}`,
    ...(wanted ? [`${key('wanted')} ${wanted.words}`] : []),
  ];
  return `${padLeft(unit, axisWidth - 2)}   ${words.title}   ${keys.join('   ')}`;
}

/** The foot of the chart: a tick at each mark and its words under it; words that would collide are left off. */
export function timeFoot(
  marks: { column: number; words: string }[],
  columns: number,
  screen: Screen,
): string[] {
  const [corner, line, tick] = screen.unicode ? ['└', '─', '┬'] : ['+', '-', '+'];
  const rule = Array.from({ length: columns }, () => line);
  let under = '';
  for (const { column, words } of marks) {
    if (column < columns) rule[column] = tick;
    if (column + words.length <= columns && (under === '' || under.length < column)) {
      under = under.padEnd(column) + words;
    }
  }
  const indent = ' '.repeat(axisWidth);
  return [`${indent.slice(1)}${corner}${rule.join('')}`, `${indent}${under}`.trimEnd()];
}
