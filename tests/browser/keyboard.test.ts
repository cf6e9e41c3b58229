/** The main job by the keyboard alone, from the first Tab to the build sheet; and the whole page under a finger. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { visit } from './support/visit.ts';

/** More presses than the page has stops: who has not come by then does not come. */
const MOST_STOPS = 400;

/** Presses Tab until what has the focus is called so and is of a kind; every stop on the way must show that it has it. */
async function tabTo(page: Page, name: RegExp, kind = '*', key = 'Tab'): Promise<void> {
  for (let presses = 0; presses < MOST_STOPS; presses++) {
    await page.keyboard.press(key);
    const stop = await page.evaluate((wanted) => {
      const at = document.activeElement as HTMLElement;
      const label = at.id && document.querySelector(`label[for="${CSS.escape(at.id)}"]`)?.textContent;
      const { outlineStyle, outlineWidth } = getComputedStyle(at);
      return {
        html: at.outerHTML.slice(0, 160),
        name: (at.getAttribute('aria-label') || label || at.textContent || '').replace(/\s+/g, ' ').trim(),
        shown: at === document.body || (outlineStyle !== 'none' && outlineWidth !== '0px'),
        fits: at.matches(wanted),
      };
    }, kind);
    expect(stop.shown, `focus on ${stop.html} can be seen`).toBe(true);
    if (stop.fits && name.test(stop.name)) return;
  }
  throw new Error(`no stop called ${name} within ${MOST_STOPS} presses`);
}

it('the job is done without a pointer: read an answer, change the water, undo, pin, change, compare, print', async () => {
  const { page, errors } = await visit();
  await page.waitForSelector('.answer-lines li');

  await tabTo(page, /^The household coil/);
  await page.keyboard.press('Enter');
  await page.waitForSelector('.answer-lines tankful-curve svg');

  await tabTo(page, /^Pin this design/);
  await page.keyboard.press('Enter');
  await page.waitForSelector('tankful-compare');

  // The handle of the water line in the drawing, then the number itself in the card.
  await tabTo(page, /^Water|^Depth of water/, '[role=slider]');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForSelector('tankful-compare table');
  await page.keyboard.press('Control+z');
  await page.getByText('Nothing yet').waitFor();

  await tabTo(page, /^Store/, '.part-open');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.closest('tankful-card'));
  await tabTo(page, /^Depth of water/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('75 cm');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() =>
    /29|75 cm/.test(document.querySelector('tankful-compare')?.textContent ?? ''),
  );

  await tabTo(page, /^Build sheet/, 'button', 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.waitForSelector('tankful-sheet h1');
  await tabTo(page, /^Back to the design/);
  await page.keyboard.press('Enter');
  await page.waitForSelector('tankful-sheet', { state: 'detached' });
  expect(errors).toEqual([]);
});

it('everything to press has 44 px for a finger, on the whole page', async () => {
  const { page } = await visit({ width: 390 });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
  await page.waitForSelector('.answer-lines li');
  await page.locator('.answer-lines summary').first().click();
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await page.waitForSelector('.figure-groups');
  const small = await page
    .locator(
      ':is(button, summary, select, label:has(:is([type=radio], [type=checkbox])), input:not([type=range], [type=radio], [type=checkbox]))',
    )
    .evaluateAll((targets) =>
      targets
        .filter((target) => target.checkVisibility() && target.getClientRects().length > 0)
        .map((target) => ({ of: target.outerHTML.slice(0, 120), ...target.getBoundingClientRect().toJSON() }))
        .filter(({ height, width }) => height < 43.5 || width < 24)
        .map(({ of, height, width }) => `${Math.round(width)} x ${Math.round(height)}: ${of}`),
    );
  expect(small).toEqual([]);
});
