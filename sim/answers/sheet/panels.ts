/** Sheets of insulation and wall as they are cut, the liner, and what to buy of each. */
import type { StoreDescription, StoreShape, WallLayer } from '../../parts/description.ts';
import { insideHeight } from '../../parts/store/geometry.ts';
import { BOARD_M, laidInBoards, outgrowsBoard } from './boards.ts';

export type PanelFace = 'sides' | 'bottom' | 'lid' | 'wall';

/** Pieces of one sheet, all alike. A disc and a shell's end are cut from the square around them. */
export interface Panel {
  face: PanelFace;
  count: number;
  length_m: number;
  width_m: number;
  form: 'panel' | 'wrap' | 'disc';
}

/** All pieces of one material and thickness. */
export interface PanelCut {
  material: string;
  thickness_m: number;
  panels: Panel[];
  /** As cut, without waste [m2]. */
  area_m2: number;
  /** Of whole boards, or with waste where it is sold by area. */
  buy_m2: number;
  /** Whole boards that all pieces can be cut from, where it is sold in boards. */
  boards: number | null;
  /** Some piece is larger than a board. */
  joined: boolean;
}

/** Cut off and thrown away of what is sold by area; common practice. */
export const WASTE = 0.1;
const IN_BOARDS = new Set(['polyiso', 'XPS', 'EPS', 'perlite board', 'cellular glass', 'plywood']);
/** A builder's own walls; tanks of steel and plastic come whole. */
const BUILT_WALLS = new Set(['plywood']);
/** Liner over the rim on each side [m]: common practice (6 in). */
const LAP_M = 0.1524;

export function sheetsThickness(sheets: readonly { thickness_m: number }[]): number {
  return sheets.reduce((sum, { thickness_m }) => sum + thickness_m, 0);
}

/** Outside of wall and side insulation, around the inside [m]. */
export function sideThickness({ wall, insulation }: StoreDescription): number {
  return wall.thickness_m + sheetsThickness(insulation.sides);
}

/**
 * Every sheet by its pieces: sides stand on the bottom's sheets, whose size and the lid's is that of the outside. A
 * wrap is as long as the circumference in its middle. Source: geometry; the drawing shows the same.
 */
export function panelCuts(store: StoreDescription): PanelCut[] {
  const { insulation, wall, shape, lid } = store;
  const found: { sheet: Pick<WallLayer, 'material' | 'thickness_m'>; panels: Panel[] }[] = [];
  if (BUILT_WALLS.has(wall.material))
    found.push({ sheet: wall, panels: wallPanels(shape, wall.thickness_m) });
  let offset_m = wall.thickness_m;
  for (const sheet of insulation.sides) {
    found.push({ sheet, panels: sidePanels(store, offset_m, sheet.thickness_m) });
    offset_m += sheet.thickness_m;
  }
  const flat = { bottom: insulation.bottom, lid: lid === 'open' ? [] : insulation.lid };
  for (const face of ['bottom', 'lid'] as const) {
    let out_m = wall.thickness_m;
    for (const sheet of flat[face]) {
      const panels = flatPanels(store, face, out_m, sheet.thickness_m);
      out_m += sheet.thickness_m;
      found.push({ sheet, panels });
    }
  }
  return merged(found);
}

function wallPanels(shape: StoreShape, thickness_m: number): Panel[] {
  if (shape.kind !== 'box') return [];
  const { length_m, width_m, height_m } = shape;
  const long_m = length_m + 2 * thickness_m;
  const panel = (count: number, length_m: number, width_m: number): Panel => ({
    face: 'wall',
    count,
    length_m,
    width_m,
    form: 'panel',
  });
  return [
    panel(1, long_m, width_m + 2 * thickness_m),
    panel(2, long_m, height_m),
    panel(2, width_m, height_m),
  ];
}

