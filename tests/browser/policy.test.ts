/** What the page may do, and that it does no more: its policy as sent, as written in the page, and as lived by. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { downloaded, savedChart, withoutPicker } from './support/saved.ts';
import { visit } from './support/visit.ts';

/** Directives of a policy, by name. */
function directivesOf(policy: string): Record<string, string[]> {
  const parts = policy.split(';').map((part) => part.trim().split(/\s+/));
  return Object.fromEntries(parts.map(([name, ...sources]) => [name, sources]));
}

async function policyInPage(page: Page): Promise<string> {
  return (await page.getAttribute('meta[http-equiv=Content-Security-Policy]', 'content')) ?? '';
}

describe('a session of use', () => {
  it('asks nothing of anybody but the page’s own server, and never meets the policy', async () => {
    const { page, errors, outsideRequests } = await visit({ keeping: true });
    const met: string[] = [];
    await page.exposeFunction('met', (directive: string) => met.push(directive));
    await page.evaluate(() => {
      const { met: tell } = globalThis as unknown as { met(directive: string): void };
      document.addEventListener('securitypolicyviolation', (event) => tell(event.effectiveDirective));
    });
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.locator('.handle[data-key=water]').focus();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('Enter');
    await page.fill('input[name=days]', '2');
    await page.press('input[name=days]', 'Enter');
    await page.waitForFunction(() =>
      document.querySelector('.run-line:not(.stale) .shown')?.textContent?.includes(', 2 days'),
    );
    await page.selectOption('select[name=units]', 'SI');
    await page.getByRole('button', { name: 'Pin this design' }).click();
    for (const room of ['tankful-parts-list', 'tankful-compare', 'tankful-heat', 'tankful-figures']) {
      await page.locator(room).scrollIntoViewIfNeeded();
      await page.waitForSelector(`${room} :first-child`);
    }
    await page.locator('.part-open').first().click();
    await page.waitForSelector('.card');
    await page.locator('.answer-lines summary').first().click();
    await page.waitForSelector('tankful-answer :first-child');
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await page.waitForSelector('.file-notices [role=status] p');
    await withoutPicker(page);
    const save = page.getByRole('button', { name: 'Save to a file' }).first();
    expect((await downloaded(page, () => save.click())).name).toMatch(/\.json$/);
    const chart = page.getByRole('button', { name: /^Save this chart/ }).first();
    for (const kind of [/svg/i, /png/i, /csv/i]) {
      expect((await savedChart(page, chart, kind)).name).toMatch(kind);
    }
    await page.getByRole('button', { name: 'Build sheet' }).click();
    await page.waitForSelector('tankful-sheet :first-child');
    expect(errors).toEqual([]);
    expect(outsideRequests).toEqual([]);
    expect(met).toEqual([]);
  });

  it('is seen to ask, when something does', async () => {
    const { page, outsideRequests } = await visit();
    // By a new page, as a link leads there: no policy of the page's forbids that.
    await page
      .context()
      .newPage()
      .then((other) => other.goto('http://127.0.0.1:9/').catch(() => {}));
    expect(outsideRequests).toEqual(['http://127.0.0.1:9/']);
  });
});

describe('the policy', () => {
  it('is strict: no source but the page itself, no inline script or style, no text taken for code', async () => {
    const { page } = await visit();
    const sent = (await fetch(inject('pageUrl'))).headers.get('content-security-policy') ?? '';
    for (const policy of [sent, await policyInPage(page)]) {
      expect(policy).not.toMatch(/unsafe|http|\*/);
      const directives = directivesOf(policy);
      expect(directives['default-src']).toEqual(["'none'"]);
      for (const what of ['script-src', 'style-src', 'connect-src', 'worker-src']) {
        expect(directives[what]).toEqual(["'self'"]);
      }
      expect(directives['require-trusted-types-for']).toEqual(["'script'"]);
    }
    expect(directivesOf(sent)['frame-ancestors']).toEqual(["'none'"]);
  });

  it.each(['', 'assets/none.js'])('comes with the other headers on "%s"', async (path) => {
    const { headers } = await fetch(inject('pageUrl') + path);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('permissions-policy')).toMatch(/\bcamera=\(\).*\bmicrophone=\(\)/);
    expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
  });

  it.each([
    ['an inline style', 'style-src', () => document.body.setAttribute('style', 'color: red')],
    [
      'a handler written as text',
      'require-trusted-types-for',
      () => document.body.setAttribute('onclick', '1'),
    ],
    ['text as markup', 'require-trusted-types-for', () => Object.assign(document.body, { innerHTML: '<b>' })],
    ['an address elsewhere', 'connect-src', () => void fetch('https://example.org/').catch(() => {})],
  ])('refuses %s', async (_, directive, act) => {
    const { page } = await visit();
    const refused = page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          document.addEventListener('securitypolicyviolation', (event) => resolve(event.effectiveDirective), {
            once: true,
          });
        }),
    );
    await page.evaluate(act).catch(() => {});
    expect(await refused).toContain(directive);
  });
});
