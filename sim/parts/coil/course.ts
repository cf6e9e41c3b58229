/** The coil's course through the store: which length of it lies in which layer, in the order of flow. */
import type { CoilDescription } from '../description.ts';
import type { StoreGeometry } from '../store/geometry.ts';

export interface Course {
  /** Parallel paths the flow is split over. */
  paths: number;
  /** Length of one path [m]. */
  length_m: number;
  /** Layer of each section, inlet first. */
  layer: Int32Array;
  /** Where each section begins and ends, as a share of the path. Dry sections (above the water) are left out. */
  from: Float64Array;
  to: Float64Array;
  /** Share of the path that lies above the water and exchanges nothing. */
  dry: number;
}

/** Turns of one path, wound at the coil's mean diameter and pitch. */
export function turnsOf(coil: CoilDescription, length_m: number): number {
  return length_m / Math.hypot(Math.PI * coil.coil_diameter_m, coil.pitch_m);
}

/** Lays the coil through the layers, its length spread evenly between its bottom and its top. */
export function courseOf(coil: CoilDescription, store: StoreGeometry): Course {
  const paths = coil.join === 'parallel' ? coil.rolls : 1;
  const length_m = coil.join === 'parallel' ? coil.roll_length_m : coil.rolls * coil.roll_length_m;
  const depth = store.layers * store.layer_height_m;
  // A flat spiral still has the tube's own thickness.
  const bottom = coil.bottom_m;
  const top = Math.max(coil.top_m, bottom + coil.tube.outside_diameter_m);
  const height = top - bottom;
  const pieces: { layer: number; from: number; to: number }[] = [];
  for (let i = 0; i < store.layers; i++) {
    const low = Math.max(bottom, i * store.layer_height_m);
    const high = Math.min(top, (i + 1) * store.layer_height_m, depth);
    if (high - low > 1e-12)
      pieces.push({ layer: i, from: (low - bottom) / height, to: (high - bottom) / height });
  }
  const wet = pieces.reduce((sum, p) => sum + p.to - p.from, 0);
  if (coil.fed_from === 'top') {
    pieces.reverse();
    for (const p of pieces) [p.from, p.to] = [1 - p.to, 1 - p.from];
  }
  return {
    paths,
    length_m,
    layer: Int32Array.from(pieces, (p) => p.layer),
    from: Float64Array.from(pieces, (p) => p.from),
    to: Float64Array.from(pieces, (p) => p.to),
    dry: Math.max(0, 1 - wet),
  };
}
