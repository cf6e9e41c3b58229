import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { ICruiseResult } from 'dependency-cruiser';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cruiseTree, importRules } from './support/import-rules.ts';
import { filesBelow, nodesOf, parse, root } from './support/sources.ts';

const names = importRules.map(({ name }) => name ?? '');
const modules = ['sim', 'ui'].flatMap(filesBelow).filter((path) => /(?<!\.d)\.ts$/.test(path));

describe('imports', () => {
  let result: ICruiseResult;
  beforeAll(async () => {
    result = await cruiseTree(root);
  }, 60_000);

  it('are all seen', () => {
    expect(modules.length).toBeGreaterThan(0);
    const seen = new Set(result.modules.map((module) => module.source));
    expect(modules.filter((path) => !seen.has(path))).toEqual([]);
    expect(result.summary.totalDependenciesCruised).toBeGreaterThan(0);
  });

  it.each(names)('%s', (name) => {
    const broken = result.summary.violations.filter((violation) => violation.rule.name === name);
    expect(
      broken.map(({ from, to, cycle }) => [from, ...(cycle?.map((step) => step.name) ?? [to])].join(' -> ')),
    ).toEqual([]);
  });

  it('name their file with its ending', () => {
    const bare = modules.flatMap((path) =>
      [...nodesOf(parse(path))].flatMap((node) => {
        const target =
          'moduleSpecifier' in node ? String((node.moduleSpecifier as { text?: string })?.text) : '';
        return target.startsWith('.') && !/\.(ts|json|css)(\?.*)?$/.test(target)
          ? [`${path} -> ${target}`]
          : [];
      }),
    );
    expect(bare).toEqual([]);
  });
});

/** A tree in which every rule is broken once: proof that no rule is asleep. */
const breaches: Record<string, string> = {
  'sim/quantity/a.ts': '../physics/ok.ts',
  'sim/numerics/a.ts': '../quantity/ok.ts',
  'sim/physics/a.ts': '../parts/ok.ts',
  'sim/parts/a.ts': '../plant/ok.ts',
  'sim/plant/a.ts': '../run/ok.ts',
  'sim/run/a.ts': '../scenario/ok.ts',
  'sim/scenario/a.ts': '../parts/ok.ts',
  'sim/answers/a.ts': '../../ui/words/ok.ts',
  'sim/index.ts': '../ui/words/ok.ts',
  'sim/physics/b.ts': 'odex',
  'ui/words/zod.ts': 'zod',
  'ui/words/d3.ts': 'd3',
  'ui/words/csv.ts': 'd3-dsv',
  'ui/words/lit.ts': 'lit',
  'ui/words/idb.ts': 'idb',
  'ui/words/commander.ts': 'commander',
  'ui/words/package.ts': 'typescript',
  'ui/words/circle.ts': './circle-back.ts',
  'ui/words/circle-back.ts': './circle.ts',
  'ui/words/inside.ts': '../../sim/physics/ok.ts',
  'ui/words/screen.ts': '../web/ok.ts',
  'ui/words/node.ts': 'node:fs',
  'ui/words/lost.ts': './nowhere.ts',
  'ui/words/test.ts': '../../tests/ok.ts',
  'ui/web/words.ts': '../words/ok.ts',
  'ui/web/a.ts': '../terminal/ok.ts',
  'ui/terminal/a.ts': '../web/ok.ts',
  'ui/web/charts/a.ts': '../elements/ok.ts',
  'ui/web/worker/a.ts': '../elements/ok.ts',
};

describe('a broken tree', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tankful-rules-'));
  let caught: Set<string>;

  beforeAll(async () => {
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
    for (const [path, target] of Object.entries(breaches)) {
      write(path, `import '${target}';\n`);
      if (target.endsWith('/ok.ts')) write(join(dirname(path), target), 'export const ok = true;\n');
    }
    const { summary } = await cruiseTree(folder);
    caught = new Set(summary.violations.map(({ rule }) => rule.name));
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  function write(path: string, text: string): void {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }

  it.each(names)('is caught by: %s', (name) => {
    expect(caught).toContain(name);
  });
});
