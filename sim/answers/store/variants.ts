/** Stores of other sizes, with other insulation and another lid, as edits. */
import type { PlantDescription, StoreDescription, StoreShape, WallLayer } from '../../parts/description.ts';
import { insideHeight, storeGeometry, volumeBelow } from '../../parts/store/geometry.ts';
import { MATERIALS } from '../../physics/materials.ts';
import type { Scenario } from '../../scenario/index.ts';
import type { Edit } from '../edit.ts';

export const LIDS = ['closed', 'ajar', 'open'] as const;
export type Lid = (typeof LIDS)[number];

/** Insulation as multiples of what is there; inches of polyiso [m] where there is none. */
const THICKNESSES = [0.5, 1, 1.5, 2, 3];
const FROM_NOTHING_M = [0, 0.0254, 0.0508, 0.1016, 0.1524];
const FACES = ['sides', 'bottom', 'lid'] as const;
type Face = (typeof FACES)[number];
type Insulation = StoreDescription['insulation'];

/** Water held, as multiples of what is there; the box grows wider, not higher. */
export const VOLUMES = [0.5, 0.75, 1, 1.5, 2];

export interface Variant {
  volume_m3: number;
  insulation: Insulation;
  lid: Lid;
  /** What the foam costs beyond what is there; less where there is less. */
  foam_money: number;
  present: boolean;
  edits: Edit[];
}

export interface Choice {
  /** Index into the thicknesses. */
  thickness: number;
  lid: Lid;
  /** Multiple of the volume. */
  volume: number;
}

/** Index of the thickness that is there. */
export function presentThickness(plant: PlantDescription): number {
  return hasFoam(plant.store.insulation) ? THICKNESSES.indexOf(1) : 0;
}

export const THICKNESS_COUNT = THICKNESSES.length;

export function variantOf(plant: PlantDescription, scenario: Scenario, choice: Choice): Variant {
  const { store, prices } = plant;
  const insulation = insulationAt(store.insulation, choice.thickness);
  const asThick = choice.thickness === presentThickness(plant);
  const asLidded = choice.lid === store.lid;
  const shape = widened(store.shape, choice.volume);
  return {
    volume_m3: volumeBelow(shape, store.water_depth_m),
    insulation,
    lid: choice.lid,
    foam_money: foamVolume(shape, insulation, store.insulation) * (prices.foam_per_m2_25mm / 0.025),
    present: asThick && asLidded && choice.volume === 1,
    edits: [
      ...(asThick ? [] : insulationEdits(insulation)),
      ...(asLidded ? [] : lidEdits(choice.lid, scenario)),
      ...(choice.volume === 1 ? [] : shapeEdits(shape, store)),
    ],
  };
}

function isFoam({ material }: WallLayer): boolean {
  return MATERIALS[material]?.use === 'insulation';
}

function hasFoam(insulation: Insulation): boolean {
  return FACES.some((face) => insulation[face].some(isFoam));
}

function insulationAt(present: Insulation, thickness: number): Insulation {
  const scaled = (sheets: WallLayer[]): WallLayer[] =>
    sheets.map((sheet) => (isFoam(sheet) ? timesThick(sheet, THICKNESSES[thickness]) : sheet));
  const added = (sheets: WallLayer[]): WallLayer[] => {
    const thickness_m = FROM_NOTHING_M[thickness];
    const { conductivity_W_mK, max_C } = MATERIALS.polyiso;
    const sheet = {
      material: 'polyiso',
      thickness_m,
      resistance_m2K_W: thickness_m / conductivity_W_mK,
      max_C,
    };
    return thickness_m > 0 ? [...sheets, sheet] : sheets;
  };
  const change = hasFoam(present) ? scaled : added;
  return { sides: change(present.sides), bottom: change(present.bottom), lid: change(present.lid) };
}

function timesThick(sheet: WallLayer, times: number): WallLayer {
  const { thickness_m, resistance_m2K_W } = sheet;
  return { ...sheet, thickness_m: thickness_m * times, resistance_m2K_W: resistance_m2K_W * times };
}

export function resistanceOf(sheets: readonly WallLayer[]): number {
  return sheets.reduce((sum, { resistance_m2K_W }) => sum + resistance_m2K_W, 0);
}

export function thicknessOf(sheets: readonly WallLayer[]): number {
  return sheets.filter(isFoam).reduce((sum, { thickness_m }) => sum + thickness_m, 0);
}

function insulationEdits(insulation: Insulation): Edit[] {
  const written = (sheets: readonly WallLayer[]) =>
    sheets.map(({ material, thickness_m, resistance_m2K_W, max_C }) => ({
      material,
      thickness: `${thickness_m} m`,
      resistance: `${resistance_m2K_W} m2 K/W`,
      ...(max_C === null ? {} : { limit: `${max_C} C` }),
    }));
  return FACES.map((face) => ({ path: `store.insulation.${face}`, value: written(insulation[face]) }));
}

/** What gets past the present lid says nothing of another. */
function lidEdits(lid: Lid, { store }: Scenario): Edit[] {
  const measured = store.vapour_escape !== undefined;
  return [
    { path: 'store.lid', value: lid },
    ...(measured ? [{ path: 'store.vapour_escape', value: undefined }] : []),
  ];
}

/** As high as before, and so much wider that it holds `volume` times the water. */
function widened(shape: StoreShape, volume: number): StoreShape {
  const times = Math.sqrt(volume);
  switch (shape.kind) {
    case 'box':
      return { ...shape, length_m: shape.length_m * times, width_m: shape.width_m * times };
    case 'upright cylinder':
      return { ...shape, diameter_m: shape.diameter_m * times };
    case 'lying cylinder':
      return { ...shape, length_m: shape.length_m * volume };
  }
}

/** The wall too, since a shape left to itself would take its own. */
function shapeEdits(shape: StoreShape, { wall, water_depth_m }: StoreDescription): Edit[] {
  const lengths = Object.entries(shape).flatMap(([key, value]) =>
    typeof value === 'number' ? [[key.replace(/_m$/, ''), `${value} m`]] : [],
  );
  const limit = wall.max_C === null ? {} : { limit: `${wall.max_C} C` };
  return [
    { path: 'store.inside', value: { shape: shape.kind, ...Object.fromEntries(lengths) } },
    { path: 'store.water_depth', value: `${water_depth_m} m` },
    { path: 'store.wall', value: { material: wall.material, thickness: `${wall.thickness_m} m`, ...limit } },
  ];
}

/** Foam beyond what is there [m3], on the faces as they are inside. */
function foamVolume(shape: StoreShape, insulation: Insulation, present: Insulation): number {
  const areas = faceAreas(shape);
  return FACES.reduce(
    (sum, face) => sum + areas[face] * (thicknessOf(insulation[face]) - thicknessOf(present[face])),
    0,
  );
}

function faceAreas(shape: StoreShape): Record<Face, number> {
  const height = insideHeight(shape);
  const { side_m2, bottom_m2 } = storeGeometry(shape, height, 10);
  const sides = side_m2.reduce((sum, area) => sum + area, 0);
  return { sides, bottom: bottom_m2, lid: bottom_m2 };
}
