import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './support/axe.ts';
import { cellsOf, savedChart, withoutPicker } from './support/saved.ts';
import { type VisitOptions, visit } from './support/visit.ts';

async function open(options: VisitOptions = {}) {
  const visited = await visit(options);
  const { page } = visited;
  await page.waitForSelector('.stage svg .line.top');
  await withoutPicker(page);
  const button = (key: string) => page.locator(`button[data-save="${key}"]`);
  return { ...visited, button };
}

/** A window that has nothing to do with the page. */
const empty = (page: Page) => page.context().newPage();

/** What a browser makes of a file that stands alone. */
async function looked(page: Page, text: string) {
  const alone = await empty(page);
  return alone.evaluate((source) => {
    const read = new DOMParser().parseFromString(source, 'image/svg+xml');
    const all = [...read.querySelectorAll('*')];
    const named = new Set(all.map(({ id }) => id));
    const wanted = [...source.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id);
    return {
      error: read.querySelector('parsererror')?.textContent ?? null,
      root: read.documentElement.localName,
      size: [read.documentElement.getAttribute('width'), read.documentElement.getAttribute('height')].map(
        Number,
      ),
      title: read.querySelector('title')?.textContent,
      ground: read.querySelector('rect')?.getAttribute('fill'),
      classes: all.filter((element) => element.hasAttribute('class')).length,
      lost: wanted.filter((id) => !named.has(id)),
      wanted: wanted.length,
      words: [...read.querySelectorAll('text')].map(({ textContent }) => textContent),
    };
  }, text);
}

/** Size and number of colours of a picture. */
async function painted(page: Page, bytes: Buffer) {
  const alone = await empty(page);
  return alone.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0);
    const { data } = context?.getImageData(0, 0, image.width, image.height) ?? { data: [] };
    const colours = new Set<number>();
    for (let i = 0; i < data.length; i += 4) colours.add((data[i] << 16) | (data[i + 1] << 8) | data[i + 2]);
    return { width: image.width, height: image.height, colours: colours.size, corner: [...data.slice(0, 4)] };
  }, bytes.toString('base64'));
}

const charts = ['section', 'temperatures', 'field', 'heat', 'ran', 'water', 'sun'];

