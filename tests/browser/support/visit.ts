/** Opens the built page in Chromium for a test, as a person with a given screen would meet it. */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import { root } from '../../../scripts/build.mjs';

export type Scheme = 'light' | 'dark';

export interface VisitOptions {
  /** Width of the window in CSS pixels; 1280 is a laptop, 390 a phone. */
  width?: number;
  height?: number;
  scheme?: Scheme;
  /** Appended to the page's address, as in '#demo'. */
  path?: string;
  reducedMotion?: boolean;
  /** Another server than the one that all tests share. */
  home?: string;
  /** Lets the page keep itself for when there is no network; other visits spare the work. */
  keeping?: boolean;
}

export interface Visit {
  page: Page;
  /** Console errors and uncaught exceptions since the page was opened, in order. */
  errors: string[];
  /** Addresses asked for outside the page's own server; the page must need none. */
  outsideRequests: string[];
}

let browser: Promise<Browser> | undefined;
const open: Page[] = [];

/** A fresh, private window per call: no storage is shared between visits. */
export async function visit(options: VisitOptions = {}): Promise<Visit> {
  const { width = 1280, height = 900, scheme = 'light', path = '', reducedMotion = true } = options;
  const { home = inject('pageUrl'), keeping = false } = options;
  browser ??= chromium.connect(inject('browserEndpoint'));
  const context = await (await browser).newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: reducedMotion ? 'reduce' : 'no-preference',
    serviceWorkers: keeping ? 'allow' : 'block',
  });
  const page = await context.newPage();
  open.push(page);
  const errors: string[] = [];
  const outsideRequests: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.stack ?? error.message));
  page.on('requestfailed', (request) => errors.push(`${request.url()} ${request.failure()?.errorText}`));
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(home) && !/^(data|blob):/.test(url)) outsideRequests.push(url);
  });
  await page.goto(home + path, { waitUntil: 'load' });
  return { page, errors, outsideRequests };
}

/** The four looks a picture is judged in. */
export const looks: readonly Required<Pick<VisitOptions, 'width' | 'scheme'>>[] = [1280, 390].flatMap(
  (width) => (['light', 'dark'] as const).map((scheme) => ({ width, scheme })),
);

/** Writes the whole page to dist/screens/NAME.png for a person to look at, and gives back the file's path. */
export async function screenshot(page: Page, name: string): Promise<string> {
  const path = join(root, 'dist/screens', `${name}.png`);
  mkdirSync(dirname(path), { recursive: true });
  await page.screenshot({ path, fullPage: true });
  return path;
}

afterAll(async () => {
  await Promise.all(open.map((page) => page.context().close()));
  await (await browser)?.close();
});
