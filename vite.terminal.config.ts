import { defineConfig } from 'vite';
import { wordsAlias } from './scripts/words.mjs';

/** The terminal program: ui/terminal/main.ts -> dist/tankful.mjs, one file that plain Node runs. */
export default defineConfig({
  publicDir: false,
  resolve: { alias: wordsAlias() },
  ssr: { noExternal: true },
  build: {
    ssr: 'ui/terminal/main.ts',
    outDir: 'dist',
    // dist/web lies in the same folder.
    emptyOutDir: false,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'tankful.mjs', codeSplitting: false } },
  },
});
