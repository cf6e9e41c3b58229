/** Machines as plain pictures: an engine with its generator, a collector at its tilt under a sun, a cistern and a tap. */
import type { SectionFacts } from '../../../../sim/index.ts';
import { px, tag } from '../svg.ts';
import type { LoopUser } from './loops.ts';

/** The two pipes a machine stands on; `outward`: they lie close together, and the picture reaches past them. */
interface Footing {
  into_x: number;
  out_x: number;
  outward: boolean;
}

/** The machine itself, standing on its two pipes. */
export function picture(user: LoopUser, column: Footing, foot: number, facts: SectionFacts): string {
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
function householdPicture({ into_x, out_x, outward }: Footing, foot: number): string {
  const [width, left] = outward ? [30, into_x - 24] : [34, into_x - 9];
  return (
    tag('rect', { class: 'cold', x: left, y: foot - 17, width, height: 17 }) +
    tag('path', { class: 'outline', d: `M${px(left)},${foot - 26}V${foot}h${px(width)}V${foot - 26}` }) +
    tag('path', { class: 'spout', d: `M${px(out_x)},${foot}v-20q0,-8,8,-8h4q6,0,6,6v3` }) +
    tag('path', { class: 'detail', d: `M${px(out_x + 14)},${foot - 16}l-2,9m6,-9v9m4,-9l2,9` })
  );
}
