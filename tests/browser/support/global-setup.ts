/** Once per run of the browser tests: builds the page if it is older than its sources, serves it, starts one Chromium. */
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { ensureBuilt, root } from '../../../scripts/build.mjs';
import { chromiumFlags, findChromium } from '../../../scripts/chromium.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    pageUrl: string;
    browserEndpoint: string;
  }
}

export default async function setUp({ provide }: TestProject): Promise<() => Promise<void>> {
  await ensureBuilt('page');
  const { executablePath, env } = await findChromium();
  const served = await preview({
    configFile: join(root, 'vite.config.ts'),
    root: join(root, 'ui/web'),
    // Port 0 lets the system choose: runs side by side never meet.
    preview: { port: 0, host: '127.0.0.1', open: false },
    logLevel: 'error',
  });
  const browser = await chromium.launchServer({ executablePath, env, args: chromiumFlags });
  provide('pageUrl', served.resolvedUrls?.local[0] ?? '');
  provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await served.close();
  };
}
