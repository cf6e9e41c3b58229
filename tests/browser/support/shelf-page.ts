/** What tests of the shelf do on the page, as a person does it. */
import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { type VisitOptions, visit } from './visit.ts';

export interface ShelfVisit {
  page: Page;
  context: BrowserContext;
  errors: string[];
}

/** A page whose shelf is awake. */
export async function visitShelf(options: VisitOptions = {}): Promise<ShelfVisit> {
  const { page, errors } = await visit(options);
  await awake(page);
  return { page, context: page.context(), errors };
}

async function awake(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    /An example|Saved|Not saved|another tab/.test(document.querySelector('tankful-kept')?.textContent ?? ''),
  );
}

/** Errors but for what a page that was loaded again had no time to load. */
export const wrong = (errors: string[]) => errors.filter((error) => !error.includes('ERR_ABORTED'));

/** Another tab of the same browser. */
export async function secondTab({ context }: ShelfVisit): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject('pageUrl'), { waitUntil: 'load' });
  await awake(page);
  return page;
}

/** The page again, as at the next visit. */
export async function again(page: Page): Promise<void> {
  await page.reload({ waitUntil: 'load' });
  await awake(page);
}

export async function setDays(page: Page, days: number): Promise<void> {
  await page.fill('input[name=days]', String(days));
  await page.press('input[name=days]', 'Enter');
}

export async function showsDays(page: Page, days: number): Promise<void> {
  await page.waitForFunction(
    (wanted) => document.querySelector<HTMLInputElement>('input[name=days]')?.value === wanted,
    String(days),
  );
}

export async function isSaved(page: Page): Promise<void> {
  await page.getByText(/^Saved on this computer \d\d:\d\d$/).waitFor();
}

/** Every design in the browser's database: its days, and how many gestures its log holds. */
export async function stored(page: Page): Promise<{ name: string; days: number; gestures: number }[]> {
  return page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const db = await asked(indexedDB.open('tankful'));
    const tx = db.transaction(['designs', 'log']);
    const designs = await asked(tx.objectStore('designs').getAll());
    const log = (await asked(tx.objectStore('log').getAll())) as { design: string }[];
    db.close();
    return designs.map(({ id, name, scenario }) => ({
      name,
      days: scenario.run.days,
      gestures: log.filter(({ design }) => design === id).length,
    }));
  });
}
