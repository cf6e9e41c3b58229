import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { type CardPage, demo, openCardPage } from './support/card-page.ts';
import type { CardStand } from './support/card-stand.ts';

declare const stand: CardStand;
let cards: CardPage;
let page: Page;

beforeAll(async () => {
  cards = await openCardPage();
  page = cards.page;
});

describe('a card for everyone', () => {
  const looks = [
    { width: 1280, scheme: 'light' },
    { width: 1280, scheme: 'dark' },
    { width: 320, scheme: 'light' },
    { width: 320, scheme: 'dark' },
  ] as const;

  async function openAll(): Promise<void> {
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
  }

  it.each(looks)('breaks no rule of access at $width px, $scheme, also with errors', async (look) => {
    await page.setViewportSize({ width: look.width, height: 900 });
    await page.emulateMedia({ colorScheme: look.scheme });
    for (const part of look.width > 320 ? ['store', 'engine'] : ['taps', 'weather']) {
      await cards.open(part);
      await openAll();
      await page.locator('.card input[type=text]').first().fill('50 psi');
      await page.keyboard.press('Enter');
      await page.waitForSelector('.trouble');
      expect(await cards.violations()).toEqual([]);
    }
  });

  it('does not scroll sideways at 320 px, whatever is open', async () => {
    await page.setViewportSize({ width: 320, height: 900 });
    for (const part of [
      'store',
      'coils[0]',
      'engine',
      'collector',
      'supply',
      'taps',
      'weather',
      'run',
      'prices',
    ]) {
      await cards.open(part);
      await openAll();
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, part).toBeLessThanOrEqual(0);
    }
  });

  it('gives a finger 44 px', async () => {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
    await page.setViewportSize({ width: 390, height: 900 });
    await cards.open('engine');
    await openAll();
    expect(await page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
    const small = await page
      .locator('.card :is(button, summary, select, input[type=text], label:has(input[type=radio]))')
      .evaluateAll((targets) =>
        targets
          .filter((target) => target.getBoundingClientRect().height < 44)
          .map((target) => target.outerHTML),
      );
    expect(small).toEqual([]);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: false });
  });

  it('switches units without a change to the design', async () => {
    await cards.open('store', 'SI');
    expect(await cards.box('Depth of water').inputValue()).toBe('32 in');
    expect(await cards.described(cards.box('Depth of water'))).toBe('= 813 mm (32 in)');
    expect(await page.evaluate(() => stand.scenario)).toEqual(demo);
    expect(cards.errors).toEqual([]);
  });
});
