/** Days and Where the heat goes in the real browser: cursor, keys, zoom, close look, table, ghosts, colours. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { TankfulDays } from '../../ui/web/elements/tankful-days.ts';
import { type VisitOptions, visit } from './support/visit.ts';

const hour_s = 3600;

async function openDays(options: VisitOptions = {}) {
  const visited = await visit(options);
  await visited.page.waitForSelector('tankful-days .stage svg .line.top');
  await visited.page.locator('.days').scrollIntoViewIfNeeded();
  return visited;
}

const stage = (page: Page, panel: string) => page.locator(`.stage[data-panel=${panel}]`);
const moment = (page: Page) => page.innerText('.readout .moment');
const windowWords = (page: Page) => page.innerText('.days .days-window');
const spoken = (page: Page) => page.locator('.days [aria-live]').innerText();

async function zoomTo(page: Page, from_s: number, to_s: number): Promise<void> {
  await page.evaluate(
    ([from, to]) => {
      const days = document.querySelector<TankfulDays>('tankful-days');
      days?.dispatchEvent(new CustomEvent('zoom', { detail: { window_s: [from, to] }, bubbles: true }));
    },
    [from_s, to_s],
  );
}

async function hears(page: Page, words: RegExp): Promise<void> {
  await page.waitForFunction(
    (pattern) => new RegExp(pattern).test(document.querySelector('.days [aria-live]')?.textContent ?? ''),
    words.source,
  );
}

describe('the panels', () => {
  it('share one time axis and one cursor', async () => {
    const { page, errors } = await openDays();
    const panels = await page
      .locator('.stage')
      .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset.panel));
    expect(panels).toEqual(['temperatures', 'field', 'heat', 'ran', 'water', 'sun']);
    const box = await stage(page, 'temperatures').boundingBox();
    if (!box) throw new Error('no chart');
    const before = await moment(page);
    await page.mouse.move(box.x + box.width * 0.7, box.y + 60);
    expect(await moment(page)).not.toBe(before);
    const lines = await page
      .locator('.cursor-line')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().x));
    expect(lines).toHaveLength(6);
    expect(new Set(lines).size).toBe(1);
    expect(Math.abs(lines[0] - (box.x + box.width * 0.7))).toBeLessThan(3);
    const axes = await page
      .locator('.stage .time-axis')
      .evaluateAll((all) => all.map((each) => each.textContent));
    expect(new Set(axes).size).toBe(1);
    expect(errors).toEqual([]);
  });

  it('are one tab stop each', async () => {
    const { page } = await openDays();
    await stage(page, 'temperatures').focus();
    const visited: string[] = [];
    // Beside its stop each chart has the one that saves it.
    for (let i = 0; i < 12; i++) {
      const stop = await page.evaluate(() => {
        const at = document.activeElement as HTMLElement;
        return at.dataset.panel ?? at.textContent?.trim() ?? '';
      });
      if (stop !== 'Save') visited.push(stop);
      await page.keyboard.press('Tab');
    }
    expect(visited).toEqual(['temperatures', 'field', 'heat', 'ran', 'water', 'sun', 'overview']);
  });

  it('answer the keys, tersely', async () => {
    const { page } = await openDays();
    await stage(page, 'temperatures').focus();
    await page.keyboard.press('Home');
    const first = await moment(page);
    await page.keyboard.press('ArrowRight');
    const second = await moment(page);
    expect(second).not.toBe(first);
    await hears(page, /^top \d+(\.\d+)? °F, /);
    await page.keyboard.press('PageUp');
    const nextDay = await moment(page);
    expect(nextDay.split(', ')[1]).toBe(second.split(', ')[1]);
    await page.keyboard.press('PageDown');
    expect(await moment(page)).toBe(second);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await hears(page, /^middle \d+(\.\d+)? °F, /);
    expect(await page.locator('.stage .line.middle.chosen').count()).toBe(1);
    await page.keyboard.press('e');
    await hears(page, /^(water runs cold|engine starts|solar pump on).*, (Mon|Tue|Wed|Thu|Fri|Sat|Sun) /);
    const event = await spoken(page);
    await page.keyboard.press('e');
    await page.waitForFunction(
      (old) => document.querySelector('.days [aria-live]')?.textContent?.trim() !== old,
      event,
    );
    await page.keyboard.press('Shift+E');
    await page.waitForFunction(
      (old) => document.querySelector('.days [aria-live]')?.textContent?.trim() === old,
      event,
    );
    expect(event.split(' ').length).toBeLessThan(12);
  });
});

describe('the window', () => {
  const span = (page: Page) =>
    page.evaluate(() => {
      const [from, to] = document.querySelector<TankfulDays>('tankful-days')?.window_s ?? [0, 0];
      return to - from;
    });

  it('takes the cursor along when its buttons move the window', async () => {
    const { page } = await openDays();
    await page.getByRole('button', { name: '1 day' }).click();
    for (let i = 0; i < 4; i++) await page.getByRole('button', { name: 'Later' }).click();
    // Half a day on with each: from Saturday to Monday.
    await page.waitForFunction(() =>
      /^Mon/.test(document.querySelector('.readout .moment')?.textContent ?? ''),
    );
    const line = stage(page, 'temperatures').locator('.cursor-line');
    await line.waitFor({ state: 'visible' });
    const [at, box] = [await line.boundingBox(), await stage(page, 'temperatures').boundingBox()];
    expect(at?.x).toBeGreaterThan(box?.x ?? Number.NaN);
    expect(at?.x).toBeLessThan((box?.x ?? Number.NaN) + (box?.width ?? Number.NaN));
    expect(await windowWords(page)).toMatch(/^(Sun|Mon)/);
  });

  it('zooms by keys, buttons and wheel, and comes back to all', async () => {
    const { page } = await openDays();
    const all = await windowWords(page);
    await stage(page, 'heat').focus();
    await page.keyboard.press('+');
    const closer = await span(page);
    expect(closer).toBeCloseTo((7 * 24 * hour_s) / 1.5, 0);
    expect(await windowWords(page)).not.toBe(all);
    await page.keyboard.press('-');
    expect(await windowWords(page)).toBe(all);
    await page.getByRole('button', { name: '1 day' }).click();
    expect(await span(page)).toBe(24 * hour_s);
    const early = await windowWords(page);
    await page.getByRole('button', { name: 'Later' }).click();
    expect(await windowWords(page)).not.toBe(early);
    await page.getByRole('button', { name: 'All', exact: true }).click();
    expect(await windowWords(page)).toBe(all);
    await stage(page, 'temperatures').hover();
    await page.mouse.wheel(0, 120);
    expect(await windowWords(page)).toBe(all);
    await page.keyboard.down('Control');
    await page.mouse.wheel(0, -240);
    await page.keyboard.up('Control');
    await page.waitForFunction(
      (old) => document.querySelector('.days .days-window')?.textContent !== old,
      all,
    );
    expect(await span(page)).toBeLessThan(7 * 24 * hour_s);
  });

  it('is drawn and dragged in the overview, and panned by dragging a chart', async () => {
    const { page } = await openDays();
    const strip = page.locator('.overview');
    await strip.scrollIntoViewIfNeeded();
    const box = await strip.boundingBox();
    if (!box) throw new Error('no overview');
    const y = box.y + box.height / 2;
    await page.mouse.move(box.x + box.width * 0.3, y);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, y, { steps: 4 });
    await page.mouse.up();
    const drawn = await span(page);
    expect(drawn).toBeGreaterThan(24 * hour_s);
    expect(drawn).toBeLessThan(2 * 24 * hour_s);
    const there = await windowWords(page);
    await page.mouse.move(box.x + box.width * 0.4, y);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, y, { steps: 4 });
    await page.mouse.up();
    expect(await windowWords(page)).not.toBe(there);
    expect(await span(page)).toBeCloseTo(drawn, 0);
    const moved = await windowWords(page);
    const chart = await stage(page, 'sun').boundingBox();
    if (!chart) throw new Error('no chart');
    await page.mouse.move(chart.x + 200, chart.y + 40);
    await page.mouse.down();
    await page.mouse.move(chart.x + 300, chart.y + 40, { steps: 4 });
    await page.mouse.up();
    expect(await windowWords(page)).not.toBe(moved);
    expect(await span(page)).toBeCloseTo(drawn, 0);
  });

  it('follows two fingers apart and together', async () => {
    const { page } = await openDays({ width: 390 });
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 2 });
    await stage(page, 'temperatures').evaluate((chart) => chart.scrollIntoView({ block: 'center' }));
    const box = await stage(page, 'temperatures').boundingBox();
    if (!box) throw new Error('no chart');
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...places: number[]) =>
      devtools.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: places.map((x, id) => ({ id, x: box.x + x, y: box.y + 80 })),
      });
    const whole = await span(page);
    await touch('touchStart', 150, 190);
    for (const by of [10, 30, 60]) await touch('touchMove', 150 - by, 190 + by);
    await touch('touchEnd');
    const apart = await span(page);
    expect(apart).toBeGreaterThan(whole / 5);
    expect(apart).toBeLessThan(whole / 3);
    await touch('touchStart', 90, 250);
    for (const by of [20, 40]) await touch('touchMove', 90 + by, 250 - by);
    await touch('touchEnd');
    expect(await span(page)).toBeGreaterThan(1.5 * apart);
  });

  it('shows the water at the tap from closer samples when it is short enough', async () => {
    const { page, errors } = await openDays();
    expect(await stage(page, 'tap').count()).toBe(0);
    await zoomTo(page, 6 * hour_s, 8 * hour_s);
    await page.waitForFunction(
      () => document.querySelector<TankfulDays>('tankful-days')?.detail?.series.interval_s === 10,
    );
    await page.waitForSelector('.stage[data-panel=tap] .line.outlet_C');
    await stage(page, 'tap').focus();
    const before = await moment(page);
    await page.keyboard.press('ArrowRight');
    // Steps of 10 s now, so that the moment has seconds.
    expect(await moment(page)).not.toBe(before);
    expect(await moment(page)).toMatch(/:\d\d:\d\d$/);
    expect(errors).toEqual([]);
  });
});

describe('the table', () => {
  it('has the numbers that the panels are drawn from', async () => {
    const { page } = await openDays();
    await zoomTo(page, 0, 12 * hour_s);
    await page.getByRole('button', { name: 'Show as table' }).click();
    await page.waitForSelector('.days-table tbody tr');
    const found = await page.evaluate(() => {
      const days = document.querySelector<TankfulDays>('tankful-days');
      if (!days) throw new Error('no days');
      const { series } = days.shown.result;
      const rows = [...document.querySelectorAll('.days-table tbody tr')].map((row) =>
        [...row.querySelectorAll('td')].map((cell) => cell.textContent?.trim() ?? ''),
      );
      const F = (celsius: number) => celsius * 1.8 + 32;
      const { layers, layer_C, time_s, channels } = series;
      const first = time_s.findIndex((at_s) => at_s > 0);
      const expected = rows.map((_, i) => {
        const sample = first + i;
        return [
          F(layer_C[sample * layers + layers - 1]),
          F(layer_C[sample * layers]),
          channels.engine_W[sample],
        ];
      });
      return { rows, expected, samples: time_s.findIndex((at_s) => at_s > 43_200) - first };
    });
    expect(found.rows).toHaveLength(found.samples);
    for (const [i, [top, , bottom, engine]] of found.rows.entries()) {
      expect(Math.abs(Number.parseFloat(top) - found.expected[i][0])).toBeLessThanOrEqual(0.51);
      expect(Math.abs(Number.parseFloat(bottom) - found.expected[i][1])).toBeLessThanOrEqual(0.51);
      const watts = /([\d.,]+) (k?)W\)/.exec(engine);
      const shown_W = Number(watts?.[1].replace(',', '')) * (watts?.[2] ? 1000 : 1);
      expect(Math.abs(shown_W - found.expected[i][2])).toBeLessThanOrEqual(0.6 + 0.006 * Math.abs(shown_W));
    }
  });
});

describe('a pinned design', () => {
  it('stands as thin dashes on the same scales', async () => {
    const { page } = await openDays();
    await page.evaluate(async () => {
      const days = document.querySelector<TankfulDays>('tankful-days');
      if (!days) throw new Error('no days');
      const { result } = days.shown;
      const layer_C = result.series.layer_C.map((value) => value + 10);
      const shown = { ...days.shown, result: { ...result, series: { ...result.series, layer_C } } };
      days.pinned = { name: 'as it was', shown } as unknown as TankfulDays['pinned'];
      await days.updateComplete;
    });
    const ghost = page.locator('.stage[data-panel=temperatures] path.ghost');
    expect(await ghost.count()).toBe(3);
    expect(await ghost.first().evaluate((path) => getComputedStyle(path).strokeDasharray)).toBe('5px, 4px');
    expect(await page.locator('.stage[data-panel=field] path.ghost').count()).toBe(1);
    expect(await page.innerText('.days figcaption')).toContain('pinned: as it was');
    // 10 K warmer than before: the axis has grown to hold both.
    const [top, pinnedTop] = await page.evaluate(() =>
      ['.line.top', '.ghost.top'].map(
        (name) => document.querySelector<SVGGraphicsElement>(`.stage ${name}`)?.getBBox().y ?? Number.NaN,
      ),
    );
    expect(pinnedTop).toBeLessThan(top);
    expect(pinnedTop).toBeGreaterThanOrEqual(8);
  });
});

describe('colours', () => {
  it.each([false, true])('are never all that tells things apart, forced: %s', async (forced) => {
    const { page } = await openDays();
    if (forced) await page.emulateMedia({ forcedColors: 'active' });
    const looks = await page.evaluate(() => {
      const style = (name: string) => {
        const found = document.querySelector(`.stage ${name}`);
        return found ? getComputedStyle(found) : null;
      };
      return {
        dashes: ['.line.top', '.line.middle', '.line.bottom'].map((name) => style(name)?.strokeDasharray),
        names: [...document.querySelectorAll('.stage .end-labels text')].map((text) => text.textContent),
        fills: ['.heat.engine', '.heat.sun', '.heat.household'].map((name) => style(name)?.fill),
        canvas: getComputedStyle(document.body).backgroundColor,
        line: style('.line.top')?.stroke,
      };
    });
    expect(new Set(looks.dashes).size).toBe(3);
    expect([...looks.names].sort()).toEqual(['bottom', 'middle', 'top']);
    expect(new Set(looks.fills).size).toBe(3);
    expect(looks.fills[1]).toContain('#weave-sun');
    expect(looks.line).not.toBe(looks.canvas);
  });
});

/** The room may be filled only once it is near. */
async function openHeat() {
  const visited = await openDays();
  await visited.page.locator('#heat').scrollIntoViewIfNeeded();
  await visited.page.waitForSelector('tankful-heat svg .flow');
  return visited;
}

