/** What the page may do, and that it does no more: its policy as sent, as written in the page, and as lived by. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { visit } from './support/visit.ts';

/** Directives of a policy, by name. */
function directivesOf(policy: string): Record<string, string[]> {
  const parts = policy.split(';').map((part) => part.trim().split(/\s+/));
  return Object.fromEntries(parts.map(([name, ...sources]) => [name, sources]));
}

async function policyInPage(page: Page): Promise<string> {
  return (await page.getAttribute('meta[http-equiv=Content-Security-Policy]', 'content')) ?? '';
}

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
