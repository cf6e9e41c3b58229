/** Separated text as lines of cells. Knows nothing of weather. */
import { dsvFormat } from 'd3-dsv';
import type { ProblemList } from './problems.ts';
import { quote } from './problems.ts';

/** Lines with their numbers in the file; a line is split when it is asked for. */
export interface TextTable {
  lines: { number: number; text: string }[];
  separator: string;
}

const BIGGEST_BYTES = 60_000_000;

/**
 * Reads text into lines without blank ones, and finds the separator: the one of tab, semicolon and comma
 * that the head line holds most often.
 *
 * @param head which of the lines left is the head, 0 the first
 * @returns the table, or undefined with a problem added
 */
export function readTable(text: string, head: number, problems: ProblemList): TextTable | undefined {
  if (text.length > BIGGEST_BYTES) {
    problems.add(
      'the file',
      `at most ${BIGGEST_BYTES / 1e6} million characters`,
      `${(text.length / 1e6).toFixed(0)} million`,
      'export hourly values of one year',
    );
    return undefined;
  }
  if (text.includes('\u0000')) {
    problems.add(
      'the file',
      'plain text in UTF-8',
      'zero bytes, as in a spreadsheet or UTF-16 file',
      'save it as CSV in UTF-8',
    );
    return undefined;
  }
  const lines: TextTable['lines'] = [];
  const raw = (text.charCodeAt(0) === 0xfeff ? text.slice(1) : text).split(/\r\n|\n|\r/);
  for (let i = 0; i < raw.length; i++) {
    if (raw[i].trim() !== '') lines.push({ number: i + 1, text: raw[i] });
  }
  if (lines.length <= head) {
    problems.add(
      'the file',
      'a head line and rows',
      `${lines.length} lines`,
      'check that the file is not empty',
    );
    return undefined;
  }
  const counts = ['\t', ';', ','].map((s) => ({ s, n: splitLine(lines[head].text, s).length }));
  const { s: separator, n } = counts.reduce((best, c) => (c.n > best.n ? c : best));
  if (n < 2) {
    problems.add(
      `line ${lines[head].number}`,
      'column names separated by commas, semicolons or tabs',
      quote(lines[head].text),
      'put a head line above the numbers, such as: time,air (F),sun (W/m2)',
    );
    return undefined;
  }
  return { lines, separator };
}

/** Splits one line into trimmed cells; a cell in double quotes may hold the separator, and "" for a quote. */
export function splitLine(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim());
  // Hand-made files put blanks between separator and quote, which the format does not know.
  const tight = line
    .split(`${separator} "`)
    .join(`${separator}"`)
    .split(`" ${separator}`)
    .join(`"${separator}`);
  const [cells = []] = dsvFormat(separator).parseRows(tight);
  return cells.map((cell) => cell.trim());
}

/** Marks loggers and archives write where nothing was measured. */
const MISSING = /^(|-+|\*+|na|n\/a|nan|null|none|missing|m|-99(00|99)(\.0*)?|-6999(\.0*)?)$/i;

/**
 * A cell as a number: NaN when it says that nothing was measured, undefined when it is no number at all.
 *
 * @param decimalComma true where 1,5 means one and a half
 */
export function readNumber(cell: string, decimalComma: boolean): number | undefined {
  if (MISSING.test(cell)) return Number.NaN;
  const text = decimalComma ? cell.replace(',', '.') : cell;
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return undefined;
  return Number(text);
}
