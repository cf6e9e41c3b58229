/** What stands in the page when it opens, against what its workers find out by themselves. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { PageState } from '../../ui/web/app/page-state.ts';
import { visit } from './support/visit.ts';

type Found = Pick<PageState, 'shown' | 'answers'>;

interface PageElement extends Element {
  page: { store: { get(): PageState }; run(): void; ask(key: keyof PageState['answers']): void };
}

/** A copy that travels out of the page: no typed arrays, no `NaN`. */
async function found(page: Page): Promise<Found> {
  const text = await page.evaluate(() => {
    const { shown, answers } = (document.querySelector('tankful-page') as PageElement).page.store.get();
    return JSON.stringify({ shown, answers }, (_, value) => {
      if (ArrayBuffer.isView(value)) return Array.from(value as Float32Array);
      return typeof value === 'number' && Number.isNaN(value) ? 'none' : value;
    });
  });
  return JSON.parse(text) as Found;
}

/** Farthest that any of `values` lies from its own of `others`; where one is no number the other is none. */
function farthest(values: ArrayLike<number>, others: ArrayLike<number>): number {
  if (values.length !== others.length) return Number.POSITIVE_INFINITY;
  return Array.from(values).reduce((most, value, i) => {
    if (value === others[i]) return most;
    const off = Math.abs(value - others[i]);
    return Number.isNaN(off) ? Number.POSITIVE_INFINITY : Math.max(most, off);
  }, 0);
}

/** Every engine computes a run alike: what is built in differs by no more than the digits it was written with. */
const written = 1e-6;

/** Where two trees of numbers and texts differ by more than numbers may. */
function differing(was: unknown, is: unknown, path = ''): string[] {
  if (typeof was === 'number' && typeof is === 'number') {
    return Math.abs(was - is) <= written * Math.abs(is) ? [] : [`${path}: ${was}, ${is}`];
  }
  if (typeof was !== 'object' || was === null || typeof is !== 'object' || is === null) {
    return was === is ? [] : [`${path}: ${was}, ${is}`];
  }
  const [a, b] = [was, is] as Record<string, unknown>[];
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return keys.flatMap((key) => differing(a[key], b[key], `${path}.${key}`));
}

describe('the demo that is built in', () => {
  it('stands there, answers and all, without any worker', async () => {
    const { page } = await visit();
    await page.waitForSelector('.answer-lines li');
    const texts = await page.locator('.answer-lines li').allInnerTexts();
    expect(texts).toHaveLength(3);
    for (const text of texts) expect(text).toMatch(/\d/);
    expect(await page.innerText('.readout')).toMatch(/\d °F/);
  });

  it('is what the live run and the live answers give', async () => {
    const { page, errors } = await visit();
    const before = await found(page);
    await page.evaluate(() => (document.querySelector('tankful-page') as PageElement).page.run());
    await page.waitForFunction(
      () => (document.querySelector('tankful-page') as PageElement).page.store.get().progress === null,
    );
    const after = await found(page);
    if (!before.shown || !after.shown) throw new Error('expected two results');
    const { series: was, ...restWas } = before.shown.result;
    const { series: is, ...rest } = after.shown.result;
    expect(is).not.toEqual(was);
    expect(differing({ ...before.shown, result: restWas }, { ...after.shown, result: rest })).toEqual([]);
    // Half a step of what the samples are packed in, and the last digit of single precision.
    expect(farthest(was.layer_C, is.layer_C)).toBeLessThan(0.0026);
    expect(Object.keys(was.channels)).toEqual(Object.keys(is.channels));
    for (const [key, values] of Object.entries(is.channels)) {
      const largest = Math.max(...Array.from(values, (value) => Math.abs(value) || 0));
      const step = key.endsWith('_C') ? 0.005 : key.endsWith('_W') ? 0.5 : largest / 4096;
      expect(farthest(was.channels[key], values), key).toBeLessThanOrEqual(0.5 * step + 1e-6 * largest);
    }

    const keys = ['coil', 'charging', 'showers'] as const;
    expect(keys.map((key) => before.answers[key].at)).toEqual(['done', 'done', 'done']);
    const said = await page.innerText('.answer-lines');
    await page.evaluate((asked) => {
      const own = (document.querySelector('tankful-page') as PageElement).page;
      for (const key of asked) own.ask(key);
    }, keys);
    await page.waitForFunction((asked) => {
      const { answers } = (document.querySelector('tankful-page') as PageElement).page.store.get();
      return asked.every((key) => answers[key].at === 'done');
    }, keys);
    expect(await page.innerText('.answer-lines')).toBe(said);
    expect(errors).toEqual([]);
  });
});
