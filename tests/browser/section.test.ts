import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { looks, type VisitOptions, visit } from './support/visit.ts';

/** The page with drawing and list, the drawing in the window. (The list's code comes once the list is near it.) */
async function open(options: VisitOptions = {}) {
  const visited = await visit(options);
  const { page } = visited;
  await page.waitForSelector('.section-drawing .tube');
  await page.locator('tankful-parts-list').evaluate((list) => list.scrollIntoView());
  await page.waitForSelector('.part-list [data-path="store"]');
  await page.locator('.section-stage').evaluate((stage) => stage.scrollIntoView({ block: 'center' }));
  return visited;
}

const handle = (page: Page, key: string) => page.locator(`.handle[data-key="${key}"]`);
const where = (page: Page, key: string) => handle(page, key).getAttribute('aria-valuetext');

/** Waits for a handle to stand at a text. */
async function until(page: Page, key: string, text: string): Promise<void> {
  await page.waitForFunction(
    ([key, text]) =>
      document.querySelector(`.handle[data-key="${key}"]`)?.getAttribute('aria-valuetext')?.startsWith(text),
    [key, text],
  );
}

/** What the page makes of the design: the file's depth of water, by the list of parts. */
const depthInList = (page: Page) => page.innerText('[data-path="store"] .part-facts');

describe('the section', () => {
  it('draws the demo: its three coils’ turns, water by its temperature, machines, words', async () => {
    const { page, errors } = await open();
    // 15, 9 and 10 whole turns and what is over a half: pairs of circles.
    expect(await page.locator('.section-drawing .tube').count()).toBe(31 + 19 + 21);
    expect(await page.locator('.section-drawing #section-water stop').count()).toBeGreaterThan(8);
    expect(await page.locator('.section-drawing .pipe').count()).toBe(6);
    expect(await page.getAttribute('.section-drawing', 'aria-label')).toMatch(
      /239 gal.* deep; coils household/,
    );
    expect(await page.locator('.section-drawing text.top').textContent()).toMatch(/^(top )?\d+(\.\d)? °F$/);
    expect(errors).toEqual([]);
  });

  it('moves the water by the keys, says where it is, and the design follows', async () => {
    const { page } = await open();
    const before = await depthInList(page);
    await handle(page, 'water').focus();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('ArrowDown');
    expect(await where(page, 'water')).toMatch(/^29 3\/4 in of water, 22\d gal/);
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (old) => document.querySelector<HTMLElement>('[data-path="store"] .part-facts')?.innerText !== old,
      before,
    );
    expect(await depthInList(page)).toMatch(/22\d gal/);
    expect(await where(page, 'water')).toMatch(/^29 3\/4 in/);
  });

  it('puts a handle back on Escape', async () => {
    const { page } = await open();
    await handle(page, 'sheet-lid').focus();
    await page.keyboard.press('End');
    expect(await where(page, 'sheet-lid')).toMatch(/^12 in of polyiso/);
    await page.keyboard.press('Escape');
    await until(page, 'sheet-lid', '4 in of polyiso');
  });

  it('moves by the pointer, and hatches and explains the turns that leave the water', async () => {
    const { page } = await open();
    const box = await handle(page, 'water').boundingBox();
    if (!box) throw new Error('no handle');
    expect([box.width, box.height]).toEqual([44, 44]);
    const [x, y] = [box.x + 22, box.y + 22];
    const depth = await page.locator('.section-drawing rect.water').boundingBox();
    const inch_px = (depth?.height ?? 0) / 32;
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 6 * inch_px, { steps: 4 });
    await page.mouse.move(x, y + 12 * inch_px, { steps: 4 });
    expect(await where(page, 'water')).toMatch(/^20 in of water.*; coil household stands out of it/);
    await page.mouse.up();
    // 15.3 turns from 3 in up, 1 5/8 in apart: those whose tube tops out above 20 in.
    expect(await page.locator('.section-drawing .tube.misfit').count()).toBe(11);
    expect(await page.innerText('.section-misfits')).toMatch(/5\.5 of 15\.3 turns stand out of the water/);
    // The worker refuses the design and the page says so; the drawing stays as it is.
    await page.waitForSelector('.part[data-path="coils[0]"] .part-wrong');
    expect(await page.locator('.section-drawing .tube.misfit').count()).toBe(11);
  });

  it.each([1280, 390])('stays in its place at %d px while a hand moves', async (width) => {
    const { page } = await open({ width });
    await page.evaluate(() => {
      const tops = new Set<number>();
      Object.assign(globalThis, { tops });
      const look = () => {
        const stage = document.querySelector('.section-stage') as HTMLElement;
        tops.add(Math.round(stage.getBoundingClientRect().top + scrollY));
        requestAnimationFrame(look);
      };
      look();
    });
    await handle(page, 'water').focus();
    for (let i = 0; i < 5; i++) {
      await page.keyboard.press('ArrowDown');
      await page.waitForTimeout(100);
    }
    expect(await page.innerText('.shown')).toMatch(/^Quick estimate/);
    expect(
      await page.evaluate(() => [...(globalThis as unknown as { tops: Set<number> }).tops]),
    ).toHaveLength(1);
  });

  it('is there once and fits on a phone, with a finger’s room for each handle', async () => {
    const { page } = await open({ width: 390 });
    const places = await page.locator('.handle').evaluateAll((all) =>
      all.map((each) => {
        const { x, y, width, height } = each.getBoundingClientRect();
        return { x, y, width, height };
      }),
    );
    expect(places).toHaveLength(10);
    for (const [i, a] of places.entries()) {
      expect([a.width, a.height]).toEqual([44, 44]);
      for (const b of places.slice(i + 1)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(40);
    }
    const drawing = await page.locator('.section-drawing').boundingBox();
    expect((drawing?.x ?? 0) + (drawing?.width ?? 0)).toBeLessThanOrEqual(390);
  });
});

