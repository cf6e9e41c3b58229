/** The page without its server: after one visit, all of it. */
import { readdirSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { builtFolder, ownServer } from './support/own-server.ts';
import { visit } from './support/visit.ts';

/** Visits once, until the page says it keeps itself. */
async function visitOnce() {
  const server = await ownServer();
  const visited = await visit({ home: server.home, keeping: true });
  // Ready is a moment earlier than at work in this window.
  await visited.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return { server, ...visited };
}

async function ran(page: Page, words: RegExp): Promise<void> {
  await page.waitForFunction(
    (source) =>
      new RegExp(source).test(document.querySelector('.shown:not(.stale .shown)')?.textContent ?? ''),
    words.source,
  );
}

describe('the page, visited once and its server gone', () => {
  it('opens, runs designs and shows every room', async () => {
    const { server, page, errors } = await visitOnce();
    await server.stop();
    await expect(fetch(server.home)).rejects.toThrow();
    await page.reload();
    await page.waitForSelector('.answer-lines li');

    await page.selectOption('select[name=scenario]', 'boat');
    await ran(page, /^\s*Eleven gallons/);
    await page.fill('input[name=days]', '2');
    await page.press('input[name=days]', 'Enter');
    await ran(page, /, 2 days/);

    await page.locator('tankful-heat').scrollIntoViewIfNeeded();
    await page.waitForSelector('tankful-heat svg');
    await page.locator('tankful-figures').scrollIntoViewIfNeeded();
    await page.waitForSelector('.figure dd');
    await page.getByRole('button', { name: 'Pin this design' }).click();
    await page.waitForSelector('tankful-compare h2');
    await page.locator('tankful-parts-list').scrollIntoViewIfNeeded();
    await page.locator('.part-open').first().click();
    await page.waitForSelector('.card');
    expect(errors).toEqual([]);
  });

  it('has every file of its build', async () => {
    const { server, page } = await visitOnce();
    await server.stop();
    const files = readdirSync(builtFolder, { recursive: true, encoding: 'utf8' })
      .filter((path) => statSync(join(builtFolder, path)).isFile() && path !== 'offline.js')
      .map((path) => (path === 'index.html' ? '' : path.split(sep).join('/')));
    expect(files.length).toBeGreaterThan(20);
    const lost = await page.evaluate(async (paths) => {
      const got = await Promise.all(
        paths.map((path) =>
          fetch(path).then(
            ({ ok }) => ok,
            () => false,
          ),
        ),
      );
      return paths.filter((_, i) => !got[i]);
    }, files);
    expect(lost).toEqual([]);
  });
});

describe('the page', () => {
  it('can be installed', async () => {
    const { page } = await visitOnce();
    const session = await page.context().newCDPSession(page);
    const { errors, data } = await session.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    expect(JSON.parse(data ?? '')).toMatchObject({ name: 'Tankful', display: 'standalone' });
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    expect(installabilityErrors).toEqual([]);
  });

  it('asks for its keeper after it is drawn', async () => {
    const server = await ownServer();
    const { page } = await visit({ home: server.home, keeping: true });
    await page.evaluate(() => navigator.serviceWorker.ready);
    const [drawn_ms, asked_ms] = await page.evaluate(() => {
      const newer = performance
        .getEntriesByType('resource')
        .find(({ name }) => name.includes('tankful-newer'));
      return [performance.getEntriesByName('first-contentful-paint')[0].startTime, newer?.startTime];
    });
    expect(asked_ms).toBeGreaterThan(drawn_ms ?? Number.POSITIVE_INFINITY);
  });
});
