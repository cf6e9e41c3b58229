/** What an automatic reader finds wrong with a page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules of access that are broken, as "rule: element"; in the whole page or below what is selected. */
export async function violations(page: Page, within: string | string[] = 'html'): Promise<string[]> {
  // Evaluated rather than added to the page, whose policy lets no script in.
  await page.evaluate(axeSource);
  return page.evaluate(async (context) => {
    const { axe } = globalThis as unknown as {
      axe: {
        run(
          context: string | string[],
        ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    const found = await axe.run(context);
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
    );
  }, within);
}
