/** A newer version of the page waits until it is asked for. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { writeKeeper } from '../../scripts/offline.mjs';
import { violations } from './support/axe.ts';
import { builtFolder, ownServer } from './support/own-server.ts';
import { screenshot, visit } from './support/visit.ts';

const folder = mkdtempSync(join(tmpdir(), 'tankful-newer-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The build with another title, and with a part that is loaded later under another name, as a change of it gives it. */
async function newerBuild(): Promise<string> {
  const newer = join(folder, 'web');
  cpSync(builtFolder, newer, { recursive: true });
  const later = readdirSync(join(newer, 'assets')).find((name) => /^tankful-heat-.*\.js$/.test(name)) ?? '';
  const renamed = 'tankful-heat-newer.js';
  renameSync(join(newer, 'assets', later), join(newer, 'assets', renamed));
  for (const entry of readdirSync(newer, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (!/\.(html|js)$/.test(entry.name)) continue;
    const text = readFileSync(path, 'utf8').replaceAll(later, renamed);
    writeFileSync(path, text.replace('<title>', '<title>Newer: '));
  }
  await writeKeeper(newer);
  return newer;
}

const offer = (page: Page) => page.locator('tankful-newer', { hasText: 'A newer version is ready.' });

describe('a newer version', () => {
  it('waits until asked, and then has the same design; another window stays with the older one', async () => {
    const newer = await newerBuild();
    const server = await ownServer();
    const { page, errors } = await visit({ home: server.home, keeping: true });
    await page.evaluate(() => navigator.serviceWorker.ready);
    expect(await page.locator('tankful-newer').innerText()).toBe('');

    await page.fill('input[name=days]', '3');
    await page.press('input[name=days]', 'Enter');
    await page.locator('tankful-kept', { hasText: /Saved/ }).waitFor();

    await server.serve(newer);
    const other = await page.context().newPage();
    await other.goto(server.home);
    await offer(other).waitFor();
    await offer(page).waitFor();
    for (const each of [page, other]) {
      await each.waitForTimeout(500);
      expect(await each.title()).toMatch(/^Tankful/);
    }
    expect(await violations(page)).toEqual([]);
    await screenshot(page, 'newer-version');

    await page.getByRole('button', { name: 'Use it now' }).click();
    await page.waitForFunction(() => document.title.startsWith('Newer: '));
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name=days]')?.value === '3',
    );
    expect(await page.locator('tankful-newer').count()).toBeLessThanOrEqual(1);
    expect(await other.title()).toMatch(/^Tankful/);

    // Not loaded yet, and under a name that the newer build does not have.
    expect(await other.evaluate(() => customElements.get('tankful-heat') === undefined)).toBe(true);
    await server.stop();
    await other.locator('tankful-heat').scrollIntoViewIfNeeded();
    await other.waitForSelector('tankful-heat svg');
    await page.locator('tankful-heat').scrollIntoViewIfNeeded();
    await page.waitForSelector('tankful-heat svg');
    await other.reload();
    expect(await other.title()).toMatch(/^Newer: /);
    expect(errors).toEqual([]);
  }, 120_000);
});
