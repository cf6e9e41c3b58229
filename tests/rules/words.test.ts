/** Every sentence a person reads stands in ui/words, and the language is named in one place there. */
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesBelow, nodesOf, parse, placeOf, read } from './support/sources.ts';

/** Texts of so many words are sentences; shorter ones are often a scenario's word, a class or a key. */
const fewest = 3;
const word = /^["“‘'(]?\p{L}[\p{L}’'-]*[”’"'),.:;!?]*$/u;

/** Not for reading: names that links shorten, and a choice of fonts. */
const data = /^(a1 a2 air|[a-z_0-9]+( [a-z_0-9]+){7,}$)|sans-serif/;

function isSentence(text: string): boolean {
  const words = text.split(/\s+/).filter((each) => word.test(each));
  return words.length >= fewest && !data.test(text);
}

/** Text of a template with its holes as blanks. */
function textOf(node: ts.TemplateLiteral): string {
  if (ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('\uFFFC');
}

/** What an element's template says by itself: text between tags, and attributes that are read out. */
function saidBy(markup: string): string[] {
  const bare = markup.replace(/<!--.*?-->/gs, '');
  const between = bare.replace(/<[^>]*>|&\w+;/g, '\n').match(/\p{L}{2,}[^\n\uFFFC]*/gu) ?? [];
  const readOut = [
    ...bare.matchAll(
      /\s(?:aria-label|aria-description|aria-roledescription|title|placeholder|alt)="([^"\uFFFC]+)"/g,
    ),
  ];
  return [...between, ...readOut.map(([, text]) => text)];
}

/** What is for whoever mends the program: messages of errors that must not happen, names of modules, selectors, keys. */
function isForReaders(node: ts.Node): boolean {
  for (let at = node.parent; at; at = at.parent) {
    if (ts.isNewExpression(at) && /Error$/.test(at.expression.getText())) return false;
    if (ts.isThrowStatement(at) || ts.isImportDeclaration(at) || ts.isTypeNode(at)) return false;
    if (ts.isCallExpression(at) && /(querySelector(All)?|closest|matches)$/.test(at.expression.getText()))
      return false;
    if (ts.isBinaryExpression(at) && /^[!=]==$/.test(at.operatorToken.getText())) return false;
    if (ts.isStatement(at)) return true;
  }
  return true;
}

function sentencesIn(file: ts.SourceFile): string[] {
  const inMarkup = new Set<ts.Node>();
  return [...nodesOf(file)].flatMap((node) => {
    if (ts.isTaggedTemplateExpression(node) && /^(html|svg)$/.test(node.tag.getText())) {
      inMarkup.add(node.template);
      return saidBy(textOf(node.template)).map((text) => `${placeOf(node)} ${text.trim()}`);
    }
    const literal = ts.isStringLiteral(node) ? node.text : ts.isTemplateLiteral(node) ? textOf(node) : null;
    if (literal === null || inMarkup.has(node) || !isSentence(literal) || !isForReaders(node)) return [];
    return [`${placeOf(node)} ${literal}`];
  });
}

const code = ['ui/web', 'ui/terminal'].flatMap(filesBelow).filter((path) => path.endsWith('.ts'));

describe('a sentence', () => {
  it('stands in ui/words', () => {
    expect(code.length).toBeGreaterThan(100);
    expect(code.flatMap((path) => sentencesIn(parse(path)))).toEqual([]);
  });

  it.each([
    'html`<p>Hello</p>`',
    'html`<button aria-label="Close it"></button>`',
    "const x = 'this is wrong';",
    'const x = `all of them were lost`;',
    "program.option('--json', 'print it all');",
  ])('would be found in: %s', (text) => {
    const file = ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2022, true);
    expect(sentencesIn(file)).toHaveLength(1);
  });

  it.each([
    'html`<p class="one two three"></p>`',
    "throw new Error('x - expected y - got z');",
    "reject(new Error('x - expected y - got z'));",
    "if (why === 'one of its kind') draw();",
    "page.querySelector('input, select, button');",
  ])('is not found in: %s', (text) => {
    const file = ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2022, true);
    expect(sentencesIn(file)).toEqual([]);
  });
});

describe('what sim writes', () => {
  it('is written out by ui/words, which knows the language', () => {
    const own = /\b(formatQuantity|formatBoth|formatTape|problemLine)\b/;
    expect(own.test(read('ui/words/units.ts'))).toBe(true);
    expect(code.filter((path) => own.test(read(path)))).toEqual([]);
  });
});

describe('the language', () => {
  it('is named in ui/words/locale.ts alone', () => {
    const ui = filesBelow('ui').filter((path) => path.endsWith('.ts') && path !== 'ui/words/locale.ts');
    const own = /new Intl\.|toLocale(String|DateString|TimeString)\(|['"`]en(-[A-Z]{2})?['"`]/;
    expect(own.test(read('ui/words/locale.ts'))).toBe(true);
    expect(ui.filter((path) => own.test(read(path)))).toEqual([]);
  });

  it('tells one from many by its own rules', () => {
    const words = filesBelow('ui/words').filter((path) => path.endsWith('.ts'));
    expect(words.length).toBeGreaterThan(40);
    expect(words.filter((path) => /=== 1 \?/.test(read(path)))).toEqual([]);
  });

  it('writes the numbers of words and reports; only a file’s cells have a point in every language', () => {
    const spoken = filesBelow('ui/words').concat(filesBelow('ui/terminal'));
    const plain = spoken.filter((path) => /\.toFixed\(/.test(read(path)));
    expect(plain).toEqual(['ui/terminal/fit-report.ts']);
  });
});
