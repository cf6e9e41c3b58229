/** Draws ui/web/public/icon-*.png from icon.svg with the Chromium of the browser tests; run it when icon.svg changes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { root } from './build.mjs';
import { chromiumFlags, findChromium } from './chromium.mjs';

const folder = join(root, 'ui/web/public');
const drawing = readFileSync(join(folder, 'icon.svg'), 'utf8');
const { executablePath, env } = await findChromium();
const browser = await chromium.launch({ executablePath, env, args: chromiumFlags });
for (const size of [192, 512]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body { margin: 0 }</style>${drawing}`);
  await page.screenshot({ path: join(folder, `icon-${size}.png`) });
}
await browser.close();
