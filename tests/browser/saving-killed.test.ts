/** A browser that is killed 250 ms after a gesture, twenty times: the gesture and its undo are there at the next visit. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { newProfile, startBrowser } from './support/own-browser.ts';

const times = 20;
const after_ms = 250;

/** Number of days the design in the page runs over. */
const days = (page: Page) => page.inputValue('input[name=days]');

async function awake(page: Page): Promise<void> {
  await page.waitForSelector('.kept .saved:not(:empty)');
}

describe('a browser that is killed a quarter of a second after a gesture', () => {
  it(`has it at the next visit, ${times} times in ${times}, and what was done can be undone`, async () => {
    const profile = newProfile();
    let recovered = 0;
    for (let time = 1; time <= times; time++) {
      const browser = await startBrowser(profile);
      const page = await browser.open();
      await awake(page);
      if (time > 1) {
        await page.waitForFunction(
          (wanted) => document.querySelector<HTMLInputElement>('input[name=days]')?.value === wanted,
          String(10 + time - 1),
        );
        expect(await page.locator('.kept .step').first().innerText()).toBe('Undo: number of days');
        recovered++;
      }
      await page.fill('input[name=days]', String(10 + time));
      await page.press('input[name=days]', 'Enter');
      await new Promise((done) => setTimeout(done, after_ms));
      await browser.kill();
    }
    const browser = await startBrowser(profile);
    const page = await browser.open();
    await awake(page);
    await page.waitForFunction(
      (wanted) => document.querySelector<HTMLInputElement>('input[name=days]')?.value === wanted,
      String(10 + times),
    );
    recovered++;
    expect(recovered).toBe(times);
    for (let time = times; time > 0; time--) await page.keyboard.press('Control+z');
    expect(await days(page)).toBe('7');
    await browser.kill();
  }, 300_000);
});
