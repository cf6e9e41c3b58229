import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow, read, root } from './support/sources.ts';

describe('the top of the tree', () => {
  it('holds what is expected and nothing more', () => {
    const expected = [
      ...['.ci', '.gitignore', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'biome.json', 'knip.json'],
      ...['package-lock.json', 'package.json', 'scenarios', 'scripts', 'sim', 'tests', 'tsconfig.json', 'ui'],
      ...['vite.config.ts', 'vite.single.config.ts', 'vite.terminal.config.ts'],
      ...['vitest.config.ts', 'vitest.slow.config.ts'],
    ];
    const unlisted = ['.git', 'node_modules', 'dist', '.cache'];
    const found = readdirSync(root).filter((name) => !unlisted.includes(name) && !name.endsWith('.log'));
    expect(found.sort()).toEqual(expected.sort());
  });
});

describe('a package', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<
    string,
    Record<string, string>
  >;
  const wanted = Object.entries({ ...dependencies, ...devDependencies });

  it.each(wanted)('%s is pinned: %s', (name, version) => {
    expect(version).toMatch(/^\d+\.\d+\.\d+(-[a-z]+\.\d+)?$/);
    const locked = JSON.parse(read('package-lock.json')).packages[`node_modules/${name}`];
    expect(locked?.version).toBe(version);
  });
});

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (document) => {
  const text = read(document);

  it('has links that lead somewhere', () => {
    const links = [...text.matchAll(/\]\(([^)#\s]+)(#[^)]*)?\)/g)].map((match) => match[1] ?? '');
    const local = links.filter((link) => !/^[a-z]+:/.test(link));
    expect(local.length).toBeGreaterThan(0);
    expect(local.filter((link) => !existsSync(join(root, dirname(document), link)))).toEqual([]);
  });

  it('names paths that exist', () => {
    const named = [...text.matchAll(/`((?:sim|ui|tests|scripts|scenarios|\.ci)\/[\w./-]*)`/g)].map(
      (match) => match[1] ?? '',
    );
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('names commands that exist', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/\bnpm (?:run ([a-z]+)|(start|test)\b)/g)].map(
      (match) => match[1] ?? match[2] ?? '',
    );
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});

describe('a scenario', () => {
  const names = filesBelow('scenarios').filter(
    (path) => path.endsWith('.json') && !path.endsWith('_broken.json'),
  );

  it('is listed in README.md', () => {
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((path) => !read('README.md').includes(`\`${path}\``))).toEqual([]);
  });
});

describe('the repository', () => {
  it('keeps what is made out of its history', () => {
    const ignored = ['node_modules/x', 'dist/x', '.cache/x'];
    const output = execFileSync('git', ['check-ignore', ...ignored], { cwd: root, encoding: 'utf8' });
    expect(output.trim().split('\n')).toEqual(ignored);
  });
});
