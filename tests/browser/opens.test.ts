import { describe, expect, it } from 'vitest';
import { looks, screenshot, visit } from './support/visit.ts';

describe('the built page', () => {
  it.each(looks)('opens without an error at $width px, $scheme', async ({ width, scheme }) => {
    const { page, errors, outsideRequests } = await visit({ width, scheme });
    await page.waitForLoadState('networkidle');
    expect(await page.title()).toContain('Tankful');
    expect((await page.innerText('body')).trim()).not.toBe('');
    await screenshot(page, `opens-${width}-${scheme}`);
    expect(errors).toEqual([]);
    expect(outsideRequests).toEqual([]);
  });
});
