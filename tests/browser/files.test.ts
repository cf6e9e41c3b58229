import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/build.mjs';
import { readScenario } from '../../sim/index.ts';
import { plainTable } from '../sim/parts/weather/files.ts';
import { violations } from './support/axe.ts';
import { visit } from './support/visit.ts';

const textOf = (name: string) => readFileSync(join(root, 'scenarios', name), 'utf8');
const boat = textOf('boat.json');
const demo = JSON.parse(textOf('demo.json'));
const json = (text: string, name = 'boat.json') => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});
const csv = (text: string, name = 'valley.csv') => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
});

/** A year of hourly weather that freezes the place solid. */
function frozenYear(scenario: unknown): string {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('expected the design to be sound');
  return plainTable({ ...read.plant.weather, air_C: new Float64Array(8760).fill(-20) }).join('\n');
}

async function open(options: Parameters<typeof visit>[0] = {}) {
  const visited = await visit(options);
  const { page } = visited;
  await page.waitForSelector('.readout .moment');
  const told = (words: string | RegExp) =>
    page.getByRole('status').filter({ hasText: words }).first().waitFor();
  const choose = (...files: ReturnType<typeof json>[]) => page.setInputFiles('input[data-file=open]', files);
  return { ...visited, told, choose };
}

const shown = (page: Page, words: string) =>
  page.waitForFunction((wanted) => document.querySelector('.shown')?.textContent?.includes(wanted), words);

/** Lets go of files over the page, as a hand would. */
async function drop(page: Page, files: ReturnType<typeof json>[]): Promise<void> {
  const data = await page.evaluateHandle(
    (all) => {
      const transfer = new DataTransfer();
      for (const { name, mimeType, text } of all)
        transfer.items.add(new File([text], name, { type: mimeType }));
      return transfer;
    },
    files.map(({ buffer, ...file }) => ({ ...file, text: buffer.toString('utf8') })),
  );
  for (const type of ['dragenter', 'dragover', 'drop']) {
    await page.dispatchEvent('main', type, { dataTransfer: data });
  }
}

describe('a file that is opened', () => {
  it('becomes a new design, by keyboard alone, beside the one before', async () => {
    const { page, told, choose, errors } = await open();
    const button = page.locator('input[data-file=open]');
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button.press('Enter')]);
    await chooser.setFiles([json(boat)]);
    await told('boat.json is open as a new design.');
    await shown(page, JSON.parse(boat).name);
    await choose(json(boat.replace('"run"', '"ran"'), 'typo.json'));
    await told(/typo\.json is open as a new design.*cannot be run yet/);
    await page.locator('.troubles', { hasText: 'did you mean "run"' }).waitFor();
    expect(errors).toEqual([]);
  });

  it.each([
    ['cut.json', boat.slice(0, 300), /cut\.json: line \d+, column \d+ - expected/],
    ['newer.json', '{ "format": "tankful", "version": 9 }', /newer\.json: version - .*left as it is/],
    ['letter.txt', 'Dear friend,', /letter\.txt - expected a design.*"Dear friend,"/],
    ['empty.json', '', /empty\.json - .*an empty file/],
  ])('is refused where it is none: %s', async (name, text, words) => {
    const { page, told, choose } = await open();
    const before = await page.innerText('.shown');
    await choose(json(text, name));
    await told(`${name} was not opened. Nothing on the page has changed.`);
    expect(await page.innerText('.file-notices')).toMatch(words);
    expect(await page.innerText('.shown')).toBe(before);
    expect(await violations(page)).toEqual([]);
  });
});

describe('files that are dropped', () => {
  it('are a design and its weather, which every worker has', async () => {
    const { page, told, errors } = await open();
    const scenario = { ...demo, weather: { kind: 'file', file: 'valley.csv' }, run: { days: 2 } };
    await drop(page, [csv(frozenYear(demo)), json(JSON.stringify(scenario), 'mine.json')]);
    await told('mine.json is open as a new design.');
    await shown(page, '2 days');
    const outdoors = () =>
      page.evaluate(
        () => /outdoors\s*(-?[\d.]+) °F/.exec(document.querySelector('.readout')?.textContent ?? '')?.[1],
      );
    await expect.poll(outdoors, { timeout: 20_000 }).toBe('-4');
    expect(await page.innerText('.troubles')).toBe('');
    // An answer’s runs are shared out among all workers, each of which must have the file.
    await page.locator('.answer-lines > li', { hasText: /in a row now/ }).waitFor();
    expect(await page.locator('.answer-lines .trouble').count()).toBe(0);
    // An estimate too: the drawing follows the keyboard.
    await page.getByRole('slider', { name: /^Insulation, lid/ }).focus();
    await page.keyboard.press('ArrowUp');
    await page.waitForFunction(() =>
      /Quick estimate/.test(document.querySelector('.shown')?.textContent ?? ''),
    );
    expect(await outdoors()).toBe('-4');
    expect(await page.innerText('.troubles')).toBe('');
    expect(errors).toEqual([]);
  });

  it('are a log, which waits to be held against the run', async () => {
    const { page, told } = await open();
    await drop(page, [csv('time,top (F)\n2027-01-09 21:00,140\n', 'log.csv')]);
    await told('log.csv is a log of a store: it is held against the run under Measured at the store.');
    const log = await page.evaluate(
      () =>
        (
          document.querySelector('tankful-page') as unknown as {
            page: { store: { get(): { log: unknown } } };
          }
        ).page.store.get().log,
    );
    expect(log).toEqual({ name: 'log.csv', text: 'time,top (F)\n2027-01-09 21:00,140\n' });
  });
});

describe('a weather file that is named and not at hand', () => {
  it('is told of, with two ways out', async () => {
    const { page, told, choose } = await open();
    const scenario = { ...JSON.parse(boat), weather: { kind: 'file', file: 'valley.csv' } };
    await choose(json(JSON.stringify(scenario)));
    await told(/cannot be run yet/);
    await page.waitForSelector('.missing-file');
    expect(await page.innerText('.missing-file')).toContain('takes its weather from valley.csv');
    expect(await violations(page)).toEqual([]);
    await page.setInputFiles('.missing-file input', [csv(frozenYear(JSON.parse(boat)), 'another name.csv')]);
    await told('The weather of this design now comes from another name.csv.');
    await page.waitForSelector('.missing-file', { state: 'detached' });
    await shown(page, JSON.parse(boat).name);
  });
});
