/** What the page shows of the shelf, and what can be asked of it. */
import type { Saved } from './kept-design.ts';

/** So long a design that was taken off can be put back [days]. */
export const keptOff_days = 30;

export interface Kept {
  /** Place of the design on the shelf; null for an example that was not changed yet. */
  id: string | null;
  /** What can be undone and done again, in words. */
  undo: string | null;
  redo: string | null;
  /** What came of the last writing; null as long as there was none. */
  saved: Saved | null;
  notice: Notice | null;
  /** Newest change first; those taken off at the end. */
  shelf: readonly ShelfItem[];
  /** Of the design in the page, newest first. */
  points: readonly PointItem[];
}

/** Before anything is known of the shelf. */
export const nothingKept: Kept = {
  id: null,
  undo: null,
  redo: null,
  saved: null,
  notice: null,
  shelf: [],
  points: [],
};

/** What was last done, and what may be done about it. */
export interface Notice {
  text: string;
  offer?: { text: string; ask: KeepVerb };
}

export interface ShelfItem {
  id: string;
  name: string;
  changed_ms: number;
  removed: boolean;
}

export interface PointItem {
  made_ms: number;
  name: string;
}

export type KeepVerb =
  | { verb: 'undo' }
  | { verb: 'redo' }
  | { verb: 'open'; id: string }
  | { verb: 'duplicate'; id: string }
  | { verb: 'remove'; id: string }
  | { verb: 'put-back'; id: string }
  | { verb: 'work-on-copy' }
  | { verb: 'keep-point'; name: string }
  | { verb: 'go-back'; made_ms: number }
  | { verb: 'drop-point'; made_ms: number };
