/** Puts one element of the page on a blank page, with the page's own styles, for a test of that element alone. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import { root } from '../../../scripts/build.mjs';
import { type VisitOptions, visit } from './visit.ts';

/** Opens a blank page that has run `script`, a file of this folder, beside an empty `main`. */
export async function openStand(
  script: string,
  options: VisitOptions = {},
): Promise<{ page: Page; errors: string[] }> {
  const { page, errors } = await visit(options);
  await page.goto('about:blank');
  // Leaving the page breaks off what it was still loading.
  errors.length = 0;
  await page.setContent(
    `<!doctype html><html lang="en"><head><title>Stand</title>
    <meta name="viewport" content="width=device-width, initial-scale=1"><style>${styles()}</style></head>
    <body><main style="padding: 12px"><h1>Stand</h1><h2>Section</h2></main></body></html>`,
  );
  await page.addScriptTag({ content: await bundled(script) });
  return { page, errors };
}

/** The style sheets that the page names, in its order. */
function styles(): string {
  const page = readFileSync(join(root, 'ui/web/index.html'), 'utf8');
  const names = Array.from(page.matchAll(/href="\.\/(style\/[\w-]+\.css)"/g), ([, name]) => name);
  return names.map((name) => readFileSync(join(root, 'ui/web', name), 'utf8')).join('\n');
}

async function bundled(script: string): Promise<string> {
  const made = (await build({
    configFile: false,
    root,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2022',
      lib: { entry: join(root, 'tests/browser/support', script), formats: ['iife'], name: 'stand' },
    },
  })) as { output: Rollup.OutputChunk[] }[];
  return made[0].output[0].code;
}
