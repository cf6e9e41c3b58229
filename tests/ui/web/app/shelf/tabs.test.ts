import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { depth } from '../held-page.ts';
import { openBrowser, settled } from './held-shelf.ts';

/** Two tabs on one design, of which the first may change it. */
async function twoTabs(alone = false) {
  const browser = openBrowser();
  const first = await browser.openTab({ alone });
  first.page.commit(depth('30 in'), 'lower the water');
  await settled();
  const second = await browser.openTab({ alone });
  await settled();
  const id = first.kept().id ?? '';
  return { browser, first, second, id };
}

describe('the second of two tabs on one design', () => {
  it('shows it and follows it, but may not change it', async () => {
    const { first, second, id } = await twoTabs();
    expect(second.kept().id).toBe(id);
    expect(second.get().readOnly).toBe(true);
    expect(second.depth()).toBe('30 in');
    first.page.commit(depth('29 in'), 'lower it further');
    await settled();
    expect(second.depth()).toBe('29 in');
    expect(second.kept().undo).toBe('lower it further');
    second.page.commit(depth('10 in'), 'nearly empty it');
    second.page.keep({ verb: 'undo' });
    await settled();
    expect(second.depth()).toBe('29 in');
    expect(second.kept().notice?.text).toContain('nearly empty it');
  });

  it('follows its weather files too, without handing the same ones out again', async () => {
    const { first, second } = await twoTabs();
    const weather = [{ path: 'weather.file', value: 'days.csv' }];
    first.page.commit(weather, 'weather from a file', { 'days.csv': 'hour\n' });
    await settled();
    expect(second.design().attached).toEqual({ 'days.csv': 'hour\n' });
    first.page.commit(depth('29 in'), 'lower it further');
    await settled();
    expect(second.depth()).toBe('29 in');
    expect(second.attached).toHaveLength(1);
  });

  it('works on a copy when asked, and does there what was refused', async () => {
    const { browser, first, second, id } = await twoTabs();
    second.page.commit(depth('10 in'), 'nearly empty it');
    second.page.keep({ verb: 'work-on-copy' });
    await settled();
    expect(second.get().readOnly).toBe(false);
    expect(second.depth()).toBe('10 in');
    expect(second.kept()).toMatchObject({
      undo: 'nearly empty it',
      notice: { text: expect.stringContaining('(2)') },
    });
    expect(second.kept().id).not.toBe(id);
    second.page.keep({ verb: 'undo' });
    second.page.keep({ verb: 'undo' });
    expect(second.depth()).toBe('32 in');
    first.page.commit(depth('28 in'), 'lower it');
    await settled();
    expect(await browser.db.list()).toHaveLength(2);
    expect((await browser.db.read(id))?.record.scenario.store.water_depth).toBe('28 in');
  });

  it('may change it when the first has closed, from where that one left it', async () => {
    const { browser, first, second, id } = await twoTabs();
    first.page.commit(depth('29 in'), 'lower it further');
    await settled();
    browser.close(id);
    await settled();
    expect(second.get().readOnly).toBe(false);
    second.page.commit(depth('28 in'), 'and further');
    await settled();
    const stored = await browser.db.read(id);
    expect(stored?.record.scenario.store.water_depth).toBe('28 in');
    expect(stored?.history.entries.map(({ gesture }) => gesture)).toEqual([
      'lower the water',
      'lower it further',
      'and further',
    ]);
  });

  it('may change it too when the first has opened something else', async () => {
    const { first, second } = await twoTabs();
    await first.page.chooseScenario('other');
    await settled();
    expect(second.get().readOnly).toBe(false);
  });

  it('may not take it off the shelf, nor may a third', async () => {
    const { browser, second, id } = await twoTabs();
    second.page.keep({ verb: 'remove', id });
    await settled();
    expect(second.kept().notice?.text).toMatch(/open in another tab/);
    await second.page.chooseScenario('other');
    second.page.keep({ verb: 'remove', id });
    await settled();
    expect((await browser.db.read(id))?.record.removed_ms).toBeNull();
  });
});

describe('two tabs in a browser without locks', () => {
  it('lose no gesture of either: who is later goes on with a copy', async () => {
    const { browser, first, second, id } = await twoTabs(true);
    first.page.commit(depth('29 in'), 'lower it');
    second.page.commit(depth('40 in'), 'raise it');
    await settled();
    const depths = (await browser.db.list()).map(({ scenario }) => scenario.store.water_depth);
    expect(depths.toSorted()).toEqual(['29 in', '40 in']);
    const copied = [first, second].filter(({ kept }) => kept().id !== id);
    expect(copied).toHaveLength(1);
    expect(copied[0].kept().notice?.text).toMatch(/copy/);
    first.page.commit(depth('28 in'), 'lower it again');
    second.page.commit(depth('41 in'), 'raise it again');
    await settled();
    const later = (await browser.db.list()).map(({ scenario }) => scenario.store.water_depth);
    expect(later.toSorted()).toEqual(['28 in', '41 in']);
  });
});
