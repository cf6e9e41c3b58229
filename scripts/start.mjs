/**
 * `npm start`: sets up, builds the page if it is older than its sources, serves it and opens the browser.
 * It serves the built page rather than a development server: that is the page the browser tests look at, it
 * opens at once, and nothing is compiled while a run computes. `npm run dev` is the other one.
 *
 * `--no-open` only prints the address, as does a machine without a display or with CI set; `--port N` asks for a
 * port (default 5180). A port in use gives way to the next free one.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { setUp } from './set-up.mjs';

const words = process.argv.slice(2);
const port = wantedPort();
setUp();
const { ensureBuilt, root } = await import('./build.mjs');
await ensureBuilt('page');
const { preview } = await import('vite');
const server = await preview({
  root: join(root, 'ui/web'),
  configFile: join(root, 'vite.config.ts'),
  logLevel: 'error',
  preview: { host: '127.0.0.1', port, open: false },
});
const url = server.resolvedUrls?.local[0] ?? '';
process.stdout.write(`Tankful is at ${url} (stop with Ctrl+C)\n`);
if (mayOpen()) openBrowser(url);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));

function wantedPort() {
  const at = words.indexOf('--port');
  if (at < 0) return 5180;
  const number = Number(words[at + 1]);
  if (Number.isInteger(number) && number >= 1 && number <= 65_535) return number;
  process.stderr.write(
    `--port - expected a whole number from 1 to 65535 - got ${words[at + 1] ?? 'nothing'}.\n`,
  );
  process.exit(2);
}

function mayOpen() {
  if (words.includes('--no-open') || process.env.CI) return false;
  if (process.platform === 'darwin' || process.platform === 'win32') return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** @param {string} address */
function openBrowser(address) {
  const [command, ...before] = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] }[
    String(process.platform)
  ] ?? ['xdg-open'];
  const opener = spawn(command, [...before, address], { detached: true, stdio: 'ignore' });
  // The address is printed already: without an opener a person still gets there.
  opener.on('error', () => {});
  opener.unref();
}
