/** Tables aligned by column. */
import { columnsOf, padLeft, padRight } from './text.ts';

export type Align = 'left' | 'right';

const gap = '  ';

/** One line per row; each column as wide as its widest cell. A row may be shorter than `align`. */
export function tableLines(rows: readonly (readonly string[])[], align: readonly Align[]): string[] {
  const widths = align.map((_, column) => Math.max(0, ...rows.map((row) => columnsOf(row[column] ?? ''))));
  return rows.map((row) =>
    align
      .map((side, column) => {
        const cell = row[column] ?? '';
        return side === 'left' ? padRight(cell, widths[column]) : padLeft(cell, widths[column]);
      })
      .join(gap)
      .trimEnd(),
  );
}
