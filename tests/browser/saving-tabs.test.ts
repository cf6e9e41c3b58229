/** Two tabs of one browser on one design: one changes it, the other reads; no gesture of either is lost. */
import type { Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import {
  again,
  isSaved,
  secondTab,
  setDays,
  showsDays,
  stored,
  visitShelf,
  wrong,
} from './support/shelf-page.ts';

// Each opens the page many times over.
vi.setConfig({ testTimeout: 180_000 });

const reading = (page: Page) => page.getByText('Open in another tab: here it can be read.');

/** One gesture after the other, as fast as the page takes them. */
async function hurry(page: Page, days: readonly number[]): Promise<void> {
  await page.evaluate((each) => {
    const field = document.querySelector<HTMLInputElement>('input[name=days]');
    for (const value of each) {
      if (field) field.value = String(value);
      field?.dispatchEvent(new Event('change'));
    }
  }, days);
}

const upTo = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);

describe('the second tab on a design', () => {
  it('reads it, follows it, and refuses changes in plain words', async () => {
    const first = await visitShelf();
    await setDays(first.page, 9);
    await isSaved(first.page);
    const second = await secondTab(first);
    await reading(second).waitFor();
    await showsDays(second, 9);
    await setDays(first.page, 10);
    await showsDays(second, 10);
    await setDays(second, 20);
    await second.getByText('Not changed here: number of days.').waitFor();
    expect(await stored(first.page)).toMatchObject([{ days: 10, gestures: 2 }]);
    await again(second);
    await reading(second).waitFor();
    expect(wrong(first.errors)).toEqual([]);
  });

  it('says at the box that an entry was not taken, and shows what the design has', async () => {
    const first = await visitShelf();
    await setDays(first.page, 9);
    await isSaved(first.page);
    const second = await secondTab(first);
    await reading(second).waitFor();
    await second.locator('tankful-parts-list').scrollIntoViewIfNeeded();
    await second.locator('.part[data-path=store] .part-open').click();
    const depth = second.getByRole('textbox', { name: 'Depth of water' });
    await depth.fill('30 in');
    await depth.press('Enter');
    const trouble = second.locator('#card-store-water_depth-trouble');
    await trouble.waitFor();
    expect(await trouble.innerText()).toMatch(
      /^Depth of water - expected .*no other tab.* - got "30 in" - work on a copy/,
    );
    expect(await depth.inputValue()).toBe('32 in');
    expect(await second.innerText('.card > [role=status]')).toBe(await trouble.innerText());
    await second.getByRole('button', { name: 'Work on a copy' }).first().click();
    await trouble.waitFor({ state: 'detached' });
    await second.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#card-store-water_depth')?.value === '30 in',
    );
  });

  it('works on a copy when asked, with what was refused', async () => {
    const first = await visitShelf();
    await setDays(first.page, 9);
    await isSaved(first.page);
    const second = await secondTab(first);
    await reading(second).waitFor();
    await setDays(second, 20);
    await second.getByRole('button', { name: 'Work on a copy' }).first().click();
    await reading(second).waitFor({ state: 'detached' });
    await isSaved(second);
    await setDays(first.page, 11);
    await isSaved(first.page);
    await expect
      .poll(() => stored(first.page))
      .toEqual(
        expect.arrayContaining([
          { name: 'Larch Hollow in January', days: 11, gestures: 2 },
          { name: 'Larch Hollow in January (2)', days: 20, gestures: 2 },
        ]),
      );
  });

  it('takes over when the first is closed in the midst of its work, and no gesture is lost', async () => {
    const first = await visitShelf();
    await setDays(first.page, 9);
    await isSaved(first.page);
    let writer = first.page;
    for (const round of [1, 2, 3]) {
      const reader = await secondTab(first);
      await reading(reader).waitFor();
      await hurry(writer, upTo(20 * round, 12));
      await writer.close();
      await reading(reader).waitFor({ state: 'detached' });
      await showsDays(reader, 20 * round + 11);
      writer = reader;
    }
    await setDays(writer, 8);
    await expect.poll(() => stored(writer)).toMatchObject([{ days: 8, gestures: 1 + 3 * 12 + 1 }]);
  });
});

describe('two tabs that open one design at the same moment', () => {
  it('agree on one that writes', async () => {
    const first = await visitShelf();
    await setDays(first.page, 9);
    await isSaved(first.page);
    const second = await secondTab(first);
    for (let race = 0; race < 5; race++) {
      await Promise.all([again(first.page), again(second)]);
      await Promise.all([first.page, second].map((page) => showsDays(page, 9)));
      await expect
        .poll(async () => (await reading(first.page).count()) + (await reading(second).count()))
        .toBe(1);
    }
  });

  it('lose nothing of either where the browser has no locks: the later one goes on with a copy', async () => {
    const first = await visitShelf();
    await first.context.addInitScript(() => {
      Object.defineProperty(navigator, 'locks', { value: undefined });
    });
    await again(first.page);
    await setDays(first.page, 9);
    await isSaved(first.page);
    const second = await secondTab(first);
    await showsDays(second, 9);
    await Promise.all([hurry(first.page, upTo(20, 10)), hurry(second, upTo(40, 10))]);
    await expect
      .poll(async () => (await stored(first.page)).map(({ days }) => days).toSorted())
      .toEqual([29, 49]);
    const notices = [first.page, second].map((page) => page.getByText('You go on with a copy').count());
    expect((await Promise.all(notices)).toSorted()).toEqual([0, 1]);
  });
});
