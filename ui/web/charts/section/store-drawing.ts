/** The store cut open: insulation by its sheets, wall, liner, water coloured by height, lid. */
import { drawnWidth, insideHeight, type SectionFacts } from '../../../../sim/index.ts';
import { colourAt, type FieldScale, type Palette, placeOf } from '../palette.ts';
import { px, tag } from '../svg.ts';
import { outerOf, type SectionFrame, xAt, yAt } from './frame.ts';
import { weaveOf } from './weaves.ts';

type Store = SectionFacts['store'];
type Sheet = Store['insulation']['sides'][number];

export interface WaterColours {
  /** By layer, bottom first; empty where no run is known. */
  layer_C: ArrayLike<number>;
  scale: FieldScale;
  palette: Palette;
}

/** A wall thinner than this could not be seen [px]. */
const THINNEST_WALL = 1.6;
/** How far a lid ajar is lifted at its right end [px]. */
const AJAR = 14;

export function storeDrawing(frame: SectionFrame, store: Store, water: WaterColours): string {
  return store.shape.kind === 'lying cylinder'
    ? lyingStore(frame, store, water)
    : uprightStore(frame, store, water);
}

function uprightStore(frame: SectionFrame, store: Store, water: WaterColours): string {
  const { insulation, wall, liner, lid } = store;
  const half = drawnWidth(store.shape) / 2;
  const height = insideHeight(store.shape);
  const inside = { left: -half, right: half, low: 0, high: height };
  const parts: string[] = [];
  let grown = inside;
  const walled = grow(grown, wall.thickness_m, wall.thickness_m);
  // From outside in, so that each ring covers the inside of the one around it.
  const rings: string[] = [];
  grown = walled;
  for (const sheet of insulation.sides) {
    grown = grow(grown, sheet.thickness_m, 0);
    rings.unshift(rectangle(frame, grown, `sheet ${weaveOf(sheet)}`));
  }
  parts.push(...rings);
  let low = walled.low;
  for (const sheet of insulation.bottom) {
    const slab = { ...grown, low: low - sheet.thickness_m, high: low };
    parts.push(rectangle(frame, slab, `sheet ${weaveOf(sheet)}`));
    low -= sheet.thickness_m;
  }
  const wallPath = `M${at(frame, -half, height)}V${px(yAt(frame, 0))}H${px(xAt(frame, half))}V${px(yAt(frame, height))}`;
  parts.push(
    rectangle(frame, walled, `wall ${weaveOf(wall)}`),
    // A little past the rim, over the outlines of the sheets behind it.
    rectangle(frame, { ...inside, high: height + 1 / frame.px_per_m }, 'air'),
    waterBody(frame, store, water, rectangle(frame, { ...inside, high: store.water_depth_m }, 'water')),
  );
  if (wall.thickness_m * frame.px_per_m < THINNEST_WALL) {
    parts.push(tag('path', { class: 'thin-wall', d: wallPath, 'stroke-width': THINNEST_WALL }));
  }
  if (liner) parts.push(tag('path', { class: 'liner', d: wallPath }));
  parts.push(surface(frame, -half, half, store.water_depth_m));
  if (lid !== 'open') parts.push(lidDrawing(frame, insulation.lid, grown, height, lid === 'ajar'));
  if (lid !== 'closed') parts.push(vapour(frame, half, height, lid === 'ajar'));
  return parts.join('');
}

interface Box {
  left: number;
  right: number;
  low: number;
  high: number;
}

function grow(box: Box, side_m: number, below_m: number): Box {
  return { ...box, left: box.left - side_m, right: box.right + side_m, low: box.low - below_m };
}

function rectangle(frame: SectionFrame, { left, right, low, high }: Box, name: string): string {
  return tag('rect', {
    class: name,
    x: xAt(frame, left),
    y: yAt(frame, high),
    width: (right - left) * frame.px_per_m,
    height: (high - low) * frame.px_per_m,
  });
}

function lidDrawing(
  frame: SectionFrame,
  sheets: readonly Sheet[],
  { left, right }: Box,
  height: number,
  ajar: boolean,
): string {
  let low = height;
  const slabs = sheets.map((sheet) => {
    const slab = rectangle(
      frame,
      { left, right, low, high: low + sheet.thickness_m },
      `sheet ${weaveOf(sheet)}`,
    );
    low += sheet.thickness_m;
    return slab;
  });
  // A lid without a sheet still lies there.
  if (slabs.length === 0) {
    slabs.push(tag('path', { class: 'bare-lid', d: `M${at(frame, left, height)}H${px(xAt(frame, right))}` }));
  }
  if (!ajar) return tag('g', { class: 'lid' }, ...slabs);
  const angle = (Math.atan2(AJAR, (right - left) * frame.px_per_m) * 180) / Math.PI;
  const turn = `rotate(${px(-angle)} ${px(xAt(frame, left))} ${px(yAt(frame, height))})`;
  return tag('g', { class: 'lid ajar', transform: turn }, ...slabs);
}

