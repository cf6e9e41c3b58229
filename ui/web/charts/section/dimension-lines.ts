/** Dimension lines: a measure between two arrows, with thin lines that lead to what it measures. */
import { label, px, tag } from '../svg.ts';

const ARROW = 6;
/** A thin line goes this far past its dimension line [px]. */
const PAST = 3;

/** Width of a letter of the drawing's words, in the widest usual face [px]. */
const LETTER = 5.9;

/** Room that words take [px]. */
export function wordsWidth(words: string): number {
  return words.length * LETTER;
}

/** Words in one line, or in two where the measure is shorter than they are. */
export function linesWithin(room: number, first: string, second: string): string[] {
  const whole = `${first} / ${second}`;
  return wordsWidth(whole) <= room ? [whole] : [first, second];
}

/** A measure up along `x` between two heights; thin lines come from `from_x`. Its words stand left, read upwards. */
export function dimensionUp(
  x: number,
  from_x: number,
  low_y: number,
  high_y: number,
  lines: readonly string[],
): string {
  const middle = (low_y + high_y) / 2;
  const thin = [low_y, high_y].map((y) => `M${px(from_x)},${px(y)}H${px(x - PAST)}`).join('');
  return tag(
    'g',
    { class: 'dimension' },
    tag('path', { class: 'thin', d: thin }),
    tag('path', { class: 'line', d: `M${px(x)},${px(low_y)}V${px(high_y)}` }),
    arrow(x, high_y, 0, 1),
    arrow(x, low_y, 0, -1),
    ...lines.map((words, i) => {
      const at_x = x - 7 - (lines.length - 1 - i) * 12;
      return label(words, at_x, middle, {
        class: 'middle-x',
        transform: `rotate(-90 ${px(at_x)} ${px(middle)})`,
      });
    }),
  );
}

/** A measure along `y` between two places; thin lines come from `from_y`. Its words stand over it. */
export function dimensionAlong(
  y: number,
  from_y: number,
  left_x: number,
  right_x: number,
  words: string,
): string {
  // Words wider than the measure would be struck through.
  const thin_y = wordsWidth(words) > right_x - left_x ? y - PAST : from_y;
  const thin = [left_x, right_x].map((x) => `M${px(x)},${px(thin_y)}V${px(y + PAST)}`).join('');
  return tag(
    'g',
    { class: 'dimension' },
    tag('path', { class: 'thin', d: thin }),
    tag('path', { class: 'line', d: `M${px(left_x)},${px(y)}H${px(right_x)}` }),
    arrow(left_x, y, 1, 0),
    arrow(right_x, y, -1, 0),
    label(words, (left_x + right_x) / 2, y - 7, { class: 'middle-x' }),
  );
}

/** A head whose tip is at x,y, and that opens towards dx,dy. */
function arrow(x: number, y: number, dx: number, dy: number): string {
  const [bx, by] = [x + dx * ARROW, y + dy * ARROW];
  const points = [
    [x, y],
    [bx - dy * 2, by - dx * 2],
    [bx + dy * 2, by + dx * 2],
  ];
  return tag('path', { class: 'arrow', d: `M${points.map((each) => each.map(px).join(',')).join('L')}Z` });
}

/** A height told at the side: a thin line from what it is the height of, and words where they have room. */
export interface Ordinate {
  y: number;
  from_x: number;
  words: string;
}

/** Heights told beside the drawing at `x`, spread so far that no words touch; the order of heights is kept. */
export function ordinates(
  all: readonly Ordinate[],
  x: number,
  [top_y, bottom_y]: readonly [number, number],
  apart: number,
): string {
  const sorted = [...all].sort((a, b) => a.y - b.y);
  const places = spread(
    sorted.map(({ y }) => y),
    [top_y, bottom_y],
    apart,
  );
  const lines = sorted.map(({ y, from_x, words }, i) => {
    const d = `M${px(from_x)},${px(y)}H${px(x)}L${px(x + 16)},${px(places[i])}h5`;
    return tag('path', { class: 'thin', d }) + label(words, x + 24, places[i]);
  });
  return tag('g', { class: 'dimension' }, ...lines);
}

/** Places at least `apart` from each other within a room, as near to where they are wanted as that lets them be. */
export function spread(
  wanted: readonly number[],
  [least, most]: readonly [number, number],
  apart: number,
): number[] {
  const step = Math.min(apart, wanted.length > 1 ? (most - least) / (wanted.length - 1) : apart);
  const places: number[] = [];
  for (const [i, y] of wanted.entries()) {
    places.push(Math.max(y, i === 0 ? least : places[i - 1] + step));
  }
  for (let i = places.length - 1; i >= 0; i--) {
    const limit = i === places.length - 1 ? most : places[i + 1] - step;
    places[i] = Math.min(places[i], limit);
  }
  return places;
}
