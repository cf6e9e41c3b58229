/** Text for a terminal: how wide it stands, where it breaks, and nothing in it that the terminal would obey. */

import { withPoint } from '../words/index.ts';

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
const unprintable = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** A name from a file may carry control or direction characters; each becomes a visible `?`. Newlines stay. */
export function harmless(text: string): string {
  return text.replace(unprintable, '?');
}

const asciiFor: Record<string, string> = {
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '—': '-',
  '−': '-',
  '⁄': '/',
  '×': 'x',
  '·': ' ',
  '°': '',
};

/** The same in ASCII, for other programs as well: accents fall off, raised figures come down, numbers have a point, what has no likeness becomes `?`. */
export function ascii(text: string): string {
  return withPoint(text)
    .normalize('NFKD')
    .replace(/\p{Mn}/gu, '')
    .replace(/[\u0080-\u{10ffff}]/gu, (sign) => asciiFor[sign] ?? '?');
}

const combining = /^(?:\p{Mn}|\p{Me}|\u200d|\ufe0f)$/u;
// CJK, Hangul, fullwidth forms and pictographs take two columns.
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]$/u;

/** Columns that `text` takes; it must hold no colour codes. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const character of text) {
    if (combining.test(character)) continue;
    columns += wide.test(character) ? 2 : 1;
  }
  return columns;
}

export function padRight(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columnsOf(text)));
}

export function padLeft(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - columnsOf(text))) + text;
}

/**
 * Breaks at spaces, though not between a number and its unit; a word longer than the width stands alone and runs
 * over. Later lines start with `indent`.
 */
export function wrap(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  // The first line keeps the spaces it starts with.
  let line = '';
  for (const word of text.trimEnd().split(/(?<![\d ]|^) +/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && columnsOf(longer) > width) {
      lines.push(line);
      line = indent + word;
    } else {
      line = longer;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
