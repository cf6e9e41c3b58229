/** The machines outside with their pipes, as a plan above the store: columns of machines, lanes, risers. */
import type { SectionFacts } from '../../../../sim/index.ts';
import { machineFacts, machineName, sectionWords, type Units } from '../../../words/index.ts';
import { label, px, tag } from '../svg.ts';
import { coilLetter, letterTag } from './coil-drawing.ts';
import { isNarrow, type SectionFrame } from './frame.ts';
import { type Loop, type LoopUser, loopsOf } from './loops.ts';
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

/** Height of everything above the store. */
export function bandHeight(facts: SectionFacts): number {
  const loops = loopsOf(facts);
  if (loops.length === 0) return 0;
  return TITLE + MACHINE + rowsOf(loops) * ROW + WORDS + lanesHeight(loops);
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

export function machines(frame: SectionFrame, facts: SectionFacts, units: Units): string {
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
    pipes(columns, risers, frame.band, rowsOf(loops)),
    ...columns.map((column) => machine(frame, column, facts, units)),
    ...risers.flatMap(({ into, out }) => [arrow(into, foot, 'down'), arrow(out, foot, 'up')]),
  ].join('');
}

/** All pipes, each on a light bed so that one that passes over another is told apart from a joint. */
function pipes(
  columns: readonly Column[],
  risers: readonly LoopRisers[],
  band: number,
  rows: number,
): string {
  const start = TITLE + MACHINE;
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

function machine(frame: SectionFrame, column: Column, facts: SectionFacts, units: Units): string {
  const { loop, left, width, into_x, out_x, outward } = column;
  const top = TITLE + MACHINE;
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
    picture(loop.user, column, facts),
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

/** The machine itself, standing on its two pipes. */
function picture(user: LoopUser, column: Column, facts: SectionFacts): string {
  const foot = TITLE + MACHINE - 4;
  const spread = column.outward ? 22 : 8;
  const [left, right] = [column.into_x - spread, column.out_x + spread];
  switch (user) {
    case 'engine':
      return enginePicture(left, right, foot);
    case 'collector':
      return collectorPicture(left, right, foot, facts.collector?.tilt_rad ?? 0, facts.collector?.kind);
    case 'household':
      return householdPicture(column, foot);
  }
}

/** A block with cooling ribs, and the generator it turns. */
function enginePicture(left: number, right: number, foot: number): string {
  const block = (right - left) * 0.6;
  const ribs = [0.25, 0.5, 0.75].map((share) => `M${px(left + block * share)},${foot - 24}v18`).join('');
  const radius = Math.min(10, (right - left - block) / 2 - 1);
  return (
    tag('rect', { class: 'body', x: left, y: foot - 28, width: block, height: 28, rx: 3 }) +
    tag('path', { class: 'detail', d: ribs }) +
    tag('circle', { class: 'body', cx: right - radius, cy: foot - radius, r: radius }) +
    tag('path', { class: 'detail', d: `M${px(left + block)},${foot - radius}H${px(right - 2 * radius)}` }) +
    tag('path', {
      class: 'detail',
      d: `M${px(right - radius - 4)},${foot - radius}q2,-6,4,0t4,0`,
    })
  );
}

/** Seen from the side at its own tilt, towards a sun. */
function collectorPicture(
  left: number,
  right: number,
  foot: number,
  tilt_rad: number,
  kind: 'evacuated tubes' | 'flat plate' | undefined,
): string {
  const length = 34;
  const [dx, dy] = [Math.cos(tilt_rad) * length, Math.sin(tilt_rad) * length];
  const base = (left + right) / 2 - dx / 2 + 6;
  const [x, y] = [base + dx, foot - dy];
  // Across the slope, towards the sun.
  const [nx, ny] = [-Math.sin(tilt_rad), -Math.cos(tilt_rad)];
  const ticks = Array.from({ length: 7 }, (_, i) => {
    const share = (i + 0.5) / 7;
    const [tx, ty] = [base + dx * share, foot - dy * share];
    return `M${px(tx)},${px(ty)}l${px(nx * 5)},${px(ny * 5)}`;
  });
  const cover = `M${px(base + nx * 5)},${px(foot + ny * 5)}L${px(x + nx * 5)},${px(y + ny * 5)}`;
  const sun = { x: left + 9, y: foot - 24 };
  const rays = Array.from({ length: 8 }, (_, i) => {
    const [cos, sin] = [Math.cos((i * Math.PI) / 4), Math.sin((i * Math.PI) / 4)];
    return `M${px(sun.x + cos * 7)},${px(sun.y + sin * 7)}L${px(sun.x + cos * 10)},${px(sun.y + sin * 10)}`;
  });
  return (
    tag('path', { class: 'slab', d: `M${px(base)},${foot}L${px(x)},${px(y)}` }) +
    tag('path', { class: 'detail', d: kind === 'flat plate' ? cover : ticks.join('') }) +
    tag('path', { class: 'detail', d: `M${px(x)},${px(y)}L${px(x)},${foot}` }) +
    tag('path', { class: 'detail', d: `M${px(left)},${foot}H${px(right)}` }) +
    tag('circle', { class: 'sun', cx: sun.x, cy: sun.y, r: 5 }) +
    tag('path', { class: 'rays', d: rays.join('') })
  );
}

/** Cold water on the left, a tap with a stream on the right. */
function householdPicture({ into_x, out_x, outward }: Column, foot: number): string {
  const [width, left] = outward ? [30, into_x - 24] : [34, into_x - 9];
  return (
    tag('rect', { class: 'cold', x: left, y: foot - 17, width, height: 17 }) +
    tag('path', { class: 'outline', d: `M${px(left)},${foot - 26}V${foot}h${px(width)}V${foot - 26}` }) +
    tag('path', { class: 'spout', d: `M${px(out_x)},${foot}v-20q0,-8,8,-8h4q6,0,6,6v3` }) +
    tag('path', { class: 'detail', d: `M${px(out_x + 14)},${foot - 16}l-2,9m6,-9v9m4,-9l2,9` })
  );
}
