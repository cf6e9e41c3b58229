/** Cells of a table for other programs (RFC 4180). A number has a point in every language. */

/** Digits kept: more than any sample has. */
const digits = 6;

/** What a spreadsheet would take for a formula of whoever named a part so; a number with its sign, or a dash, is none. */
const formula = /^(?!-?(\d+(\.\d+)?(e[+-]?\d+)?)?$)[=+@\t\r-]/;

/** A number that is none, and null, stand as nothing. */
export function csvCell(value: number | string | null): string {
  if (value === null) return '';
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(Number(value.toPrecision(digits))) : '';
  const text = formula.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
