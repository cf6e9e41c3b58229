/** The page in another language: what is read on it comes from ui/words and from the table of sim's texts, and nothing breaks without English. */
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { simTexts } from '../../scripts/sim-texts.mjs';
import type { Scenario } from '../../sim/index.ts';
import { brokenFiles, soundFiles, textOf } from '../sim/scenario/files.ts';
import { greekTable } from '../ui/support/greek.ts';
import { englishLeft, namesIn, telltales } from './support/english-left.ts';
import { buildIn } from './support/other-language.ts';
import { screenshot, visit } from './support/visit.ts';

let home = '';
let tales: string[] = [];
beforeAll(async () => {
  const texts = await simTexts();
  tales = telltales(texts);
  const path = await buildIn({
    name: 'words-marked',
    locale: 'en-US',
    texts: greekTable(texts),
    marked: true,
  });
  home = pathToFileURL(path).href;
}, 240_000);
afterAll(() => rmSync(dirname(new URL(home).pathname), { recursive: true, force: true }));

const sound = soundFiles().map((name) => JSON.parse(textOf(name)) as Scenario);
/** Notes stand in the cards of what they are about. */
const noted: Scenario = {
  ...sound[1],
  name: 'Design with notes',
  coils: [
    ...(sound[1].coils ?? []),
    { name: 'spare', tube: { kind: 'refrigeration', size: '3/8 in' }, roll_length: '20 ft', to: '30 in' },
  ],
};
const examples = [...sound, noted];
const names = [...new Set(examples.flatMap(namesIn))].sort((a, b) => b.length - a.length);

/** The page with the demo; `left` unfolds all there is and gives what is English on it. */
async function open() {
  const visited = await visit({ home, height: 1000 });
  await visited.page.waitForSelector('.answer-lines li');
  const left = async (more: readonly string[] = []) => {
    await visited.page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    return englishLeft(visited.page, tales, [...names, ...more]);
  };
  return { ...visited, left };
}

/** Rooms are loaded when they come near. */
async function near(page: Page, room: string): Promise<void> {
  await page.locator(room).scrollIntoViewIfNeeded();
  await page.waitForSelector(`${room} :first-child`, { state: 'attached' });
}

function asFile(name: string, text: string) {
  return { name, mimeType: 'application/json', buffer: Buffer.from(text) };
}

async function take(page: Page, design: Scenario): Promise<void> {
  await page.setInputFiles('input[data-file=open]', asFile('own.json', JSON.stringify(design)));
  // The demo stands in the page already: only the notice tells that its file was taken.
  await page.locator('.file-notices', { hasText: 'own.json' }).waitFor();
  await page.locator('.run-line:not(.stale) .shown', { hasText: design.name }).waitFor();
}

function pathsOf(page: Page): Promise<(string | null)[]> {
  return page.locator('.part').evaluateAll((parts) => parts.map((part) => part.getAttribute('data-path')));
}

async function answer(recipe: Locator, texts: readonly string[]): Promise<void> {
  for (const [i, text] of texts.entries()) await recipe.locator('input').nth(i).fill(text);
  await recipe.locator('button[type=submit]').click();
}

