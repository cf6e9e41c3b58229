import type { DimensionKey } from './units.ts';

/** A name of something a run gives back. */
export interface GlossaryEntry {
  /** As in `Result.figures`, `Series.channels` and `LedgerPath.key`. */
  key: string;
  of: 'channel' | 'path' | 'figure';
  /** Short, for formulas and narrow columns. */
  symbol: string;
  dimension: DimensionKey;
  /** In plain words, without a full stop. */
  meaning: string;
  /** Smallest and largest value that is plausible, SI. */
  range: readonly [min: number, max: number];
  /** Significant digits worth printing. */
  digits: number;
}

/** Names without what a whole list has in common. */
export type Row = readonly [
  key: string,
  symbol: string,
  dimension: DimensionKey,
  range: readonly [number, number],
  meaning: string,
  digits?: number,
];

export function entries(of: GlossaryEntry['of'], rows: readonly Row[]): readonly GlossaryEntry[] {
  return rows.map(([key, symbol, dimension, range, meaning, digits = 3]) => ({
    key,
    of,
    symbol,
    dimension,
    meaning,
    range,
    digits,
  }));
}
