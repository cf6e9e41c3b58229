/**
 * The shape of every answer: one number with its band, what limits it, what would change it most, a table and
 * a curve. Sentences are made of these in `ui/words`; nothing here is a sentence.
 */
import type { DimensionKey } from '../quantity/index.ts';
import type { Severity } from '../run/severities.ts';

/** What holds the answer back. */
export type Limit = 'coil' | 'store' | 'engine' | 'pump' | 'sun' | 'liner' | 'insulation' | 'none';

/**
 * A number with two kinds of doubt kept apart: `low`..`high` from the inputs' bands, `numerical` from the
 * layers and the tolerance (half-width). SI; `dimension` says how to print it.
 */
export interface Banded {
  value: number;
  low: number;
  high: number;
  numerical: number;
  dimension: DimensionKey | 'money';
}

/** One column of a table; `key` is its words' key. */
export interface Column {
  key: string;
  /** 'month' counts from 1, January. */
  dimension: DimensionKey | 'text' | 'money' | 'number' | 'month';
  /** What the column's values are at, where columns differ by it alone: a collector's area. */
  at?: { value: number; dimension: DimensionKey };
}

export interface Table {
  columns: Column[];
  rows: (number | string | null)[][];
  /** Row of the design as it stands, if it is in the table. */
  present: number | null;
}

export interface Curve {
  x: Column;
  /** Lines over the same x, each with a name (a words' key, or a design's own label). */
  lines: { name: string; y: Column; values: (number | null)[] }[];
  at: number[];
  /** x of the design as it stands, if it has one. */
  present: number | null;
  /** x where more stops paying, if there is one. */
  knee: number | null;
}

/** How one uncertain input, or one affordable change, moves the answer. */
export interface Lever {
  /** Path in the scenario file. */
  path: string;
  low: { text: string; value: number };
  high: { text: string; value: number };
}

/** A caution beside an answer; `key` is its words' key. */
export interface AnswerCaution {
  key: string;
  severity: Severity;
}

export interface Answer {
  key:
    | 'coil'
    | 'charging'
    | 'collector'
    | 'showers'
    | 'hours'
    | 'store'
    | 'doubts'
    | 'next'
    | 'breaks'
    | 'season';
  /** Facts of the sentence by name; the first is the headline. */
  facts: Record<string, Banded>;
  headline: string;
  limit: Limit;
  tables: Record<string, Table>;
  curves: Record<string, Curve>;
  /** Largest effect first. */
  levers: Lever[];
  /** What to mind beside this answer. */
  cautions: AnswerCaution[];
  /** Keys of what the answer takes for granted beside the scenario's own assumptions. */
  taken?: string[];
  /** Somebody stopped before all was computed: what is missing stands as null. */
  stopped?: true;
}
