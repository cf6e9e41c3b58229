/** Words of the build sheet: its measures, in both systems, as blocks that page, paper and terminal lay out. */
import type { BuildSheet, SectionFacts } from '../../sim/index.ts';
import type { Both } from './both.ts';
import { fromSim } from './from-sim.ts';
import { fixed } from './locale.ts';
import { inchesText } from './units.ts';

/** A piece of the sheet: sentences, or a table whose first column says what a row is. */
export interface SheetBlock {
  key: string;
  title: string;
  lines: string[];
  table?: { heads: string[]; rows: string[][] };
}

export const sheetWords = {
  title: 'Build sheet',
  close: 'Back to the design',
  print: 'Print',
  pages: 'Prints on two pages, Letter or A4.',
  estimate:
    'An estimate, not an approval. Local code and licensed practice decide; have what they ask for done or checked by them.',
  made: (version: string, date: string) => `Tankful ${version}, ${date}`,
  page: (number: number, of: number) => `page ${number} of ${of}`,
  stale: 'Of the last good run, not of the design as it stands.',
  link: 'The same design, from a screen:',
  /** Enough of an address to know it by: nobody types two thousand letters. */
  shortLink: (link: string) => (link.length <= 90 ? link : `${link.slice(0, 72)}… (${link.length} letters)`),
  drawingName: 'Section with its dimensions',
  drawing: 'The store cut open, to scale; all heights from the inside bottom. Machines and pipes are a plan.',
  coils: 'Coils',
  woundAll:
    'The run winds all of the tube: fewer turns where the ends up through the lid (lower + upper) come off the same rolls.',
  woundAllBriefly:
    'The run winds all of the tube: fewer turns where the ends up to the lid come off the same rolls.',
  answers: 'Answers',
  noAnswers: 'None was worked out of this design yet.',
  none: 'none',
  mind: 'Mind',
} as const;

const insideText = (shape: BuildSheet['store']['shape'], both: Both): string => {
  switch (shape.kind) {
    case 'box':
      return `${both.tapes([shape.length_m, shape.width_m, shape.height_m])}: length, width, height`;
    case 'upright cylinder':
      return `${both.tape(shape.diameter_m)} across, ${both.tape(shape.height_m)} high`;
    case 'lying cylinder':
      return `lying, ${both.tape(shape.diameter_m)} across, ${both.tape(shape.length_m)} long`;
  }
};

const outsideText = ({ shape, inside_height_m, around_m }: BuildSheet['store'], both: Both): string => {
  const side_m = 2 * around_m.sides;
  const high_m = inside_height_m + around_m.below + around_m.above;
  switch (shape.kind) {
    case 'box':
      return both.tapes([shape.length_m + side_m, shape.width_m + side_m, high_m]);
    case 'upright cylinder':
      return `${both.tape(shape.diameter_m + side_m)} across, ${both.tape(high_m)} high`;
    case 'lying cylinder':
      return `${both.tape(shape.diameter_m + side_m)} across, ${both.tape(shape.length_m + side_m)} long`;
  }
};

/** The store's own measures. */
export function storeBlock({ store: own }: BuildSheet, { store }: SectionFacts, both: Both): SheetBlock {
  const { wall, insulation, lid } = store;
  const sheets = (face: 'sides' | 'bottom' | 'lid') =>
    insulation[face].length === 0
      ? 'bare'
      : insulation[face]
          .map(({ material, thickness_m }) => `${both.tape(thickness_m)} ${fromSim(material)}`)
          .join(', ');
  const { liner } = own;
  return {
    key: 'store',
    title: 'Store',
    lines: [
      `Inside ${insideText(own.shape, both)}.`,
      `Water line ${both.tape(own.water_depth_m)} up, ${both.tape(own.freeboard_m)} under the rim.`,
      `Outside ${outsideText(own, both)}.`,
      `Wall ${both.tape(wall.thickness_m)} ${fromSim(wall.material)}${
        liner
          ? `; liner ${fromSim(liner.material)}, one piece of ${both.tapes([liner.length_m, liner.width_m])}, folded, 6 in (152 mm) over each rim`
          : store.liner
            ? `; liner ${fromSim(store.liner.material)}`
            : ''
      }.`,
      `Insulation from the water outwards: sides ${sheets('sides')}; ${
        own.shape.kind === 'lying cylinder' ? '' : `bottom ${sheets('bottom')}; `
      }lid (${fromSim(lid)}) ${lid === 'open' ? 'none' : sheets('lid')}.`,
    ],
  };
}

const probeWords = {
  engine: 'engine’s call for heat',
  collector: 'store sensor of the collector’s pump',
  limit: 'high limit, just under the water line',
} as const;

/** Where thermometers and sensors hang. */
export function probesBlock({ probes, stick_m }: BuildSheet, both: Both): SheetBlock {
  return {
    key: 'probes',
    title: 'Probes',
    lines: [
      `Stick in the eye of the coils, thermometers at ${both.tapes(stick_m, ', ')} up.`,
      ...probes.map(({ what, height_m }, i) => `${i + 1}: ${both.tape(height_m)} up, ${probeWords[what]}.`),
    ],
  };
}

/** What it weighs and presses with. */
export function weightBlock({ weight }: BuildSheet, both: Both): SheetBlock {
  const { to_line_m3, water_kg, coils_kg, filled_kg, footprint_m2, floor_Pa, base_Pa } = weight;
  const load = (pressure_Pa: number) =>
    `${Math.round(pressure_Pa / 47.880_259)} lb/${both.plain ? 'ft2' : 'ft²'} (${fixed(pressure_Pa / 1000, 1)} kPa)`;
  return {
    key: 'weight',
    title: 'Weight',
    lines: [
      `Filled to its line, ${both.quantity(to_line_m3, 'volume')} with the coils in it, it weighs ${both.quantity(filled_kg, 'mass')}: water ${both.quantity(water_kg, 'mass')}, coils with what they hold ${both.quantity(coils_kg, 'mass')}; box and insulation not counted.`,
      `On ${both.quantity(footprint_m2, 'area')} of floor ${load(floor_Pa)}; floors of houses are made for about ${load(40 * 47.880_259)}.`,
      `At the foot the water presses ${load(base_Pa)} down, and outwards on the walls.`,
    ],
  };
}

/** A measure in the drawing, both systems: `36 in / 914 mm`. */
export function dimensionText(value_m: number): string {
  return dimensionPair(value_m).join(' / ');
}

/** The same in its two halves. */
export function dimensionPair(value_m: number): [us: string, si: string] {
  return [inchesText(value_m), `${Math.round(value_m * 1000)} mm`];
}

/** Words inside the drawing. */
export const sheetDrawingWords = {
  inside: 'inside',
  outside: 'outside',
  water: 'water',
  wall: 'wall with foam',
  lid: 'lid',
  bottom: 'bottom',
  wide: 'wide inside',
  across: 'long inside',
  sensor: 'sensor',
  in: 'in',
  out: 'out',
  firstTurn: 'first turn',
  lastTurn: 'last turn',
} as const;
