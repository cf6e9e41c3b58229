/** Reading and writing files, with the reasons a person can act on when it fails. */
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Refusal, refuse } from './refusal.ts';

export interface FileKind {
  /** As in "a scenario file". */
  what: string;
  mostBytes: number;
}

const megabyte = 1024 * 1024;
export const scenarioFile: FileKind = { what: 'a scenario file (JSON text)', mostBytes: megabyte };
export const weatherFile: FileKind = { what: 'a weather file (CSV text)', mostBytes: 32 * megabyte };

/** The text of a file, without a byte order mark. Throws a Refusal. */
export function readText(path: string, kind: FileKind): string {
  let bytes: Buffer;
  try {
    const about = statSync(path);
    const { size } = about;
    // Looked at before reading: a device or a film would not end soon.
    if (!about.isFile() && !about.isDirectory() && !about.isFIFO()) {
      throw refuse(path, kind.what, 'a device', 'choose a file');
    }
    if (size > kind.mostBytes) {
      throw refuse(
        path,
        `${kind.what} of at most ${inMB(kind.mostBytes)}`,
        inMB(size),
        'choose another file',
      );
    }
    bytes = readFileSync(path);
  } catch (error) {
    throw refusalOf(error, path, kind.what, 'check the path');
  }
  return decoded(bytes, path, kind);
}

function decoded(bytes: Buffer, path: string, kind: FileKind): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw refuse(path, `${kind.what} in UTF-8`, 'UTF-16', 'save it again as UTF-8');
  }
  if (bytes.includes(0)) {
    throw refuse(path, kind.what, 'binary data', 'choose the text file');
  }
  try {
    // The decoder drops a byte order mark itself.
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refuse(path, `${kind.what} in UTF-8`, 'bytes that are no UTF-8', 'save it again as UTF-8');
  }
}

/** Writes `files` by name into `folder`, which is made if need be; gives their paths. Throws a Refusal. */
export function writeAll(folder: string, files: Record<string, string>): string[] {
  const paths: string[] = [];
  try {
    mkdirSync(folder, { recursive: true });
    for (const [name, text] of Object.entries(files)) {
      const path = join(folder, name);
      writeFileSync(path, text);
      paths.push(path);
    }
  } catch (error) {
    throw refusalOf(error, folder, 'a folder to write into', 'choose another folder');
  }
  return paths;
}

const reasons: Record<string, string> = {
  ENOENT: 'no such file',
  ENOTDIR: 'a path through something that is no folder',
  EISDIR: 'a folder',
  EEXIST: 'a file of that name',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'a place that cannot be written to',
  ENOSPC: 'no room left on the disk',
  ENAMETOOLONG: 'a name too long for the disk',
  ELOOP: 'links that lead round in a circle',
};

function refusalOf(error: unknown, path: string, expected: string, fix: string): unknown | Refusal {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return code in reasons ? refuse(path, expected, reasons[code], fix) : error;
}

function inMB(bytes: number): string {
  return `${(bytes / megabyte).toFixed(1)} MB`;
}
