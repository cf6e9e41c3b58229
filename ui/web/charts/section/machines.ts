/** The machines outside with their pipes, as a plan above the store: columns of machines, lanes, risers. */
import type { SectionFacts } from '../../../../sim/index.ts';
import { coilLetter, machineFacts, machineName, sectionWords, type Units } from '../../../words/index.ts';
import { label, px, tag } from '../svg.ts';
import { letterTag } from './coil-drawing.ts';
import { isNarrow, type SectionFrame } from './frame.ts';
import { type Loop, loopsOf } from './loops.ts';
import { picture } from './pictures.ts';
import { type LoopRisers, type Riser, risersOf } from './risers.ts';
import { lidTop } from './store-drawing.ts';
import { SYMBOL_RADIUS, symbol } from './symbols.ts';

/** Title and facts, the machine itself, then rows of what sits in the pipes, then lanes across to the risers [px]. */
const TITLE = 36;
const MACHINE = 42;
const ROW = 24;
const WORDS = 16;
const LANE = 9;
const MARGIN = 6;
/** A column narrower than this has its pipes side by side and their words on the outer sides. */
const NARROW_COLUMN = 150;

/** Paper that is short of room has no pictures of the machines. */
type Pictures = 'pictures' | 'no pictures';

/** Where the pipes begin, under title, facts and picture. */
function pipesFrom(pictures: Pictures): number {
  return TITLE + (pictures === 'pictures' ? MACHINE : 4);
}

/** Height of everything above the store. */
export function bandHeight(facts: SectionFacts, pictures: Pictures = 'pictures'): number {
  const loops = loopsOf(facts);
  if (loops.length === 0) return 0;
  return pipesFrom(pictures) + rowsOf(loops) * ROW + WORDS + lanesHeight(loops);
}

/** All pipes may go the same way, but seldom do: they then lie closer. */
function lanesHeight(loops: readonly Loop[]): number {
  return (loops.length + 1) * LANE;
}

function rowsOf(loops: readonly Loop[]): number {
  return Math.max(...loops.map(({ inward, outward }) => Math.max(inward.length, outward.length)));
}

interface Column {
  loop: Loop;
  left: number;
  width: number;
  /** The pipes into and out of the coil. */
  into_x: number;
  out_x: number;
  /** Words stand right of both pipes, or left of the one and right of the other. */
  outward: boolean;
}

export function machines(
  frame: SectionFrame,
  facts: SectionFacts,
  units: Units,
  pictures: Pictures = 'pictures',
): string {
  const loops = loopsOf(facts);
  if (loops.length === 0) return '';
  const width = (frame.width - 2 * MARGIN) / loops.length;
  const columns = loops.map((loop, i): Column => {
    const left = MARGIN + i * width;
    if (width < NARROW_COLUMN) {
      const middle = left + width / 2 - 2;
      return { loop, left, width, into_x: middle - 10, out_x: middle + 10, outward: true };
    }
    const into_x = left + 16;
    return { loop, left, width, into_x, out_x: into_x + Math.min(96, width * 0.46), outward: false };
  });
  const risers = risersOf(frame, facts.store, loops);
  const foot = lidTop(frame, facts.store);
  return [
    pipes(columns, risers, frame.band, rowsOf(loops), pipesFrom(pictures)),
    ...columns.map((column) => machine(frame, column, facts, units, pictures)),
    ...risers.flatMap(({ into, out }) => [arrow(into, foot, 'down'), arrow(out, foot, 'up')]),
  ].join('');
}

/** All pipes, each on a light bed so that one that passes over another is told apart from a joint. */
function pipes(
  columns: readonly Column[],
  risers: readonly LoopRisers[],
  band: number,
  rows: number,
  start: number,
): string {
  const all = columns.flatMap(({ loop, into_x, out_x }, i) => [
    { user: loop.user, x: into_x, riser: risers[i].into },
    { user: loop.user, x: out_x, riser: risers[i].out },
  ]);
  const lanesFrom = start + rows * ROW + WORDS;
  // Of pipes that go right the leftmost takes the lowest lane, of those that go left the highest: then none cross.
  const right = all.filter(({ x, riser }) => riser.x >= x).reverse();
  const left = all.filter(({ x, riser }) => riser.x < x);
  const laneOf = (pipe: (typeof all)[number]) => {
    const among = pipe.riser.x >= pipe.x ? right : left;
    const apart = Math.min(LANE, (band - lanesFrom) / among.length);
    return lanesFrom + (among.indexOf(pipe) + 0.5) * apart;
  };
  const drawn = all.map((pipe) => {
    const { x, riser, user } = pipe;
    const y = laneOf(pipe);
    const d = `M${px(x)},${start - 4}V${px(y)}H${px(riser.x)}V${px(riser.foot_y)}H${px(riser.foot_x)}`;
    return ['bed', 'pipe', `core ${user}`].map((name) => tag('path', { class: name, d })).join('');
  });
  return tag('g', { class: 'pipes' }, ...drawn);
}

/** Which way the water goes where a pipe passes the lid. */
function arrow({ x }: Riser, foot: number, way: 'up' | 'down'): string {
  const [y, tip] = way === 'down' ? [foot - 9, 7] : [foot - 2, -7];
  return tag('path', { class: 'flow', d: `M${px(x - 4)},${px(y)}h8l-4,${tip}Z` });
}

function machine(
  frame: SectionFrame,
  column: Column,
  facts: SectionFacts,
  units: Units,
  pictures: Pictures,
): string {
  const { loop, left, width, into_x, out_x, outward } = column;
  const top = pipesFrom(pictures);
  const beside = SYMBOL_RADIUS + 4;
  const word = (text: string, pipe: 'into' | 'out', y: number, gap: number) =>
    pipe === 'into' && outward
      ? label(text, into_x - gap, y, { class: 'beside end' })
      : label(text, (pipe === 'into' ? into_x : out_x) + gap, y, { class: 'beside' });
  const row = (kinds: Loop['inward'], pipe: 'into' | 'out') =>
    kinds.map((kind, i) => {
      const y = top + (i + 0.5) * ROW;
      const x = pipe === 'into' ? into_x : out_x;
      return symbol(kind, x, y, pipe === 'into' ? 'down' : 'up') + word(sectionWords[kind], pipe, y, beside);
    });
  const wordsY = top + rowsOf(loopsOf(facts)) * ROW + WORDS / 2 - 2;
  return tag(
    'g',
    { class: `machine ${loop.user}` },
    letterTag(coilLetter(loop.index), left + 9, 9),
    label(fitted(machineName(loop.user, facts), width - 26), left + 21, 9, { class: 'name' }),
    label(fitted(machineFacts(loop.user, facts, units, isNarrow(frame.width)), width - 4), left + 1, 27, {
      class: 'facts',
    }),
    pictures === 'pictures' ? picture(loop.user, column, top - 4, facts) : '',
    ...row(loop.inward, 'into'),
    ...row(loop.outward, 'out'),
    word(sectionWords.in, 'into', wordsY, 7),
    word(sectionWords.out, 'out', wordsY, 7),
  );
}

/** 6.4 px a letter in the widest usual face: a text that would run into its neighbour ends in dots. */
function fitted(text: string, room: number): string {
  const most = Math.max(3, Math.floor(room / 6.4));
  return text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;
}
