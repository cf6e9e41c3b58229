import { defineConfig } from 'vite';
import { builtIn } from './scripts/built-in.mjs';
import { offline } from './scripts/offline.mjs';
import { oneBuild } from './scripts/one-build.mjs';
import { headers, policyInPage } from './scripts/policy.mjs';
import { wordsAlias } from './scripts/words.mjs';

/** The page: ui/web -> dist/web, with relative addresses so that the folder may stand anywhere. */
export default defineConfig({
  root: 'ui/web',
  base: './',
  resolve: { alias: wordsAlias() },
  plugins: [oneBuild(), builtIn(), policyInPage(), offline()],
  preview: { headers },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    // Code that comes later is asked for from workers too, which have no document to preload it through.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, deps, { hostType }) => (hostType === 'js' ? [] : deps),
    },
  },
});
