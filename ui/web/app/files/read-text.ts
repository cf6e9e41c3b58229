/** The text of a file that a person chose or dropped: looked at before it is read, and told apart by its bytes. */
import type { Problem } from '../../../../sim/index.ts';
import { fileWords, sizeWords } from '../../../words/index.ts';

/** What is used of a browser's `File`. */
export interface FileLike {
  name: string;
  size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

export type ReadText =
  /** `as`: the encoding, where it was another than UTF-8. */
  { ok: true; text: string; as: string | null } | { ok: false; problems: Problem[] };

/** As in the terminal [bytes]: a design is text of a few thousand letters, a year of weather of two million. */
export const mostBytes = { design: 1_048_576, table: 33_554_432 };

/** Never throws, and reads nothing of a file that is too long. */
export async function readText(file: FileLike): Promise<ReadText> {
  const { name, size } = file;
  const refuse = (why: Omit<Problem, 'path'>): ReadText => ({
    ok: false,
    problems: [{ path: name, ...why }],
  });
  const most = isDesignName(name) ? mostBytes.design : mostBytes.table;
  if (size > most) return refuse(fileWords.long(sizeWords(most), sizeWords(size)));
  if (size === 0) return refuse(fileWords.empty);
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    // A folder, or a file that was moved or changed after it was chosen.
    return refuse(fileWords.unreadable);
  }
  const other = otherKind(bytes);
  if (other) return refuse(fileWords.otherKind(other));
  const read = decoded(bytes);
  return read ? { ok: true, ...read } : refuse(fileWords.noText);
}

export function isDesignName(name: string): boolean {
  return /\.json$/i.test(name);
}

/** Files of other kinds by their first bytes. */
const kinds: [begins: number[], kind: 'zip' | 'pdf' | 'picture' | 'spreadsheet' | 'packed'][] = [
  [[0x50, 0x4b, 3, 4], 'zip'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'spreadsheet'],
  [[0x25, 0x50, 0x44, 0x46], 'pdf'],
  [[0x89, 0x50, 0x4e, 0x47], 'picture'],
  [[0xff, 0xd8, 0xff], 'picture'],
  [[0x1f, 0x8b], 'packed'],
];

function otherKind(bytes: Uint8Array) {
  return kinds.find(([begins]) => begins.every((byte, i) => bytes[i] === byte))?.[1] ?? null;
}

/** Share of zero bytes on one side of each pair from which on text counts as UTF-16 without a mark. */
const mostlyZero = 0.4;

/** Loggers and old spreadsheets write UTF-16 and Windows-1252, in which Latin letters of any text are the same. */
function decoded(bytes: Uint8Array): { text: string; as: string | null } | null {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return inEncoding(bytes, 'utf-16le', 'UTF-16');
  if (a === 0xfe && b === 0xff) return inEncoding(bytes, 'utf-16be', 'UTF-16');
  const zeros = [0, 0];
  for (let i = 0; i < bytes.length; i++) if (bytes[i] === 0) zeros[i % 2]++;
  if (zeros[0] + zeros[1] > 0) {
    const half = bytes.length / 2;
    if (zeros[1] > mostlyZero * half && zeros[0] === 0) return inEncoding(bytes, 'utf-16le', 'UTF-16');
    if (zeros[0] > mostlyZero * half && zeros[1] === 0) return inEncoding(bytes, 'utf-16be', 'UTF-16');
    return null;
  }
  return inEncoding(bytes, 'utf-8', null) ?? inEncoding(bytes, 'windows-1252', 'Windows-1252');
}

/** Without a byte order mark; null where the bytes are none of the encoding's. */
function inEncoding(bytes: Uint8Array, encoding: string, as: string | null) {
  try {
    return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes), as };
  } catch {
    return null;
  }
}
