/** Tables and curves of the store's answer. */
import type { PlantDescription } from '../../parts/description.ts';
import type { Column, Curve, Table } from '../answer.ts';
import type { Measured } from './runs.ts';
import { LIDS, resistanceOf, thicknessOf, type Variant } from './variants.ts';

/** A variant with what its runs found; null where one failed (its coil may not fit) or was left undone. */
export interface Told {
  variant: Variant;
  measured: Measured | null;
}

const FOUND: Column[] = [
  { key: 'drop_K', dimension: 'temperature_difference' },
  { key: 'loss_W', dimension: 'power' },
  { key: 'carried_s', dimension: 'time' },
  { key: 'heat_up_s', dimension: 'time' },
  { key: 'foam_money', dimension: 'money' },
];
const INSULATION: Column[] = [
  { key: 'sides_m', dimension: 'length' },
  { key: 'sides_m2K_W', dimension: 'resistance' },
  { key: 'lid_m2K_W', dimension: 'resistance' },
  { key: 'bottom_m2K_W', dimension: 'resistance' },
  { key: 'lid', dimension: 'text' },
];

function foundOf({ variant, measured }: Told): (number | null)[] {
  const { drop_K, loss_W, carried_s, heat_up_s } = measured ?? {};
  return [drop_K ?? null, loss_W ?? null, carried_s ?? null, heat_up_s ?? null, variant.foam_money];
}

function insulationOf({ variant: { insulation, lid } }: Told): (number | string)[] {
  const { sides, bottom, lid: top } = insulation;
  return [thicknessOf(sides), resistanceOf(sides), resistanceOf(top), resistanceOf(bottom), lid];
}

const isPresent = ({ variant }: Told) => variant.present;

/** `insulation`: every insulation and lid at the size as it is; `size`: other sizes; `all`: both, with the volume. */
export function storeTables(plant: PlantDescription, told: readonly Told[]): Record<string, Table> {
  const size_m3 = presentVolume(told);
  const here = told.filter(({ variant }) => variant.volume_m3 === size_m3);
  const sizes = told.filter(
    ({ variant }) =>
      variant.lid === plant.store.lid && (variant.volume_m3 !== size_m3 || isNeighbour(told, variant)),
  );
  sizes.sort((a, b) => a.variant.volume_m3 - b.variant.volume_m3);
  const volume: Column = { key: 'volume_m3', dimension: 'volume' };
  const withVolume = (each: Told) => [each.variant.volume_m3, ...insulationOf(each), ...foundOf(each)];
  return {
    insulation: table([...INSULATION, ...FOUND], here, (each) => [...insulationOf(each), ...foundOf(each)]),
    size: table([volume, ...INSULATION, ...FOUND], sizes, withVolume),
    all: table([volume, ...INSULATION, ...FOUND], told, withVolume),
  };
}

function table(
  columns: Column[],
  told: readonly Told[],
  rowOf: (each: Told) => (number | string | null)[],
): Table {
  const present = told.findIndex(isPresent);
  return { columns, rows: told.map(rowOf), present: present < 0 ? null : present };
}

function presentVolume(told: readonly Told[]): number {
  return told.find(isPresent)?.variant.volume_m3 ?? 0;
}

/** Of the present size, with an insulation that other sizes are shown with. */
function isNeighbour(told: readonly Told[], variant: Variant): boolean {
  const sides = resistanceOf(variant.insulation.sides);
  return told.some(
    (other) =>
      other.variant.volume_m3 !== variant.volume_m3 && resistanceOf(other.variant.insulation.sides) === sides,
  );
}

/** `insulation`: degrees a day over the sides' resistance, by lid; `size`: time carried over the water held. */
export function storeCurves(plant: PlantDescription, told: readonly Told[]): Record<string, Curve> {
  const size_m3 = presentVolume(told);
  const here = told.filter(({ variant }) => variant.volume_m3 === size_m3);
  const resistances = [...new Set(here.map(({ variant }) => resistanceOf(variant.insulation.sides)))];
  const at = (sides: number, lid: string) =>
    here.find(({ variant }) => variant.lid === lid && resistanceOf(variant.insulation.sides) === sides);
  const present = told.find(isPresent);
  const presentSides = present ? resistanceOf(present.variant.insulation.sides) : null;
  const asThick = told
    .filter(
      ({ variant }) =>
        variant.lid === plant.store.lid && resistanceOf(variant.insulation.sides) === presentSides,
    )
    .sort((a, b) => a.variant.volume_m3 - b.variant.volume_m3);
  const carried: Column = { key: 'carried_s', dimension: 'time' };
  return {
    insulation: {
      x: { key: 'sides_m2K_W', dimension: 'resistance' },
      at: resistances,
      lines: LIDS.map((lid) => ({
        name: lid,
        y: FOUND[0],
        values: resistances.map((sides) => at(sides, lid)?.measured?.drop_K ?? null),
      })),
      present: presentSides,
      knee: null,
    },
    size: {
      x: { key: 'volume_m3', dimension: 'volume' },
      at: asThick.map(({ variant }) => variant.volume_m3),
      lines: [
        { name: 'carried_s', y: carried, values: asThick.map(({ measured }) => measured?.carried_s ?? null) },
      ],
      present: present?.variant.volume_m3 ?? null,
      knee: null,
    },
  };
}
