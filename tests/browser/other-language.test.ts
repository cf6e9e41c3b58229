/** The page shown in another language: what is read on it comes from ui/words, and nothing breaks without English. */
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtInId } from '../../ui/web/app/built-in.ts';
import { buildMarked } from './support/other-language.ts';
import { screenshot, visit } from './support/visit.ts';

let path = '';
beforeAll(async () => {
  path = await buildMarked();
}, 240_000);
afterAll(() => rmSync(dirname(path), { recursive: true, force: true }));

/** Texts and spoken names that are neither marked, nor the design's own or solved when the page was built, nor a quantity. */
function unmarked(page: Page): Promise<string[]> {
  return page.evaluate((id) => {
    const data = document.getElementById(id)?.textContent ?? '';
    const isData = (text: string) => data.includes(JSON.stringify(text).slice(1, -1));
    const isQuantity = (text: string) => /^[−-]?[\d.,]+\s\S+$/.test(text);
    const isRead = (text: string) =>
      /\p{L}{3,}/u.test(text) && !text.includes('⟦') && !isData(text) && !isQuantity(text);
    const found: string[] = [];
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
        if (isRead(said)) found.push(`${element.localName}.${element.getAttribute('class') ?? ''}: ${said}`);
      }
    }
    return found;
  }, builtInId);
}

describe('the page in another language', () => {
  it('has no text of its own outside the catalogue', async () => {
    const { page, errors } = await visit({ home: pathToFileURL(path).href });
    await page.waitForSelector('.answer-lines li');
    for (const room of ['tankful-parts-list', 'tankful-heat', 'tankful-figures']) {
      await page.locator(room).scrollIntoViewIfNeeded();
      await page.waitForSelector(`${room} :first-child`);
    }
    await page.waitForSelector('tankful-figures dd');
    await screenshot(page, 'other-language');
    expect(await page.title()).not.toBe('');
    expect(await page.locator('h2', { hasText: '⟦' }).count()).toBeGreaterThan(4);
    expect(await unmarked(page)).toEqual([]);
    expect(errors).toEqual([]);
  }, 120_000);
});
