/** A coil cut open: a circle for each time its tube crosses the plane, the rear half of each turn behind them. */
import {
  crossingsOf,
  insideHeight,
  type SectionFacts,
  type SketchedCoil,
  woundTop,
} from '../../../../sim/index.ts';
import { coilLetter } from '../../../words/index.ts';
import { label, px, tag } from '../svg.ts';
import { type SectionFrame, xAt, yAt } from './frame.ts';
import { userOf } from './loops.ts';

type Store = SectionFacts['store'];

/** Tube too thin to be seen is still drawn this large [px]. */
const SMALLEST_RADIUS = 1.1;
/** Rings with letters in them do not touch [px]. */
const TAG_APART = 18;
/** Turns above the rim are drawn so far up [px]; how many there are is said. */
const OVER_RIM = 40;
/** From here on the bore can be told from the tube [px]. */
const BORE_SEEN = 2.6;

/** The half turns behind the plane: what rises from left to right. */
export function rearTurns(frame: SectionFrame, coil: SketchedCoil, store: Store): string {
  const crossings = crossingsOf(coil, store);
  const paths = crossings.flatMap(({ side, winding, out_m, height_m, misfit }) => {
    if (side !== 'left' || misfit !== null) return [];
    const end = crossings.find((c) => c.side === 'right' && c.winding === winding && c.height_m > height_m);
    if (!end) return [];
    const [left, right] = [xAt(frame, -out_m), xAt(frame, out_m)];
    const [low, high] = [yAt(frame, height_m), yAt(frame, end.height_m)];
    const bend = (right - left) * 0.18;
    return [
      `M${px(left)},${px(low)}C${px(left + bend)},${px(low)},${px(right - bend)},${px(high)},${px(right)},${px(high)}`,
    ];
  });
  const width = coil.tube.outside_diameter_m * frame.px_per_m;
  return paths.length === 0
    ? ''
    : tag('path', { class: 'rear', d: paths.join(''), 'stroke-width': Math.max(0.8, width * 0.8) });
}

/** The tube where the plane cuts it. `user` colours what flows in it. */
export function cutTurns(frame: SectionFrame, coil: SketchedCoil, store: Store, user: string): string {
  const { tube } = coil;
  const radius = Math.max(SMALLEST_RADIUS, (tube.outside_diameter_m / 2) * frame.px_per_m);
  const bore = radius * (tube.inside_diameter_m / tube.outside_diameter_m);
  const highest = yAt(frame, insideHeight(store.shape)) - OVER_RIM;
  const seen = crossingsOf(coil, store).filter(({ height_m }) => yAt(frame, height_m) >= highest);
  const circles = seen.map(({ side, out_m, height_m, misfit }) => {
    const cx = xAt(frame, side === 'left' ? -out_m : out_m);
    const cy = yAt(frame, height_m);
    const circle = tag('circle', { class: misfit === null ? 'tube' : 'tube misfit', cx, cy, r: radius });
    return misfit === null && radius >= BORE_SEEN
      ? circle + tag('circle', { class: `bore ${user}`, cx, cy, r: bore })
      : circle;
  });
  const metal = tube.material !== 'PEX';
  return tag('g', { class: metal ? 'turns metal' : 'turns plastic' }, ...circles);
}

/** Each coil's letter in a ring, above its top turn on the side away from its risers; none covers another. */
export function coilTags(frame: SectionFrame, facts: SectionFacts): string {
  const placed: { x: number; y: number }[] = [];
  const tags = facts.coils.map((coil, i) => {
    const side = userOf(facts, i) === 'household' ? -1 : 1;
    const x = xAt(frame, (side * coil.coil_diameter_m) / 2);
    const top = Math.min(woundTop(coil), insideHeight(facts.store.shape));
    let y = yAt(frame, top) - 11;
    while (placed.some((each) => Math.hypot(each.x - x, each.y - y) < TAG_APART)) y -= 4;
    placed.push({ x, y });
    return letterTag(coilLetter(i), x, y);
  });
  return tags.join('');
}

export function letterTag(letter: string, x: number, y: number): string {
  return tag(
    'g',
    { class: 'letter' },
    tag('circle', { cx: x, cy: y, r: 8 }),
    label(letter, x, y, { class: 'middle' }),
  );
}

/** Outline of the room a coil takes, for a design that is only shown for comparison. */
export function coilOutline(frame: SectionFrame, coil: SketchedCoil): string {
  const outside = coil.tube.outside_diameter_m;
  const top = yAt(frame, woundTop(coil));
  const height = yAt(frame, coil.bottom_m) - top;
  return [-1, 1]
    .map((side) =>
      tag('rect', {
        x: xAt(frame, (side * coil.coil_diameter_m) / 2 - outside / 2),
        y: top,
        width: outside * frame.px_per_m,
        height,
      }),
    )
    .join('');
}

/** Whether two coils take the same room: nothing would be seen of a dashed one over the other. */
export function sameRoom(a: SketchedCoil, b: SketchedCoil | undefined): boolean {
  const corners = (coil: SketchedCoil) => [coil.coil_diameter_m, coil.bottom_m, woundTop(coil)];
  return b !== undefined && corners(a).every((value, i) => Math.abs(value - corners(b)[i]) < 1e-3);
}
