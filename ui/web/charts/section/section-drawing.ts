/** The whole drawing: store and coils to one scale, rulers, temperatures by height, machines outside as a plan. */
import { drawnWidth, insideHeight, probesOf, type SectionFacts } from '../../../../sim/index.ts';
import {
  coilLetter,
  coilLines,
  type LegendLine,
  misfitBrief,
  probeLine,
  quantityText,
  sectionSentence,
  sectionWords,
  storeLines,
  tapeText,
  type Units,
  waterLine,
} from '../../../words/index.ts';
import type { FieldScale, Palette } from '../palette.ts';
import { label, px, tag } from '../svg.ts';
import { coilOutline, coilTags, cutTurns, rearTurns, sameRoom } from './coil-drawing.ts';
import { isNarrow, outerOf, type SectionFrame, sectionFrame, xAt, yAt } from './frame.ts';
import { handlesOf, type SectionHandle } from './handles.ts';
import { userOf } from './loops.ts';
import { bandHeight, machines } from './machines.ts';
import { rulers } from './rulers.ts';
import { storeDrawing } from './store-drawing.ts';
import { weaves } from './weaves.ts';

export interface SectionOptions {
  width: number;
  /** The drawing is at most this high. */
  height: number;
  /** Temperatures of the layers, bottom first; empty where no run is known. */
  layer_C: ArrayLike<number>;
  /** Depth the water has at that moment [m], where it is not the design's; null or left out: as the design has it. */
  level_m?: number | null;
  scale: FieldScale;
  palette: Palette;
  units: Units;
  /** Another design, drawn dashed over this one on the same scale. */
  ghost?: SectionFacts | null;
  /** Holds scale and place while a hand moves something. */
  frame?: SectionFrame | null;
}

export interface SectionDrawing {
  /** Drawn one over the other; while a hand moves something most of them stay as they are. */
  sheets: string[];
  frame: SectionFrame;
  handles: SectionHandle[];
  legend: LegendLine[];
  /** The drawing in a sentence. */
  sentence: string;
}

export function sectionDrawing(facts: SectionFacts, options: SectionOptions): SectionDrawing {
  const { width, height, layer_C, units, ghost } = options;
  const stores = ghost ? [facts.store, ghost.store] : [facts.store];
  const frame = options.frame ?? sectionFrame(stores, { width, height, band: bandHeight(facts) });
  const { store, coils } = facts;
  const now = withLevel(store, options.level_m ?? null);
  const sheets = [
    weaves(),
    floor(frame, facts),
    storeDrawing(frame, now, options),
    now === store ? '' : filledTo(frame, store),
    ...coils.map((coil) => rearTurns(frame, coil, store)),
    probes(frame, facts),
    machines(frame, facts, units),
    ...coils.map((coil, i) => cutTurns(frame, coil, store, userOf(facts, i) ?? 'nobody')),
    coilTags(frame, facts),
    misfits(frame, facts),
    ghost ? ghostDrawing(frame, ghost, facts) : '',
    rulers(frame, store, units),
    temperatures(frame, now, layer_C, units),
    label(waterLine({ store: now, coils }, units), frame.middle_x, frame.height - 8, { class: 'weight' }),
  ];
  return {
    sheets,
    frame,
    handles: handlesOf(frame, facts, units),
    legend: legendOf(facts, units, ghost != null),
    sentence: sectionSentence(facts, units),
  };
}

/** Less than this off the design's depth is not seen [m]. */
const LEVEL_SEEN_M = 0.002;

function withLevel(store: SectionFacts['store'], level_m: number | null): SectionFacts['store'] {
  if (level_m === null || Math.abs(level_m - store.water_depth_m) < LEVEL_SEEN_M) return store;
  return { ...store, water_depth_m: Math.min(level_m, insideHeight(store.shape)) };
}

/** How high the design fills the store, while the water stands lower or higher. */
function filledTo(frame: SectionFrame, { shape, water_depth_m }: SectionFacts['store']): string {
  const half = drawnWidth(shape) / 2;
  const [left, right, y] = [xAt(frame, -half), xAt(frame, half), yAt(frame, water_depth_m)];
  return tag('path', { class: 'filled-to', d: `M${px(left)},${px(y)}H${px(right)}` });
}

/** The floor, with the short strokes that say that it bears. */
function floor(frame: SectionFrame, { store }: SectionFacts): string {
  const { side_m, below_m } = outerOf(store);
  const half = drawnWidth(store.shape) / 2 + side_m;
  const [left, right, y] = [xAt(frame, -half) - 4, xAt(frame, half) + 10, yAt(frame, -below_m)];
  const strokes: string[] = [];
  for (let x = left + 6; x < right; x += 9) strokes.push(`M${px(x)},${px(y)}l-5,6`);
  return (
    tag('path', { class: 'floor', d: `M${px(left)},${px(y)}H${px(right)}` }) +
    tag('path', { class: 'floor-strokes', d: strokes.join('') })
  );
}

