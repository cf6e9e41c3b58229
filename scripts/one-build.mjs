/**
 * The part of the page's build that makes the worker a second entry of the same build instead of a build of its own:
 * what page and worker have in common is shipped once, and the page loads none of what only the worker needs.
 */
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { wordsAlias } from './words.mjs';

export const worker = fileURLToPath(new URL('../ui/web/worker/simulate.ts', import.meta.url));
/** As it stands in ui/web/main.ts, where a development server understands it too. */
const asWritten = "new URL('./worker/simulate.ts', import.meta.url)";

/** @returns {import('vite').Plugin} */
export function oneBuild() {
  let reference = '';
  /** Modules of the page: those it starts with, and those it may load later. */
  const page = { first: new Set(), later: new Set() };
  /** @type {Set<string>} */
  const ofWorker = new Set();
  const isFirst = (/** @type {string} */ id) =>
    page.first.has(id) || /rolldown\/runtime|node_modules\/(@lit\/|lit)/.test(id);
  /** What draws is common to the page's own pieces only: it would fail in a worker, which has no elements. */
  const isCommon = (/** @type {string} */ id) =>
    isFirst(id) && (ofWorker.has(id) || id.includes('rolldown/runtime'));
  return {
    name: 'one-build',
    apply: 'build',
    enforce: 'pre',
    config: () => ({
      build: {
        rolldownOptions: {
          output: {
            // Left to itself, whatever the two could reach through sim/index.ts would count as common.
            codeSplitting: {
              includeDependenciesRecursively: false,
              groups: [
                { name: 'common', test: isCommon, minShareCount: 2 },
                {
                  name: 'shared',
                  test: (id) => ofWorker.has(id) && page.later.has(id) && !isFirst(id),
                  tags: ['$initial'],
                },
                { name: 'work', test: (id) => ofWorker.has(id) && !isFirst(id), tags: ['$initial'] },
              ],
            },
          },
        },
      },
    }),
    async buildStart() {
      Object.assign(page, await modulesOfPage(this.environment.config.root));
      reference = this.emitFile({ type: 'chunk', id: worker, name: 'simulate' });
    },
    buildEnd() {
      const reach = (/** @type {string} */ id) => {
        if (ofWorker.has(id)) return;
        ofWorker.add(id);
        for (const next of this.getModuleInfo(id)?.importedIds ?? []) reach(next);
      };
      reach(worker);
    },
    transform: (code) => withWorkerAt(code, `import.meta.ROLLUP_FILE_URL_${reference}`),
  };
}

/**
 * What the page itself uses, by a build of it without the worker.
 * @param {string} root
 */
async function modulesOfPage(root) {
  /** @type {Set<string>} */
  const first = new Set();
  /** @type {Set<string>} */
  const later = new Set();
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    resolve: { alias: wordsAlias() },
    build: { write: false, minify: false, target: 'es2022' },
    plugins: [
      {
        name: 'page-alone',
        enforce: 'pre',
        transform: (code) => withWorkerAt(code, "''"),
        generateBundle(_, bundle) {
          const take = (/** @type {string} */ fileName, /** @type {Set<string>} */ used) => {
            const chunk = bundle[fileName];
            if (chunk?.type !== 'chunk') return;
            for (const [id, { renderedLength }] of Object.entries(chunk.modules)) {
              if (renderedLength > 0) used.add(id);
            }
            for (const next of chunk.imports) take(next, used);
          };
          for (const chunk of Object.values(bundle)) {
            if (chunk.type === 'chunk') take(chunk.fileName, chunk.isEntry ? first : later);
          }
        },
      },
    ],
  });
  return { first, later };
}

/**
 * The page's code with another address of its worker.
 * @param {string} code
 * @param {string} address
 */
export function withWorkerAt(code, address) {
  return code.includes(asWritten) ? { code: code.replace(asWritten, () => address), map: null } : null;
}
