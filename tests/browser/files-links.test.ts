import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/build.mjs';
import type { Scenario } from '../../sim/index.ts';
import { linkOf } from '../../ui/web/app/files/link.ts';
import { violations } from './support/axe.ts';
import { type VisitOptions, visit } from './support/visit.ts';

const boat = JSON.parse(readFileSync(join(root, 'scenarios/boat.json'), 'utf8')) as Scenario & {
  name: string;
};

async function open(options: VisitOptions = {}) {
  const visited = await visit(options);
  const { page } = visited;
  await page.waitForSelector('.readout .moment');
  const told = (words: string | RegExp) =>
    page.getByRole('status').filter({ hasText: words }).first().waitFor();
  return { ...visited, told };
}

const shown = (page: Page, words: string) =>
  page.waitForFunction((wanted) => document.querySelector('.shown')?.textContent?.includes(wanted), words);

/** The design that stands in the page. */
const design = (page: Page) =>
  page.evaluate(() => {
    const element = document.querySelector('tankful-page') as unknown as {
      page: { store: { get(): { design: { scenario: unknown } } } };
    };
    return element.page.store.get().design.scenario;
  });

describe('a link', () => {
  it('is copied, and opens as a new design in another window', async () => {
    const { page, told, errors } = await open();
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.click('button[data-file=link]');
    await told(/Link copied, [\d,]+ letters/);
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link.length).toBeLessThan(2000);
    const other = await open({ path: new URL(link).hash });
    await other.told('The design of the link is open as a new one.');
    expect(await design(other.page)).toEqual(await design(page));
    expect(new URL(other.page.url()).hash).toBe('');
    expect([...errors, ...other.errors]).toEqual([]);
    expect(other.outsideRequests).toEqual([]);
  });

  it('opens also into a page that stands, and the design before stays on the shelf', async () => {
    const { page, told } = await open();
    await page.fill('input[name=days]', '4');
    await page.press('input[name=days]', 'Enter');
    await shown(page, '4 days');
    const hash = await linkOf(boat);
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await told('The design of the link is open as a new one.');
    await shown(page, boat.name);
    const designs = await page.locator('select[name=scenario] option').allInnerTexts();
    expect(designs.filter((name) => name.includes('Larch Hollow')).length).toBeGreaterThan(1);
  });

  it('opens when the page does, whatever design was last in it', async () => {
    const { page, told } = await open();
    await page.fill('input[name=days]', '4');
    await page.press('input[name=days]', 'Enter');
    await page.getByText('Saved on this computer').waitFor();
    const home = page.url();
    await page.goto('about:blank');
    await page.goto(home + (await linkOf(boat)));
    await told('The design of the link is open as a new one.');
    await shown(page, boat.name);
    await page.reload();
    await shown(page, boat.name);
  });

  it('stands in a field where the browser lets nothing be copied', async () => {
    const { page, told } = await open();
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error('refused'));
    });
    await page.click('button[data-file=link]');
    await told(/copy it by hand/);
    const field = page.getByLabel('Link to this design');
    expect(await field.inputValue()).toContain('#d=1');
    const selected = await field.evaluate((input: HTMLInputElement) => [
      document.activeElement === input,
      input.selectionEnd === input.value.length && input.selectionStart === 0,
    ]);
    expect(selected).toEqual([true, true]);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Close' }).click();
    await field.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.file)).toBe('open');
  });

  it('says that weather from a file is not in it, here and where it is opened', async () => {
    const hash = await linkOf({ ...boat, weather: { kind: 'file', file: 'valley.csv' } });
    const { page, told } = await open({ path: hash });
    await told(/open as a new one\. It cannot be run yet/);
    await page.waitForSelector('.missing-file');
    await page.getByRole('button', { name: 'Let the weather be made instead' }).click();
    await page.waitForSelector('.missing-file', { state: 'detached' });
    await shown(page, boat.name);
  });
});

describe('a link that is none', () => {
  const bomb = deflateRawSync(Buffer.alloc(60_000_000, ' '), { level: 9 }).toString('base64url');

  it.each([
    ['of another form', async () => '#d=9abcdefgh', /the link - .*the form "9".*load the page again/],
    ['cut short', async () => (await linkOf(boat)).slice(0, -20), /the link - .*copy the whole link again/],
    ['bent', async () => (await linkOf(boat)).replace(/.{9}$/, 'aaaaaaaaa'), /the link - .*again/],
    [
      'broken by a letter',
      async () => `#d=1abcd${encodeURIComponent('é é')}`,
      /the link - expected letters, digits/,
    ],
    ['a bomb', async () => `#d=1abcd${bomb}`, /the link - expected a design of at most 65.5 kB/],
    ['nothing', async () => '#d=', /the link - .*nothing/],
    ['no design', async () => linkOf({ format: 'other' }), /format - expected "tankful"/],
    ['a newer design', async () => linkOf({ format: 'tankful', version: 7 }), /version - .*left as it is/],
    ['not to be drawn', async () => linkOf({ ...boat, store: { depth: 3 } }), /store\.inside - /],
  ])('is told as %s, and the page is as it was', async (_, make, words) => {
    const { page, told, errors } = await open({ path: await make() });
    await told('The link was not opened. Nothing on the page has changed.');
    expect(await page.innerText('.file-notices')).toMatch(words);
    expect(await page.innerText('.shown')).toContain('Larch Hollow in January');
    expect(await page.locator('.run-tools progress').count()).toBe(0);
    expect(errors).toEqual([]);
  });
});
