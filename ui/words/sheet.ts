/** Words of the build sheet: its measures, in both systems, as blocks that page, paper and terminal lay out. */
import { type BuildSheet, type CoilSheet, formatTape, type SectionFacts } from '../../sim/index.ts';
import { shortTube } from './answer-coil.ts';
import type { Both } from './both.ts';
import { coilLetter } from './section.ts';

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
  answers: 'Answers',
  noAnswers: 'None was worked out of this design yet.',
  none: 'none',
  mind: 'Mind',
} as const;

const userWords = { engine: 'engine', collector: 'collector', household: 'household' } as const;

/** `A household`, with whose water flows in it where the name does not say. */
export function coilTitle({ name, user }: CoilSheet, index: number): string {
  const whose = user === null ? 'piped to nobody' : userWords[user];
  const says = name.toLowerCase().includes(whose);
  return `${coilLetter(index)} ${name}${says ? '' : `, ${whose}`}`;
}

/** Turns to the nearest tenth. */
const tenth = (turns: number) => String(Math.round(turns * 10) / 10);

/** Each coil's measures in a column; rows of them. */
export function coilTable(coils: readonly CoilSheet[], both: Both): SheetBlock {
  const rows: [label: string, cell: (coil: CoilSheet) => string][] = [
    ['Tube', ({ tube }) => shortTube(tube.label)],
    ['Outside, inside', ({ tube }) => diametersText(tube)],
    ['Rolls', ({ rolls, roll_length_m, join }) => rollsText(rolls, roll_length_m, join, both)],
    ['Turns', turnsText],
    [
      'Form; to tube middle',
      ({ form_m: [a, b], middle_diameter_m }) =>
        b - a < 1e-6
          ? both.tapes([a, middle_diameter_m], '; ')
          : `${both.tapes([a, b], ' to ')}; ${both.tape(middle_diameter_m)}`,
    ],
    [
      'Turn to turn; clear',
      ({ pitch_m, gap_m }) =>
        gap_m < 5e-4 ? `${both.tape(pitch_m)}, touching` : both.tapes([pitch_m, gap_m], '; '),
    ],
    ['First turn, lower edge', ({ bottom_m }) => both.tape(bottom_m)],
    ['Last turn, upper edge', ({ top_m }) => both.tape(top_m)],
    ['In, port at', (coil) => portText(coil, true, both)],
    ['Out, port at', (coil) => portText(coil, false, both)],
    [
      'Falls to the lower port',
      ({ slope }) => `${(12 * slope).toFixed(2)} in/ft (${Math.round(1000 * slope)} mm/m)`,
    ],
    ['Ends up to the lid', ({ to_lid_m }) => both.tapes([to_lid_m.lower, to_lid_m.upper], ' + ')],
    [
      'Holds; tube weighs',
      ({ holds_m3, mass_kg }) =>
        `${both.quantity(holds_m3, 'volume', 2)}; ${both.quantity(mass_kg, 'mass', 2)}`,
    ],
  ];
  return {
    key: 'coils',
    title: sheetWords.coils,
    lines: coilWarnings(coils, both),
    table: {
      heads: ['', ...coils.map(coilTitle)],
      rows: rows.map(([label, cell]) => [label, ...coils.map(cell)]),
    },
  };
}

export function rollsText(rolls: number, length_m: number, join: CoilSheet['join'], both: Both): string {
  const length = both.quantity(length_m, 'length');
  return rolls === 1 ? `1 of ${length}` : `${rolls} of ${length}, in ${join}`;
}

function portText({ enters_at, lower_port_m, upper_port_m }: CoilSheet, into: boolean, both: Both): string {
  const lower = (enters_at === 'lower') === into;
  return `${both.tape(lower ? lower_port_m : upper_port_m)}, ${lower ? 'lower' : 'upper'} end`;
}

