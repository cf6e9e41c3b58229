/** The words that a build speaks: those of `ui/words`, or of the folder that TANKFUL_WORDS names, as in `ui/words-de`. */
import { join } from 'node:path';
import { env } from 'node:process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The folder of another language; null for the project's own. */
export function otherWords() {
  return env.TANKFUL_WORDS ? join(root, env.TANKFUL_WORDS) : null;
}

/**
 * For every build that words go into, since none hears of another's settings.
 * @returns {import('vite').Alias[]}
 */
export function wordsAlias() {
  const folder = otherWords();
  return folder === null
    ? []
    : [{ find: /^(\.\.\/)+words\/index\.ts$/, replacement: join(folder, 'index.ts') }];
}
