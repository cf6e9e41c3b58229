/** The page in another language, made by machine: every text of the catalogue stands in marks. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';
import { root } from '../../../scripts/build.mjs';
import * as words from '../../../ui/words/index.ts';

const catalogue = join(root, 'ui/words/index.ts');
const marks = join(root, 'tests/browser/support/marked.ts');
const other = '\0other-language';

/** What ui/words gives for reckoning rather than for reading. */
const notForReading = ['systemOf', 'quantityText', 'inColumn', 'isCaution', 'numberFormat', 'dateFormat'];

function otherLanguage(): Plugin {
  return {
    name: 'other-language',
    enforce: 'pre',
    resolveId: (source, importer) => (source.endsWith('words/index.ts') && importer !== other ? other : null),
    load(id) {
      if (id !== other) return null;
      const names = Object.keys(words);
      const lines = names.map((name) =>
        notForReading.includes(name)
          ? `export const ${name} = own.${name};`
          : `export const ${name} = marked(own.${name});`,
      );
      return [
        `import * as own from ${JSON.stringify(catalogue)};`,
        `import { marked } from ${JSON.stringify(marks)};`,
        ...lines,
      ].join('\n');
    },
  };
}

/** Builds the page in one file with marked words; gives its path. */
export async function buildMarked(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'tankful-marked-'));
  await build({
    configFile: join(root, 'vite.single.config.ts'),
    root: join(root, 'ui/web'),
    logLevel: 'error',
    plugins: [otherLanguage()],
    build: { outDir, emptyOutDir: true },
  });
  return join(outDir, 'index.html');
}