describe('where the heat goes', () => {
  const numbers = (text: string) => [...text.matchAll(/([\d.]+)\s%/g)].map(([, number]) => Number(number));

  it('draws the flows to scale and tells the same in a table that closes', async () => {
    const { page } = await openHeat();
    expect(await page.locator('tankful-heat svg .flow').count()).toBeGreaterThan(5);
    expect(await page.innerText('.heat-table .residual')).toMatch(/under 0\.01 %/);
    const totals = await page.locator('.heat-table .total').allInnerTexts();
    const [allIn, allOut, stored] = totals.map((text) => numbers(text)[0]);
    const sign = totals[2].startsWith('Cooler') ? -1 : 1;
    expect(Math.abs(allIn - allOut - sign * stored)).toBeLessThan(0.3);
    expect(await page.innerText('.heat-table')).toMatch(/kBtu \([\d.]+\sk?Wh\)/);
    const bars = await page.evaluate(() =>
      ['fuel', 'taps'].map((key) =>
        Number(document.querySelector(`tankful-heat .place.${key}`)?.getAttribute('height')),
      ),
    );
    const rowOf = (words: string) =>
      page
        .locator('.heat-table tr', { hasText: words })
        .first()
        .innerText()
        .then((text) => numbers(text)[0]);
    expect(bars[0] / bars[1]).toBeCloseTo((await rowOf('Fuel')) / (await rowOf('→ Taps')), 1);
  });

  it('is of the span shown in Days, or of the whole run', async () => {
    const { page } = await openHeat();
    const whole = await page.innerText('.heat-table .total');
    await zoomTo(page, 24 * hour_s, 36 * hour_s);
    await page.waitForFunction(
      (old) => document.querySelector<HTMLElement>('.heat-table .total')?.innerText !== old,
      whole,
    );
    await page.getByRole('radio', { name: 'whole run' }).check();
    expect(await page.innerText('.heat-table .total')).toBe(whole);
  });
});
