/**
 * The part of the page's build that makes the worker a second entry of the same build instead of a build of its own:
 * what page and worker have in common is shipped once, and the page loads none of what only the worker needs.
 */
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const worker = fileURLToPath(new URL('../ui/web/worker/simulate.ts', import.meta.url));
/** As it stands in ui/web/main.ts, where a development server understands it too. */
const asWritten = "new URL('./worker/simulate.ts', import.meta.url)";

/** @returns {import('vite').Plugin} */
export function oneBuild() {
  let reference = '';
  /** @type {Set<string>} */
  let ofPage = new Set();
  /** @type {Set<string>} */
  const ofWorker = new Set();
  const isOfPage = (/** @type {string} */ id) => ofPage.has(id) || id.includes('rolldown/runtime');
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
                { name: 'common', test: isOfPage, minShareCount: 2 },
                { name: 'work', test: (id) => ofWorker.has(id) && !isOfPage(id), tags: ['$initial'] },
              ],
            },
          },
        },
      },
    }),
    async buildStart() {
      ofPage = await modulesOfPage(this.environment.config.root);
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
 * What the page uses itself, by a build of it without the worker.
 * @param {string} root
 * @returns {Promise<Set<string>>}
 */
async function modulesOfPage(root) {
  /** @type {Set<string>} */
  const used = new Set();
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: { write: false, minify: false, target: 'es2022' },
    plugins: [
      {
        name: 'page-alone',
        enforce: 'pre',
        transform: (code) => withWorkerAt(code, "''"),
        generateBundle(_, bundle) {
          for (const chunk of Object.values(bundle)) {
            if (chunk.type !== 'chunk') continue;
            for (const [id, { renderedLength }] of Object.entries(chunk.modules)) {
              if (renderedLength > 0) used.add(id);
            }
          }
        },
      },
    ],
  });
  return used;
}

/**
 * @param {string} code
 * @param {string} address
 */
function withWorkerAt(code, address) {
  return code.includes(asWritten) ? { code: code.replace(asWritten, address), map: null } : null;
}
