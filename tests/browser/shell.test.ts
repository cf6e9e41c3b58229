/** What holds the rooms together: links, the run's line, pinned designs, ranges, answers on request. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, type VisitOptions, visit } from './support/visit.ts';

async function open(options: VisitOptions = {}) {
  const visited = await visit(options);
  await visited.page.waitForSelector('.answer-lines li');
  await visited.page.waitForSelector('.section-drawing');
  await visited.page.waitForSelector('.stage svg .line.top');
  return visited;
}

/** One step down of the water line by the keyboard, let go of, and run in full. */
async function lowerTheWater(page: Page): Promise<void> {
  await page.getByRole('slider', { name: /^Water line/ }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() =>
    /31 3\/4 in/.test(
      document.querySelector('.handle[data-key=water]')?.getAttribute('aria-valuetext') ?? '',
    ),
  );
  await page.waitForFunction(() => {
    const line = document.querySelector('.run-line');
    return line && !line.classList.contains('stale') && !line.querySelector('progress, strong');
  });
}

describe('the first screen', () => {
  it('shows three answers with numbers, the drawing, and a panel of the days beside it', async () => {
    const { page } = await open({ width: 1280, height: 900 });
    const answers = await page.locator('.answer-lines li').allInnerTexts();
    expect(answers).toHaveLength(3);
    for (const answer of answers) expect(answer).toMatch(/\d/);
    const box = async (selector: string) => {
      const found = await page.locator(selector).first().boundingBox();
      if (!found) throw new Error(`expected ${selector}`);
      return found;
    };
    const [lines, drawing, panel] = [
      await box('.answer-lines'),
      await box('.section-drawing'),
      await box('.stage[data-panel=temperatures]'),
    ];
    expect(lines.y + lines.height).toBeLessThan(drawing.y);
    expect(drawing.y).toBeLessThan(900 - 200);
    expect(panel.y).toBeLessThan(900 - 120);
    expect(panel.x).toBeGreaterThan(drawing.x + drawing.width);
  });
});

describe('on a narrow screen', () => {
  it('a table that goes on beyond the edge has a shadow there, which its end covers', async () => {
    const { page } = await open({ width: 320 });
    await page.locator('.answer-lines details > summary').first().click();
    const table = page.locator('.answer-lines .scrolls').first();
    await table.waitFor();
    expect(await table.evaluate((box) => box.scrollWidth - box.clientWidth)).toBeGreaterThan(20);
    const edge = async () => {
      const box = await table.boundingBox();
      if (!box) throw new Error('no table');
      // Below the head, where there is nothing but ground and numbers.
      const clip = { x: box.x + box.width - 3, y: box.y + box.height - 4, width: 3, height: 3 };
      return (await page.screenshot({ clip })).toString('base64');
    };
    await table.scrollIntoViewIfNeeded();
    const goesOn = await edge();
    await table.evaluate((box) => box.scrollTo({ left: box.scrollWidth }));
    expect(await edge()).not.toBe(goesOn);
  });

  it('the readout and the date stay within their places', async () => {
    const { page } = await open({ width: 320 });
    const outside = await page.locator('.readout').evaluate((readout) => {
      const { left, right } = readout.getBoundingClientRect();
      const range = document.createRange();
      return [...readout.querySelectorAll('dt, dd')].filter((cell) => {
        range.selectNodeContents(cell);
        const words = range.getBoundingClientRect();
        return words.left < left - 0.5 || words.right > right + 0.5;
      }).length;
    });
    expect(outside).toBe(0);
    // A date, its border and its button: 9 letters and a half, as measured in Chromium.
    const date = await page.locator('input[name=from]').evaluate((input) => ({
      width: input.getBoundingClientRect().width,
      letter: Number.parseFloat(getComputedStyle(input).fontSize),
    }));
    expect(date.width / date.letter).toBeGreaterThan(9.5);
  });
});

describe('the row of links', () => {
  it('stays in sight, leads to each room and says which one is in sight', async () => {
    const { page } = await open();
    for (const name of ['Section', 'Days', 'Where the heat goes', 'Answers']) {
      await page.getByRole('navigation').getByRole('link', { name }).click();
      await page.waitForFunction(
        (room) => document.querySelector<HTMLElement>('.rooms [aria-current]')?.innerText === room,
        name,
      );
      const row = await page.locator('.rooms').boundingBox();
      expect(row?.y).toBeGreaterThanOrEqual(0);
      expect(row?.y).toBeLessThan(100);
    }
  });

  it('says where one is after a leap over rooms, and at the top the first', async () => {
    const { page } = await open();
    const scrolled = async (to_px: number, name: string) => {
      await page.evaluate((y) => scrollTo(0, y), to_px);
      await page.waitForFunction(
        (room) => document.querySelector<HTMLElement>('.rooms [aria-current]')?.innerText === room,
        name,
        { timeout: 5000 },
      );
    };
    await scrolled(0, 'Answers');
    await page.getByRole('navigation').getByRole('link', { name: 'Where the heat goes' }).click();
    await page.waitForSelector('.figure-groups');
    await scrolled(0, 'Answers');
    // Past the end of the last room, from where no room is met on the way up.
    await scrolled(1e6, 'Where the heat goes');
    await scrolled(0, 'Answers');
    // Between the rooms stands what belongs to the one before.
    await scrolled(1e6, 'Where the heat goes');
    const list = await page
      .locator('tankful-parts-list')
      .evaluate((part) => part.getBoundingClientRect().bottom + scrollY);
    await scrolled(list - 300, 'Section');
  });

  it('leads, as the dangers do, also to what is still to be loaded', async () => {
    const { page } = await open();
    const danger = page.locator('.dangers a').first();
    const title = await danger.innerText();
    await danger.click();
    await page.waitForSelector('.figure-groups');
    const note = page.locator(`.caution.danger:has-text("${title}")`).first();
    await note.waitFor();
    await page.waitForFunction(() => scrollY > 1000);
  });
});

