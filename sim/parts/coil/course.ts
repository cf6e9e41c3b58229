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

/** A smaller share of the height in a layer counts as none. */
const THINNEST = 1e-12;

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
  // Shares of the height, upwards, that lie below a layer's floor and below its ceiling.
  const below = (i: number) => Math.max(0, (i * store.layer_height_m - bottom) / height);
  const within = (i: number) =>
    Math.min(1, (Math.min((i + 1) * store.layer_height_m, depth) - bottom) / height);
  let first = 0;
  while (first < store.layers && within(first) - below(first) <= THINNEST) first++;
  let end = first;
  while (end < store.layers && within(end) - below(end) > THINNEST) end++;
  const many = end - first;
  const layer = new Int32Array(many);
  const from = new Float64Array(many);
  const to = new Float64Array(many);
  const down = coil.fed_from === 'top';
  for (let j = 0; j < many; j++) {
    const i = down ? end - 1 - j : first + j;
    layer[j] = i;
    from[j] = down ? 1 - within(i) : below(i);
    to[j] = down ? 1 - below(i) : within(i);
  }
  const dry = many > 0 ? 1 - (within(end - 1) - below(first)) : 1;
  return { paths, length_m, layer, from, to, dry: Math.max(0, dry) };
}
