import { defineConfig } from 'vite';
import { builtIn } from './scripts/built-in.mjs';
import { singleFile } from './scripts/single-file.mjs';

/** The page in one file: ui/web -> dist/tankful.html. */
export default defineConfig({
  root: 'ui/web',
  base: './',
  plugins: [singleFile(), builtIn()],
  build: { outDir: '../../dist', emptyOutDir: false, target: 'es2022' },
});
