import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';

/** What takes too long for every run: `npm run bench` (ratios and times) and `npm run fuzz` (many random plants). */
export default defineConfig({
  test: {
    projects: [slow('bench', 'tests/bench/**/*.bench.ts'), slow('nightly', 'tests/nightly/**/*.test.ts')],
  },
});

/** One file at a time: a measurement must not share its processor with another. */
function slow(name: string, include: string): TestProjectInlineConfiguration {
  return {
    test: { name, include: [include], pool: 'forks', fileParallelism: false, testTimeout: 3_600_000 },
  };
}
