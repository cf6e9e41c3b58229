import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesBelow, nodesOf, ownCode, parse, placeOf, read, root } from './support/sources.ts';

const code = ownCode();
const scripts = code.filter((path) => /\.(ts|mjs)$/.test(path));
const sim = filesBelow('sim').filter((path) => path.endsWith('.ts'));

describe('a file', () => {
  it('has seldom over 300 lines and never over 400', () => {
    const lengths = code.map((path) => ({ path, lines: read(path).split('\n').length - 1 }));
    const long = lengths
      .filter(({ lines }) => lines > 300)
      .map(({ path, lines }) => `${path} (${lines} lines)`);
    if (long.length > 0) console.warn(`Over 300 lines: ${long.join(', ')}`);
    expect(lengths.filter(({ lines }) => lines > 400)).toEqual([]);
    expect(long.length).toBeLessThanOrEqual(Math.max(3, code.length / 20));
  });

  it('is named in kebab-case', () => {
    const odd = code.filter(
      (path) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+)+$/.test(path.split('/').at(-1) ?? ''),
    );
    expect(odd).toEqual([]);
  });

  it('leaves nothing for later and silences no check', () => {
    // Spelled in halves, so that this file keeps its own rule.
    const marks = [
      'TO-DO',
      'FIX-ME',
      'X-XX',
      '[Tt]rans-cript',
      '@ts--(ignore|nocheck|expect)',
      'noExplicit-Any',
    ];
    const pattern = new RegExp(marks.map((mark) => mark.replace('-', '')).join('|'));
    expect(linesMatching([...code, 'README.md', 'DEVELOPERS.md'], pattern)).toEqual([]);
  });

  it('has no type `any`', () => {
    const found = scripts.flatMap((path) =>
      [...nodesOf(parse(path))].filter((node) => node.kind === ts.SyntaxKind.AnyKeyword).map(placeOf),
    );
    expect(found).toEqual([]);
  });
});

/** What engines of JavaScript compute to different last digits: page and terminal are to give the same numbers. */
function unlike(file: ts.SourceFile): string[] {
  return [...nodesOf(file)].flatMap((node) => {
    if (ts.isPropertyAccessExpression(node) && /^Math\.(sin|cos|pow)$/.test(node.getText()))
      return [placeOf(node)];
    const raises =
      ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskToken;
    // Squares and powers of two are exact everywhere.
    return raises && node.right.getText() !== '2' && node.left.getText() !== '2' ? [placeOf(node)] : [];
  });
}

describe('a simulation', () => {
  it('computes by what all engines compute alike', () => {
    const own = sim.filter((path) => path !== 'sim/numerics/alike.ts');
    expect(own.flatMap((path) => unlike(parse(path)))).toEqual([]);
  });

  it.each(['Math.sin(x)', 'map(Math.cos)', 'x ** 3', 'x ** y', 'Math.pow(x, 2)'])(
    'would be found at: %s',
    (text) => {
      expect(unlike(ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2022, true))).toHaveLength(1);
    },
  );
});

describe('a test', () => {
  const tests = filesBelow('tests').filter((path) => /\.(test|bench)\.ts$/.test(path));
  const calls = tests.flatMap((path) => [...nodesOf(parse(path))].filter(ts.isCallExpression));

  it('says what is, not what ought to be', () => {
    const titles = calls.filter((call) => /^(it|test|describe)\b/.test(call.expression.getText()));
    expect(titles.length).toBeGreaterThan(0);
    expect(
      titles.filter((call) => /\bshould\b/i.test(call.arguments[0]?.getText() ?? '')).map(placeOf),
    ).toEqual([]);
  });

  it('is neither skipped nor run alone', () => {
    const set = /^(it|test|describe)\.(skip|only|todo|fails)\b/;
    expect(calls.filter((call) => set.test(call.expression.getText())).map(placeOf)).toEqual([]);
  });
});