/** Probes hang in the eye of the coils, numbered as in the legend. */
function probes(frame: SectionFrame, facts: SectionFacts): string {
  const all = probesOf(facts);
  const rim = yAt(frame, insideHeight(facts.store.shape)) - 3;
  const hung = all.map(({ height_m }, i) => {
    const x = frame.middle_x + (i - (all.length - 1) / 2) * 22;
    const y = yAt(frame, height_m);
    return (
      tag('path', { class: 'wire', d: `M${px(x)},${px(rim)}V${px(y)}` }) +
      tag('circle', { class: 'bulb', cx: x, cy: y, r: 3.2 }) +
      label(String(i + 1), x + 6, y + (i === 0 ? 0 : 1), { class: 'beside' })
    );
  });
  return tag('g', { class: 'probes' }, ...hung);
}

/** Under the rim, for each coil that does not fit: how much of it, and why. */
function misfits(frame: SectionFrame, { store, coils }: SectionFacts): string {
  const texts = coils.flatMap((coil, i) => {
    const text = misfitBrief(coil, store);
    return text === null ? [] : [`${coilLetter(i)}: ${text}`];
  });
  const from = yAt(frame, insideHeight(store.shape)) + 11;
  const lines = texts.map((text, i) => label(text, frame.middle_x, from + i * 14, { class: 'middle-x' }));
  return lines.length === 0 ? '' : tag('g', { class: 'misfit-words' }, ...lines);
}

/** The other design where it differs: its box, its water line, its coils. */
function ghostDrawing(frame: SectionFrame, { store, coils }: SectionFacts, over: SectionFacts): string {
  const half = drawnWidth(store.shape) / 2;
  const height = insideHeight(store.shape);
  const [left, right, foot] = [xAt(frame, -half), xAt(frame, half), yAt(frame, 0)];
  const box =
    store.shape.kind === 'lying cylinder'
      ? tag('circle', { cx: frame.middle_x, cy: yAt(frame, half), r: half * frame.px_per_m })
      : tag('path', {
          d: `M${px(left)},${px(yAt(frame, height))}V${px(foot)}H${px(right)}V${px(yAt(frame, height))}`,
        });
  const water = tag('path', { d: `M${px(left)},${px(yAt(frame, store.water_depth_m))}H${px(right)}` });
  return tag(
    'g',
    { class: 'ghost' },
    box,
    water,
    ...coils.flatMap((coil, i) => (sameRoom(coil, over.coils[i]) ? [] : [coilOutline(frame, coil)])),
  );
}

/** Depth and temperatures beside the water: colour is not alone. */
function temperatures(
  frame: SectionFrame,
  { water_depth_m: depth }: SectionFacts['store'],
  layer_C: ArrayLike<number>,
  units: Units,
): string {
  const from = xAt(frame, frame.half_m) + 6;
  const at = [{ y: yAt(frame, depth), text: tapeText(depth, units), name: 'depth' }];
  const layers = layer_C.length;
  if (layers > 0) {
    const places = [
      ['top', layers - 1],
      ['middle', Math.floor(layers / 2)],
      ['bottom', 0],
    ] as const;
    for (const [name, layer] of places) {
      const temperature = quantityText(layer_C[layer], 'temperature', units, { digits: 3 });
      const word = isNarrow(frame.width) ? '' : `${sectionWords[name]} `;
      at.push({ y: yAt(frame, ((layer + 0.5) / layers) * depth), text: word + temperature, name });
    }
  }
  for (let i = 1; i < at.length; i++) at[i].y = Math.max(at[i].y, at[i - 1].y + 14);
  return tag(
    'g',
    { class: 'beside-water' },
    ...at.map(({ y, text, name }) => label(text, from, y, { class: name })),
  );
}

function legendOf(facts: SectionFacts, units: Units, compared: boolean): LegendLine[] {
  return [
    ...storeLines(facts, units),
    ...coilLines(facts, units),
    ...probesOf(facts).map(({ what, height_m }, i) => ({
      mark: String(i + 1),
      title: sectionWords.probe,
      text: probeLine(what, height_m, facts, units),
    })),
    ...(compared ? [{ mark: '', title: sectionWords.dashed, text: sectionWords.pinned }] : []),
    { mark: '', title: sectionWords.drawing, text: sectionWords.plan },
  ];
}