describe('a chart as a file', () => {
  it.each(charts)(
    'is a drawing that needs nothing of the page, and a picture twice as fine: %s',
    async (key) => {
      const { page, button, errors } = await open();
      const { name, bytes } = await savedChart(page, button(key), /SVG/);
      expect(name).toMatch(/^larch-hollow-in-january-[a-z-]+\.svg$/);
      const text = bytes.toString('utf8');
      const { error, root, size, title, ground, classes, lost, words } = await looked(page, text);
      expect({ error, root, ground, classes, lost }).toEqual({
        error: null,
        root: 'svg',
        ground: '#ffffff',
        classes: 0,
        lost: [],
      });
      expect(title).toContain('Larch Hollow in January');
      expect(words.join(' ')).toContain('no approval');
      const written = text.replace(/data:image\/png;base64,[^"]+/, '');
      expect(/var\(|http:\/\/(?!www\.w3\.org)|https:|NaN|undefined/.exec(written)).toBe(null);
      const png = await savedChart(page, button(key), /PNG/);
      const picture = await painted(page, png.bytes);
      expect([picture.width, picture.height]).toEqual(size.map((side) => 2 * side));
      expect(picture.corner).toEqual([255, 255, 255, 255]);
      expect(picture.colours).toBeGreaterThan(20);
      expect(errors).toEqual([]);
    },
  );

  it('has light colours and patterns also from a dark page', async () => {
    const [light, dark] = await Promise.all([
      open({ scheme: 'light' }),
      open({ scheme: 'dark', width: 390 }),
    ]);
    for (const key of ['temperatures', 'ran', 'water']) {
      const [a, b] = [
        await savedChart(light.page, light.button(key), /SVG/),
        await savedChart(dark.page, dark.button(key), /SVG/),
      ];
      expect(b.bytes.toString()).toBe(a.bytes.toString());
    }
    const { bytes } = await savedChart(dark.page, dark.button('heat'), /SVG/);
    expect((await looked(dark.page, bytes.toString())).wanted).toBeGreaterThan(1);
    expect(bytes.toString()).toContain('<pattern');
  });

  it('takes whatever a design is called for words', async () => {
    const { page, button } = await open();
    const called = '<img src=x onerror=alert(1)> & "quotes" ]]>';
    await page.evaluate((name) => {
      const element = document.querySelector('tankful-page') as unknown as {
        page: { commit(edits: { path: string; value: string }[], gesture: string): void };
      };
      element.page.commit([{ path: 'name', value: name }], 'another name');
    }, called);
    await page.waitForFunction(
      (name) => document.querySelector('.shown')?.textContent?.includes(name),
      called,
    );
    const { bytes } = await savedChart(page, button('temperatures'), /SVG/);
    const { error, title } = await looked(page, bytes.toString());
    expect(error).toBe(null);
    expect(title).toContain(called);
  });
});

/** Numbers at the beginning of a table's cells. */
const numberOf = (cell: string) =>
  Number(/^[−-]?[\d.,]+/.exec(cell)?.[0].replace('−', '-').replaceAll(',', ''));
/** Half of the last digit shown, and what single precision adds. */
const halfDigit = (cell: string) => 0.501 * 10 ** -(/^[−-]?[\d,]+\.?(\d*)/.exec(cell)?.[1].length ?? 0);

describe('a chart’s numbers', () => {
  it('are those of the table, with units in the head', async () => {
    const { page, button } = await open();
    const heads = (
      await cellsOf((await savedChart(page, button('temperatures'), /as in the table/)).bytes)
    )[0];
    expect(heads).toEqual([
      'Until',
      'since the first midnight (h)',
      'top (F)',
      'middle (F)',
      'bottom (F)',
      'ran cold (s)',
    ]);
    await page.click('.table-switch');
    await page.waitForSelector('.days-table tbody tr');
    const table = await page
      .locator('.days-table tr')
      .evaluateAll((rows) =>
        rows.map((row) => [...row.querySelectorAll('th, td')].map(({ textContent }) => textContent.trim())),
      );
    const column = (head: string) => table[0].indexOf(head);
    const saved = cellsOf((await savedChart(page, button('temperatures'), /as in the table/)).bytes);
    expect(saved.length).toBe(table.length);
    for (let row = 1; row < table.length; row++) {
      expect(saved[row][0]).toBe(table[row][0]);
      for (const [i, head] of ['top', 'middle', 'bottom'].entries()) {
        const shown = table[row][column(head)];
        expect(Math.abs(Number(saved[row][2 + i]) - numberOf(shown))).toBeLessThanOrEqual(halfDigit(shown));
      }
    }
    const sun = cellsOf((await savedChart(page, button('sun'), /as in the table/)).bytes);
    expect(sun[0][2]).toBe('on the glass (Btu/(h ft2))');
    expect(sun.length).toBe(table.length);
  });

  it('are every sample when asked for, and follow the reader’s units', async () => {
    const { page, button } = await open();
    const every = cellsOf((await savedChart(page, button('field'), /every sample/)).bytes);
    const few = cellsOf((await savedChart(page, button('field'), /as in the table/)).bytes);
    expect(every.length).toBeGreaterThan(few.length);
    await page.selectOption('select[name=units]', 'SI');
    await page.waitForFunction(() => document.querySelector('.readout')?.textContent?.includes('°C'));
    const metric = cellsOf((await savedChart(page, button('field'), /every sample/)).bytes);
    expect(metric[0][2]).toMatch(/^at [\d.]+ cm \(C\)$/);
    // Fahrenheit is 1.8 times Celsius and 32.
    for (const row of [1, 100, every.length - 1]) {
      expect(Number(metric[row][2]) * 1.8 + 32).toBeCloseTo(Number(every[row][2]), 2);
    }
  });

  it('of the heat are its table’s, and close', async () => {
    const { page } = await open();
    await page.locator('tankful-heat').scrollIntoViewIfNeeded();
    const button = page.locator('button[data-save=flows]');
    await button.waitFor();
    const [head, ...rows] = cellsOf((await savedChart(page, button, /as in the table/)).bytes);
    expect(head).toEqual(['which way', 'From where to where', 'Heat (kBtu)', 'Heat (kWh)', 'Share (%)']);
    const shown = await page
      .locator('.heat-table tbody tr:not(.side)')
      .evaluateAll((all) => all.map((row) => [...row.children].map(({ textContent }) => textContent.trim())));
    expect(rows.map(([, path]) => path)).toEqual(shown.map(([path]) => path));
    for (const [i, [, , kBtu, kWh]] of rows.entries()) {
      if (shown[i][1] === '') continue;
      // Small heats are shown in a smaller unit.
      const unit = /\sBtu/.test(shown[i][1]) ? 1000 : 1;
      const off = Number(kBtu) * unit - numberOf(shown[i][1]);
      expect(Math.abs(off)).toBeLessThanOrEqual(halfDigit(shown[i][1]));
      // The international table Btu: 1 kWh is 3.412142 kBtu.
      expect(Number(kBtu) / Number(kWh)).toBeCloseTo(3.412142, 4);
    }
    const { bytes } = await savedChart(page, button, /SVG/);
    expect((await looked(page, bytes.toString())).lost).toEqual([]);
  });
});

describe('an answer’s curve and a range', () => {
  it('are saved as what stands in their tables', async () => {
    const { page } = await open();
    const answer = page.locator('.answer-lines > li', { hasText: 'The household coil' });
    await answer.locator('summary').click();
    await answer.locator('tankful-curve svg .present-mark').waitFor();
    const button = answer.locator('button[data-save=curve]');
    const [head, ...rows] = cellsOf((await savedChart(page, button, /as in the table/)).bytes);
    expect(head).toHaveLength(2);
    expect(head[0]).toMatch(/ \(ft\)$/);
    expect(head[1]).toBe('outlet (F)');
    await answer.getByRole('button', { name: /^Show as table/ }).click();
    const table = await answer
      .locator('tankful-curve tbody tr')
      .evaluateAll((all) => all.map((row) => [...row.children].map(({ textContent }) => textContent.trim())));
    expect(rows).toHaveLength(table.length);
    for (const [i, shown] of table.entries()) {
      for (const [column, cell] of shown.entries()) {
        const off = Math.abs(Number(rows[i][column]) - numberOf(cell));
        expect(off).toBeLessThanOrEqual(halfDigit(cell));
      }
    }
    const { bytes } = await savedChart(page, button, /SVG/);
    const { error, lost, words } = await looked(page, bytes.toString());
    expect({ error, lost }).toEqual({ error: null, lost: [] });
    expect(words.join(' ')).toContain('as it is: 120 ft');
  });

  it('has all figures of a range in one table', async () => {
    const { page } = await open();
    await page.evaluate(() => {
      const element = document.querySelector('tankful-page');
      const detail = { path: 'store.bridges', from: '1', to: '3', n: 2 };
      element?.dispatchEvent(new CustomEvent('try-range', { detail }));
    });
    const button = page.locator('button[data-save=range]');
    await page.waitForFunction(
      () => document.querySelectorAll('tankful-range tbody td:not([colspan])').length > 4,
      null,
      {
        timeout: 40_000,
      },
    );
    const [head, ...rows] = cellsOf((await savedChart(page, button, /as in the table/)).bytes);
    expect(rows.map(([value]) => value)).toEqual(['1', '3']);
    expect(head.filter((each) => each.includes('(')).length).toBeGreaterThan(4);
    const loss = head.findIndex((each) => /loss/i.test(each));
    // Twice the bridges and more lose more heat.
    expect(Number(rows[1][loss])).toBeGreaterThan(Number(rows[0][loss]));
  });
});

describe('the menu', () => {
  it('works by keyboard alone and gives the keyboard back', async () => {
    const { page, button } = await open();
    await button('temperatures').focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('.save-menu');
    const at = () => page.evaluate(() => document.activeElement?.textContent?.trim());
    expect(await at()).toContain('SVG');
    await page.keyboard.press('ArrowDown');
    expect(await at()).toContain('PNG');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    expect(await at()).toContain('every sample');
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.waitForSelector('.save-menu', { state: 'detached' });
    expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.save)).toBe(
      'temperatures',
    );
  });

  it('stays inside a phone’s window and can be hit', async () => {
    const { page, button } = await open({ width: 320, height: 640 });
    for (const key of ['section', 'temperatures', 'sun']) {
      await button(key).click();
      await page.waitForSelector('.save-menu');
      const boxes = await page.locator('.save-menu, .save-menu button').evaluateAll((all) =>
        all.map((element) => {
          const { left, right, top, bottom, height } = element.getBoundingClientRect();
          return { left, right, top, bottom, height };
        }),
      );
      for (const box of boxes) {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(320);
        expect(box.top).toBeGreaterThanOrEqual(0);
        expect(box.bottom).toBeLessThanOrEqual(640);
        expect(box.height).toBeGreaterThanOrEqual(44);
      }
      await page.keyboard.press('Escape');
      await page.waitForSelector('.save-menu', { state: 'detached' });
    }
  });
});
