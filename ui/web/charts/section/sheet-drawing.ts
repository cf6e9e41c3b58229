/** The section with its dimensions, as the build sheet has it: ink on white, every height in both systems. */
import {
  type BuildSheet,
  drawnWidth,
  insideHeight,
  probesOf,
  type SectionFacts,
} from '../../../../sim/index.ts';
import { coilLetter, dimensionPair, dimensionText, sheetDrawingWords } from '../../../words/index.ts';
import { lightPalette } from '../palette.ts';
import { label, px, tag } from '../svg.ts';
import { coilTags, cutTurns, rearTurns } from './coil-drawing.ts';
import {
  dimensionAlong,
  dimensionUp,
  linesWithin,
  type Ordinate,
  ordinates,
  wordsWidth,
} from './dimension-lines.ts';
import { outerOf, type SectionFrame, xAt, yAt } from './frame.ts';
import { userOf } from './loops.ts';
import { bandHeight, machines } from './machines.ts';
import { storeDrawing } from './store-drawing.ts';
import { weaves } from './weaves.ts';

/** Room for what stands around the store [px]. */
const LEFT = 140;
const RIGHT = 190;
const BELOW = 58;
const HEADROOM = { closed: 12, ajar: 28, open: 28 };
/** Words of heights are this far apart [px]. */
const APART = 11.5;

/** The drawing as text, sheet over sheet, in a box of `width` by `height` [px]. */
export function sheetDrawing(
  facts: SectionFacts,
  sheet: BuildSheet,
  box: { width: number; height: number },
): string {
  const { store, coils } = facts;
  const frame = sheetFrame(facts, box);
  const noWater = { layer_C: [], scale: { low: 0, pivot: 1, high: 2 }, palette: lightPalette };
  return [
    weaves(),
    storeDrawing(frame, store, noWater),
    ...coils.map((coil) => rearTurns(frame, coil, store)),
    machines(frame, facts, 'US', 'no pictures'),
    ...coils.map((coil, i) => cutTurns(frame, coil, store, userOf(facts, i) ?? 'nobody')),
    coilTags(frame, facts),
    stick(frame, facts, sheet),
    sensors(frame, facts),
    insideMeasures(frame, facts),
    aroundMeasures(frame, facts, sheet),
    heights(frame, facts, sheet),
  ].join('');
}

function sheetFrame(
  { store, ...facts }: SectionFacts,
  { width, height }: { width: number; height: number },
): SectionFrame {
  const band = bandHeight({ store, ...facts }, 'no pictures');
  const { side_m, above_m, below_m } = outerOf(store);
  const across_m = drawnWidth(store.shape) + 2 * side_m;
  const high_m = above_m + insideHeight(store.shape) + below_m;
  const top = band + HEADROOM[store.lid];
  const px_per_m = Math.min((width - LEFT - RIGHT) / across_m, Math.max(60, height - top - BELOW) / high_m);
  return {
    width,
    height,
    px_per_m,
    middle_x: LEFT + (width - LEFT - RIGHT) / 2,
    bottom_y: height - BELOW - below_m * px_per_m,
    band,
    half_m: across_m / 2,
  };
}

/** Places in the eye of the innermost coil, where stick and sensors hang side by side [px]. */
function eyeAt(frame: SectionFrame, { coils, store }: SectionFacts, place: -1 | 0 | 1): number {
  const radii = coils.map(({ coil_diameter_m, tube }) => coil_diameter_m / 2 - tube.outside_diameter_m);
  const eye = Math.min(drawnWidth(store.shape) / 2, ...radii) * frame.px_per_m;
  return frame.middle_x + 6 + place * Math.min(22, 0.5 * eye);
}

/** Thermometers on a stick beside the sensors. */
function stick(frame: SectionFrame, facts: SectionFacts, { stick_m }: BuildSheet): string {
  const x = eyeAt(frame, facts, 1);
  const [foot, head] = [yAt(frame, 0) - 2, yAt(frame, insideHeight(facts.store.shape)) + 4];
  return tag(
    'g',
    { class: 'stick' },
    tag('path', { d: `M${px(x)},${px(foot)}V${px(head)}` }),
    ...stick_m.map((height_m) => tag('circle', { cx: x, cy: yAt(frame, height_m), r: 2.6 })),
  );
}

/** Sensors hang in the eye of the coils, numbered as in the words. */
function sensors(frame: SectionFrame, facts: SectionFacts): string {
  const rim = yAt(frame, insideHeight(facts.store.shape)) - 3;
  const hung = probesOf(facts).map(({ height_m }, i) => {
    const [x, y] = [sensorAt(frame, facts, i), yAt(frame, height_m)];
    return (
      tag('path', { class: 'wire', d: `M${px(x)},${px(rim)}V${px(y)}` }) +
      tag('circle', { class: 'bulb', cx: x, cy: y, r: 3.2 }) +
      label(String(i + 1), x - 5, y - 6, { class: 'end' })
    );
  });
  return tag('g', { class: 'probes' }, ...hung);
}

