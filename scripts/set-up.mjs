/**
 * Makes a fresh clone ready: checks Node, and installs the pinned packages when they are not the lockfile's.
 * Built-in modules only, here and in whatever runs before it.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const marker = join(root, 'node_modules/.cache/tankful/installed');

/** Lowest Node that runs the tools; package.json says the same in `engines`. */
const LOWEST = [20, 19];

/** Ends the process with one sentence if something cannot be made ready. */
export function setUp() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < LOWEST[0] || (major === LOWEST[0] && minor < LOWEST[1])) {
    give(
      `Node - expected ${LOWEST.join('.')} or newer - got ${process.versions.node} - install a newer Node.`,
    );
  }
  const lockfile = readFileSync(join(root, 'package-lock.json'));
  const wanted = createHash('sha256').update(lockfile).digest('hex');
  if (existsSync(marker) && readFileSync(marker, 'utf8') === wanted) return;
  if (!holdsLockedVersions(JSON.parse(lockfile.toString('utf8')))) install();
  mkdirSync(dirname(marker), { recursive: true });
  writeFileSync(marker, wanted);
}

/**
 * Somebody may have run `npm install` by hand; npm's own record of what it put in place is then as good as ours.
 * @param {{ packages: Record<string, { version?: string, optional?: boolean }> }} lockfile
 */
function holdsLockedVersions(lockfile) {
  const record = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(record)) return false;
  const installed = JSON.parse(readFileSync(record, 'utf8')).packages;
  return Object.entries(lockfile.packages).every(
    ([path, { version, optional }]) => path === '' || optional || installed[path]?.version === version,
  );
}

function install() {
  process.stderr.write('Installing the pinned packages (npm ci) ...\n');
  const words = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const npm = process.env.npm_execpath;
  // Standard output (1) is kept for the program that asked; npm speaks on standard error (2).
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = { cwd: root, stdio: ['ignore', 2, 2] };
  const { status, error } = npm?.endsWith('npm-cli.js')
    ? spawnSync(process.execPath, [npm, ...words], options)
    : spawnSync('npm', words, { ...options, shell: process.platform === 'win32' });
  if (status !== 0) {
    const reason = error ? error.message : `npm ci ended with ${status}`;
    give(
      `Set-up - expected npm to install the pinned packages - ${reason} - check the network and try again.`,
    );
  }
}

/** @param {string} sentence */
function give(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}
