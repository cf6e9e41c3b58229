/** How sure one is of a value, said on its card; doubts and the next dollar as the page tells them. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { openCardPage } from './support/card-page.ts';
import type { CardStand } from './support/card-stand.ts';
import { looks, screenshot, visit } from './support/visit.ts';

declare const stand: CardStand;

describe('how sure one is', () => {
  it('is said by the keyboard, goes into the file, and says how far it reaches', async () => {
    const { page, open, heard, violations: wrong } = await openCardPage();
    await open('store');
    await heard();
    const doubt = page.locator('.entry', { hasText: 'Depth of water' }).locator('details.doubt');
    expect(await doubt.locator('summary').innerText()).toMatch(/^How sure: sure/);
    await doubt.locator('summary').focus();
    await page.keyboard.press('Enter');
    await doubt.getByRole('radio', { name: 'sure', exact: true }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await heard()).toEqual([
      { path: 'doubts', value: [{ input: 'store.water_depth', unsure: 'a little' }] },
    ]);
    await page.keyboard.press('ArrowRight');
    expect(await doubt.innerText()).toContain('Believed from 22.4 in to 3.47 ft.');
    expect(await doubt.locator('summary').innerText()).toMatch(/^How sure: a lot/);
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    expect(await page.evaluate(() => stand.scenario.doubts)).toBeUndefined();
    expect(await wrong()).toEqual([]);
  });

  it('between two ends keeps what was typed, and says what is wrong with it', async () => {
    const { page, open, violations: wrong } = await openCardPage();
    await open('store');
    const doubt = page.locator('.entry', { hasText: 'Depth of water' }).locator('details.doubt');
    await doubt.locator('summary').click();
    await doubt.getByRole('radio', { name: 'between' }).check();
    const highest = doubt.getByRole('textbox', { name: /^Highest/ });
    await highest.fill('5');
    await highest.press('Tab');
    expect(await doubt.locator('.trouble').innerText()).toMatch(
      /^Highest - expected .* - got "5" - add the unit/,
    );
    expect(await highest.inputValue()).toBe('5');
    expect(await highest.getAttribute('aria-invalid')).toBe('true');
    expect(await wrong()).toEqual([]);
    await highest.fill('34 in');
    await highest.press('Tab');
    await doubt.locator('.trouble').waitFor({ state: 'detached' });
    expect(await page.evaluate(() => stand.scenario.doubts)).toMatchObject([
      { input: 'store.water_depth', unsure: 'between', to: '34 in' },
    ]);
  });
});

/** The small boat, which runs in a blink, with one of its answers worked out and unfolded. */
async function asked(title: string, before: (page: Page) => Promise<void> = async () => {}) {
  const visited = await visit();
  const { page } = visited;
  await page.getByLabel('Design').selectOption({ label: 'Eleven gallons aboard' });
  await page.locator('.shown', { hasText: 'Eleven gallons aboard' }).waitFor();
  await before(page);
  await page.locator('.to-ask').getByRole('button', { name: title }).click();
  const answer = page.locator('.answer-lines > li', { hasText: title });
  await answer.locator('summary').waitFor({ timeout: patience_ms });
  await answer.locator('summary').click();
  await answer.locator('.answer-view').waitFor();
  return { ...visited, answer };
}

/** On the store's card: a lot unsure of the depth of its water. */
async function unsureOfDepth(page: Page): Promise<void> {
  await page.locator('[data-path="store"] .part-open').click();
  const doubt = page.locator('.card .entry', { hasText: 'Depth of water' }).locator('details.doubt');
  await doubt.locator('summary').click();
  await doubt.getByRole('radio', { name: 'a lot' }).check();
  await doubt.getByText('Believed from').waitFor();
}

/** A hundred short runs, beside whatever else the machine does. */
const patience_ms = 150_000;

/** Leaves a picture of every look, each once nothing is wider than its window. */
async function looked(page: Page, name: string): Promise<void> {
  for (const { width, scheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    // Charts follow their new width a frame later.
    await page.waitForFunction(
      () => document.documentElement.scrollWidth <= document.documentElement.clientWidth,
    );
    await screenshot(page, `${name}-${width}-${scheme}`);
  }
}

describe('doubts on the page', () => {
  it(
    'are told by runs, with a thin line for each, and the same numbers as a table',
    async () => {
      const { page, answer, errors } = await asked('Doubts', unsureOfDepth);
      const said = /In (\d+) runs with \d+ unsure inputs varied the store was/.exec(await answer.innerText());
      const runs = Number(said?.[1]);
      // A store that is filled past its rim cannot be run: those are told of, and left out.
      expect(runs).toBeGreaterThan(5);
      expect(await answer.locator('.minds').innerText()).toContain(
        `${20 - runs} runs of 20 could not be made`,
      );
      expect(await answer.locator('.answer-told').innerText()).toContain('Varied: 1 that you marked');
      const thin = answer.locator('tankful-curve .stage path.line.thin');
      await thin.last().waitFor();
      expect(await thin.count()).toBe(runs);
      await looked(page, 'doubts');
      await answer.getByRole('button', { name: /^Show as table/ }).click();
      const heads = await answer.locator('tankful-curve th[scope=col]').allInnerTexts();
      expect(heads.slice(1, 4)).toEqual(['as it stands', 'least of all runs', 'most']);
      expect(heads.slice(4)).toHaveLength(runs);
      await answer.getByRole('button', { name: /^Engine generator.*standby|stopped engine/i }).click();
      await page.locator('.card', { hasText: 'Engine generator' }).waitFor();
      expect(await violations(page)).toEqual([]);
      expect(errors).toEqual([]);
    },
    2 * patience_ms,
  );
});

describe('the next dollar on the page', () => {
  it(
    'tells what gains most for the money, what each change costs, and what is for safety',
    async () => {
      const { page, answer, errors } = await asked('The next dollar');
      expect(await answer.innerText()).toMatch(/for the money, .* for \$/);
      const rows = answer.locator('.answer-table tbody tr');
      expect(await rows.count()).toBeGreaterThan(4);
      // A danger, though no run has a caution of the kind.
      expect(await answer.locator('.minds .caution.danger').allInnerTexts()).toEqual(
        expect.arrayContaining([expect.stringMatching(/^Danger: .*relief without a valve before it/)]),
      );
      await looked(page, 'next');
      expect(await violations(page)).toEqual([]);
      expect(errors).toEqual([]);
    },
    2 * patience_ms,
  );
});
