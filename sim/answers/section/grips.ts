/** What a hand may move in the drawing, how far, and what the drawing looks like once it is moved. */
import type { WallLayer } from '../../parts/description.ts';
import { insideHeight } from '../../parts/store/geometry.ts';
import { MATERIALS } from '../../physics/materials.ts';
import type { SketchedCoil } from '../../scenario/index.ts';
import type { SectionFacts } from './facts.ts';
import { woundTop } from './turns.ts';

export type Face = 'sides' | 'bottom' | 'lid';

export type Grip =
  | { what: 'water' }
  | { what: 'coil'; coil: number; end: 'bottom' | 'top' }
  /** One sheet of a face by its place from the water outwards; 0 also on a bare face, where a first sheet may come. */
  | { what: 'sheet'; face: Face; sheet: number };

/** Where a grip stands and how far it goes [m]. */
export interface GripRange {
  value_m: number;
  least_m: number;
  most_m: number;
}

/** Smallest depth, and smallest and largest thickness of one sheet, that a hand sets [m]; a typed value may go further. */
const LEAST_DEPTH_M = 0.0508;
const SHEET_M = [0.00635, 0.3048] as const;
/** Widest pitch that a hand sets [m]. */
const WIDEST_PITCH_M = 0.3048;

/** All grips of a plant: the water, both ends of each coil, and the thickest sheet of each face that insulates. */
export function gripsOf({ store, coils }: SectionFacts): Grip[] {
  const faces: Face[] = ['sides'];
  // Nothing conducts through the bottom of a lying cylinder, which is a line, nor through a lid that is off.
  if (store.shape.kind !== 'lying cylinder') faces.push('bottom');
  if (store.lid !== 'open') faces.push('lid');
  return [
    { what: 'water' },
    ...coils.flatMap((_, coil): Grip[] => [
      { what: 'coil', coil, end: 'bottom' },
      { what: 'coil', coil, end: 'top' },
    ]),
    ...faces.map((face): Grip => ({ what: 'sheet', face, sheet: thickest(store.insulation[face]) })),
  ];
}

export function gripRange(facts: SectionFacts, grip: Grip): GripRange {
  const { store } = facts;
  const room = insideHeight(store.shape);
  switch (grip.what) {
    case 'water':
      return { value_m: store.water_depth_m, least_m: LEAST_DEPTH_M, most_m: room };
    case 'sheet': {
      const value_m = store.insulation[grip.face][grip.sheet]?.thickness_m ?? 0;
      return { value_m, least_m: Math.min(value_m, SHEET_M[0]), most_m: Math.max(value_m, SHEET_M[1]) };
    }
    case 'coil':
      return coilRange(facts.coils[grip.coil], grip.end, store.water_depth_m, room);
  }
}

function coilRange(coil: SketchedCoil, end: 'bottom' | 'top', depth_m: number, room_m: number): GripRange {
  const outside = coil.tube.outside_diameter_m;
  // Steeper turns are longer, so the same tube makes fewer of them.
  const length = windingLength(coil);
  const heightAt = (pitch_m: number) =>
    (length * pitch_m) / Math.hypot(Math.PI * coil.coil_diameter_m, pitch_m) + outside;
  if (end === 'bottom') {
    // Turns that are drawn out keep their top; others go up whole, and may be seen to leave the water.
    const most_m = coil.stretched ? coil.top_m - heightAt(outside) : room_m - outside;
    return { value_m: coil.bottom_m, least_m: 0, most_m: Math.max(coil.bottom_m, most_m) };
  }
  const value_m = woundTop(coil);
  return {
    value_m,
    least_m: Math.min(value_m, coil.bottom_m + heightAt(outside)),
    most_m: Math.max(value_m, Math.min(depth_m, coil.bottom_m + heightAt(WIDEST_PITCH_M))),
  };
}

/** Place of the sheet that a hand makes thicker or thinner. */
function thickest(sheets: readonly WallLayer[]): number {
  return sheets.reduce((best, sheet, i) => (sheet.thickness_m > sheets[best].thickness_m ? i : best), 0);
}

/** The plant with a grip moved to a value [m]; what hangs on it comes along. The given facts stay as they are. */
export function moved(facts: SectionFacts, grip: Grip, value_m: number): SectionFacts {
  const { store, coils } = facts;
  switch (grip.what) {
    case 'water':
      return { ...facts, store: { ...store, water_depth_m: value_m } };
    case 'sheet': {
      const sheets = withThickness(store.insulation[grip.face], grip.sheet, value_m);
      return { ...facts, store: { ...store, insulation: { ...store.insulation, [grip.face]: sheets } } };
    }
    case 'coil': {
      const move = grip.end === 'bottom' ? withBottom : withTop;
      return { ...facts, coils: coils.map((coil, i) => (i === grip.coil ? move(coil, value_m) : coil)) };
    }
  }
}

/** Material of a first sheet on a bare face: it stands any heat of a store. */
export const FIRST_SHEET = 'mineral wool';

function withThickness(sheets: readonly WallLayer[], index: number, thickness_m: number): WallLayer[] {
  if (sheets.length === 0) {
    const { conductivity_W_mK, max_C } = MATERIALS[FIRST_SHEET];
    const resistance_m2K_W = thickness_m / conductivity_W_mK;
    return [{ material: FIRST_SHEET, thickness_m, resistance_m2K_W, max_C }];
  }
  return sheets.map((sheet, i) => {
    if (i !== index) return sheet;
    const resistance_m2K_W = (sheet.resistance_m2K_W * thickness_m) / sheet.thickness_m;
    return { ...sheet, thickness_m, resistance_m2K_W };
  });
}

function withBottom(coil: SketchedCoil, bottom_m: number): SketchedCoil {
  if (coil.stretched) {
    const pitch_m = pitchFilling(coil, coil.top_m - bottom_m);
    return { ...coil, bottom_m, pitch_m };
  }
  const lift = bottom_m - coil.bottom_m;
  const limit_m = coil.limit_m === null ? null : coil.limit_m + lift;
  return { ...coil, bottom_m, top_m: coil.top_m + lift, limit_m };
}

function withTop(coil: SketchedCoil, top_m: number): SketchedCoil {
  const pitch_m = pitchFilling(coil, top_m - coil.bottom_m);
  return { ...coil, pitch_m, top_m, limit_m: coil.limit_m === null ? null : top_m };
}

/**
 * Pitch [m] at which the windings' length just fills a height h [m], tube included: from N = L / hypot(pi D, p) turns
 * and N p = h - d follows p = (h - d) pi D / sqrt(L^2 - (h - d)^2). At least touching.
 */
function pitchFilling(coil: SketchedCoil, height_m: number): number {
  const outside = coil.tube.outside_diameter_m;
  const rise = height_m - outside;
  const length = windingLength(coil);
  const pitch = (rise * Math.PI * coil.coil_diameter_m) / Math.sqrt(Math.max(1e-12, length ** 2 - rise ** 2));
  return Math.max(outside, pitch);
}

function windingLength({ rolls, roll_length_m, side_by_side }: SketchedCoil): number {
  return (rolls * roll_length_m) / side_by_side;
}
