/** Words of the build sheet's cut list: tube, sheets, fittings. */
import {
  BOARD_M,
  type BuildSheet,
  type Fitting,
  type FittingKind,
  KERF_M,
  type Panel,
  WASTE,
} from '../../sim/index.ts';
import { shortTube } from './answer-coil.ts';
import type { Both } from './both.ts';
import { fromSim } from './from-sim.ts';
import { counted, fixed } from './locale.ts';
import { type SheetBlock, sheetWords } from './sheet.ts';

const soldWords = {
  roll: ['roll', 'rolls'],
  straight: ['straight length', 'straight lengths'],
} as const;

/** Whole rolls, how they are cut, what is left. */
export function tubeBlock({ tubes }: BuildSheet, both: Both): SheetBlock {
  const length = (value_m: number) => both.quantity(value_m, 'length');
  const rows = tubes.map(({ tube, buy, pieces, left_m }) => [
    shortTube(tube.label),
    buy
      .map(({ count, of_m, sold }) =>
        sold === null
          ? `${count} to measure, ${length(of_m)}`
          : `${counted(count, soldWords[sold][0], soldWords[sold][1])} of ${length(of_m)}`,
      )
      .join(' + '),
    pieces
      .map(({ coil, count, length_m }) => `${coil ?? 'pipe to the taps'} ${count} of ${length(length_m)}`)
      .join('; '),
    left_m.length === 0 ? sheetWords.none : left_m.map(length).join(', '),
  ]);
  return {
    key: 'tube',
    title: 'Tube',
    lines: ['Ends up to the lid and pipes outside come on top, but for the pipe to the taps.'],
    table: { heads: ['', 'buy', 'cut', 'left over'], rows },
  };
}

const faceWords = { sides: 'sides', bottom: 'bottom', lid: 'lid', wall: 'wall' } as const;

function panelText({ count, length_m, width_m, form }: Panel, both: Both): string {
  if (form === 'disc') return `${count} of ${both.tape(length_m)} across`;
  const size = both.tapes([length_m, width_m]);
  return form === 'wrap' ? `wrap ${size}` : `${count} of ${size}`;
}

/** Sheets by material and thickness, with their waste. */
export function panelsBlock({ panels }: BuildSheet, both: Both): SheetBlock {
  const rows = panels.map(({ material, thickness_m, panels, area_m2, buy_m2, boards }) => {
    const faces = [...new Set(panels.map(({ face }) => face))];
    const pieces = faces.map((face) => {
      const own = panels.filter((panel) => panel.face === face).map((panel) => panelText(panel, both));
      return `${faceWords[face]} ${own.join(', ')}`;
    });
    const area = both.quantity(buy_m2, 'area');
    return [
      `${both.tape(thickness_m)} ${fromSim(material)}`,
      boards === null ? area : `${counted(boards, 'board')}, ${area}`,
      `${pieces.join('; ')}: ${both.quantity(area_m2, 'area')}`,
    ];
  });
  const feet = (value_m: number) => Math.round(value_m / 0.3048);
  const { width_m, length_m } = BOARD_M;
  const board = `${feet(width_m)} x ${feet(length_m)} ft (${fixed(width_m, 2)} x ${fixed(length_m, 2)} m)`;
  const cutting = `Boards are of ${board}: all pieces can be cut from so many, with ${both.tape(KERF_M)} for each saw cut; draw them on the boards before you cut.`;
  const joining = panels.some(({ joined }) => joined)
    ? ' Pieces larger than a board are joined from parts.'
    : '';
  const byArea = `What is sold by area is with ${Math.round(100 * WASTE)} % of waste. Discs come from the square around them.`;
  return {
    key: 'panels',
    title: 'Sheets',
    lines: [`${cutting}${joining} ${byArea}`],
    table: { heads: ['', 'buy', 'pieces'], rows },
  };
}

const fittingWords: Record<FittingKind, string> = {
  union: 'Union',
  coupling: 'Coupling, roll to roll',
  tee: 'Tee, rolls in parallel',
  elbow: 'Elbow, last roll in parallel',
  relief: 'Relief valve',
  expansion: 'Accumulator or vessel',
  mixing_valve: 'Thermostatic mixing valve',
  check_valve: 'Check valve',
  air_vent: 'Air vent',
  drain: 'Drain cock',
};

function fittingName({ kind, tube, missing }: Fitting): string {
  const size = tube === null ? '' : `, ${shortTube(tube)}`;
  return `${fittingWords[kind]}${size}${missing ? ' (the design has none: fit it)' : ''}`;
}

/** Fittings as the way it is piped asks for them. */
export function fittingsBlock({ fittings }: BuildSheet): SheetBlock {
  const rows = fittings.map((fitting) => {
    const { count, spare, coils } = fitting;
    const whose = [...coils, ...(fitting.kind === 'drain' && count > coils.length ? ['store'] : [])];
    return [fittingName(fitting), spare > 0 ? `${count} + ${spare} spare` : String(count), whose.join(', ')];
  });
  const lines = [
    'Unions above the water; no valve before a relief, its pipe led to a safe place; vents at the highest point of a loop, drains at the lowest.',
  ];
  return { key: 'fittings', title: 'Fittings', lines, table: { heads: ['', 'count', 'for'], rows } };
}
