/** A design that cannot be run: what is said, what stays, and the way out. */
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, screenshot, type VisitOptions, visit } from './support/visit.ts';

/** Nine rolls of 60 ft, which are higher than the water. */
async function tooMuchTube(options: VisitOptions = {}) {
  const visited = await visit(options);
  const { page } = visited;
  await page.waitForSelector('.answer-lines li');
  const list = page.locator('tankful-parts-list');
  await list.scrollIntoViewIfNeeded();
  await list.getByRole('button', { name: /^Coil: household/ }).click();
  const rolls = page.getByRole('textbox', { name: 'Rolls' });
  await rolls.fill('9');
  await rolls.press('Enter');
  await page.locator('.troubles li').waitFor();
  return visited;
}

describe('a design that cannot be run', () => {
  it('says where, what and what to do in the words of its card, and leads there', async () => {
    const { page, errors } = await tooMuchTube();
    const said = await page.locator('.troubles li').first().innerText();
    expect(said).toMatch(
      /^Coil: household, .*expected under the water, 32 in \(.*\) deep - got .* - hang it lower/,
    );
    await page.getByRole('button', { name: 'Close' }).first().click();
    await page
      .locator('.troubles')
      .getByRole('button', { name: /^Coil: household/ })
      .click();
    await page.waitForSelector('.card');
    expect(await page.getByRole('textbox', { name: 'Rolls' }).inputValue()).toBe('9');
    expect(errors).toEqual([]);
  });

  it('keeps the last good run, labelled, and hatches the turns that do not fit inside the drawing', async () => {
    const { page } = await tooMuchTube();
    expect(await page.innerText('.shown')).toMatch(/^Last good run/);
    const drawing = await page.locator('.section-drawing').boundingBox();
    const turns = await page
      .locator('.section-drawing .tube.misfit')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
    expect(turns.length).toBeGreaterThan(0);
    expect(Math.min(...turns)).toBeGreaterThan(drawing?.y ?? Number.NaN);
    expect(await page.innerText('.section-misfits')).toMatch(/turns stand out of the water/);
  });

  it.each(looks)('breaks no rule of access at $width px, $scheme', async ({ width, scheme }) => {
    const { page } = await tooMuchTube({ width, scheme });
    expect(await violations(page)).toEqual([]);
    await screenshot(page, `troubles-${width}-${scheme}`);
  });
});