describe('the page in another language', () => {
  it('has no English in its rooms', async () => {
    const { page, errors, left } = await open();
    for (const room of ['tankful-parts-list', 'tankful-heat', 'tankful-figures', 'tankful-measured'])
      await near(page, room);
    await page.waitForSelector('tankful-figures dd');
    await screenshot(page, 'other-language');
    expect(await page.locator('h2', { hasText: '⟦' }).count()).toBeGreaterThan(4);
    expect(await left()).toEqual([]);
    expect(errors).toEqual([]);
  }, 120_000);

  it('would be seen: a text that is not in the table, and one that passes no door', async () => {
    const { page, left } = await open();
    await page.evaluate(() => {
      const texts = ['a text nobody listed', '⟦in marks, and yet: turns cannot lie closer than touching⟧'];
      for (const text of texts) document.body.appendChild(document.createElement('p')).textContent = text;
    });
    expect(await left()).toHaveLength(2);
  });

  it.each(examples)(
    'has none in the cards and the drawing of $name',
    async (example) => {
      const { page, errors, left } = await open();
      await take(page, example);
      await near(page, 'tankful-parts-list');
      const paths = await pathsOf(page);
      expect(paths.length).toBeGreaterThan(6);
      for (const path of paths) {
        await page.locator(`[data-path="${path}"] .part-open`).click();
        await page.locator('.card .cells').first().waitFor();
        expect([path, await left()]).toEqual([path, []]);
        expect(await page.locator('.card').innerText()).toMatch(/[α-ω]{4}/);
      }
      expect(errors).toEqual([]);
    },
    180_000,
  );

  it('has none where entries are wrong', async () => {
    const { page, left } = await open();
    await near(page, 'tankful-parts-list');
    for (const path of ['store', 'coils[0]', 'engine', 'run']) {
      await page.locator(`[data-path="${path}"] .part-open`).click();
      await page.locator('.card .cells').first().waitFor();
      await left();
      const boxes = page.locator('.card input[type=text]:not(.range-box)');
      const many = await boxes.count();
      for (let i = 0; i < many; i++) {
        await boxes.nth(i).fill(['50 furlongs', '-1', '5 psi', '1 2 3'][i % 4]);
        await boxes.nth(i).press('Enter');
      }
      expect(await page.locator('.card .trouble').count()).toBeGreaterThan(many / 2);
      expect([path, await left()]).toEqual([path, []]);
    }
  }, 120_000);

  it('has none in what is wrong with any broken file', async () => {
    const { page, left } = await open();
    for (const name of brokenFiles()) {
      await page.setInputFiles('input[data-file=open]', asFile(name, textOf(name)));
      await page.waitForFunction(
        (file) => document.querySelector('.file-notices')?.textContent?.includes(file),
        name,
      );
      // The worker reads it after the page has taken it.
      await page.locator('.troubles li').first().waitFor();
      expect([name, await left()]).toEqual([name, []]);
      await page.selectOption('select[name=scenario]', 'demo');
      await page.locator('tankful-troubles li').first().waitFor({ state: 'detached' });
    }
  }, 180_000);

  it('has none in doubts, ranges, comparisons and the build sheet', async () => {
    const { page, errors, left } = await open();
    await near(page, 'tankful-parts-list');
    await page.locator('[data-path="store"] .part-open').click();
    await left();
    const entry = page.locator('.card .entry', { has: page.locator('#card-store-water_depth') });
    for (const choice of [1, 2, 3]) {
      await entry.locator('.doubt input[type=radio]').nth(choice).check();
      expect(await left()).toEqual([]);
    }
    await entry.locator('.doubt .range-box').first().fill('x');
    await entry.locator('.doubt .range-box').first().press('Tab');
    await entry.locator('.doubt .trouble').waitFor();
    for (const from of ['x', '20 in']) {
      await entry.locator('.range .range-box').first().fill(from);
      await entry.locator('.range .range-box').nth(1).fill('32 in');
      await entry.locator('.range .range-box').nth(2).fill('2');
      await entry.locator('.range button').click();
      await page
        .locator(from === 'x' ? '.range .trouble' : 'tankful-range tbody td')
        .first()
        .waitFor();
      expect(await left()).toEqual([]);
    }
    await page.locator('.run-line button.plain').first().click();
    await entry.locator('#card-store-water_depth').fill('30 in');
    await entry.locator('#card-store-water_depth').press('Enter');
    await page.locator('tankful-compare tbody td').first().waitFor();
    expect(await left()).toEqual([]);
    await page.locator('.open-sheet').click();
    await page.locator('tankful-sheet table').first().waitFor();
    expect(await left()).toEqual([]);
    expect(errors).toEqual([]);
  }, 120_000);

  it('has none in measurements, refused and answered', async () => {
    const { page, left } = await open();
    await near(page, 'tankful-measured');
    await left();
    await page.locator('tankful-fit input[type=checkbox]').check();
    for (const [fit, done] of [
      ['time,top (F)\nnine,140\n22:00,hot', '[role=alert] li'],
      [
        'time,top (F),middle (F),bottom (F),room (F)\n21:00,141,139.5,137,50\n00:00,138.6,137.2,134.8,48\n03:00,136.3,134.9,132.6,46\n06:00,134.1,132.8,130.5,46',
        '.measured-told',
      ],
    ]) {
      await page.locator('tankful-fit textarea').fill(fit);
      await page.locator('tankful-fit button[type=submit]').click();
      await page.locator(`tankful-fit ${done}`).first().waitFor();
      // Columns are called as the log has them.
      expect(await left(['top', 'middle', 'bottom'])).toEqual([]);
    }
    const [bucket, cooled] = [page.locator('tankful-recipe').first(), page.locator('tankful-recipe').nth(3)];
    await answer(bucket, ['5 gal', '100 s']);
    await bucket.locator('.recipe-facts').waitFor();
    await answer(cooled, ['140 F', '150 F', '55 F', '12 h']);
    await cooled.locator('[role=alert] li').first().waitFor();
    await answer(cooled, ['140', '1000 F', 'x', '12 h']);
    await cooled.locator('[role=alert] li').nth(2).waitFor();
    expect(await left(['top', 'middle', 'bottom'])).toEqual([]);
  }, 120_000);
});
