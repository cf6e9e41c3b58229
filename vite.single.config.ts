import { defineConfig } from 'vite';
import { builtIn } from './scripts/built-in.mjs';
import { singleFile } from './scripts/single-file.mjs';
import { wordsAlias } from './scripts/words.mjs';

/** The page in one file: ui/web -> dist/tankful.html. */
export default defineConfig({
  root: 'ui/web',
  base: './',
  resolve: { alias: wordsAlias() },
  plugins: [singleFile(), builtIn()],
  build: { outDir: '../../dist', emptyOutDir: false, target: 'es2022' },
});
