/** Saves from the page as a person would, and gives back what is in the file. */
import { buffer } from 'node:stream/consumers';
import type { Download, Locator, Page } from 'playwright-core';

/** Without a browser that asks for a place, files go to the downloads: a test can read those. */
export async function withoutPicker(page: Page): Promise<void> {
  await page.evaluate(() => Object.assign(window, { showSaveFilePicker: undefined }));
}

export async function downloaded(
  page: Page,
  press: () => Promise<unknown>,
): Promise<{ name: string; bytes: Buffer }> {
  const [download]: [Download, unknown] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), bytes: await buffer(await download.createReadStream()) };
}

/** Opens a chart's menu and chooses what its words begin with. */
export async function savedChart(
  page: Page,
  button: Locator,
  words: RegExp,
): Promise<{ name: string; bytes: Buffer }> {
  await button.click();
  return downloaded(page, () => page.getByRole('menuitem', { name: words }).click());
}

/** Cells of a CSV without quoted line breaks. */
export function cellsOf(bytes: Buffer): string[][] {
  return bytes
    .toString('utf8')
    .trimEnd()
    .split('\r\n')
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)]
        .slice(0, -1)
        .map(([, cell]) => cell.replace(/^"|"$/g, '').replaceAll('""', '"')),
    );
}
