/**
 * The part of the page's build that puts the solved opening scenario into index.html. Solving takes seconds, so the
 * result is kept below node_modules/.cache until something it comes from has changed.
 */
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';
import { otherWords, wordsAlias } from './words.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const cache = join(root, 'node_modules/.cache/tankful/solved');
const sources = [
  'sim',
  'scenarios',
  'ui/words',
  'ui/web/build',
  'ui/web/app/built-in.ts',
  'ui/web/app/packed.ts',
];

/** @returns {import('vite').Plugin} */
export function builtIn() {
  return {
    name: 'built-in',
    apply: 'build',
    async transformIndexHtml() {
      return [
        {
          tag: 'script',
          attrs: { type: 'application/json', id: 'built-in' },
          // The one character that could end the element early.
          children: (await solved()).replaceAll('<', '\\u003c'),
          injectTo: 'body-prepend',
        },
      ];
    },
  };
}

/** @returns {Promise<string>} */
async function solved() {
  const hash = createHash('sha256');
  const words = otherWords();
  for (const source of [...sources.map((each) => join(root, each)), ...(words === null ? [] : [words])])
    for (const file of filesBelow(source)) hash.update(readFileSync(file));
  // One of each language.
  const own = join(cache, words === null ? 'own' : createHash('sha256').update(words).digest('hex'));
  const kept = join(own, `${hash.digest('hex')}.json`);
  if (existsSync(kept)) return readFileSync(kept, 'utf8');
  const text = await solve();
  rmSync(own, { recursive: true, force: true });
  mkdirSync(own, { recursive: true });
  writeFileSync(kept, text);
  return text;
}

/**
 * Node runs no TypeScript: what solves the scenario is built first.
 * @returns {Promise<string>}
 */
async function solve() {
  const folder = mkdtempSync(join(tmpdir(), 'tankful-solve-'));
  try {
    await build({
      root,
      configFile: false,
      publicDir: false,
      logLevel: 'warn',
      resolve: { alias: wordsAlias() },
      ssr: { noExternal: true },
      build: {
        ssr: 'ui/web/build/solve-demo.ts',
        outDir: folder,
        emptyOutDir: true,
        target: 'node20',
        rolldownOptions: { output: { entryFileNames: 'solve.mjs', codeSplitting: false } },
      },
    });
    const { solveDemo } = await import(pathToFileURL(join(folder, 'solve.mjs')).href);
    return await solveDemo();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesBelow(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesBelow(join(path, name)));
}
