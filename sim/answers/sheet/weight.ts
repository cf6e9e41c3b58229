/** What the filled store weighs, and what it presses with. */
import type { StoreDescription } from '../../parts/description.ts';
import { waterDensity } from '../../physics/water.ts';
import { waterVolume } from '../section/facts.ts';
import type { CoilSheet } from './coils.ts';
import { sideThickness } from './panels.ts';

export interface StoreWeight {
  /** Between the coils. */
  water_m3: number;
  water_kg: number;
  /** Tube with what it holds. */
  coils_kg: number;
  /** Without box, insulation and lid, of which no weights are known here. */
  filled_kg: number;
  footprint_m2: number;
  /** Filled weight over the footprint: what the floor carries at least. */
  floor_Pa: number;
  /** Of the water on the bottom, and outwards on the foot of the walls. */
  base_Pa: number;
}

const GRAVITY = 9.80665;
/** Water is heaviest there [C]. */
const HEAVIEST_C = 4;

/**
 * Water [kg] as heavy as it gets, at 4 C, less what the coils displace; coils with their liquid counted as water; base
 * pressure rho g h [Pa]. Source: definitions. A box stands on its outside; a lying cylinder on the rectangle around it.
 */
export function storeWeight(store: StoreDescription, coils: readonly CoilSheet[]): StoreWeight {
  const { shape, water_depth_m } = store;
  const rho = waterDensity(HEAVIEST_C);
  const displaced_m3 = coils.reduce(
    (sum, { tube, length_m }) => sum + (Math.PI / 4) * tube.outside_diameter_m ** 2 * length_m,
    0,
  );
  const water_m3 = Math.max(0, waterVolume(shape, water_depth_m) - displaced_m3);
  const water_kg = water_m3 * rho;
  const coils_kg = coils.reduce((sum, { mass_kg, holds_m3 }) => sum + mass_kg + holds_m3 * rho, 0);
  const filled_kg = water_kg + coils_kg;
  const footprint_m2 = footprintOf(store);
  return {
    water_m3,
    water_kg,
    coils_kg,
    filled_kg,
    footprint_m2,
    floor_Pa: (filled_kg * GRAVITY) / footprint_m2,
    base_Pa: rho * GRAVITY * water_depth_m,
  };
}

function footprintOf(store: StoreDescription): number {
  const side_m = 2 * sideThickness(store);
  const { shape } = store;
  switch (shape.kind) {
    case 'box':
      return (shape.length_m + side_m) * (shape.width_m + side_m);
    case 'upright cylinder':
      return (Math.PI / 4) * (shape.diameter_m + side_m) ** 2;
    case 'lying cylinder':
      return (shape.diameter_m + side_m) * (shape.length_m + side_m);
  }
}
