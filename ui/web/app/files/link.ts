/**
 * A whole design as the fragment of an address, which no server ever sees: its JSON, names shortened, compressed, in
 * letters that may stand in an address. `#d=1` says in which form, four letters check that nothing was lost on the way.
 */
import { type Problem, parseJsonText } from '../../../../sim/index.ts';
import { linkWords } from '../../../words/index.ts';
import { linkMark } from './link-mark.ts';
import { linkNames } from './link-names.ts';

const form = '1';

/** More than this is not inflated [bytes]: no design is as long, and a few bytes may claim to be gigabytes. */
export const mostInflated = 65_536;
/** Letters of the most that such a design could take, were it not compressible at all. */
const mostLetters = Math.ceil((mostInflated * 4) / 3) + 100;
/** A piece of so many bytes inflates to a thousand times as much at most. */
const piece = 64;

export type ReadLink = { ok: true; json: unknown } | { ok: false; problems: Problem[] };

/** The fragment for a design, `#` and all. Files that it names are not in it. */
export async function linkOf(scenario: object): Promise<string> {
  const bytes = shortened(JSON.stringify(scenario));
  const packed = await through(bytes, new CompressionStream('deflate-raw'), Number.POSITIVE_INFINITY);
  if (packed === null) throw new Error('link - expected bytes - got too many - report this');
  return `${linkMark}${form}${check(bytes)}${lettersOf(packed)}`;
}

/** The design in a fragment, as JSON that is still to be checked; or why there is none. Never throws. */
export async function readLink(fragment: string): Promise<ReadLink> {
  const refuse = (why: { expected: string; got: string; fix: string }): ReadLink => ({
    ok: false,
    problems: [{ path: linkWords.where, ...why }],
  });
  const text = fragment.slice(linkMark.length);
  if (!fragment.startsWith(linkMark) || text === '') return refuse(linkWords.empty);
  if (text.length > mostLetters) return refuse(linkWords.long(text.length, mostLetters));
  if (text[0] !== form) return refuse(linkWords.form(text[0]));
  const packed = bytesOf(text.slice(5));
  if (packed === null) return refuse(linkWords.letters);
  let bytes: Uint8Array | null;
  try {
    bytes = await through(packed, new DecompressionStream('deflate-raw'), mostInflated);
  } catch {
    return refuse(linkWords.cut);
  }
  if (bytes === null) return refuse(linkWords.bomb(mostInflated));
  if (check(bytes) !== text.slice(1, 5)) return refuse(linkWords.changed);
  const json = spelledOut(bytes);
  return json === null ? refuse(linkWords.changed) : parseJsonText(json);
}

const keyOf = (name: string) => `"${name}":`;

/** Names of keys become single bytes that JSON in plain ASCII leaves free: those over 127 and those under 32. */
function codeOf(index: number): number {
  return index < 128 ? 128 + index : index - 127;
}

function shortened(json: string): Uint8Array<ArrayBuffer> {
  let text = json.replace(/[\u007f-\uffff]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
  for (const [i, name] of linkNames.entries()) {
    text = text.replaceAll(keyOf(name), String.fromCharCode(codeOf(i)));
  }
  return Uint8Array.from(text, (c) => c.charCodeAt(0));
}

/** Null where a byte stands for nothing. */
function spelledOut(bytes: Uint8Array): string | null {
  let text = '';
  for (const byte of bytes) {
    if (byte >= 32 && byte < 128) text += String.fromCharCode(byte);
    else {
      const name = linkNames[byte < 32 ? byte + 127 : byte - 128];
      if (name === undefined || byte === 0) return null;
      text += keyOf(name);
    }
  }
  return text;
}

/** All that comes out of a stream; null as soon as it is more than `most` bytes. Rejects on what it cannot read. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  let at = 0;
  // In pieces, each only when the last has been looked at: a stream gives out all that one piece holds.
  const source = new ReadableStream<Uint8Array<ArrayBuffer>>(
    {
      pull(to) {
        if (at >= bytes.length) return to.close();
        to.enqueue(bytes.slice(at, at + piece));
        at += piece;
      },
    },
    { highWaterMark: 0 },
  );
  const reader = source.pipeThrough(stream).getReader();
  const found: Uint8Array[] = [];
  let length = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length;
    if (length > most) {
      await reader.cancel();
      return null;
    }
    found.push(next.value);
  }
  const all = new Uint8Array(length);
  let to = 0;
  for (const each of found) {
    all.set(each, to);
    to += each.length;
  }
  return all;
}

/** Four letters by all bytes (FNV-1a, folded to 24 bits). */
function check(bytes: Uint8Array): string {
  let hash = 0x811c9dc5;
  for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193);
  const folded = (hash ^ (hash >>> 24)) & 0xffffff;
  return lettersOf(Uint8Array.of(folded >> 16, (folded >> 8) & 255, folded & 255));
}

/** base64url (RFC 4648, section 5), without padding. */
function lettersOf(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** Null where a letter is none of base64url's. */
function bytesOf(letters: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]*$/.test(letters) || letters.length % 4 === 1) return null;
  return Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0));
}
