/** The store: shape, walls and insulation with the materials' numbers looked up. */
import type { StoreDescription, StoreShape, WallLayer } from '../../parts/description.ts';
import { MATERIALS } from '../../physics/materials.ts';
import type { Desk } from '../desk.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { store as field } from '../fields/store.ts';
import { surroundingsFrom } from './shared.ts';

type StoreRead = ScenarioValues['store'];
type SheetRead = NonNullable<StoreRead['insulation']['sides']>[number];

const STEPS = ['store'] as const;

/** Inside of the common 275-gallon caged tote and its blow-moulded wall (from memory: about 1.1 x 0.95 x 1.0 m, 2 mm). */
const TOTE: StoreShape = { kind: 'box', length_m: 1.1, width_m: 0.95, height_m: 1 };
/** Share of the inside height a store is filled to: water swells 3.6 % from 10 to 90 C. */
const FILL = 0.92;
const VAPOUR = { closed: 0.02, ajar: 0.25, open: 1 };
const VAPOUR_BAND = { closed: ['0 %', '5 %'], ajar: ['10 %', '50 %'], open: null } as const;

/** The store's description, or null where something in it is refused. */
export function storeFrom(desk: Desk, read: StoreRead): StoreDescription | null {
  const before = desk.problems.length;
  const shape = shapeOf(read.inside);
  const height = shape.kind === 'lying cylinder' ? shape.diameter_m : shape.height_m;
  const water_depth_m = desk.complete(field, STEPS, 'water_depth', read.water_depth, () => ({
    value: FILL * height,
  }));
  if (water_depth_m > height + 1e-9) {
    desk.problem(
      [...STEPS, 'water_depth'],
      `at most the inside height, ${desk.length(height)}`,
      desk.length(water_depth_m),
      `leave some room: water swells 3.6 % from ${desk.temperature(10)} to ${desk.temperature(90)}`,
    );
  } else if (water_depth_m > 0.97 * height) {
    desk.note(
      [...STEPS, 'water_depth'],
      `filled to ${Math.round((100 * water_depth_m) / height)} %: water swells 3.6 % from ${desk.temperature(10)} to ${desk.temperature(90)} and will run over`,
    );
  }
  if (read.lid === 'open' && read.vapour_escape !== null && read.vapour_escape < 1) {
    desk.problem(
      [...STEPS, 'vapour_escape'],
      'all of it from an open store',
      `${read.vapour_escape * 100} %`,
      'remove it, or say that the lid is ajar',
    );
  }
  const sides = sheetsOf(desk, read, 'sides', USUAL_SHEETS);
  const bottom = sheetsOf(desk, read, 'bottom', read.insulation.sides ?? USUAL_SHEETS);
  const lid = sheetsOf(desk, read, 'lid', read.insulation.sides ?? USUAL_SHEETS);
  if (desk.problems.length > before) return null;
  return {
    shape,
    water_depth_m,
    wall: wallOf(desk, read),
    liner: linerOf(desk, read.liner),
    insulation: { sides, bottom, lid },
    lid: read.lid,
    vapour_share: desk.complete(field, STEPS, 'vapour_escape', read.vapour_escape, () => ({
      value: VAPOUR[read.lid],
      band: VAPOUR_BAND[read.lid],
    })),
    evaporation: read.evaporation,
    surroundings: surroundingsFrom(read.stands),
    ground_C: read.ground,
    bridges: read.bridges,
    make_up: read.make_up,
    make_up_C: read.make_up_temperature,
  };
}

function shapeOf(inside: StoreRead['inside']): StoreShape {
  switch (inside.shape) {
    case 'tote':
      return TOTE;
    case 'box':
      return { kind: 'box', length_m: inside.length, width_m: inside.width, height_m: inside.height };
    case 'upright cylinder':
      return { kind: 'upright cylinder', diameter_m: inside.diameter, height_m: inside.height };
    case 'lying cylinder':
      return { kind: 'lying cylinder', diameter_m: inside.diameter, length_m: inside.length };
  }
}

const USUAL_SHEETS: SheetRead[] = [
  { material: 'fibreglass', thickness: 3.5 * 0.0254, resistance: null, limit: null },
];

function sheetsOf(
  desk: Desk,
  read: StoreRead,
  face: 'sides' | 'bottom' | 'lid',
  usual: SheetRead[],
): WallLayer[] {
  const group = field.fields.insulation;
  const steps = [...STEPS, 'insulation'];
  const sheets = desk.complete(group, steps, face, read.insulation[face], () => ({ value: usual }));
  const sheetField = group.fields[face].of;
  return sheets.map((sheet, i) => {
    const at = [...steps, face, i];
    return {
      material: sheet.material,
      thickness_m: sheet.thickness,
      resistance_m2K_W: desk.complete(sheetField, at, 'resistance', sheet.resistance, () => ({
        value: sheet.thickness / MATERIALS[sheet.material].conductivity_W_mK,
      })),
      max_C: limitOf(desk, sheetField, at, sheet),
    };
  });
}

/** Hottest a material may be: as the file says, else as its table says, null where heat does it no harm. */
function limitOf(
  desk: Desk,
  group: { fields: Pick<(typeof field.fields.wall)['fields'], 'limit'> },
  steps: readonly PropertyKey[],
  { material, limit }: { material: string; limit: number | null },
): number | null {
  const { max_C } = MATERIALS[material];
  return max_C === null ? limit : desk.complete(group, steps, 'limit', limit, () => ({ value: max_C }));
}

const USUAL_WALL = {
  box: { material: 'plywood', thickness: 0.75 * 0.0254, limit: null },
  tote: { material: 'polyethylene', thickness: 0.002, limit: null },
  'upright cylinder': { material: 'steel', thickness: 0.002, limit: null },
  'lying cylinder': { material: 'steel', thickness: 0.002, limit: null },
};

function linerOf(desk: Desk, liner: StoreRead['liner']): StoreDescription['liner'] {
  if (liner === null) return null;
  // Every liner of the table has a limit.
  const max_C = limitOf(desk, field.fields.liner, [...STEPS, 'liner'], liner) ?? Number.POSITIVE_INFINITY;
  return { material: liner.material, max_C };
}

function wallOf(desk: Desk, read: StoreRead): StoreDescription['wall'] {
  const wall = desk.complete(field, STEPS, 'wall', read.wall, () => ({
    value: USUAL_WALL[read.inside.shape],
  }));
  return {
    material: wall.material,
    thickness_m: wall.thickness,
    conductivity_W_mK: MATERIALS[wall.material].conductivity_W_mK,
    max_C: limitOf(desk, field.fields.wall, [...STEPS, 'wall'], wall),
  };
}
