import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import type { TankfulCard } from '../../ui/web/elements/cards/tankful-card.ts';
import { type CardPage, demo, openCardPage } from './support/card-page.ts';
import type { CardStand } from './support/card-stand.ts';
import { visit } from './support/visit.ts';

declare const stand: CardStand;
let page: Page;
let open: CardPage['open'];
let heard: CardPage['heard'];
let box: CardPage['box'];
let describing: CardPage['described'];
const described = (name: string | RegExp) => describing(box(name));

beforeAll(async () => {
  ({ page, open, heard, box, described: describing } = await openCardPage());
});

describe('a typed quantity', () => {
  it('is taken in any unit on Enter, and echoed in both systems', async () => {
    await open('taps.draws[0]');
    await heard();
    await box(/^Wanted temperature/).fill('120 F');
    expect(await described(/^Wanted temperature/)).toBe('= 120 °F (48.9 °C)');
    expect(await heard()).toEqual([]);
    await box(/^Wanted temperature/).press('Enter');
    expect(await heard()).toEqual([{ path: 'taps.draws[0].temperature', value: '120 F' }]);
    expect(await page.innerText('.card > [role=status]')).toBe('Wanted temperature: 120 °F (48.9 °C)');
  });

  it('of a tube is understood as what is sold under that name', async () => {
    await open('coils[2]');
    const size = page.getByRole('combobox', { name: /^Size/ });
    await size.fill('3/8 in');
    await size.press('Tab');
    expect(await describing(size)).toBe(
      '3/8 in refrigeration tube = 3/8 in (9.5 mm) outside, 0.311 in (7.9 mm) inside',
    );
    expect(await page.evaluate(() => stand.scenario.coils?.[2].tube)).toMatchObject({ size: '3/8 in' });
  });

  it('in a wrong unit is refused beside its box, kept, and taken back on Escape', async () => {
    await open('store');
    await heard();
    await box('Depth of water').fill('50 psi');
    await box('Depth of water').press('Enter');
    expect(await box('Depth of water').getAttribute('aria-invalid')).toBe('true');
    expect(await described('Depth of water')).toMatch(
      /^Depth of water - expected a length .* - got "50 psi" - .*measures a pressure.*not part of the design, and is not kept\.$/,
    );
    expect(await box('Depth of water').inputValue()).toBe('50 psi');
    expect(await heard()).toEqual([]);
    await box('Depth of water').press('Escape');
    expect(await box('Depth of water').inputValue()).toBe('32 in');
    expect(await box('Depth of water').getAttribute('aria-invalid')).toBe('false');
  });

  it('without a unit is offered with those it could have', async () => {
    await open('store');
    await box('Depth of water').fill('30');
    await box('Depth of water').press('Enter');
    await page.getByRole('button', { name: '30 in', exact: true }).click();
    expect(await page.evaluate(() => stand.scenario.store.water_depth)).toBe('30 in');
    expect(await described('Depth of water')).toBe('= 30 in (762 mm)');
    expect(await box('Depth of water').evaluate((input) => input === document.activeElement)).toBe(true);
  });

  it('that the plant cannot have is told of at its box once the plant was read', async () => {
    await open('store');
    await box('Depth of water').fill('40 in');
    await box('Depth of water').press('Enter');
    await page.waitForSelector('#card-store-water_depth-trouble');
    expect(await described('Depth of water')).toMatch(/got 40 in \(1016 mm\) - .*= 3\.33 ft \(1\.02 m\)/);
    expect(await page.evaluate(() => stand.scenario.store.water_depth)).toBe('40 in');
  });

  it('that was never entered goes on Escape', async () => {
    await open('store');
    await box('Depth of water').fill('31 in');
    await box('Depth of water').press('Escape');
    expect(await box('Depth of water').inputValue()).toBe('32 in');
    expect(await described('Depth of water')).toBe('= 32 in (813 mm)');
  });
});

