/** A table of numbers as CSV (RFC 4180), with the unit of each column in its head. */
import { csvCell } from '../../../words/index.ts';

export interface Sheet {
  head: string[];
  /** A number that is none, and null, stand as nothing. */
  rows: (number | string | null)[][];
}

export function csvText({ head, rows }: Sheet): string {
  return [head, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

/** `top (F)`: the unit in letters that every program reads. */
export function headOf(label: string, unit: string): string {
  const plain = unit.replaceAll('°', '').replaceAll('²', '2').replaceAll('·', ' ');
  return plain === '' ? label : `${label} (${plain})`;
}
