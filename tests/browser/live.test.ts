/**
 * How soon the page shows what a hand does, and how soon it shows anything at all: measured in the real browser and
 * printed beside the aim. Times depend on who else is at work, so they are told and not judged; counts and bytes are judged.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { CDPSession, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/build.mjs';
import { visit } from './support/visit.ts';

/** What the page's own element gives a test to look at. */
interface PageElement extends EventTarget {
  page: {
    store: {
      get(): { estimate: { scenario: unknown } | null };
      subscribe(heard: () => void): () => void;
    };
  };
}

async function throttled(page: Page, rate: number): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  return session;
}

/** Notes from each move of the hand to the first frame that shows it, or a later one [ms]. */
async function watchLatencies(page: Page): Promise<void> {
  await page.evaluate(() => {
    const element = document.querySelector('tankful-page') as unknown as PageElement;
    const moved: { path: string; value: string; at: number }[] = [];
    const latencies: number[] = [];
    Object.assign(globalThis, { latencies });
    const valueAt = (scenario: unknown, path: string) =>
      path
        .split(/[.[\]]+/)
        .filter((step) => step !== '')
        .reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], scenario);
    let moved_ms = 0;
    element.addEventListener('pointermove', () => {
      moved_ms = performance.now();
    });
    element.addEventListener('preview-edits', (event) => {
      const [edit] = (event as CustomEvent<{ edits: { path: string; value: string }[] }>).detail.edits;
      moved.push({ ...edit, at: moved_ms });
    });
    let last: unknown = null;
    element.page.store.subscribe(() => {
      const { estimate } = element.page.store.get();
      if (!estimate || estimate === last) return;
      last = estimate;
      const shown = moved.findLastIndex(({ path, value }) => valueAt(estimate.scenario, path) === value);
      const painted = moved.splice(0, shown + 1);
      // The frame is drawn after this turn; what is told after it has been painted.
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          const now = performance.now();
          for (const { at } of painted) latencies.push(now - at);
        };
        port2.postMessage(null);
      });
    });
  });
}

/** Drags a handle one way, so that no value comes twice. */
async function drag(page: Page, name: RegExp, by: { x: number; y: number }): Promise<void> {
  const handle = page.getByRole('slider', { name });
  await handle.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = await handle.boundingBox();
  if (!box) throw new Error(`expected a handle ${name}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  // No hand that has just come to a handle pulls it at once.
  await page.waitForTimeout(200);
  await page.mouse.down();
  const steps = 60;
  for (let i = 1; i <= steps; i++) {
    await page.mouse.move(x + (by.x * i) / steps, y + (by.y * i) / steps);
    await page.waitForTimeout(16);
  }
  await page.waitForTimeout(400);
  await page.mouse.up();
}

async function dragLatencies(page: Page): Promise<number[]> {
  await watchLatencies(page);
  await drag(page, /^Insulation, sides/, { x: -75, y: 0 });
  await drag(page, /^Insulation, lid/, { x: 0, y: -75 });
  return page.evaluate(() => (globalThis as unknown as { latencies: number[] }).latencies);
}

function share(values: number[], part: number): number {
  return values.toSorted((a, b) => a - b)[Math.floor(part * values.length)];
}

async function tenDays(): Promise<Page> {
  const { page } = await visit({ reducedMotion: false });
  await page.fill('input[name=days]', '10');
  await page.press('input[name=days]', 'Enter');
  await page.waitForFunction(() => document.querySelector('.shown')?.textContent?.includes('10 days'));
  await page.waitForTimeout(500);
  return page;
}

describe('a hand that drags, over ten days', () => {
  it.each([
    [1, 100],
    [4, 150],
  ])(
    'is followed on a processor %d times slower (aim: within %d ms, 95 times in a hundred)',
    async (rate, aim) => {
      const page = await tenDays();
      const session = await throttled(page, rate);
      const latencies = await dragLatencies(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
      // A page left open goes on answering, at the next one's cost.
      await page.context().close();
      const [half, most95] = [share(latencies, 0.5), share(latencies, 0.95)];
      console.info(
        `${latencies.length} moves, half within ${half.toFixed(0)} ms, 95 % within ${most95.toFixed(0)} ms; aim ${aim} ms`,
      );
      expect(latencies.length).toBeGreaterThan(30);
    },
  );
});

describe('the page on a processor four times slower', () => {
  it('paints, and answers before any run (aims: 1 s and 1.5 s)', async () => {
    const { page } = await visit();
    await throttled(page, 4);
    await page.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (!document.querySelector('.answer-lines li')) return;
        observer.disconnect();
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => Object.assign(globalThis, { answered_ms: performance.now() });
          port2.postMessage(null);
        });
      }).observe(document, { childList: true, subtree: true });
    });
    await page.reload({ waitUntil: 'load' });
    await page.waitForFunction(() => 'answered_ms' in globalThis);
    const { painted_ms, answered_ms } = await page.evaluate(() => ({
      painted_ms: performance.getEntriesByName('first-contentful-paint')[0].startTime,
      answered_ms: (globalThis as unknown as { answered_ms: number }).answered_ms,
    }));
    console.info(`first paint ${painted_ms.toFixed(0)} ms, answers ${answered_ms.toFixed(0)} ms`);
    expect(await page.locator('.answer-lines li').count()).toBeGreaterThanOrEqual(3);
  });
});

describe('the code that is loaded', () => {
  const folder = join(root, 'dist/web/assets');
  const files = () => readdirSync(folder).filter((name) => name.endsWith('.js'));
  const text = (name: string) => readFileSync(join(folder, name), 'utf8');
  const size = (name: string) => gzipSync(text(name), { level: 9 }).length;

  /** A file and all that it imports before it runs. */
  function withImports(name: string, found = new Set<string>()): Set<string> {
    if (found.has(name)) return found;
    found.add(name);
    for (const [, next] of text(name).matchAll(/(?:from|import)"\.\/([^"]+\.js)"/g)) withImports(next, found);
    return found;
  }

  it('comes to 150 kB at most, gzipped, for the page and its worker until more is asked for', () => {
    const html = readFileSync(join(root, 'dist/web/index.html'), 'utf8');
    const entry = /<script type="module"[^>]* src="\.\/assets\/([^"]+)"/.exec(html)?.[1] ?? '';
    const worker = files().find((name) => name.startsWith('simulate-')) ?? '';
    const opening = new Set([...withImports(entry), ...withImports(worker)]);
    expect(opening.size).toBeGreaterThan(3);
    const sum = [...opening].reduce((bytes, name) => bytes + size(name), 0);
    const all = files().reduce((bytes, name) => bytes + size(name), 0);
    console.info(`${sum} bytes to open with, ${all} with all that may be asked for`);
    expect(sum).toBeLessThanOrEqual(150_000);
  });

  it('leaves out of the page what only its worker needs', () => {
    const html = readFileSync(join(root, 'dist/web/index.html'), 'utf8');
    const entry = /<script type="module"[^>]* src="\.\/assets\/([^"]+)"/.exec(html)?.[1] ?? '';
    expect([...withImports(entry)].filter((name) => /^(work|answers|shared)-/.test(name))).toEqual([]);
  });
});
