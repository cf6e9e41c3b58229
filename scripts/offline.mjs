/**
 * The part of the page's build that lets the page open without a network: once every file is written, it lists them
 * with their hashes and builds the keeper (ui/web/offline/keep.ts) that takes them in.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const keeper = fileURLToPath(new URL('../ui/web/offline/keep.ts', import.meta.url));
const keeperName = 'offline.js';

/** @returns {import('vite').Plugin} */
export function offline() {
  return {
    name: 'offline',
    apply: 'build',
    writeBundle: async ({ dir = '' }) => writeKeeper(dir),
  };
}

/**
 * Writes the keeper of a folder's files beside them.
 * @param {string} folder
 */
export async function writeKeeper(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== keeperName)
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  const hashes = Object.fromEntries(files.map((file) => [addressOf(relative(folder, file)), hashOf(file)]));
  const version = createHash('sha256').update(JSON.stringify(hashes)).digest('hex').slice(0, 16);
  const made = /** @type {import('vite').Rollup.RollupOutput[]} */ (
    await build({
      configFile: false,
      logLevel: 'error',
      publicDir: false,
      define: { BUILT_FILES: JSON.stringify(hashes), BUILT_VERSION: JSON.stringify(version) },
      build: {
        write: false,
        target: 'es2022',
        lib: { entry: keeper, formats: ['iife'], name: 'keeper' },
      },
    })
  );
  writeFileSync(join(folder, keeperName), made[0].output[0].code);
}

/**
 * Where the file is asked for, below the page's folder; the page itself is the folder.
 * @param {string} path
 */
function addressOf(path) {
  return path === 'index.html' ? '' : path.split(sep).join('/');
}

/** @param {string} file */
function hashOf(file) {
  return createHash('sha256').update(readFileSync(file)).digest('base64');
}