describe('sim', () => {
  it('compiles where there is neither a page nor Node', () => {
    expect(namesMissing(sim.map((path) => join(root, path)))).toEqual([]);
  }, 60_000);

  it('would not compile if it asked for a page or for Node', () => {
    const folder = mkdtempSync(join(tmpdir(), 'tankful-pure-'));
    const file = join(folder, 'impure.ts');
    writeFileSync(file, 'document.title; process.argv; console.log(1); setTimeout(() => {}, 1);');
    expect(namesMissing([file])).toHaveLength(4);
    rmSync(folder, { recursive: true });
  }, 60_000);

  it('asks neither a clock nor chance', () => {
    const asked = sim.flatMap((path) =>
      [...nodesOf(parse(path))]
        .filter((node) => isClockOrChance(node))
        .map((node) => `${placeOf(node)} ${node.getText()}`),
    );
    expect(asked).toEqual([]);
  });

  it.each(['Math.random()', 'Date.now()', 'new Date()'])('has a rule awake against %s', (text) => {
    const file = ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2022, true);
    expect([...nodesOf(file)].some(isClockOrChance)).toBe(true);
  });
});

describe('a physics function', () => {
  const exported = filesBelow('sim/physics')
    .filter((path) => path.endsWith('.ts'))
    .flatMap((path) => parse(path).statements.filter(ts.isFunctionDeclaration))
    .filter((node) => node.modifiers?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword));

  it('says what it computes and from where', () => {
    expect(exported.length).toBeGreaterThan(0);
    const silent = exported.filter((node) => !/\b(sources?|from memory|definition)\b/i.test(docOf(node)));
    expect(silent.map((node) => `${placeOf(node)} ${node.name?.text}`)).toEqual([]);
  });

  it('gives the units of its numbers in brackets', () => {
    const numeric = exported.filter((node) =>
      node.parameters.some((parameter) => parameter.type?.kind === ts.SyntaxKind.NumberKeyword),
    );
    expect(numeric.length).toBeGreaterThan(0);
    const unitless = numeric.filter((node) => !/\[[^\]]+\]/.test(docOf(node)));
    expect(unitless.map((node) => `${placeOf(node)} ${node.name?.text}`)).toEqual([]);
  });
});

describe('a script that runs before the packages are there', () => {
  it.each(['set-up', 'start', 'test', 'tankful', 'build'])(
    'scripts/%s.mjs imports built-ins at first',
    (name) => {
      const targets = parse(`scripts/${name}.mjs`)
        .statements.filter(ts.isImportDeclaration)
        .map((node) => (node.moduleSpecifier as ts.StringLiteral).text);
      expect(targets.length).toBeGreaterThan(0);
      expect(
        targets.filter((target) => !target.startsWith('./') && !builtinModules.includes(target.slice(5))),
      ).toEqual([]);
    },
  );
});

function linesMatching(paths: string[], pattern: RegExp): string[] {
  return paths.flatMap((path) =>
    read(path)
      .split('\n')
      .flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1} ${line.trim()}`] : [])),
  );
}

function docOf(node: ts.Node): string {
  return ts
    .getJSDocCommentsAndTags(node)
    .map((doc) => doc.getText())
    .join('\n');
}

function isClockOrChance(node: ts.Node): boolean {
  if (ts.isNewExpression(node)) return node.expression.getText() === 'Date' && !node.arguments?.length;
  return ts.isPropertyAccessExpression(node) && /^(Math\.random|Date\.now)$/.test(node.getText());
}

/** Names a file uses that plain ECMAScript does not have. Other errors are for the type check to report. */
function namesMissing(files: string[]): string[] {
  const { compilerOptions } = ts.parseConfigFileTextToJson('tsconfig.json', read('tsconfig.json')).config;
  const { options } = ts.parseJsonConfigFileContent(
    { compilerOptions: { ...compilerOptions, lib: ['ES2023'], types: [] }, files: [] },
    ts.sys,
    root,
  );
  return ts
    .getPreEmitDiagnostics(ts.createProgram(files, options))
    .map((problem) => ts.flattenDiagnosticMessageText(problem.messageText, ' '))
    .filter((message) => message.startsWith('Cannot find name'));
}
