import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../sim/index.ts';
import type { TankfulPage } from '../../ui/web/elements/tankful-page.ts';
import { violations } from './support/axe.ts';
import { type PrintedPage, printed } from './support/printed.ts';
import { looks, screenshot, type VisitOptions, visit } from './support/visit.ts';

const file = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../scenarios/${name}.json`, import.meta.url), 'utf8')) as Scenario;

/** Eight coils with long names, an engine and a collector, and nearly all else left to defaults. */
function crowded(): Scenario {
  const demo = file('demo');
  const coil = (i: number) => ({
    name: `${['household', 'engine', 'collector'][i] ?? `spare coil number ${i + 1} of a long name`}`,
    tube: { kind: 'plumbing L', size: ['3/8 in', '1/2 in', '3/4 in', '1 in'][i % 4] },
    roll_length: i % 2 === 0 ? '20 ft' : '33 ft',
    rolls: 1 + (i % 3),
    ...(i % 3 > 0 ? { join: i % 2 === 0 ? 'series' : 'parallel' } : {}),
    coil_diameter: `${30 - 2 * i} in`,
    spacing: 'touching',
    from: '2 in',
  });
  const { engine, collector } = demo;
  return {
    format: 'tankful',
    version: 1,
    name: 'Eight coils and a name that goes on for as long as any name may, which is eighty',
    site: { latitude: '44 N' },
    run: { days: 1 },
    store: { inside: { shape: 'box', length: '48 in', width: '36 in', height: '36 in' }, bridges: 2.1 },
    coils: Array.from({ length: 8 }, (_, i) => coil(i)),
    engine: { coil: 'engine', fuel: 'diesel', rated_output: '8 kW', runs: engine?.runs },
    collector: { coil: 'collector', kind: 'evacuated tubes', size: collector?.size },
    taps: { coil: 'household', mixing_valve: { fitted: false } },
    doubts: [
      { unsure: 'a lot', input: 'store.water_depth' },
      { unsure: 'between', input: 'store.bridges', from: '1.8', to: '2.6' },
    ],
  } as unknown as Scenario;
}

/** The sheet of a scenario; of the one that the page opens with where none is named. */
async function openSheet(scenario: Scenario | null, options: VisitOptions = {}) {
  const visited = await visit(options);
  const { page } = visited;
  if (scenario) await choose(page, scenario);
  await page.click('.open-sheet');
  await page.waitForSelector('.sheet-figure .dimension text');
  await page.waitForSelector('.build-sheet .link');
  return visited;
}

async function choose(page: Page, scenario: Scenario): Promise<void> {
  await page.evaluate((json) => {
    document.querySelector<TankfulPage>('tankful-page')?.page.openScenario(json);
  }, scenario);
  await page.waitForFunction((name) => {
    const state = document.querySelector<TankfulPage>('tankful-page')?.page.store.get();
    return state?.shown?.result.name === name && state.progress === null;
  }, scenario.name);
}

/** 12 mm [pt]: what paper.css leaves around the pages. */
const margin_pt = (12 / 25.4) * 72;

function within({ words, width_pt, height_pt }: PrintedPage): void {
  expect(words.left).toBeGreaterThan(margin_pt - 1);
  expect(words.right).toBeLessThan(width_pt - margin_pt + 1);
  expect(words.bottom).toBeGreaterThan(margin_pt - 1);
  expect(words.top).toBeLessThan(height_pt - margin_pt + 1);
}

/** Elements that are cut off by the page they stand on, once paper's styles hold. */
async function cutOff(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(() =>
    [...document.querySelectorAll('.sheet-page')].flatMap((sheet) => {
      const box = sheet.getBoundingClientRect();
      return [...sheet.querySelectorAll('p, li, td, th, h1, h2, svg text, figcaption')].flatMap((each) => {
        const own = each.getBoundingClientRect();
        const out =
          own.width > 0 &&
          (own.left < box.left - 1 ||
            own.right > box.right + 1 ||
            own.top < box.top - 1 ||
            own.bottom > box.bottom + 1);
        return out ? [`${each.tagName} ${each.textContent?.slice(0, 60)}`] : [];
      });
    }),
  );
  await page.emulateMedia({ media: null });
  return found;
}

describe.each(['demo', 'boat', 'nobody-home', 'tote-sun', 'crowded'])('the build sheet of %s', (name) => {
  it('is exactly two pages of Letter and of A4, and nothing of it is cut off', async () => {
    const scenario = name === 'crowded' ? crowded() : file(name);
    const { page, errors } = await openSheet(name === 'demo' ? null : scenario);
    expect(await cutOff(page)).toEqual([]);
    const letter = await printed(page, 'Letter');
    const a4 = await printed(page, 'A4');
    expect([letter.length, a4.length]).toEqual([2, 2]);
    expect(letter.map(({ width_pt, height_pt }) => [width_pt, height_pt])).toEqual([
      [612, 792],
      [612, 792],
    ]);
    for (const each of [...letter, ...a4]) within(each);
    // The same words, whatever the paper; of other scenarios answers come in between.
    if (name === 'demo') expect(a4.map(({ text }) => text)).toEqual(letter.map(({ text }) => text));
    expect(letter[0].text).toContain(`Build sheet: ${scenario.name}`);
    for (const [i, { text }] of letter.entries()) {
      expect(text).toMatch(/Tankful \d+\.\d+\.\d+, [A-Z][a-z]+ \d+, 20\d\d/);
      if (name !== 'crowded') expect(text).toContain(`page ${i + 1} of 2`);
    }
    expect(letter[0].text).toMatch(/An estimate, not an approval\. Local code and licensed practice decide/);
    expect(letter[1].text).toMatch(/With cause in this run:.*No cause seen in this run/s);
    expect(letter[1].text).toMatch(/\d+ more stand in the file/);
    expect(errors).toEqual([]);
  });
});

describe('the build sheet of the demo', () => {
  it('has its key numbers in both systems', async () => {
    const { page } = await openSheet(null);
    const [first, second] = await printed(page, 'Letter');
    const flat = (text: string) => text.replace(/\s+/g, ' ');
    // Inside, water line, coils by hand: 120 ft round 30 in, 1 5/8 in apart, are 1440 / 94.26 turns from 3 in up.
    expect(flat(first.text)).toMatch(/Inside 48 x 36 x 36 in \(1219 x 914 x 914 mm\)/);
    expect(flat(first.text)).toMatch(/Water line 32 in \(813 mm\) up/);
    expect(flat(first.text)).toMatch(/water 32 in (\/ )?813 mm/);
    expect(flat(first.text)).toMatch(/15\.3; /);
    expect(flat(first.text)).toMatch(/A first turn 3 in \/ 76 mm/);
    expect(flat(first.text)).toMatch(/presses 166 lb\/ft² \(8\.0 kPa\) down/);
    expect(flat(second.text)).toMatch(/3 rolls of 60 ft \(18\.3 m\)/);
    expect(flat(second.text)).toMatch(/3 boards, 96 ft² \(8\.92 m²\)/);
    expect(flat(second.text)).toMatch(/must be at \d+ °F \(\d+ to \d+ °F\) \/ \d+ °C \(\d+ to \d+ °C\)/);
    for (const hazard of ['Scald', 'Trapped coil', 'Coolant', 'Boil-over', 'Liner', 'Freezing', 'Weight']) {
      expect(second.text).toContain(hazard);
    }
    for (const hazard of ['Carbon monoxide', 'Legionella', 'Wiring']) expect(second.text).toContain(hazard);
    expect(flat(second.text)).toMatch(
      /outside film of a real store against the formula 0\.8, 0\.5 to 1\.2 \(D: /,
    );
  });

  it('is black on white in print, whatever the scheme', async () => {
    const { page } = await openSheet(null, { scheme: 'dark' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const [ink, ground, text] = await page.evaluate(() => {
      const of = (selector: string) => getComputedStyle(document.querySelector(selector) as Element);
      return [
        of('.build-sheet').color,
        of('body').backgroundColor,
        of('.sheet-drawing .dimension text').fill,
      ];
    });
    expect([ink, ground, text]).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  });

  it('opens and closes by the keyboard, and leaves the page as it was', async () => {
    const { page, errors } = await visit();
    await page.waitForSelector('.open-sheet');
    await page.focus('.open-sheet');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.build-sheet h1');
    await page.waitForFunction(() => document.activeElement?.id === 'sheet-title');
    expect(await page.isVisible('.sheet-drawing .tube >> nth=0')).toBe(true);
    expect(await page.isVisible('tankful-days')).toBe(false);
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    await page.waitForSelector('tankful-sheet', { state: 'detached' });
    expect(await page.isVisible('tankful-days')).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.classList.contains('open-sheet'))).toBe(true);
    // The rest of the page prints by its own rules again.
    expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
    expect(errors).toEqual([]);
  });

  it('has a link that opens the same design', async () => {
    const { page } = await openSheet(null);
    const link = await page.getAttribute('.build-sheet .link a', 'href');
    await page.goto('about:blank');
    await page.goto(link ?? '');
    await page.waitForFunction(() => {
      const state = document.querySelector<TankfulPage>('tankful-page')?.page.store.get();
      return state?.design.scenario.coils?.length === 3;
    });
    const name = await page.evaluate(
      () => document.querySelector<TankfulPage>('tankful-page')?.page.store.get().design.name,
    );
    expect(name).toBe(file('demo').name);
  });

  it('says so where the design has gone on since its run', async () => {
    const { page } = await openSheet(null);
    await page.evaluate(() => {
      const { page } = document.querySelector('tankful-page') as TankfulPage;
      page.commit([{ path: 'store.water_depth', value: '40 in' }], 'too deep');
    });
    await page.waitForSelector('.build-sheet .stale');
    expect((await printed(page, 'A4'))[0].text).toMatch(
      /Of the last good run, not of the design as it stands/,
    );
  });

  it.each(looks)('is not broken at $width px, $scheme', async (look) => {
    const { page } = await openSheet(null, look);
    expect(await violations(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(look.width);
    await screenshot(page, `sheet-${look.width}-${look.scheme}`);
  });

  it('fits 320 px', async () => {
    const { page } = await openSheet(null, { width: 320 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
