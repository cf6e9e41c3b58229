/**
 * The build that puts the whole page into one file, to be opened from a disk or a stick: its code, what it loads later
 * and its styles stand in the file, the workers' code as text in the page's, to become an address of its own (`blob:`).
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { withWorkerAt, worker } from './one-build.mjs';
import { policyOfSingleFile, policyTag } from './policy.mjs';
import { wordsAlias } from './words.mjs';

/** @returns {import('vite').Plugin} */
export function singleFile() {
  let address = '';
  return {
    name: 'single-file',
    apply: 'build',
    enforce: 'pre',
    config: () => ({
      build: {
        modulePreload: false,
        // Size is told in kilobytes of a download that does not happen.
        chunkSizeWarningLimit: Number.POSITIVE_INFINITY,
        rolldownOptions: { output: { codeSplitting: false } },
      },
    }),
    async buildStart() {
      const code = JSON.stringify(await codeOfWorker());
      address = `URL.createObjectURL(new Blob([${code}], { type: 'text/javascript' }))`;
    },
    // Opened from a disk, a browser starts plain scripts only as workers, not modules.
    transform(code) {
      const moved = withWorkerAt(code, address);
      return moved && { ...moved, code: moved.code.replace("{ type: 'module' }", '{}') };
    },
    writeBundle: ({ dir = '' }) => gather(dir),
  };
}

/** The workers' code, in one piece too. */
async function codeOfWorker() {
  const made = /** @type {import('vite').Rollup.RollupOutput[]} */ (
    await build({
      configFile: false,
      logLevel: 'error',
      publicDir: false,
      resolve: { alias: wordsAlias() },
      build: {
        write: false,
        target: 'es2022',
        lib: { entry: worker, formats: ['iife'], name: 'work' },
        rolldownOptions: { output: { codeSplitting: false } },
      },
    })
  );
  if (made[0].output.length > 1) throw new Error('The workers’ code - expected one piece - got more.');
  return made[0].output[0].code;
}

/**
 * Puts what index.html asks for into it, and the policy that lets exactly this in.
 * @param {string} folder
 */
function gather(folder) {
  const names = readdirSync(join(folder, 'assets'));
  const piece = (/** @type {string} */ ending) => {
    const found = names.filter((name) => name.endsWith(ending));
    if (found.length !== 1)
      throw new Error(`One file - expected one piece "*${ending}" - got ${found.length}.`);
    return readFileSync(join(folder, 'assets', found[0]), 'utf8').trim();
  };
  const [script, style] = [withinScript(piece('.js')), piece('.css')];
  const icon = readFileSync(join(folder, 'icon.svg')).toString('base64');
  const page = readFileSync(join(folder, 'index.html'), 'utf8')
    .replace('<head>', `<head>\n    ${policyTag(policyOfSingleFile(hashOf(script), hashOf(style)))}`)
    .replaceAll(/\s*<link [^>]*rel="(manifest|apple-touch-icon|stylesheet)"[^>]*>/g, '')
    .replaceAll(/\s*<script [^>]*src=[^>]*><\/script>/g, '')
    .replace('./icon.svg', `data:image/svg+xml;base64,${icon}`)
    // As functions: a dollar sign in the code would otherwise stand for something.
    .replace('</head>', () => `<style>${style}</style></head>`)
    .replace('</body>', () => `<script type="module">${script}</script></body>`);
  const left = /(?:src|href)="(?!data:)[^"]*"/.exec(page.replace(script, ''));
  if (left) throw new Error(`One file - expected no other file to be asked for - got ${left[0]}.`);
  writeFileSync(join(folder, 'index.html'), page);
}

/**
 * What would end the element early, or begin a comment in it, is spelled otherwise; strings and patterns stay the same.
 * @param {string} code
 */
function withinScript(code) {
  return code.replaceAll(/<(?=\/script)/gi, '\\x3c').replaceAll('<!--', '\\x3c!--');
}

/** @param {string} text */
function hashOf(text) {
  return createHash('sha256').update(text).digest('base64');
}