/** A cylinder on its side is cut across: a ring of sheets below the water with the sides’, above it with the lid’s. */
function lyingStore(frame: SectionFrame, store: Store, water: WaterColours): string {
  const radius = drawnWidth(store.shape) / 2;
  const { wall, insulation, liner } = store;
  const level = yAt(frame, store.water_depth_m);
  const circle = (extra_m: number, name: string, clip?: string) =>
    tag('circle', {
      class: name,
      cx: frame.middle_x,
      cy: yAt(frame, radius),
      r: (radius + extra_m) * frame.px_per_m,
      'clip-path': clip && `url(#${clip})`,
    });
  const rings = (sheets: readonly Sheet[], clip: string) => {
    const drawn: string[] = [];
    let out = wall.thickness_m;
    for (const sheet of sheets) {
      out += sheet.thickness_m;
      drawn.unshift(circle(out, `sheet ${weaveOf(sheet)}`, clip));
    }
    return drawn;
  };
  const all = { x: 0, width: frame.width };
  const stroke = Math.max(0, THINNEST_WALL - wall.thickness_m * frame.px_per_m);
  return [
    tag('clipPath', { id: 'section-below' }, tag('rect', { ...all, y: level, height: frame.height })),
    tag('clipPath', { id: 'section-above' }, tag('rect', { ...all, y: 0, height: level })),
    ...rings(insulation.sides, 'section-below'),
    ...(store.lid === 'open' ? [] : rings(insulation.lid, 'section-above')),
    circle(wall.thickness_m, `wall ${weaveOf(wall)}`),
    circle(0, 'air'),
    waterBody(frame, store, water, circle(0, 'water', 'section-below')),
    stroke > 0
      ? tag('circle', {
          class: 'thin-wall',
          cx: frame.middle_x,
          cy: yAt(frame, radius),
          r: radius * frame.px_per_m,
          'stroke-width': THINNEST_WALL,
        })
      : '',
    liner ? circle(0, 'liner') : '',
    surface(frame, -chord(store), chord(store), store.water_depth_m),
    store.lid === 'closed' ? '' : vapour(frame, chord(store), 2 * radius, store.lid === 'ajar'),
  ].join('');
}

/** Half the water’s width at its surface [m]. */
function chord({ shape, water_depth_m: z }: Store): number {
  const across = drawnWidth(shape);
  return shape.kind === 'lying cylinder' ? Math.sqrt(Math.max(0, z * (across - z))) : across / 2;
}

/** Colours change from layer to layer; between the layers’ middles they are mixed. */
function waterBody(frame: SectionFrame, { water_depth_m }: Store, water: WaterColours, body: string): string {
  const layers = water.layer_C.length;
  const stops = Array.from({ length: layers }, (_, i) => {
    const [r, g, b] = colourAt(water.palette, placeOf(water.layer_C[i], water.scale));
    return tag('stop', { offset: ((i + 0.5) / layers).toFixed(4), 'stop-color': `rgb(${r},${g},${b})` });
  });
  if (stops.length === 0) return body;
  const gradient = tag(
    'linearGradient',
    {
      id: 'section-water',
      gradientUnits: 'userSpaceOnUse',
      x1: 0,
      x2: 0,
      y1: yAt(frame, 0),
      y2: yAt(frame, water_depth_m),
    },
    ...stops,
  );
  return gradient + body.replace('class="water"', 'class="water" fill="url(#section-water)"');
}

/** The water line with the three short strokes under it that say that it is one. */
function surface(frame: SectionFrame, left_m: number, right_m: number, depth_m: number): string {
  const y = yAt(frame, depth_m);
  const [left, right] = [xAt(frame, left_m), xAt(frame, right_m)];
  const marks = [9, 6, 3].map((half, i) => {
    const at = right - 18;
    return `M${px(at - half)},${px(y + 3.5 + i * 3)}h${2 * half}`;
  });
  return (
    tag('path', { class: 'surface', d: `M${px(left)},${px(y)}H${px(right)}` }) +
    tag('path', { class: 'surface-marks', d: marks.join('') })
  );
}

/** Three curls of vapour: over the open edge of a lid ajar, or over the middle. */
function vapour(frame: SectionFrame, half_m: number, height_m: number, ajar: boolean): string {
  const foot = yAt(frame, height_m) - (ajar ? 3 : 2);
  const middle = ajar ? xAt(frame, half_m) + 14 : frame.middle_x;
  const curls = [-7, 0, 7].map((dx) => `M${px(middle + dx)},${px(foot)}c3,-3 3,-5 0,-8c-3,-3 -3,-5 0,-8`);
  return tag('path', { class: 'vapour', d: curls.join('') });
}

function at(frame: SectionFrame, right_m: number, height_m: number): string {
  return `${px(xAt(frame, right_m))},${px(yAt(frame, height_m))}`;
}

/** Highest edge of what covers the store [px], lid ajar included. */
export function lidTop(frame: SectionFrame, store: Store): number {
  const { above_m } = outerOf(store);
  const top = yAt(frame, insideHeight(store.shape) + above_m);
  const lying = store.shape.kind === 'lying cylinder';
  return top - (store.lid === 'ajar' && !lying ? AJAR : 0);
}
