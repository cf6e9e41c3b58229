/** Words of the build sheet's coils: one column each. */
import type { CoilSheet } from '../../sim/index.ts';
import { shortTube } from './answer-coil.ts';
import type { Both } from './both.ts';
import { fromSim } from './from-sim.ts';
import { counted, fixed, numberFormat, numberText } from './locale.ts';
import { coilLetter } from './section.ts';
import { type SheetBlock, sheetWords } from './sheet.ts';

const thousandths = numberFormat({ maximumFractionDigits: 3 });

const userWords = { engine: 'engine', collector: 'collector', household: 'household' } as const;

/** `A household`, with whose water flows in it where the name does not say. */
function coilTitle({ name, user }: CoilSheet, index: number): string {
  const whose = user === null ? 'piped to nobody' : userWords[user];
  const says = name.toLowerCase().includes(whose);
  return `${coilLetter(index)} ${name}${says ? '' : `, ${whose}`}`;
}

/** Turns to the nearest tenth. */
const tenth = (turns: number) => numberText(Math.round(turns * 10) / 10);

/** From so many coils on, columns are too narrow for two measures each. */
const MANY = 5;

type Row = readonly [label: string, cell: (coil: CoilSheet) => string];

/** Each coil's measures in a column; of many coils the fewer rows that a builder cannot do without. */
export function coilTable(coils: readonly CoilSheet[], both: Both): SheetBlock {
  const many = coils.length >= MANY;
  const rows = many ? briefRows(both) : fullRows(both);
  return {
    key: 'coils',
    title: sheetWords.coils,
    lines: coilWarnings(coils, both, many),
    table: {
      heads: ['', ...coils.map(many ? briefTitle : coilTitle)],
      rows: rows.map(([label, cell]) => [label, ...coils.map(cell)]),
    },
  };
}

/** A name that would take five lines of a narrow column ends in dots. */
function briefTitle({ name }: CoilSheet, index: number): string {
  return `${coilLetter(index)} ${name.length > 18 ? `${name.slice(0, 17).trimEnd()}…` : name}`;
}

const slopeText = ({ slope }: CoilSheet) =>
  `${fixed(12 * slope, 2)} in/ft (${Math.round(1000 * slope)} mm/m)`;

function fullRows(both: Both): Row[] {
  return [
    ['Tube', ({ tube }) => shortTube(tube.label)],
    ['Outside, inside', ({ tube }) => diametersText(tube)],
    ['Rolls', (coil) => rollsText(coil, both)],
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
    ['In, port at', (coil) => `${both.tape(portOf(coil, true))}, ${endOf(coil, true)} end`],
    ['Out, port at', (coil) => `${both.tape(portOf(coil, false))}, ${endOf(coil, false)} end`],
    ['Falls to the lower port', slopeText],
    ['Ends up to the lid', ({ to_lid_m }) => both.tapes([to_lid_m.lower, to_lid_m.upper], ' + ')],
    [
      'Holds; tube weighs',
      ({ holds_m3, mass_kg }) =>
        `${both.quantity(holds_m3, 'volume', 2)}; ${both.quantity(mass_kg, 'mass', 2)}`,
    ],
  ];
}

function briefRows(both: Both): Row[] {
  return [
    ['Piped to', ({ user }) => user ?? 'nobody'],
    ['Tube', ({ tube }) => shortTube(tube.label)],
    ['Rolls', (coil) => rollsText(coil, both)],
    ['Turns', ({ turns, windings }) => `${tenth(turns)}${windings > 1 ? ` in each of ${windings}` : ''}`],
    ['Form, outside', ({ form_m: [a, b] }) => (b - a < 1e-6 ? both.tape(a) : both.tapes([a, b], ' to '))],
    ['Turn to turn', ({ pitch_m }) => both.tape(pitch_m)],
    ['First turn, lower edge', ({ bottom_m }) => both.tape(bottom_m)],
    ['Last turn, upper edge', ({ top_m }) => both.tape(top_m)],
    ['Water enters at its', (coil) => `${endOf(coil, true)} end`],
    ['In, port at', (coil) => both.tape(portOf(coil, true))],
    ['Out, port at', (coil) => both.tape(portOf(coil, false))],
    ['Falls to the lower port', slopeText],
  ];
}

function rollsText({ rolls, roll_length_m, join }: CoilSheet, both: Both): string {
  const length = both.quantity(roll_length_m, 'length');
  return rolls > 1 ? `${rolls} of ${length}, in ${fromSim(join)}` : `1 of ${length}`;
}

function endOf({ enters_at }: CoilSheet, into: boolean): 'lower' | 'upper' {
  return (enters_at === 'lower') === into ? 'lower' : 'upper';
}

function portOf(coil: CoilSheet, into: boolean): number {
  return endOf(coil, into) === 'lower' ? coil.lower_port_m : coil.upper_port_m;
}

function diametersText({ outside_diameter_m, inside_diameter_m }: CoilSheet['tube']): string {
  const both = [outside_diameter_m, inside_diameter_m];
  const inches = both.map((each) => thousandths.format(each / 0.0254));
  return `${inches.join(', ')} in (${both.map((each) => fixed(each * 1000, 1)).join(', ')} mm)`;
}

function turnsText(coil: CoilSheet): string {
  const { turns, windings } = coil;
  const each = windings > 1 ? ` in each of ${counted(windings, 'winding')}` : '';
  return `${tenth(turns)}${each}; ${tenth(Math.max(0, turns - lostTurns(coil)))} less the ends`;
}

/** Turns of each winding that the tube up to the lid would make. */
function lostTurns({ to_lid_m, length_m, turns }: CoilSheet): number {
  return ((to_lid_m.lower + to_lid_m.upper) / length_m) * turns;
}

/** What is not as it ought to be before a coil is wound, and what the run took for granted. */
function coilWarnings(coils: readonly CoilSheet[], both: Both, many: boolean): string[] {
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
    ...(coils.length === 0 ? [] : [many ? sheetWords.woundAllBriefly : sheetWords.woundAll]),
    ...(flat === ''
      ? []
      : [`${flat}: falls too little to run empty (1/4 in/ft, 21 mm/m): blow it out before frost.`]),
  ];
}
