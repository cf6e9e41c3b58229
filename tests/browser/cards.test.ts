import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import demoFile from '../../scenarios/demo.json';
import type { Scenario } from '../../sim/index.ts';
import type { CardStand } from './support/card-stand.ts';
import { openStand } from './support/stand.ts';

declare const stand: CardStand;
const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const demo = demoFile as Scenario;
let page: Page;
let errors: string[];

beforeAll(async () => {
  ({ page, errors } = await openStand('card-stand.ts', { width: 390 }));
  await page.addScriptTag({ path: axePath });
});
beforeEach(() => {
  errors.length = 0;
});

async function open(path: string, units: 'US' | 'SI' = 'US'): Promise<void> {
  await page.evaluate(([json, part, system]) => stand.open(json, part, { units: system }), [
    demo,
    path,
    units,
  ] as const);
  await page.waitForSelector('.card');
}
const heard = () => page.evaluate(() => stand.heard.splice(0));
const box = (name: string | RegExp) => page.getByRole('textbox', { name });
const described = (name: string | RegExp) => describing(box(name));
const describing = (control: Locator) =>
  control.evaluate((input) =>
    (input.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent?.trim())
      .join(' '),
  );

async function violations(): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: {
        run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    const found = await axe.run();
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
    );
  });
}

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
      /^Depth of water - expected a length .* - got "50 psi" - .*measures a pressure/,
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
  });

  it('that the plant cannot have is told of at its box once the plant was read', async () => {
    await open('store');
    await box('Depth of water').fill('40 in');
    await box('Depth of water').press('Enter');
    await page.waitForSelector('#card-store-water_depth-trouble');
    expect(await described('Depth of water')).toMatch(/got 1016 mm - .*= 3\.33 ft \(1\.02 m\)/);
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
    // Don't know, how to measure it, then the range.
    for (let i = 0; i < 3; i++) await page.keyboard.press('Tab');
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
    await page.getByRole('button', { name: 'Remove: Sheet 2' }).first().click();
    expect(await page.evaluate(() => stand.scenario.store.insulation)).toEqual(demo.store.insulation);
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

describe('for everyone', () => {
  const looks = [
    { width: 1280, scheme: 'light' },
    { width: 1280, scheme: 'dark' },
    { width: 320, scheme: 'light' },
    { width: 320, scheme: 'dark' },
  ] as const;

  async function openAll(): Promise<void> {
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
  }

  it.each(looks)('breaks no rule of access at $width px, $scheme, also with errors', async (look) => {
    await page.setViewportSize({ width: look.width, height: 900 });
    await page.emulateMedia({ colorScheme: look.scheme });
    for (const part of look.width > 320 ? ['store', 'engine'] : ['taps', 'weather']) {
      await open(part);
      await openAll();
      await page.locator('.card input[type=text]').first().fill('50 psi');
      await page.keyboard.press('Enter');
      await page.waitForSelector('.trouble');
      expect(await violations()).toEqual([]);
    }
  });

  it('does not scroll sideways at 320 px, whatever is open', async () => {
    await page.setViewportSize({ width: 320, height: 900 });
    for (const part of [
      'store',
      'coils[0]',
      'engine',
      'collector',
      'supply',
      'taps',
      'weather',
      'run',
      'prices',
    ]) {
      await open(part);
      await openAll();
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, part).toBeLessThanOrEqual(0);
    }
  });

  it('gives a finger 44 px', async () => {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: true });
    await page.setViewportSize({ width: 390, height: 900 });
    await open('engine');
    await openAll();
    expect(await page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
    const small = await page
      .locator('.card :is(button, summary, select, input[type=text], label:has(input[type=radio]))')
      .evaluateAll((targets) =>
        targets
          .filter((target) => target.getBoundingClientRect().height < 44)
          .map((target) => target.outerHTML),
      );
    expect(small).toEqual([]);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: false });
  });

  it('switches units without a change to the design', async () => {
    await open('store', 'SI');
    expect(await box('Depth of water').inputValue()).toBe('32 in');
    expect(await described('Depth of water')).toBe('= 813 mm (32 in)');
    expect(await page.evaluate(() => stand.scenario)).toEqual(demo);
    expect(errors).toEqual([]);
  });
});
