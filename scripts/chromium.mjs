/**
 * Finds a Chromium for the browser tests, in this order: the file named by CHROMIUM_PATH, one installed on the
 * machine, one that playwright-core downloaded, the one packed inside @sparticuz/chromium (linux on x64; it
 * needs no system packages). `node scripts/chromium.mjs` prints which one it is.
 */
import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { createBrotliDecompress } from 'node:zlib';

/** @typedef {{ executablePath: string, env: Record<string, string>, origin: string }} FoundBrowser */

const require = createRequire(import.meta.url);
const cacheFolder = fileURLToPath(new URL('../node_modules/.cache/tankful/', import.meta.url));

/** What Chromium needs to run as root, without a display or a graphics card, and without calling home. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** @returns {Promise<FoundBrowser>} */
export async function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (existsSync(named)) return found(named, 'CHROMIUM_PATH');
    throw new Error(`CHROMIUM_PATH - expected the path of a Chromium - got "${named}", which is not there.`);
  }
  const installed = installedPlaces().find(existsSync);
  if (installed) return found(installed, 'installed');
  const { chromium } = await import('playwright-core');
  const downloaded = chromium.executablePath();
  if (downloaded && existsSync(downloaded)) return found(downloaded, 'downloaded by playwright-core');
  if (process.platform === 'linux' && process.arch === 'x64') return packagedChromium();
  throw new Error(
    'Browser tests - expected a Chromium (CHROMIUM_PATH, installed, or downloaded) - found none. ' +
      'Run: npx playwright-core install chromium',
  );
}

/**
 * @param {string} executablePath
 * @param {string} origin
 * @returns {FoundBrowser}
 */
function found(executablePath, origin) {
  return { executablePath, env: ownEnvironment(), origin };
}

function ownEnvironment() {
  /** @type {Record<string, string>} */
  const env = {};
  for (const [name, value] of Object.entries(process.env)) if (value !== undefined) env[name] = value;
  return env;
}

function installedPlaces() {
  if (process.platform === 'darwin') {
    return ['Chromium.app/Contents/MacOS/Chromium', 'Google Chrome.app/Contents/MacOS/Google Chrome'].map(
      (app) => join('/Applications', app),
    );
  }
  if (process.platform === 'win32') {
    return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'));
  }
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** @returns {Promise<FoundBrowser>} */
async function packagedChromium() {
  const packageRoot = join(dirname(require.resolve('@sparticuz/chromium')), '..', '..');
  const { version } = require(join(packageRoot, 'package.json'));
  const folder = join(cacheFolder, `chromium-${version}`);
  if (!existsSync(folder)) await unpack(join(packageRoot, 'bin'), folder);
  const env = ownEnvironment();
  env.LD_LIBRARY_PATH = [join(folder, 'al2023', 'lib'), env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter);
  // Without any font on the machine no text is drawn at all.
  if (!existsSync('/etc/fonts/fonts.conf')) env.FONTCONFIG_PATH ??= join(folder, 'fonts');
  return { executablePath: join(folder, 'chromium'), env, origin: `packaged ${version}` };
}

/**
 * Unpacks beside the target and renames at the end: two callers at once must never run a half-written file.
 * @param {string} packed
 * @param {string} folder
 */
async function unpack(packed, folder) {
  mkdirSync(cacheFolder, { recursive: true });
  const staging = mkdtempSync(`${folder}.part-`);
  try {
    await Promise.all([
      pipeline(
        createReadStream(join(packed, 'chromium.br')),
        createBrotliDecompress(),
        createWriteStream(join(staging, 'chromium'), { mode: 0o755 }),
      ),
      unpackArchive(join(packed, 'al2023.tar.br'), join(staging, 'al2023')),
      unpackArchive(join(packed, 'fonts.tar.br'), join(staging, 'fonts')),
    ]);
    renameSync(staging, folder);
  } catch (error) {
    rmSync(staging, { recursive: true, force: true });
    // Another process may have been first: its folder is complete, because it too was renamed.
    if (!existsSync(folder)) throw error;
  }
}

/**
 * @param {string} file
 * @param {string} folder
 */
async function unpackArchive(file, folder) {
  // tar-fs comes with the packed browser: resolved from there, since it is no dependency of ours.
  const { extract } = createRequire(require.resolve('@sparticuz/chromium'))('tar-fs');
  await pipeline(createReadStream(file), createBrotliDecompress(), extract(folder));
  if (readdirSync(folder).length === 0) throw new Error(`${file} - expected files inside - got none.`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { executablePath, origin } = await findChromium();
  process.stdout.write(`${executablePath} (${origin})\n`);
}
