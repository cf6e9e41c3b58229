/** The page in one file, opened from a disk: the whole job, and nothing asked of anybody. */

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { ensureBuilt, root } from '../../scripts/build.mjs';
import type { PageState } from '../../ui/web/app/page-state.ts';
import { visit } from './support/visit.ts';

interface PageElement extends Element {
  page: { store: { get(): PageState } };
}

const home = pathToFileURL(join(root, 'dist/tankful.html')).href;
beforeAll(() => ensureBuilt('single'), 180_000);

/** Waits for a run that nothing has overtaken. */
async function ran(page: Page, words: string): Promise<void> {
  await page.waitForFunction(
    (said) => document.querySelector('.run-line:not(.stale) .shown')?.textContent?.includes(said),
    words,
  );
}

describe('the page in one file', () => {
  it('opens with the demo solved, runs a change, answers, and shows the days', async () => {
    const { page, errors, outsideRequests } = await visit({ home });
    await page.waitForSelector('.answer-lines li');
    expect(await page.innerText('.readout')).toMatch(/\d °F/);

    await page.locator('.handle[data-key=water]').focus();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('Enter');
    await page.fill('input[name=days]', '3');
    await page.press('input[name=days]', 'Enter');
    await ran(page, ', 3 days');
    expect(await page.locator('.stage svg path.line').count()).toBeGreaterThanOrEqual(3);

    await page.waitForFunction(() => {
      const { answers, design } = (document.querySelector('tankful-page') as PageElement).page.store.get();
      return answers.coil.at === 'done' && answers.coil.of === design.scenario;
    });

    await page.selectOption('select[name=scenario]', 'boat');
    await ran(page, await page.locator('select[name=scenario] option[value=boat]').innerText());
    await page.locator('tankful-parts-list').scrollIntoViewIfNeeded();
    await page.locator('.part-open').first().click();
    await page.waitForSelector('.card');
    await page.locator('tankful-heat').scrollIntoViewIfNeeded();
    await page.waitForSelector('tankful-heat svg');
    expect(errors).toEqual([]);
    expect(outsideRequests).toEqual([]);
  }, 120_000);

  it('lets in its own script and style by their hashes, workers of its own making, and nothing else', async () => {
    const { page } = await visit({ home });
    const policy = await page.getAttribute('meta[http-equiv=Content-Security-Policy]', 'content');
    expect(policy).toMatch(/default-src 'none'; script-src 'sha256-[^ ]+'; style-src 'sha256-[^ ]+'; /);
    expect(policy).not.toMatch(/unsafe|http|\*|'self'|connect-src/);
    const refused = await page.evaluate(() => fetch('https://example.org/').catch((error) => String(error)));
    expect(refused).toMatch(/Failed to fetch/);
  });
});