function sidePanels(store: StoreDescription, offset_m: number, thickness_m: number): Panel[] {
  const { shape, wall } = store;
  const height_m = insideHeight(shape) + wall.thickness_m;
  const panel = (count: number, length_m: number, width_m: number, form: Panel['form']): Panel => ({
    face: 'sides',
    count,
    length_m,
    width_m,
    form,
  });
  switch (shape.kind) {
    case 'box':
      return [
        panel(2, shape.length_m + 2 * (offset_m + thickness_m), height_m, 'panel'),
        panel(2, shape.width_m + 2 * offset_m, height_m, 'panel'),
      ];
    case 'upright cylinder':
      return [panel(1, Math.PI * (shape.diameter_m + 2 * offset_m + thickness_m), height_m, 'wrap')];
    case 'lying cylinder': {
      const end_m = shape.diameter_m + 2 * (offset_m + thickness_m);
      const around_m = Math.PI * (shape.diameter_m + 2 * offset_m + thickness_m);
      const length_m = shape.length_m + 2 * offset_m;
      return [panel(1, around_m * wettedShare(store), length_m, 'wrap'), panel(2, end_m, end_m, 'disc')];
    }
  }
}

function flatPanels(
  store: StoreDescription,
  face: 'bottom' | 'lid',
  offset_m: number,
  thickness_m: number,
): Panel[] {
  const { shape } = store;
  const side_m = 2 * sideThickness(store);
  switch (shape.kind) {
    case 'box': {
      const [length_m, width_m] = [shape.length_m + side_m, shape.width_m + side_m];
      return [{ face, count: 1, length_m, width_m, form: 'panel' }];
    }
    case 'upright cylinder': {
      const across_m = shape.diameter_m + side_m;
      return [{ face, count: 1, length_m: across_m, width_m: across_m, form: 'disc' }];
    }
    case 'lying cylinder': {
      // Nothing lies under a cylinder on its side; the lid's sheets go over the shell above the water.
      if (face === 'bottom') return [];
      const around_m = Math.PI * (shape.diameter_m + 2 * offset_m + thickness_m);
      const length_m = shape.length_m + 2 * store.wall.thickness_m;
      return [
        { face, count: 1, length_m: around_m * (1 - wettedShare(store)), width_m: length_m, form: 'wrap' },
      ];
    }
  }
}

/** Share of a lying cylinder's girth below the water. */
function wettedShare({ shape, water_depth_m }: StoreDescription): number {
  if (shape.kind !== 'lying cylinder') return 1;
  return Math.acos(Math.max(-1, Math.min(1, 1 - (2 * water_depth_m) / shape.diameter_m))) / Math.PI;
}

function merged(
  found: { sheet: Pick<WallLayer, 'material' | 'thickness_m'>; panels: Panel[] }[],
): PanelCut[] {
  const cuts: PanelCut[] = [];
  for (const { sheet, panels } of found) {
    if (panels.length === 0) continue;
    const { material, thickness_m } = sheet;
    const alike = (cut: PanelCut) =>
      cut.material === material && Math.abs(cut.thickness_m - thickness_m) < 1e-4;
    const cut = cuts.find(alike);
    if (cut) cut.panels.push(...panels);
    else
      cuts.push({
        material,
        thickness_m,
        panels: [...panels],
        area_m2: 0,
        buy_m2: 0,
        boards: null,
        joined: false,
      });
  }
  for (const cut of cuts) {
    cut.area_m2 = cut.panels.reduce((sum, each) => sum + each.count * each.length_m * each.width_m, 0);
    cut.buy_m2 = (1 + WASTE) * cut.area_m2;
    if (!IN_BOARDS.has(cut.material)) continue;
    const pieces = cut.panels.flatMap((panel) => Array.from({ length: panel.count }, () => panel));
    cut.boards = laidInBoards(pieces).length;
    cut.buy_m2 = cut.boards * BOARD_M.length_m * BOARD_M.width_m;
    cut.joined = pieces.some(outgrowsBoard);
  }
  return cuts;
}

/**
 * One piece of liner, folded at the corners and turned over the rim: inside length or width, twice the height, and a
 * lap on both sides. Source: geometry; the lap is common practice. Null without a liner and for a lying cylinder.
 */
export function linerPiece({ liner, shape }: StoreDescription): {
  material: string;
  length_m: number;
  width_m: number;
} | null {
  if (!liner || shape.kind === 'lying cylinder') return null;
  const up_m = 2 * (shape.height_m + LAP_M);
  const [length_m, width_m] =
    shape.kind === 'box' ? [shape.length_m, shape.width_m] : [shape.diameter_m, shape.diameter_m];
  return { material: liner.material, length_m: length_m + up_m, width_m: width_m + up_m };
}
