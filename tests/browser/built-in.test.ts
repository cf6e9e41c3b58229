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

/**
 * Farthest that any of `values` lies outside what `others` span from the sample before it to the sample after it: a
 * thermostat that opens a second later leaves a course as it is, though single samples of it differ by much.
 */
function farthestAside(values: ArrayLike<number>, others: ArrayLike<number>): number {
  if (values.length !== others.length) return Number.POSITIVE_INFINITY;
  return Array.from(values).reduce((most, value, i) => {
    if (value === others[i]) return most;
    const beside = [others[i - 1], others[i], others[i + 1]].filter((at) => typeof at === 'number');
    const off = Math.max(Math.min(...beside) - value, value - Math.max(...beside), 0);
    return Number.isNaN(off) ? Number.POSITIVE_INFINITY : Math.max(most, off);
  }, 0);
}

/**
 * Relative differences that two engines of JavaScript may have: they compute sines, cosines and powers to different
 * last digits, which a run within its tolerance turns into this much.
 */
const near = 3e-3;
/** Figures of single moments, such as the first stroke of a thermostat, differ by more. */
const nearAtMoments: Record<string, number> = { coldest_return_C: 0.05, engine_cold_s: 0.02 };
/** What a ledger leaves over is rounding alone: each run's own, and comparable to nothing but what the ledger adds up. */
const roundingPart = 1e-9;

/** Where two trees of numbers and texts differ by more than numbers may. */
function differing(was: unknown, is: unknown, path = ''): string[] {
  if (typeof was === 'number' && typeof is === 'number') {
    const most = nearAtMoments[path.split('.').at(-1) ?? ''] ?? near;
    return Math.abs(was - is) <= most * Math.max(Math.abs(is), 1e-3) ? [] : [`${path}: ${was}, ${is}`];
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
    const { series: was, run: _, events: eventsWas, cautions: cautionsWas, ...restWas } = before.shown.result;
    const { series: is, run: __, events, cautions, ...rest } = after.shown.result;
    expect(is).not.toEqual(was);
    for (const { ledger } of [restWas, rest]) {
      expect(Math.abs(ledger.residual_J)).toBeLessThan(roundingPart * ledger.throughput_J);
      ledger.residual_J = 0;
    }
    expect(differing(restWas, rest)).toEqual([]);
    expect(cautionsWas.map(({ key }) => key)).toEqual(cautions.map(({ key }) => key));
    expect(differing(before.shown.facts, after.shown.facts)).toEqual([]);
    expect(before.shown.filled).toEqual(after.shown.filled);
    expect(before.shown.notes).toEqual(after.shown.notes);
    expect(eventsWas.map(({ name }) => name)).toEqual(events.map(({ name }) => name));
    expect(
      farthest(
        eventsWas.map(({ time_s }) => time_s),
        events.map(({ time_s }) => time_s),
      ),
    ).toBeLessThan(60);
    expect(farthest(was.layer_C, is.layer_C)).toBeLessThan(0.1);
    expect(Object.keys(was.channels)).toEqual(Object.keys(is.channels));
    for (const [key, values] of Object.entries(is.channels)) {
      const largest = Math.max(...Array.from(values, (value) => Math.abs(value) || 0));
      expect(farthestAside(values, was.channels[key]), key).toBeLessThanOrEqual(0.03 * (largest || 1));
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
