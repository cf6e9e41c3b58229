/** What the scaled drawing of a plant shows, and the measures of its store that the drawing needs. */
import type { PlantDescription, StoreShape } from '../../parts/description.ts';
import { volumeBelow } from '../../parts/store/geometry.ts';
import type { Sketch } from '../../scenario/index.ts';

/** Light enough to be sent between threads at every move of a hand: no weather, no run. */
export interface SectionFacts
  extends Sketch,
    Pick<PlantDescription, 'engine' | 'collector' | 'supply' | 'taps' | 'backup'> {}

export function sectionFacts(plant: PlantDescription, { store, coils }: Sketch): SectionFacts {
  const { engine, collector, supply, taps, backup } = plant;
  return { store, coils, engine, collector, supply, taps, backup };
}

/** Water held to a depth [m3]. */
export function waterVolume(shape: StoreShape, depth_m: number): number {
  return volumeBelow(shape, depth_m);
}

/** Inside width in the plane of the drawing [m]: a box along its length, a lying cylinder across its end. */
export function drawnWidth(shape: StoreShape): number {
  return shape.kind === 'box' ? shape.length_m : shape.diameter_m;
}

/** Narrowest inside width between two heights [m]: what a coil must pass. */
export function narrowestWidth(shape: StoreShape, low_m: number, high_m: number): number {
  if (shape.kind === 'box') return Math.min(shape.length_m, shape.width_m);
  if (shape.kind === 'upright cylinder') return shape.diameter_m;
  const chord = (z: number) => 2 * Math.sqrt(Math.max(0, z * (shape.diameter_m - z)));
  return Math.min(shape.length_m, chord(low_m), chord(high_m));
}
