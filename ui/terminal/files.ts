/** Reading and writing files, with the reasons a person can act on when it fails. */
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileReasons, fixed, terminalFileWords } from '../words/index.ts';
import { type Refusal, refuse } from './refusal.ts';

export interface FileKind {
  /** As in "a scenario file". */
  what: string;
  mostBytes: number;
}

const megabyte = 1024 * 1024;
export const scenarioFile: FileKind = { what: terminalFileWords.scenario, mostBytes: megabyte };
export const weatherFile: FileKind = { what: terminalFileWords.weather, mostBytes: 32 * megabyte };

/** The text of a file, without a byte order mark. Throws a Refusal. */
export function readText(path: string, kind: FileKind): string {
  let bytes: Buffer;
  try {
    const about = statSync(path);
    const { size } = about;
    // Looked at before reading: a device or a film would not end soon.
    if (!about.isFile() && !about.isDirectory() && !about.isFIFO()) {
      throw refuse(path, kind.what, terminalFileWords.device.got, terminalFileWords.device.fix);
    }
    if (size > kind.mostBytes) {
      throw refuse(
        path,
        terminalFileWords.long.expected(kind.what, inMB(kind.mostBytes)),
        inMB(size),
        terminalFileWords.long.fix,
      );
    }
    bytes = readFileSync(path);
  } catch (error) {
    throw refusalOf(error, path, kind.what, terminalFileWords.path);
  }
  return decoded(bytes, path, kind);
}

function decoded(bytes: Buffer, path: string, kind: FileKind): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw refuse(
      path,
      terminalFileWords.utf8(kind.what),
      terminalFileWords.utf16,
      terminalFileWords.saveAgain,
    );
  }
  if (bytes.includes(0)) {
    throw refuse(path, kind.what, terminalFileWords.binary.got, terminalFileWords.binary.fix);
  }
  try {
    // The decoder drops a byte order mark itself.
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refuse(
      path,
      terminalFileWords.utf8(kind.what),
      terminalFileWords.noUtf8,
      terminalFileWords.saveAgain,
    );
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
    throw refusalOf(error, folder, terminalFileWords.folder.expected, terminalFileWords.folder.fix);
  }
  return paths;
}

function refusalOf(error: unknown, path: string, expected: string, fix: string): unknown | Refusal {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return Object.hasOwn(fileReasons, code) ? refuse(path, expected, fileReasons[code], fix) : error;
}

function inMB(bytes: number): string {
  return `${fixed(bytes / megabyte, 1)} MB`;
}