describe('the list of parts', () => {
  it('says why a part stays, and asks before it takes one away', async () => {
    const { page } = await open();
    await page.getByRole('button', { name: 'Remove Coil: engine' }).press('Enter');
    expect(await page.innerText('.part-refusal')).toMatch(/engine’s coolant flows through it/);
    const draws = await page.locator('[data-path^="taps.draws"]').count();
    await page.getByRole('button', { name: 'Remove Draw: laundry' }).press('Enter');
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Keep it');
    await page.keyboard.press('Enter');
    expect(await page.locator('[data-path^="taps.draws"]').count()).toBe(draws);
    await page.getByRole('button', { name: 'Remove Draw: laundry' }).press('Enter');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (left) => document.querySelectorAll('[data-path^="taps.draws"]').length === left,
      draws - 1,
    );
    // The keyboard is on the list or on the card that opened, not lost.
    expect(await page.evaluate(() => document.activeElement?.closest('tankful-page main') !== null)).toBe(
      true,
    );
    expect(await page.evaluate(() => document.activeElement === document.body)).toBe(false);
  });

  it('doubles a coil and draws it, opens a part, adds a backup heater once', async () => {
    const { page, errors } = await open();
    await page.getByRole('button', { name: 'Duplicate Coil: collector' }).click();
    await page.waitForSelector('.handle[data-key="coil-3-top"]');
    expect(await page.innerText('[data-path="coils[3]"] .part-title')).toBe('Coil: collector 2');
    expect(await page.getAttribute('[data-path="coils[3]"] .part-open', 'aria-current')).toBe('true');
    await page.getByRole('button', { name: 'a backup heater', exact: true }).click();
    await page.waitForSelector('[data-path="backup"]');
    expect(await page.getByRole('button', { name: 'a backup heater', exact: true }).count()).toBe(0);
    expect(errors).toEqual([]);
  });
});

describe('access', () => {
  it.each(looks)('is not broken at $width px, $scheme, with turns that do not fit', async (look) => {
    const { page } = await open(look);
    await handle(page, 'water').focus();
    for (let i = 0; i < 6; i++) await page.keyboard.press('PageDown');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.part-wrong');
    expect(await violations(page, ['tankful-section', 'tankful-parts-list'])).toEqual([]);
  });
});
