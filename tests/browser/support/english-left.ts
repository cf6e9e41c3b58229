/** What is read on a page in another language and is English all the same. */
import type { Page } from 'playwright-core';
import { dimensions } from '../../../sim/index.ts';
import { filesBelow, read } from '../../rules/support/sources.ts';

/** Signs of units are the same in every language. */
const units = [
  ...new Set(
    Object.values(dimensions).flatMap(({ units }) =>
      units.flatMap(({ symbol }) => symbol.match(/[A-Za-z]{3,}/g) ?? []),
    ),
  ),
];

/**
 * Stretches by which an English text of sim is known inside a sentence of ui/words, where marks stand around all of it:
 * long enough to be nothing else, and no words of ui/words themselves.
 */
export function telltales(texts: readonly string[]): string[] {
  const own = filesBelow('ui/words').map(read).join('\n');
  const stretches = texts.map((text) =>
    text
      .split('{}')
      .reduce((a, b) => (b.length > a.length ? b : a))
      .trim(),
  );
  return [...new Set(stretches)].filter(
    (text) => text.length >= 12 && text.includes(' ') && !own.includes(text),
  );
}

/**
 * Texts and spoken names of what is on the page: with words in Latin letters outside the marks, or with an English text
 * of sim within them. `names` are what a person gave things.
 */
export function englishLeft(
  page: Page,
  tales: readonly string[],
  names: readonly string[],
): Promise<string[]> {
  return page.evaluate(
    ([allTales, allNames, allUnits]) => {
      // The file's own words stand in quotes.
      const unnamed = (text: string) =>
        allNames.reduce((rest, name) => rest.replaceAll(name, ' '), text).replace(/"[^"]*"/g, ' ');
      const outside = (text: string) => {
        // A name that was cut short has lost its second mark.
        let rest = text.replace(/…$/, '…⟧');
        for (let before = ''; before !== rest; ) {
          before = rest;
          rest = rest.replace(/⟦[^⟦⟧]*⟧/g, ' ');
        }
        // Paths of the file are the same in every language.
        rest = rest.replace(/\w+(?:\[\d+\])?\.[\w.[\]]+/g, ' ');
        return (rest.match(/\p{Script=Latin}{3,}/gu) ?? []).filter((word) => !allUnits.includes(word));
      };
      const isEnglish = (text: string) =>
        outside(text).length > 0 || allTales.some((tale) => text.includes(tale));
      const found = new Set<string>();
      for (const element of document.body.querySelectorAll('*')) {
        if (element.matches('script, style, noscript')) continue;
        const own = Array.from(element.childNodes, (node) =>
          node.nodeType === Node.TEXT_NODE ? node.textContent : '',
        );
        const spoken = ['aria-label', 'aria-valuetext', 'title', 'placeholder'].map((name) =>
          element.getAttribute(name),
        );
        for (const text of [...own, ...spoken]) {
          const said = (text ?? '').trim();
          if (isEnglish(unnamed(said)))
            found.add(`${element.localName}.${element.getAttribute('class') ?? ''}: ${said}`);
        }
      }
      return [...found];
    },
    [[...tales], [...names], units] as const,
  );
}

/** What a person gave names to, and texts that a file must have in English: days of the week. */
export function namesIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(namesIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    /^(name|note|coil|file|currency|days|dated)$/.test(key) && typeof each === 'string'
      ? [each]
      : namesIn(each),
  );
}
