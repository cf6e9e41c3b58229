/**
 * Builds the page (dist/web), the page in one file (dist/tankful.html) or the terminal program (dist/tankful.mjs) when
 * what is there is older than its sources. `node scripts/build.mjs [page|single|terminal] [--force]`; without a name, all.
 */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * `made` dates the last build; `sources` are files and folders whose newest change decides. A build fills a
 * staging folder, in which `builds` then takes the place of `replaces`.
 */
const targets = {
  page: {
    called: 'page',
    made: 'dist/web/index.html',
    replaces: 'dist/web',
    builds: '.',
    root: 'ui/web',
    config: 'vite.config.ts',
    sources: [
      'sim',
      'scenarios',
      'ui/words',
      'ui/web',
      'scripts/built-in.mjs',
      'scripts/offline.mjs',
      'scripts/one-build.mjs',
      'scripts/policy.mjs',
      'vite.config.ts',
      'package-lock.json',
      'tsconfig.json',
    ],
  },
  single: {
    called: 'page in one file',
    made: 'dist/tankful.html',
    replaces: 'dist/tankful.html',
    builds: 'index.html',
    root: 'ui/web',
    config: 'vite.single.config.ts',
    sources: [
      'sim',
      'scenarios',
      'ui/words',
      'ui/web',
      'scripts/built-in.mjs',
      'scripts/one-build.mjs',
      'scripts/policy.mjs',
      'scripts/single-file.mjs',
      'vite.single.config.ts',
      'package-lock.json',
      'tsconfig.json',
    ],
  },
  terminal: {
    called: 'terminal program',
    made: 'dist/tankful.mjs',
    replaces: 'dist/tankful.mjs',
    builds: 'tankful.mjs',
    root: '.',
    config: 'vite.terminal.config.ts',
    sources: [
      'sim',
      'scenarios',
      'ui/words',
      'ui/terminal',
      'vite.terminal.config.ts',
      'package-lock.json',
      'tsconfig.json',
    ],
  },
};

/** @typedef {keyof typeof targets} Target */

/**
 * @param {Target} name
 * @returns {boolean}
 */
export function isStale(name) {
  const { made, sources } = targets[name];
  const file = join(root, made);
  if (!existsSync(file)) return true;
  const madeAt = statSync(file).mtimeMs;
  return sources.some((source) => newestChange(join(root, source)) > madeAt);
}

/**
 * @param {string} path
 * @returns {number} milliseconds; a folder's own time counts too, since a removed file changes only that
 */
function newestChange(path) {
  if (!existsSync(path)) return 0;
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  return Math.max(mtimeMs, ...readdirSync(path).map((name) => newestChange(join(path, name))));
}

/**
 * Builds if needed; says so on standard error only, since a program's own output may follow on standard output.
 * @param {Target} name
 * @param {{ force?: boolean }} [options]
 */
export async function ensureBuilt(name, { force = false } = {}) {
  if (!force && !isStale(name)) return;
  process.stderr.write(`Building the ${targets[name].called} ...\n`);
  const { build } = await import('vite');
  const startedAt = new Date();
  mkdirSync(join(root, 'dist'), { recursive: true });
  const staging = mkdtempSync(join(root, 'dist', `.${name}-`));
  // A test runner names its own: libraries would then come in their slower form for developers.
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  try {
    await build({
      root: join(root, targets[name].root),
      configFile: join(root, targets[name].config),
      logLevel: 'warn',
      build: { outDir: join(staging, 'new'), emptyOutDir: true },
    });
    replace(
      join(staging, 'new', targets[name].builds),
      join(root, targets[name].replaces),
      join(staging, 'old'),
    );
    // A source saved while the build ran must count as newer than what was built.
    utimesSync(join(root, targets[name].made), startedAt, startedAt);
  } finally {
    if (NODE_ENV === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = NODE_ENV;
    rmSync(staging, { recursive: true, force: true });
  }
}

/**
 * The old stays until the new is whole, since another process may be running or serving it. A file is replaced in one
 * go; a folder has to be moved aside first.
 * @param {string} fresh
 * @param {string} place
 * @param {string} aside
 */
function replace(fresh, place, aside) {
  if (existsSync(place) && statSync(place).isDirectory()) renameSync(place, aside);
  renameSync(fresh, place);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const words = process.argv.slice(2);
  const names = words.filter((word) => !word.startsWith('--'));
  const unknown = names.filter((name) => !(name in targets));
  if (unknown.length > 0) {
    process.stderr.write(`build - expected page, single or terminal - got ${unknown.join(', ')}.\n`);
    process.exit(2);
  }
  const chosen = /** @type {Target[]} */ (names.length > 0 ? names : Object.keys(targets));
  for (const name of chosen) await ensureBuilt(name, { force: words.includes('--force') });
}
