/** The page in a language made as a person would make one: the words copied and changed, the table of sim's texts beside them. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { build } from 'vite';
import { root } from '../../../scripts/build.mjs';
import * as words from '../../../ui/words/index.ts';
import { filesBelow } from '../../rules/support/sources.ts';

const marks = join(root, 'tests/browser/support/marked.ts');
const sim = join(root, 'sim/index.ts');

interface Language {
  name: string;
  /** As Intl names it. */
  locale: string;
  /** What sim says, beside what it says in this language. */
  texts?: Readonly<Record<string, string>>;
  /** All that ui/words says stands in marks. */
  marked?: boolean;
}

/** What ui/words gives for reckoning, or out of the table of sim's texts alone. */
const notForReading = [
  ...['systemOf', 'quantityText', 'inColumn', 'isCaution', 'numberFormat', 'dateFormat'],
  ...[
    'fromSim',
    'fileText',
    'nameText',
    'boxText',
    'typedText',
    'readTyped',
    'withPoint',
    'withDecimalSign',
    'inputName',
  ],
];

/** Builds the page in one file in another language; gives its path. */
export async function buildIn(language: Language): Promise<string> {
  // A place of its own that stays: what is solved for it is kept as well.
  const folder = join(root, 'node_modules/.cache/tankful', language.name);
  write(folder, language);
  const outDir = mkdtempSync(join(tmpdir(), 'tankful-language-'));
  process.env.TANKFUL_WORDS = relative(root, folder);
  try {
    await build({
      configFile: join(root, 'vite.single.config.ts'),
      root: join(root, 'ui/web'),
      logLevel: 'error',
      build: { outDir, emptyOutDir: true, minify: false },
    });
  } finally {
    delete process.env.TANKFUL_WORDS;
  }
  return join(outDir, 'index.html');
}

function write(folder: string, { locale, texts, marked = false }: Language): void {
  rmSync(folder, { recursive: true, force: true });
  cpSync(join(root, 'ui/words'), folder, { recursive: true });
  const change = (path: string, by: (text: string) => string) =>
    writeFileSync(join(folder, path), by(readFileSync(join(folder, path), 'utf8')));
  for (const path of filesBelow('ui/words'))
    change(relative('ui/words', path), (text) =>
      text.replace(/'(?:\.\.\/)+sim\/index\.ts'/g, JSON.stringify(sim)),
    );
  change('locale.ts', (text) => text.replace("'en-US'", JSON.stringify(locale)));
  if (texts)
    writeFileSync(join(folder, 'sim-texts.ts'), `export const simTexts = ${JSON.stringify(texts)};\n`);
  if (!marked) return;
  cpSync(join(folder, 'index.ts'), join(folder, 'own.ts'));
  const lines = Object.keys(words).map((name) =>
    notForReading.includes(name)
      ? `export const ${name} = own.${name};`
      : `export const ${name} = marked(own.${name});`,
  );
  const head = ["import * as own from './own.ts';", `import { marked } from ${JSON.stringify(marks)};`];
  writeFileSync(join(folder, 'index.ts'), [...head, ...lines].join('\n'));
}
