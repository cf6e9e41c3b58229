/** What the filled store weighs, and what it presses with. */
import type { CoilDescription, StoreDescription } from '../../parts/description.ts';
import { type FilledWeight, filledWeight, HEAVIEST_WATER_kg_m3 } from '../../parts/filled-weight.ts';
import { sideThickness } from './panels.ts';

export interface StoreWeight extends FilledWeight {
  footprint_m2: number;
  /** Filled weight over the footprint: what the floor carries at least. */
  floor_Pa: number;
  /** Of the water on the bottom, and outwards on the foot of the walls. */
  base_Pa: number;
}

const GRAVITY = 9.80665;

/**
 * Weights, and base pressure rho g h [Pa]. Source: definitions. A box stands on its outside; a lying cylinder on the
 * rectangle around it.
 */
export function storeWeight(store: StoreDescription, coils: readonly CoilDescription[]): StoreWeight {
  const weight = filledWeight(store, coils);
  const footprint_m2 = footprintOf(store);
  return {
    ...weight,
    footprint_m2,
    floor_Pa: (weight.filled_kg * GRAVITY) / footprint_m2,
    base_Pa: HEAVIEST_WATER_kg_m3 * GRAVITY * store.water_depth_m,
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
