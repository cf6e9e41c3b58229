/** What stands behind an answer's sentence: reason, curve, tables, levers. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, screenshot, type VisitOptions, visit } from './support/visit.ts';

async function open(options: VisitOptions = {}) {
  const visited = await visit(options);
  await visited.page.waitForSelector('.answer-lines li');
  return visited;
}

const line = (page: Page, title: string) => page.locator('.answer-lines > li', { hasText: title });

/** The household coil's answer, unfolded by the keyboard. */
async function coil(options: VisitOptions = {}) {
  const { page, errors } = await open(options);
  const answer = line(page, 'The household coil');
  await answer.locator('summary').focus();
  await page.keyboard.press('Enter');
  await answer.locator('tankful-curve svg .present-mark').waitFor();
  return { page, errors, answer };
}

describe('an answer', () => {
  it('unfolds by the keyboard into its reason, curve and table, the present design marked in both', async () => {
    const { answer, errors } = await coil();
    expect(await answer.locator('.answer-told').innerText()).toMatch(/is the limit/);
    expect(await answer.locator('.present-mark text').textContent()).toBe('as it is: 120 ft');
    const present = answer.locator('.answer-table tr.present');
    expect(await present.count()).toBe(1);
    expect(await present.innerText()).toMatch(/^> 3\/4 in plumbing L, 2x60 ft series/);
    expect(errors).toEqual([]);
  });

  it('has a curve of one tab stop, read by arrow keys and told by value and line', async () => {
    const { page, answer } = await coil();
    const stage = answer.locator('tankful-curve .stage');
    expect(await stage.evaluate((element) => element.querySelectorAll('[tabindex]').length)).toBe(0);
    await stage.focus();
    await page.keyboard.press('Home');
    const told = answer.locator('tankful-curve [aria-live]');
    await page.waitForFunction(
      (element) => /^12 ft: outlet \d+(\.\d+)? °F$/.test(element?.textContent ?? ''),
      await told.elementHandle(),
    );
    await page.keyboard.press('End');
    await page.waitForFunction(
      (element) => /^300 ft: outlet/.test(element?.textContent ?? ''),
      await told.elementHandle(),
    );
  });

  it('has the curve’s numbers as a table too', async () => {
    const { page, answer } = await coil();
    const stage = answer.locator('tankful-curve .stage');
    await stage.focus();
    await page.keyboard.press('End');
    const told = answer.locator('tankful-curve [aria-live]');
    await page.waitForFunction((element) => element?.textContent !== '', await told.elementHandle());
    const last = (await told.textContent()) ?? '';
    await answer.getByRole('button', { name: /^Show as table/ }).click();
    const rows = answer.locator('tankful-curve tbody tr');
    const [head, cell] = [
      await rows.last().locator('th').innerText(),
      await rows.last().locator('td').innerText(),
    ];
    expect(last).toBe(`${head}: outlet ${cell}`);
    expect(await rows.count()).toBeGreaterThan(5);
  });

  it('is in the reader’s units, sentence, curve and table at once', async () => {
    const { page, answer } = await coil();
    await page.getByLabel('Units').selectOption('SI');
    await answer.locator('.present-mark text', { hasText: 'as it is: 36.6 m' }).waitFor();
    const text = await answer.innerText();
    expect(text).toMatch(/°C/);
    expect(text).not.toMatch(/°F|psi|gpm/);
  });

  it('says what is a danger, and defers to code and licence once', async () => {
    const { answer } = await coil();
    const minds = answer.locator('.minds');
    expect(await minds.locator('.caution.danger').allInnerTexts()).toEqual([
      expect.stringMatching(/^Danger: Water trapped in a coil\./),
    ]);
    expect((await minds.innerText()).match(/Local code and licensed practice decide/g)).toHaveLength(1);
  });

  it('leads from what would change it most to that input’s card', async () => {
    const { page, answer } = await coil();
    await answer.locator('.levers button').first().click();
    await page.waitForSelector('.card');
    expect(await page.locator('.card h2, .card h3').first().innerText()).toMatch(/Coil: household/);
  });

  it.each(looks)('breaks no rule of access unfolded at $width px, $scheme', async ({ width, scheme }) => {
    const { page, answer } = await coil({ width, scheme });
    await answer.getByRole('button', { name: /^Show as table/ }).click();
    expect(await violations(page)).toEqual([]);
    await screenshot(page, `answers-${width}-${scheme}`);
  });

  it('does not scroll the page sideways at 320 px', async () => {
    const { page } = await coil({ width: 320 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
