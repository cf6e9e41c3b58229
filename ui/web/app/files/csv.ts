/** A table of numbers as CSV (RFC 4180), with the unit of each column in its head. */

export interface Sheet {
  head: string[];
  /** A number that is none, and null, stand as nothing. */
  rows: (number | string | null)[][];
}

/** Digits kept: more than any sample has. */
const digits = 6;

export function csvText({ head, rows }: Sheet): string {
  return [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function cell(value: number | string | null): string {
  if (value === null) return '';
  if (typeof value === 'number') {
    return Number.isFinite(value) ? String(Number(value.toPrecision(digits))) : '';
  }
  // A spreadsheet would take such a text for a formula of whoever named a part so.
  const text = /^[=+@\t\r-]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** `top (F)`: the unit in letters that every program reads. */
export function headOf(label: string, unit: string): string {
  const plain = unit.replaceAll('°', '').replaceAll('²', '2').replaceAll('·', ' ');
  return plain === '' ? label : `${label} (${plain})`;
}
