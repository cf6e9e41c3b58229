/** What the page's policy (scripts/policy.mjs) would refuse in a browser is found here in the code. */
import { describe, expect, it } from 'vitest';
import { filesBelow, read } from './support/sources.ts';

const refused: Record<string, { pattern: RegExp; instead: string }> = {
  'an inline style': {
    pattern: /(?<![.\w-])style(=|: [`'"])|styleMap|cssText|<style/,
    instead: '.style=… in a template, a class in ui/web/style, an attribute such as fill in a drawing',
  },
  'text as markup': {
    pattern:
      /innerHTML(?! = asMarkup\()|outerHTML|insertAdjacentHTML|unsafe(HTML|SVG)|srcdoc|document\.write|parseFromString/,
    instead: 'the directive drawn, or asMarkup of a drawing',
  },
  'text as code': {
    pattern: /\beval\(|new Function|\bon[a-z]+="|javascript:/,
    instead: '@click=…',
  },
};
const files = filesBelow('ui/web').filter((path) => /\.(ts|html)$/.test(path));

function found(text: string, pattern: RegExp, path: string): string[] {
  return text
    .split('\n')
    .flatMap((line, i) => (pattern.test(line) ? [`${path}:${i + 1} ${line.trim()}`] : []));
}

describe('the page’s code', () => {
  it.each(Object.entries(refused))('has no %s', (_, { pattern, instead }) => {
    expect(files.length).toBeGreaterThan(50);
    expect(
      files.flatMap((path) => found(read(path), pattern, path)),
      `use ${instead}`,
    ).toEqual([]);
  });

  it.each([
    ['an inline style', '<div style="left: 3px">'],
    ['an inline style', 'style=styleMap({})'],
    ['an inline style', "tag('path', { style: 'fill: red' })"],
    ['text as markup', '<g .innerHTML=text>'],
    ['text as markup', 'element.innerHTML = text;'],
    ['text as code', '<b onclick="go()">'],
  ])('would be caught with %s: %s', (name, text) => {
    expect(found(text, refused[name].pattern, 'x')).toHaveLength(1);
  });

  it('may set a style through the element', () => {
    expect(found('<div .style=left>', refused['an inline style'].pattern, 'x')).toEqual([]);
  });
});
