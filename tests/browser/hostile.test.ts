/** Names and files made to do harm, on the built page: they stand there as text, or are refused, and do nothing. */
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import demoFile from '../../scenarios/demo.json';
import { linkOf } from '../../ui/web/app/files/link.ts';
import { type Visit, visit } from './support/visit.ts';

const markup = '"><img src=x onerror="hacked=1"><script>hacked=1</script>';
const named = (letter: string) => `${letter} ${markup}`;

/** The demo with markup in every text it has. */
function hostileDesign(): typeof demoFile {
  const design = structuredClone(demoFile);
  const names: Record<string, string> = {
    household: named('h'),
    engine: named('e'),
    collector: named('c'),
  };
  design.name = named('d');
  design.note = markup.repeat(8);
  design.run.days = 1;
  for (const coil of design.coils) coil.name = names[coil.name];
  for (const user of [design.engine, design.collector, design.taps]) user.coil = names[user.coil];
  design.engine.name = named('E');
  design.collector.name = named('C');
  return Object.assign(design, { prices: { currency: '<b>"&', dated: markup } });
}

const folder = mkdtempSync(join(tmpdir(), 'tankful-hostile-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, text: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const open = (page: Page, ...paths: string[]) => page.setInputFiles('input[data-file=open]', paths);

/** Nothing of the markup became an element, ran, was fetched or was refused by the policy: it never got that far. */
async function expectHarmless({ page, errors, outsideRequests }: Visit): Promise<void> {
  const found = await page.evaluate(() => ({
    hacked: 'hacked' in globalThis,
    elements: document.querySelectorAll('img, b:not([class]), [onerror], body script:not([type])').length,
  }));
  expect(found).toEqual({ hacked: false, elements: 0 });
  expect(errors).toEqual([]);
  expect(outsideRequests).toEqual([]);
}

async function shown(page: Page): Promise<void> {
  await page.waitForFunction(
    (name) => document.querySelector('.run-line:not(.stale) .shown')?.textContent?.includes(name),
    named('d'),
  );
}

/** Brings every room of the page into sight, so that all of it is there. */
async function walkThrough(page: Page): Promise<void> {
  for (const room of ['tankful-parts-list', 'tankful-heat', 'tankful-figures', 'footer']) {
    await page.locator(room).first().scrollIntoViewIfNeeded();
    await page.waitForTimeout(200);
  }
  await page.waitForSelector('.figure dd');
}

describe('a design with markup in every name', () => {
  it('is shown as it is written, in every room', async () => {
    const visited = await visit();
    const { page } = visited;
    await open(page, file('"><img src=x onerror=hacked=1>.json', JSON.stringify(hostileDesign())));
    await shown(page);
    await walkThrough(page);
    const titles = await page.locator('.part-title').allInnerTexts();
    expect(titles.filter((title) => title.includes(markup)).length).toBeGreaterThanOrEqual(5);
    const parts = await page.locator('.part-open').count();
    expect(parts).toBeGreaterThan(5);
    for (let i = 0; i < parts; i++) {
      await page.locator('.part-open').nth(i).click();
      await page.waitForSelector('.card');
    }
    await page.getByRole('button', { name: 'Pin this design' }).click();
    await page.waitForSelector('tankful-compare h2');
    await expectHarmless(visited);
  }, 120_000);

  it('comes by a link as well, and by what a hand types', async () => {
    const visited = await visit({ path: await linkOf(hostileDesign()) });
    const { page } = visited;
    await shown(page);
    await page.locator('tankful-parts-list').scrollIntoViewIfNeeded();
    await page.locator('.part-open').first().click();
    const box = page.locator('.card input[type=text]').first();
    await box.fill(markup);
    await box.press('Enter');
    await page.waitForTimeout(500);
    await expectHarmless(visited);
  });
});

describe('a file made to do harm', () => {
  const deep = '{"a":'.repeat(500_000);
  const demo = JSON.stringify(demoFile);
  const files: Record<string, () => string> = {
    'a hundred megabytes of nothing': () => {
      const path = file('huge.json', '');
      truncateSync(path, 100_000_000);
      return path;
    },
    'a hundred megabytes of weather': () => {
      const path = file('huge.csv', 'time,air (F)\n');
      truncateSync(path, 100_000_000);
      return path;
    },
    'half a million levels': () => file('deep.json', deep.slice(0, 1_000_000)),
    'numbers past all numbers': () => file('infinite.json', demo.replace('"days":7', '"days":1e999')),
    'names that every object has': () =>
      file('proto.json', demo.replace('"format"', '"__proto__":{"hacked":1},"constructor":1,"format"')),
    'ten thousand coils': () =>
      file('coils.json', JSON.stringify({ ...demoFile, coils: Array(10_000).fill(demoFile.coils[0]) })),
    'bytes of no encoding': () => file('bytes.json', new Uint8Array([0x7b, 0, 0xff, 0xfe, 0, 0, 0xc3, 0x28])),
    'half a letter': () => file('half.json', demo.replace('Larch Hollow', '\\ud800')),
    'a page': () => file('page.json', `<!doctype html><script>hacked=1</script>${markup}`),
    'a log with markup for heads': () => file('log.csv', `time,${markup},=1+1\n2027-01-09 00:00,1,2\n`),
  };

  it.each(Object.keys(files))('is told about, and the page goes on: %s', async (name) => {
    const visited = await visit();
    const { page } = visited;
    await page.waitForSelector('.readout .moment');
    await open(page, files[name]());
    await page.waitForSelector('.file-notices [role=status] p');
    // Half a letter is part of a name like another; all else is wrong.
    if (name !== 'half a letter') await page.locator('.troubles li').first().waitFor();
    await page.selectOption('select[name=scenario]', 'boat');
    await page.waitForFunction(() =>
      document.querySelector('.run-line:not(.stale) .shown')?.textContent?.includes('Eleven gallons'),
    );
    await expectHarmless(visited);
  });
});