describe('a hand that moves', () => {
  it('sees an estimate that is called one, then the full run', async () => {
    const { page } = await open();
    await page.getByRole('slider', { name: /^Insulation, sides/ }).focus();
    await page.keyboard.press('PageUp');
    await page.waitForFunction(() =>
      /^Quick estimate/.test(document.querySelector('.shown')?.textContent?.trim() ?? ''),
    );
    await page.keyboard.press('Enter');
    await page.waitForFunction(() =>
      /^Larch Hollow/.test(document.querySelector('.shown')?.textContent?.trim() ?? ''),
    );
  });
});

describe('a pinned design', () => {
  it('stands beside what was changed since: the inputs first, then what came of them', async () => {
    const { page, errors } = await open();
    await page.getByRole('button', { name: 'Pin this design' }).click();
    const compare = page.locator('tankful-compare');
    await compare.getByText('Nothing yet').waitFor();
    await lowerTheWater(page);
    const tables = compare.locator('table');
    await tables.first().waitFor();
    expect(await tables.first().locator('tbody tr').allInnerTexts()).toEqual([
      expect.stringMatching(/^Store, depth of water\s+32 in\s+31 3\/4 in$/),
    ]);
    expect(await compare.innerText()).toMatch(/[+−]\d/);
    expect(await page.locator('.section-drawing .ghost').count()).toBeGreaterThan(0);
    expect(await page.locator('.stage svg .ghost').count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Take the pin out' }).click();
    await compare.waitFor({ state: 'detached' });
    expect(errors).toEqual([]);
  });
});

describe('a range', () => {
  it('is asked for in a card, and comes as a table with the figures of each run', async () => {
    const { page, errors } = await open();
    await page.locator('tankful-parts-list').scrollIntoViewIfNeeded();
    await page.locator('.part-open', { hasText: 'Store' }).first().click();
    const field = page.locator('tankful-card .range', { hasText: /depth of water/i }).first();
    await field.locator('summary').click();
    const boxes = field.locator('.range-box');
    await boxes.nth(0).fill('31 in');
    await boxes.nth(1).fill('32 in');
    await boxes.nth(2).fill('3');
    await field.getByRole('button').click();
    const rows = page.locator('tankful-range tbody tr');
    await rows.nth(2).waitFor();
    const texts = await rows.allInnerTexts();
    expect(texts).toHaveLength(3);
    expect(texts[0]).toMatch(/^31 in/);
    expect(texts[2]).toMatch(/as it is/);
    for (const text of texts) expect(text).toMatch(/°F/);
    expect(errors).toEqual([]);
  });
});

describe('an answer on request', () => {
  it('tells how far it is, can be stopped, and keeps what was finished', async () => {
    const { page, errors } = await open();
    await page.getByRole('button', { name: 'Store and insulation' }).click();
    await page.waitForFunction(() =>
      /[1-9]\d* of \d+/.test(document.querySelector('.answer-lines .working')?.textContent ?? ''),
    );
    await page.getByRole('button', { name: /^Stop.*Store and insulation/ }).click();
    await page.waitForSelector('.answer-lines .working', { state: 'detached' });
    expect(await page.locator('.answer-lines li').last().innerText()).toMatch(/Stopped|Could not/);
    expect(errors).toEqual([]);
  });

  it('is told to be of the design as it was, once that has changed', async () => {
    const { page } = await open();
    await lowerTheWater(page);
    expect(await page.locator('.answer-lines li').first().innerText()).toContain('Of the design as it was');
  });
});

describe('the page with all of it open', () => {
  it.each(looks)('breaks no rule of access at $width px, $scheme', async (look) => {
    const { page } = await open(look);
    await page.getByRole('button', { name: 'Pin this design' }).click();
    await lowerTheWater(page);
    await page.locator('tankful-compare table').first().waitFor();
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    await page.waitForSelector('.figure-groups');
    expect(await violations(page)).toEqual([]);
  });

  it('does not scroll sideways at 320 px', async () => {
    const { page } = await open({ width: 320 });
    await page.getByRole('button', { name: 'Pin this design' }).click();
    await lowerTheWater(page);
    await page.locator('tankful-compare table').first().waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  });
});