function diametersText({ outside_diameter_m, inside_diameter_m }: CoilSheet['tube']): string {
  const both = [outside_diameter_m, inside_diameter_m];
  const inches = both.map((each) => String(Number((each / 0.0254).toFixed(3))));
  return `${inches.join(', ')} in (${both.map((each) => (each * 1000).toFixed(1)).join(', ')} mm)`;
}

function turnsText(coil: CoilSheet): string {
  const { turns, windings } = coil;
  const each = windings === 1 ? '' : ` in each of ${windings} windings`;
  return `${tenth(turns)}${each}; ${tenth(Math.max(0, turns - lostTurns(coil)))} less the ends`;
}

/** Turns of each winding that the tube up to the lid would make. */
function lostTurns({ to_lid_m, length_m, turns }: CoilSheet): number {
  return ((to_lid_m.lower + to_lid_m.upper) / length_m) * turns;
}

/** What is not as it ought to be before a coil is wound, and what the run took for granted. */
function coilWarnings(coils: readonly CoilSheet[], both: Both): string[] {
  const letters = (which: (coil: CoilSheet) => boolean) =>
    coils.flatMap((coil, i) => (which(coil) ? [coilLetter(i)] : [])).join(', ');
  const flat = letters(({ runs_empty }) => !runs_empty);
  const hard = letters((coil) => coil.hard);
  return [
    ...coils.flatMap(({ tight, form_m, least_form_m }, i) =>
      tight && least_form_m !== null
        ? [
            `${coilLetter(i)}: a form of ${both.tape(form_m[0])} is tighter than this tube is bent, ${both.tape(least_form_m)} across at the least, and with a bender: it kinks. Wind it wider.`,
          ]
        : [],
    ),
    ...(hard === ''
      ? []
      : [
          `${hard}: this tube is sold hard and straight and does not wind: take a soft one, and run its numbers.`,
        ]),
    ...(coils.length === 0 ? [] : [sheetWords.woundAll]),
    ...(flat === ''
      ? []
      : [`${flat}: falls too little to run empty (1/4 in/ft, 21 mm/m): blow it out before frost.`]),
  ];
}

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
          .map(({ material, thickness_m }) => `${both.tape(thickness_m)} ${material}`)
          .join(', ');
  const { liner } = own;
  return {
    key: 'store',
    title: 'Store',
    lines: [
      `Inside ${insideText(own.shape, both)}.`,
      `Water line ${both.tape(own.water_depth_m)} up, ${both.tape(own.freeboard_m)} under the rim.`,
      `Outside ${outsideText(own, both)}.`,
      `Wall ${both.tape(wall.thickness_m)} ${wall.material}${
        liner
          ? `; liner ${liner.material}, one piece of ${both.tapes([liner.length_m, liner.width_m])}, folded, 6 in (152 mm) over each rim`
          : store.liner
            ? `; liner ${store.liner.material}`
            : ''
      }.`,
      `Insulation from the water outwards: sides ${sheets('sides')}; ${
        own.shape.kind === 'lying cylinder' ? '' : `bottom ${sheets('bottom')}; `
      }lid (${lid}) ${lid === 'open' ? 'none' : sheets('lid')}.`,
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
  const { water_m3, water_kg, coils_kg, filled_kg, footprint_m2, floor_Pa, base_Pa } = weight;
  const load = (pressure_Pa: number) =>
    `${Math.round(pressure_Pa / 47.880_259)} lb/${both.plain ? 'ft2' : 'ft²'} (${(pressure_Pa / 1000).toFixed(1)} kPa)`;
  return {
    key: 'weight',
    title: 'Weight',
    lines: [
      `Filled ${both.quantity(filled_kg, 'mass', 4)}: ${both.quantity(water_m3, 'volume')} of water ${both.quantity(water_kg, 'mass', 4)}, coils with what they hold ${both.quantity(coils_kg, 'mass')}; box and insulation not counted.`,
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
  return [formatTape(value_m), `${Math.round(value_m * 1000)} mm`];
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