describe('a mistake in a fold', () => {
  const isOpen = (selector: string) =>
    page.locator(selector).evaluate((fold) => (fold as HTMLDetailsElement).open);

  it('put right from the keyboard leaves the fold open and the focus where it went', async () => {
    await open('engine');
    await page.locator('.more > summary').click();
    const thermostat = box(/^Thermostat begins to open/);
    await thermostat.fill('180');
    await thermostat.press('Tab');
    await page.waitForSelector('#card-engine-thermostat-trouble');
    await thermostat.fill('175 F');
    await thermostat.press('Tab');
    await page.waitForSelector('#card-engine-thermostat-trouble', { state: 'detached' });
    expect(await isOpen('.more')).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.closest('.more') !== null)).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe('BODY');
  });

  it('opens the fold, is shut by its reader alone, and opens it anew when it comes again', async () => {
    await open('store');
    const more = page.locator('.more');
    const wrong = (text: string | null) =>
      page.evaluate((typed) => {
        const card = document.querySelector<TankfulCard>('tankful-card');
        if (card) card.typed = typed === null ? {} : { 'store.wall': typed };
        return card?.updateComplete;
      }, text);
    await wrong('?');
    expect(await isOpen('.more')).toBe(true);
    await more.locator('> summary').click();
    await wrong('??');
    expect(await isOpen('.more')).toBe(false);
    await wrong(null);
    await wrong('?');
    expect(await isOpen('.more')).toBe(true);
    await wrong(null);
    expect(await isOpen('.more')).toBe(true);
  });
});

