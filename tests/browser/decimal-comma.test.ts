/** The page in a language with a decimal comma: numbers are written and read with it, files keep the point. */
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import demo from '../../scenarios/demo.json';
import type { Scenario } from '../../sim/index.ts';
import { buildIn } from './support/other-language.ts';
import { cellsOf, downloaded, savedChart, withoutPicker } from './support/saved.ts';
import { type Visit, visit } from './support/visit.ts';

let home = '';
beforeAll(async () => {
  home = pathToFileURL(await buildIn({ name: 'words-comma', locale: 'de-DE' })).href;
}, 240_000);
afterAll(() => rmSync(dirname(new URL(home).pathname), { recursive: true, force: true }));

async function open(part: string): Promise<Visit> {
  const visited = await visit({ home, height: 1000 });
  const { page } = visited;
  await page.waitForSelector('.answer-lines li');
  await page.locator('tankful-parts-list').scrollIntoViewIfNeeded();
  await page.locator(`[data-path="${part}"] .part-open`).click();
  await page.locator('.card .cells').first().waitFor();
  return visited;
}

/** Texts with a number that has a point and decimals; what is in quotes is as a file must have it, and a version is no number. */
function pointed(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
    const texts: string[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode())
      if (!node.parentElement?.closest('script, style, textarea')) texts.push(node.textContent ?? '');
    for (const box of document.querySelectorAll<HTMLInputElement>('input[type=text]')) texts.push(box.value);
    // Groups of thousands have three figures.
    return texts.filter((text) => /\d\.\d(?!\d\d(?!\d))/.test(text.replace(/"[^"]*"|\d+\.\d+\.\d+/g, '')));
  });
}

async function enter(page: Page, id: string, text: string): Promise<void> {
  await page.locator(`#${id}`).fill(text);
  await page.locator(`#${id}`).press('Enter');
}

async function savedDesign(page: Page): Promise<Scenario> {
  await withoutPicker(page);
  const { bytes } = await downloaded(page, () => page.click('button[data-file=save]'));
  return JSON.parse(bytes.toString('utf8'));
}

describe('the page with a decimal comma', () => {
  it.each(['store', 'coils[0]', 'engine', 'supply', 'taps'])(
    'writes it in all of its numbers, with the card of %s open',
    async (part) => {
      const { page, errors } = await open(part);
      for (const room of ['tankful-figures', 'tankful-heat', 'tankful-measured']) {
        await page.locator(room).scrollIntoViewIfNeeded();
        await page.waitForSelector(`${room} :first-child`, { state: 'attached' });
      }
      expect(await page.locator('body').innerText()).toMatch(/\d,\d/);
      expect(await pointed(page)).toEqual([]);
      expect(errors).toEqual([]);
    },
    60_000,
  );

  it.each([
    ['typed with a comma', '1,5 kW', '1.5 kW'],
    ['typed as files have it', '1.25 kW', '1.25 kW'],
  ])('reads a number %s, and saves it with a point', async (_, typed, file) => {
    const { page } = await open('engine');
    await enter(page, 'card-engine-typical_load', typed);
    await page.locator('.run-line:not(.stale) .shown').waitFor();
    expect(await page.locator('.card .trouble').count()).toBe(0);
    expect(await page.locator('#card-engine-typical_load').inputValue()).toBe(typed.replace('.', ','));
    const design = await savedDesign(page);
    expect(design.engine?.typical_load).toBe(file);
    expect({ ...design, engine: { ...design.engine, typical_load: demo.engine.typical_load } }).toEqual(demo);
  });

  it('names what is wrong as it was typed, and offers what it could mean', async () => {
    const { page } = await open('engine');
    await enter(page, 'card-engine-typical_load', '1,5');
    const entry = page.locator('.entry', { has: page.locator('#card-engine-typical_load') });
    expect(await entry.locator('.trouble').innerText()).toContain('got "1,5"');
    await entry.locator('.meant button', { hasText: /^1,5 kW$/ }).click();
    expect((await savedDesign(page)).engine?.typical_load).toBe('1.5 kW');
  });

  it('reads ends of a doubt and of a range with it', async () => {
    const { page } = await open('store');
    await pointed(page);
    const entry = page.locator('.card .entry', { has: page.locator('#card-store-bridges') });
    await entry.locator('.doubt input[type=radio]').nth(3).check();
    await entry.locator('.doubt .range-box').first().fill('1,25');
    await entry.locator('.doubt .range-box').first().press('Tab');
    await entry.locator('.range .range-box').nth(0).fill('1,5');
    await entry.locator('.range .range-box').nth(1).fill('2,5');
    await entry.locator('.range .range-box').nth(2).fill('2');
    await entry.locator('.range button').click();
    await page.locator('tankful-range tbody td').first().waitFor();
    expect(await page.locator('tankful-range tbody th').allInnerTexts()).toEqual(['1,5', '2,5']);
    expect(await pointed(page)).toEqual([]);
    expect((await savedDesign(page)).doubts).toMatchObject([{ input: 'store.bridges', from: '1.25' }]);
  });

  it('writes it on the build sheet and beside a pinned design', async () => {
    const { page } = await open('store');
    await page.locator('.run-line button.plain').first().click();
    await enter(page, 'card-store-water_depth', '30,5 in');
    await page.locator('tankful-compare tbody td').first().waitFor();
    expect(await page.locator('tankful-compare').innerText()).toContain('30,5 in');
    await page.locator('.open-sheet').click();
    await page.locator('tankful-sheet table').first().waitFor();
    expect(await page.locator('tankful-sheet').innerText()).toMatch(/\d,\d/);
    expect(await pointed(page)).toEqual([]);
  });

  it('gives a chart’s numbers to a file with points', async () => {
    const { page } = await open('run');
    await withoutPicker(page);
    const button = page.locator('tankful-days button[aria-haspopup=menu]').first();
    const { bytes } = await savedChart(page, button, /every sample/);
    const cells = cellsOf(bytes).slice(1).flat();
    expect(cells.filter((cell) => /^-?\d+\.\d+$/.test(cell)).length).toBeGreaterThan(100);
    expect(cells.filter((cell) => /\d,\d/.test(cell))).toEqual([]);
  });

  it('reads a measurement with it', async () => {
    const { page } = await open('supply');
    await page.locator('tankful-measured').scrollIntoViewIfNeeded();
    const recipe = page.locator('tankful-recipe').first();
    await recipe.locator('summary').click();
    await recipe.locator('input').nth(0).fill('7,5 gal');
    await recipe.locator('input').nth(1).fill('100 s');
    await recipe.locator('button[type=submit]').click();
    expect(await recipe.locator('.recipe-facts dd').first().innerText()).toMatch(/^4,5\d* gpm/);
  });
});
