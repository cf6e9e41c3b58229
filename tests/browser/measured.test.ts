/** What an owner measured, on the page: rows typed by hand, a small measurement, what goes into the design. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, screenshot, type VisitOptions, visit } from './support/visit.ts';

/** An invented night: the demo's box cools faster than its default says. */
const night = [
  'time,top (F),middle (F),bottom (F),room (F)',
  '21:00,141,139.5,137,50',
  '00:00,138.6,137.2,134.8,48',
  '03:00,136.3,134.9,132.6,46',
  '06:00,134.1,132.8,130.5,46',
  '08:00,132.7,131.4,129.2,47',
].join('\n');

async function open(options: VisitOptions = {}) {
  const visited = await visit({ height: 1000, ...options });
  const { page } = visited;
  await page.waitForSelector('.answer-lines li');
  await page.locator('tankful-measured').scrollIntoViewIfNeeded();
  await page.locator('tankful-fit textarea').waitFor();
  return visited;
}

async function holdNight(page: Page): Promise<void> {
  await page.getByLabel('Readings').fill(night);
  await page.getByLabel('Nothing was drawn and the engine stood').check();
  await page.getByRole('button', { name: 'Hold it against the run' }).click();
  await page.locator('tankful-fit .measured-told').waitFor({ timeout: 60_000 });
}

describe('a log typed by hand', () => {
  it('tells what it narrows, what it cannot, and draws measured over simulated', async () => {
    const { page, errors, outsideRequests } = await open();
    await holdNight(page);
    const told = page.locator('tankful-fit .measured-told');
    expect(await told.innerText()).toMatch(/The log says: loss multiplier for bridges and leaks \d/);
    expect(await told.innerText()).toContain('cannot tell');
    expect(await told.locator('tankful-curve').count()).toBe(3);
    expect(await violations(page, ['tankful-measured'])).toEqual([]);
    expect([errors, outsideRequests]).toEqual([[], []]);
  });

  it('goes into the design with its band at the press of a button', async () => {
    const { page } = await open();
    await holdNight(page);
    const said = await page
      .locator('tankful-fit .measured-told tbody tr')
      .first()
      .locator('td')
      .nth(1)
      .innerText();
    await page.getByRole('button', { name: 'Put these into the design as measured' }).click();
    await page.getByText('Of the design as it was when this was asked.').waitFor();
    await page.getByRole('button', { name: 'Hold it against the run' }).click();
    // Held against the design as it now is, it starts from what it said.
    const before = page.locator('tankful-fit .measured-told tbody tr').first().locator('td').first();
    await expect.poll(() => before.innerText(), { timeout: 60_000 }).toBe(said);
  });

  it('is refused line by line, and what was typed stays', async () => {
    const { page } = await open();
    const typed = 'time,top (F)\nnine,140\n22:00,hot';
    await page.getByLabel('Readings').fill(typed);
    await page.getByRole('button', { name: 'Hold it against the run' }).click();
    const alerts = page.locator('tankful-fit [role=alert] li');
    await alerts.first().waitFor();
    expect(await alerts.allInnerTexts()).toEqual([
      expect.stringMatching(/^line 2 - expected a time/),
      expect.stringMatching(/^line 3, top - expected a number/),
    ]);
    expect(await page.getByLabel('Readings').inputValue()).toBe(typed);
  });
});

describe('a small measurement', () => {
  it('works by the keyboard alone: a bucket settles the pump’s flow', async () => {
    const { page, errors } = await open();
    const recipe = page.locator('tankful-recipe').first();
    await recipe.locator('summary').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.type('5 gal');
    await page.keyboard.press('Tab');
    await page.keyboard.type('100 s');
    await page.keyboard.press('Enter');
    const facts = recipe.locator('.recipe-facts');
    await facts.waitFor({ timeout: 30_000 });
    expect(await facts.innerText()).toMatch(/3(\.0+)? gpm/);
    await recipe.getByRole('button', { name: 'Put these into the design as measured' }).click();
    await page.getByText('Of the design as it was when this was asked.').first().waitFor();
    expect(errors).toEqual([]);
  });

  it('is refused in the house’s form, and what was typed stays', async () => {
    const { page } = await open();
    const recipe = page.locator('tankful-recipe').nth(3);
    await recipe.locator('summary').click();
    await recipe.getByLabel('Store at the start').fill('140');
    for (const [label, text] of [
      ['Store at the end', '134 F'],
      ['Room', '55 F'],
      ['Between them', '12 h'],
    ])
      await recipe.getByLabel(label).fill(text);
    await recipe.getByRole('button', { name: 'Work it out' }).click();
    const line = recipe.locator('[role=alert] li');
    await line.first().waitFor();
    expect(await line.innerText()).toMatch(/^from - expected a temperature .* - got "140" - add the unit/);
    expect(await recipe.getByLabel('Store at the start').inputValue()).toBe('140');
  });
});

describe.each(looks)('at $width px, $scheme', ({ width, scheme }) => {
  it('fits its window, for a person to look at', async () => {
    const { page } = await open({ width, scheme });
    await holdNight(page);
    await page.locator('tankful-recipe').nth(2).locator('summary').click();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    await page
      .locator('tankful-measured')
      .screenshot({ path: `dist/screens/measured-${width}-${scheme}.png` });
    if (width === 1280) await screenshot(page, `page-measured-${scheme}`);
  });
});
