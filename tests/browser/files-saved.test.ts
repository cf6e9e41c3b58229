import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/build.mjs';
import { readScenario } from '../../sim/index.ts';
import { downloaded, withoutPicker } from './support/saved.ts';
import { visit } from './support/visit.ts';

async function open() {
  const visited = await visit();
  const { page } = visited;
  await page.waitForSelector('.readout .moment');
  const told = (words: string | RegExp) =>
    page.getByRole('status').filter({ hasText: words }).first().waitFor();
  return { ...visited, told };
}

/** A browser that asks for a place, which a test gives: a file in the page's own part of the disk. */
async function withPicker(page: Page, name: string): Promise<void> {
  await page.evaluate((own) => {
    Object.assign(window, {
      asked: null,
      async showSaveFilePicker(options: { suggestedName: string }) {
        Object.assign(window, { asked: options.suggestedName });
        return (await navigator.storage.getDirectory()).getFileHandle(own, { create: true });
      },
    });
  }, name);
}

const stored = (page: Page, name: string) =>
  page.evaluate(async (own) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle(own);
    return {
      asked: (window as unknown as { asked: string }).asked,
      text: await (await handle.getFile()).text(),
    };
  }, name);

describe('a design that is saved', () => {
  it('is a download that reads as the same design, here and in the terminal', async () => {
    const { page, told, errors } = await open();
    await withoutPicker(page);
    await page.fill('input[name=days]', '3');
    await page.press('input[name=days]', 'Enter');
    await page.waitForFunction(() => document.querySelector('.shown')?.textContent?.includes('3 days'));
    const { name, bytes } = await downloaded(page, () => page.click('button[data-file=save]'));
    expect(name).toMatch(/^larch-hollow-in-january.*\.json$/);
    await told(`Handed to the browser as ${name}`);
    const json = JSON.parse(bytes.toString('utf8'));
    expect(json.run.days).toBe(3);
    expect(readScenario(json).ok).toBe(true);
    const folder = mkdtempSync(join(tmpdir(), 'tankful-saved-'));
    try {
      const path = join(folder, name);
      writeFileSync(path, bytes);
      const checked = execFileSync('node', [join(root, 'scripts/tankful.mjs'), 'check', path], {
        encoding: 'utf8',
      });
      expect(checked).toContain('Larch Hollow');
    } finally {
      rmSync(folder, { recursive: true });
    }
    await page.setInputFiles('input[data-file=open]', [
      { name, mimeType: 'application/json', buffer: bytes },
    ]);
    await told(`${name} is open as a new design.`);
    expect(errors).toEqual([]);
  });

  it('goes to the place the person chooses where the browser can ask', async () => {
    const { page, told } = await open();
    await withPicker(page, 'mine.json');
    await page.click('button[data-file=save]');
    await told('Saved as mine.json.');
    const { asked, text } = await stored(page, 'mine.json');
    expect(asked).toBe('larch-hollow-in-january.json');
    expect(readScenario(JSON.parse(text)).ok).toBe(true);
  });

  it('is not told of when the person thinks better of it, and told of when the disk refuses', async () => {
    const { page, told } = await open();
    const refuse = (kind: string) =>
      page.evaluate((name) => {
        Object.assign(window, {
          showSaveFilePicker: () => Promise.reject(new DOMException('The disk is full', name)),
        });
      }, kind);
    await refuse('AbortError');
    await page.click('button[data-file=save]');
    await page.waitForSelector('.file-notices', { state: 'attached' });
    expect(await page.innerText('.file-notices')).toBe('');
    await refuse('QuotaExceededError');
    await page.click('button[data-file=save]');
    await told(/Not saved: The disk is full\. Try another place/);
  });

  it('has its weather file still when the page is loaded again', async () => {
    const { page, told } = await open();
    const text = 'time (start),air (C),sun (W/m2)\n2027-01-01 00:00,1,0\n';
    const chosen = { name: 'valley.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
    await page.setInputFiles('input[data-file=open]', [chosen]);
    await told('The weather of this design now comes from valley.csv.');
    // An hour is no year: what is wrong is told, and nothing is lost.
    await page.locator('.troubles li').first().waitFor();
    await page.getByText('Saved on this computer').waitFor();
    await page.reload();
    const attached = () =>
      page.evaluate(() => {
        const element = document.querySelector('tankful-page') as unknown as {
          page: { store: { get(): { design: { attached?: unknown } } } };
        } | null;
        return element?.page.store.get().design.attached;
      });
    await expect.poll(attached).toEqual({ 'valley.csv': text });
    await page.locator('.troubles li').first().waitFor();
    expect(await page.locator('.missing-file').count()).toBe(0);
  });

  it('names its weather file, which can be saved beside it', async () => {
    const { page, told } = await open();
    await withoutPicker(page);
    const text = 'time (start),air (C),sun (W/m2)\n2027-01-01 00:00,1,0\n';
    await page.setInputFiles('input[data-file=open]', [
      { name: 'valley.csv', mimeType: 'text/csv', buffer: Buffer.from(text) },
    ]);
    await told('The weather of this design now comes from valley.csv.');
    const { bytes } = await downloaded(page, () => page.click('button[data-file=save]'));
    expect(JSON.parse(bytes.toString('utf8')).weather).toEqual({ kind: 'file', file: 'valley.csv' });
    const aside = page.getByRole('button', { name: 'Save valley.csv too' });
    const weather = await downloaded(page, () => aside.click());
    expect(weather.name).toBe('valley.csv');
    expect(weather.bytes.toString('utf8')).toBe(text);
  });
});
