/**
 * The store and its coils as the file wants them. A file whose turns do not fit gives no plant, and still a sketch:
 * a drawing can then show what does not fit.
 */
import type { CoilDescription, StoreDescription } from '../parts/description.ts';

export interface SketchedCoil extends CoilDescription {
  /** Windings side by side or one inside another; the turns are shared between them. */
  side_by_side: number;
  /** Height above which the file wants no turn; null where it names none. */
  limit_m: number | null;
  /** Its turns are drawn out to fill the height from its bottom to its limit. */
  stretched: boolean;
}

export interface Sketch {
  store: StoreDescription;
  coils: SketchedCoil[];
}