describe('“Don’t know”', () => {
  it('takes the assumption, says where it comes from, and leaves the reader at its box', async () => {
    await open('store');
    await heard();
    await page.getByRole('button', { name: 'Don’t know: Depth of water' }).click();
    expect(await heard()).toEqual([{ path: 'store.water_depth' }]);
    await page.waitForFunction(() => document.activeElement?.id === 'card-store-water_depth');
    const depth = box(/^Depth of water assumed/);
    expect(await depth.inputValue()).toBe('33.12 in');
    expect(await described(/^Depth of water/)).toMatch(
      /^= 33\.1 in \(841 mm\) 92 % of the inside height\. Source: .* \(grade D, common practice/,
    );
    // Entered as it stands, it is the owner's.
    await depth.press('Enter');
    expect(await heard()).toEqual([{ path: 'store.water_depth', value: '33.12 in' }]);
    expect(await page.getByRole('button', { name: 'Don’t know: Depth of water' }).count()).toBe(1);
  });

  it('of what nothing can stand in for leaves an example, marked as one', async () => {
    await open('coils[0]');
    await page.getByRole('button', { name: 'Don’t know: Length of one roll' }).click();
    expect(await described(/^Length of one roll example/)).toMatch(/only an example/);
    await box(/^Length of one roll/).fill('55 ft');
    await box(/^Length of one roll/).press('Enter');
    expect(await box('Length of one roll').count()).toBe(1);
    expect(await described('Length of one roll')).toBe('= 55 ft (16.8 m)');
  });
});

describe('a word that decides', () => {
  it('brings what it needs, keeps what it can, and gives back what was there', async () => {
    await open('store');
    await page.getByRole('radio', { name: 'upright cylinder' }).check();
    expect(await page.evaluate(() => stand.scenario.store.inside)).toEqual({
      shape: 'upright cylinder',
      diameter: '24 in',
      height: '36 in',
    });
    await box(/^Diameter example/).waitFor();
    await page.getByRole('radio', { name: 'box' }).check();
    expect(await page.evaluate(() => stand.scenario.store.inside)).toEqual(demo.store.inside);
  });
});

describe('the keyboard alone', () => {
  it('enters, opens, chooses, adds, asks for a range and closes', async () => {
    await open('supply');
    await heard();
    await page.getByRole('button', { name: /^Close/ }).focus();
    const tabTo = async (id: string) => {
      for (let i = 0; i < 60; i++) {
        if ((await page.evaluate(() => document.activeElement?.id)) === id) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`Tab does not reach ${id}`);
    };
    await tabTo('card-supply-pump-open_flow');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('10 L/min');
    await page.keyboard.press('Enter');
    expect(await heard()).toEqual([{ path: 'supply.pump.open_flow', value: '10 L/min' }]);
    // Don't know, how to measure it, how sure, then the range.
    for (let i = 0; i < 4; i++) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2 gpm');
    await page.keyboard.press('Enter');
    expect(await heard()).toEqual([{ path: 'supply.pump.open_flow', from: '2 gpm', to: '3.5 gpm', n: 5 }]);
    await page.locator('.more > summary').focus();
    await page.keyboard.press('Enter');
    await page.locator('.fold > summary').first().focus();
    await page.keyboard.press('Enter');
    await tabTo('card-supply-cold-kind');
    await page.keyboard.press('ArrowUp');
    expect((await heard())[0]).toMatchObject({ path: 'supply.cold', value: { kind: 'by month' } });
    await page.getByRole('button', { name: /^Close/ }).focus();
    await page.keyboard.press('Enter');
    expect(await heard()).toEqual([{ path: null }]);
  });

  it('is told what is wrong with a range', async () => {
    await open('store');
    await heard();
    await page.locator('summary', { hasText: 'Try a range: Depth of water' }).click();
    // As far as the demo's box, 36 in high, lets it.
    expect(await page.locator('#card-store-water_depth-range-to').inputValue()).toBe('36 in');
    await page.locator('#card-store-water_depth-range-to').fill('3 psi');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#card-store-water_depth-range-trouble');
    expect(await page.locator('#card-store-water_depth-range-to').getAttribute('aria-invalid')).toBe('true');
    expect(await heard()).toEqual([]);
  });

  it('grows and shrinks a list', async () => {
    await open('store');
    await page.getByRole('button', { name: 'Add one: Insulation, from the water outwards: sides' }).click();
    expect(await page.evaluate(() => stand.scenario.store.insulation?.sides?.length)).toBe(2);
    await page.getByRole('button', { name: 'Remove: Sides, Sheet 2' }).click();
    expect(await page.evaluate(() => stand.scenario.store.insulation)).toEqual(demo.store.insulation);
  });
});

describe('a part that is not there', () => {
  it('says what that means, and is begun on request', async () => {
    await open('backup');
    expect(await page.innerText('.card')).toContain('No backup heater.');
    await page.getByRole('button', { name: 'Add one: Backup heater' }).click();
    await box(/^Largest heat into the water example/).waitFor();
    expect(await page.evaluate(() => stand.scenario.backup)).toEqual({ max_heat: '35 kBtu/h' });
  });
});

describe('a caution', () => {
  it('stands beside the value that raises it', async () => {
    await open('store');
    const beside = (id: string) =>
      page
        .locator('.entry', { has: page.locator(`#${id}`) })
        .locator('.caution summary')
        .allInnerTexts();
    expect(await beside('card-store-water_depth')).toEqual([expect.stringContaining('Weight')]);
    await open('coils[1]');
    expect(await beside('card-coils-1--roll_length')).toEqual([
      expect.stringContaining('Water trapped in a coil'),
    ]);
    await open('engine');
    expect(await page.locator('.card .caution.danger').allInnerTexts()).toEqual([
      expect.stringContaining('Poisonous coolant'),
      expect.stringMatching(/Carbon monoxide[\s\S]*here for 28 h/),
    ]);
  });
});

describe('on the whole page', () => {
  it('a card changes the design, and the design the list and the drawing', async () => {
    const { page: whole, errors } = await visit();
    // The list's code comes when a reader comes near it.
    await whole.evaluate(() => document.querySelector('tankful-parts-list')?.scrollIntoView());
    await whole.locator('.part[data-path=store] .part-open').click();
    const depth = whole.getByRole('textbox', { name: 'Depth of water' });
    await depth.fill('30 in');
    await depth.press('Enter');
    // Demo: 36 in by 48 in by 30 in of water are 224 US gallons.
    await whole.waitForFunction(() =>
      /224 gal/.test(document.querySelector('.part[data-path=store] .part-facts')?.textContent ?? ''),
    );
    await whole.waitForFunction(() =>
      /^30 in of water/.test(
        document.querySelector('[role=slider][aria-label="Water line"]')?.getAttribute('aria-valuetext') ??
          '',
      ),
    );
    await depth.fill('50 psi');
    await depth.press('Enter');
    await whole.waitForSelector('#card-store-water_depth-trouble');
    expect(await depth.inputValue()).toBe('50 psi');
    await depth.press('Escape');
    expect(await depth.inputValue()).toBe('30 in');
    await whole.getByRole('button', { name: 'Close: Store' }).click();
    await whole.waitForSelector('.card', { state: 'detached' });
    expect(errors).toEqual([]);
  });
});