function sensorAt(frame: SectionFrame, facts: SectionFacts, index: number): number {
  return eyeAt(frame, facts, index % 2 === 0 ? -1 : 0);
}

/** Height and depth of water on the left. */
function insideMeasures(frame: SectionFrame, { store }: SectionFacts): string {
  const left = xAt(frame, -frame.half_m);
  const { water, inside } = sheetDrawingWords;
  const measures = [
    { height_m: store.water_depth_m, what: water },
    { height_m: insideHeight(store.shape), what: inside },
  ];
  let x = left - 14;
  return measures
    .map(({ height_m, what }) => {
      const [us, si] = dimensionPair(height_m);
      const lines = linesWithin(height_m * frame.px_per_m - 8, `${what} ${us}`, si);
      const drawn = dimensionUp(x, left - 4, yAt(frame, 0), yAt(frame, height_m), lines);
      x -= 10 + 12 * lines.length;
      return drawn;
    })
    .join('');
}

/** Length inside and over all under it, thickness of walls, lid and bottom at the side. */
function aroundMeasures(frame: SectionFrame, { store }: SectionFacts, sheet: BuildSheet): string {
  const { shape } = store;
  const { sides, below, above } = sheet.store.around_m;
  const half = drawnWidth(shape) / 2;
  const foot = yAt(frame, -outerOf(store).below_m);
  const along = (row: number, half_m: number, words: string) =>
    dimensionAlong(foot + 20 + row * 22, foot + 3, xAt(frame, -half_m), xAt(frame, half_m), words);
  const left = xAt(frame, -frame.half_m) - 6;
  const insideWords = `${sheetDrawingWords.inside} ${dimensionText(2 * half)}`;
  const outsideWords = `${sheetDrawingWords.outside} ${dimensionText(2 * (half + sides))}`;
  const clear = Math.max(frame.half_m * frame.px_per_m, wordsWidth(outsideWords) / 2) + 10;
  const beside = (words: string, thickness_m: number, y: number) =>
    thickness_m > 0 ? label(`${words} ${dimensionText(thickness_m)}`, left, y, { class: 'end' }) : '';
  const { wall, lid, bottom, wide, across } = sheetDrawingWords;
  const height_m = insideHeight(shape);
  const deep =
    shape.kind === 'box'
      ? `${dimensionText(shape.width_m)} ${wide}`
      : shape.kind === 'lying cylinder'
        ? `${dimensionText(shape.length_m)} ${across}`
        : '';
  return tag(
    'g',
    { class: 'around' },
    along(0, half, insideWords),
    along(1, half + sides, outsideWords),
    label(`${wall} ${dimensionText(sides)}`, frame.middle_x + clear, foot + 13),
    deep === '' ? '' : label(deep, frame.middle_x + clear, foot + 35),
    beside(lid, above, yAt(frame, height_m + above / 2)),
    beside(bottom, below, Math.max(yAt(frame, -below / 2), yAt(frame, 0) + 8)),
  );
}

/** Edges and ports of every coil and all sensors, up from the inside bottom, on the right. */
function heights(frame: SectionFrame, facts: SectionFacts, sheet: BuildSheet): string {
  const { coils, store } = facts;
  const right = xAt(frame, frame.half_m);
  const ends = sheet.coils.flatMap((coil, i): Ordinate[] => {
    const from_x = xAt(frame, coils[i].coil_diameter_m / 2);
    const at = (height_m: number, words: string) => ({
      y: yAt(frame, height_m),
      from_x,
      words: `${coilLetter(i)} ${words} ${dimensionText(height_m)}`,
    });
    const [lower, upper] =
      coil.enters_at === 'lower'
        ? [sheetDrawingWords.in, sheetDrawingWords.out]
        : [sheetDrawingWords.out, sheetDrawingWords.in];
    return [
      at(coil.top_m, sheetDrawingWords.lastTurn),
      at(coil.upper_port_m, upper),
      at(coil.lower_port_m, lower),
      at(coil.bottom_m, sheetDrawingWords.firstTurn),
    ];
  });
  const felt = sheet.probes.map(({ height_m }, i): Ordinate => {
    const words = `${sheetDrawingWords.sensor} ${i + 1} ${dimensionText(height_m)}`;
    return { y: yAt(frame, height_m), from_x: sensorAt(frame, facts, i) + 4, words };
  });
  const [rim, foot] = [yAt(frame, insideHeight(store.shape)) - 10, yAt(frame, 0) + 4];
  const most = Math.floor((foot - rim) / APART) + 1;
  const all = [...ends, ...felt];
  // Of more coils than there is room for words, the ports alone; the table has the rest.
  const ports = [...ends.filter((_, i) => i % 4 === 1 || i % 4 === 2), ...felt];
  const told = all.length <= most ? all : ports;
  // What still has no room beside the store goes on above it.
  const top = Math.min(rim, Math.max(frame.band, foot - (told.length - 1) * APART));
  return ordinates(told, right + 6, [top, foot], APART);
}
