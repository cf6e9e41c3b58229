import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, type VisitOptions, visit } from './support/visit.ts';

async function openSolved(options: VisitOptions = {}) {
  const visited = await visit(options);
  await visited.page.waitForSelector('.readout .moment');
  await visited.page.waitForSelector('.stage svg .line.top');
  return visited;
}

describe('the page', () => {
  it('opens with the demo solved: lines, field, heat, ledger and figures with numbers', async () => {
    const { page, errors, outsideRequests } = await openSolved();
    expect(await page.inputValue('select[name=scenario]')).toBe('demo');
    expect(await page.innerText('.readout')).toMatch(/\d+(\.\d+)? °F/);
    expect(await page.locator('.stage svg path.line').count()).toBeGreaterThanOrEqual(3);
    expect(await page.locator('.stage svg path.heat').count()).toBeGreaterThanOrEqual(3);
    const colours = await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.stage canvas');
      const data = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      return new Set(Array.from({ length: data.length / 4 }, (_, i) => data.slice(i * 4, i * 4 + 4).join()))
        .size;
    });
    expect(colours).toBeGreaterThan(20);
    // The rooms further down are loaded when they come near.
    await page.locator('tankful-heat').scrollIntoViewIfNeeded();
    await page.waitForFunction(() =>
      /Unaccounted for/.test(document.querySelector('tankful-heat')?.textContent ?? ''),
    );
    const residual = await page.innerText('tankful-heat');
    expect(Number(/Unaccounted for\D*([\d.]+) %/.exec(residual)?.[1])).toBeLessThan(0.1);
    await page.locator('tankful-figures').scrollIntoViewIfNeeded();
    await page.waitForSelector('.figure dd');
    expect(await page.locator('.figure dd').count()).toBeGreaterThan(10);
    expect(errors).toEqual([]);
    expect(outsideRequests).toEqual([]);
  });

  it('changes all units at once', async () => {
    const { page } = await openSolved();
    await page.selectOption('select[name=units]', 'SI');
    await page.waitForFunction(() => document.querySelector('.readout')?.textContent?.includes('°C'));
    await page.locator('tankful-figures').scrollIntoViewIfNeeded();
    await page.waitForSelector('.figure dd');
    // What a person typed keeps its own unit in the list of parts; what is computed changes, the other system in brackets.
    for (const place of ['tankful-days', 'tankful-heat', 'tankful-figures']) {
      const text = (await page.innerText(place)).replace(/\([^()]*\)/g, '');
      expect(text).not.toMatch(/°F|Btu|\bgal\b|\bpsi\b/);
    }
  });

  it('runs another scenario and another span', async () => {
    const { page, errors } = await openSolved();
    const before = await page.innerText('.shown');
    const [, other] = await page
      .locator('select[name=scenario] option')
      .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
    await page.selectOption('select[name=scenario]', other);
    await page.waitForFunction((old) => {
      const shown = document.querySelector<HTMLElement>('.shown');
      return shown && !shown.classList.contains('stale') && shown.innerText !== old;
    }, before);
    await page.fill('input[name=days]', '2');
    await page.press('input[name=days]', 'Enter');
    await page.waitForFunction(() =>
      /, 2 days/.test(document.querySelector('.shown:not(.stale)')?.textContent ?? ''),
    );
    expect(errors).toEqual([]);
  });

  it('says what is wrong with a span and keeps the last good run, labelled so', async () => {
    const { page } = await openSolved();
    await page.fill('input[name=days]', '400');
    await page.press('input[name=days]', 'Enter');
    await page.waitForSelector('.troubles li');
    expect(await page.innerText('.troubles')).toContain('got the number 400');
    expect(await page.innerText('.shown')).toMatch(/^Last good run/);
    expect(await page.locator('.stage svg path.line').count()).toBeGreaterThanOrEqual(3);
  });

  it('stops a year on request, and a later choice overtakes it', async () => {
    const { page } = await openSolved();
    const shown = (await page.innerText('.shown')).trim();
    await page.fill('input[name=days]', '365');
    await page.press('input[name=days]', 'Enter');
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.waitForSelector('progress', { state: 'detached' });
    expect(await page.innerText('.shown')).toBe(`Last good run, not the design as it stands: ${shown}`);
    await page.fill('input[name=days]', '364');
    await page.press('input[name=days]', 'Enter');
    await page.fill('input[name=days]', '1');
    await page.press('input[name=days]', 'Enter');
    await page.waitForFunction(() =>
      /, 1 day\./.test(document.querySelector('.shown:not(.stale)')?.textContent ?? ''),
    );
  });

  it.each(looks)('breaks no rule of access at $width px, $scheme', async (look) => {
    const { page } = await openSolved(look);
    await page.getByRole('button', { name: 'Show as table' }).click();
    await page.fill('input[name=days]', '400');
    await page.press('input[name=days]', 'Enter');
    await page.waitForSelector('.troubles li');
    expect(await violations(page)).toEqual([]);
  });

  it.each([320, 390, 768, 1280])('does not scroll sideways at %d px', async (width) => {
    const { page } = await openSolved({ width });
    await page.getByRole('button', { name: 'Show as table' }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  });
});
