/** A page as the browser prints it: pages, their words, and where the words stand. */
import type { Page } from 'playwright-core';
import { extractTextItems, getDocumentProxy } from 'unpdf';

export interface PrintedPage {
  width_pt: number;
  height_pt: number;
  text: string;
  /** Box around all words, from the lower left corner [pt]. */
  words: { left: number; right: number; bottom: number; top: number };
}

export async function printed(page: Page, format: 'Letter' | 'A4'): Promise<PrintedPage[]> {
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format, printBackground: true })));
  const { items } = await extractTextItems(pdf);
  return Promise.all(
    items.map(async (all, i) => {
      const { view } = await pdf.getPage(i + 1);
      const found = all.filter(({ str }) => str.trim() !== '');
      return {
        width_pt: view[2],
        height_pt: view[3],
        text: all.map(({ str, hasEOL }) => str + (hasEOL ? ' ' : '')).join(''),
        words: {
          left: Math.min(...found.map(({ x }) => x)),
          right: Math.max(...found.map(({ x, width }) => x + width)),
          bottom: Math.min(...found.map(({ y }) => y)),
          // A letter reaches four fifths of its height above its line.
          top: Math.max(...found.map(({ y, height }) => y + 0.8 * height)),
        },
      };
    }),
  );
}
