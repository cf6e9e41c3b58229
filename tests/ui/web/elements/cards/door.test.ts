import { build, type Rollup } from 'vite';
import { describe, expect, it } from 'vitest';
import { root } from '../../../../../scripts/build.mjs';

/** Modules of which code is left when only these names are asked of `sim/index.ts`, as the page asks. */
async function modulesFor(names: string): Promise<string[]> {
  const entry = '\0entry';
  const made = (await build({
    configFile: false,
    root,
    logLevel: 'error',
    plugins: [
      {
        name: 'entry',
        resolveId: (id) => (id === 'entry' ? entry : null),
        load: (id) =>
          id === entry
            ? `import { ${names} } from '${root}sim/index.ts'; globalThis.kept = [${names}];`
            : null,
      },
    ],
    build: { write: false, minify: false, rollupOptions: { input: 'entry' } },
  })) as { output: Rollup.OutputChunk[] };
  return made.output.flatMap(({ modules }) =>
    Object.entries(modules)
      .filter(([, { renderedLength }]) => renderedLength > 0)
      .map(([id]) => id.replaceAll('\\', '/')),
  );
}

describe('the door to the catalogue', () => {
  it('lets the page have fields, outlines and edits without the checker of files', async () => {
    const modules = await modulesFor(
      'fieldEntries, describeDefaults, outlineOf, entering, deciding, describing, adding, removing, readEntry, tubeNamed',
    );
    expect(modules.some((id) => id.endsWith('sim/scenario/outline/outline.ts'))).toBe(true);
    expect(
      modules.filter((id) => /node_modules\/|scenario\/(schema|read|plant)\.ts|\/run\//.test(id)),
    ).toEqual([]);
  }, 60_000);

  it('would show the checker and its library if they came along', async () => {
    const modules = await modulesFor('readScenario, scenarioJsonSchema');
    expect(modules.some((id) => id.endsWith('scenario/read.ts'))).toBe(true);
    expect(modules.some((id) => id.includes('node_modules/zod'))).toBe(true);
  }, 60_000);
});
