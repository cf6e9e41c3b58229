import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { keptOff_days } from '../../../../../ui/web/app/shelf/kept.ts';
import { depth } from '../held-page.ts';
import { openBrowser, settled } from './held-shelf.ts';

const demoName = 'Larch Hollow in January';

/** A shelf with two designs of the demo, the second in the page. */
async function twoDesigns() {
  const browser = openBrowser();
  const tab = await browser.openTab();
  tab.page.commit(depth('30 in'), 'lower the water');
  await tab.page.chooseScenario('demo');
  tab.page.commit(depth('28 in'), 'lower the water');
  await settled();
  return { browser, ...tab };
}

describe('a design on the shelf', () => {
  it('is doubled with all that was done to it, and the copy stands in the page', async () => {
    const { browser, page, kept, names, depth: shown } = await twoDesigns();
    page.keep({ verb: 'duplicate', id: 'design 1' });
    await settled();
    expect(names()).toEqual([`${demoName} (3)`, `${demoName} (2)`, demoName]);
    expect(shown()).toBe('30 in');
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('32 in');
    await settled();
    expect((await browser.db.read('design 1'))?.record.scenario.store.water_depth).toBe('30 in');
    page.keep({ verb: 'duplicate', id: kept().id ?? '' });
    await settled();
    expect(names()).toHaveLength(4);
  });

  it('is taken off and put back', async () => {
    const { page, kept, names, depth: shown } = await twoDesigns();
    page.keep({ verb: 'remove', id: 'design 1' });
    await settled();
    expect(names()).toEqual([`${demoName} (2)`]);
    expect(shown()).toBe('28 in');
    const ask = kept().notice?.offer?.ask;
    if (!ask) throw new Error('expected an offer');
    page.keep(ask);
    await settled();
    expect(names()).toHaveLength(2);
    expect(shown()).toBe('30 in');
  });

  it('gives way to the next when it is taken off while it stands in the page, and in the end to the example', async () => {
    const { page, kept, names, depth: shown } = await twoDesigns();
    page.keep({ verb: 'remove', id: 'design 2' });
    await settled();
    expect(kept().id).toBe('design 1');
    expect(shown()).toBe('30 in');
    page.keep({ verb: 'remove', id: 'design 1' });
    await settled();
    expect(kept().id).toBeNull();
    expect(shown()).toBe('32 in');
    expect(names()).toEqual([]);
    page.keep({ verb: 'put-back', id: 'design 2' });
    await settled();
    expect(shown()).toBe('28 in');
  });

  it('is forgotten for good a while after it was taken off', async () => {
    const { browser, page } = await twoDesigns();
    page.keep({ verb: 'remove', id: 'design 1' });
    await settled();
    await browser.openTab();
    expect(await browser.db.list()).toHaveLength(2);
    browser.pass((keptOff_days + 1) * 86_400_000);
    await browser.openTab();
    await settled();
    expect((await browser.db.list()).map(({ id }) => id)).toEqual(['design 2']);
  });

  it('is named by a gesture as any other', async () => {
    const { page, names, kept } = await twoDesigns();
    page.commit([{ path: 'name', value: 'The cellar' }], 'name');
    expect(names()).toEqual(['The cellar', demoName]);
    expect(kept().undo).toBe('name');
    page.keep({ verb: 'undo' });
    expect(names()).toEqual([`${demoName} (2)`, demoName]);
  });
});

describe('a restore point', () => {
  it('brings a state back whatever came after, under the name of now, and can be undone', async () => {
    const { page, kept, depth: shown, get } = await twoDesigns();
    page.keep({ verb: 'keep-point', name: 'before the winter' });
    await settled();
    expect(kept().points).toMatchObject([{ name: 'before the winter' }]);
    page.commit([{ path: 'name', value: 'The cellar' }], 'name');
    page.commit([{ path: 'engine', value: undefined }], 'remove the engine');
    page.commit(depth('12 in'), 'lower the water');
    page.keep({ verb: 'go-back', made_ms: kept().points[0].made_ms });
    await settled();
    expect(shown()).toBe('28 in');
    expect(get().design.scenario.engine).toBeDefined();
    expect(get().design.name).toBe('The cellar');
    expect(kept().undo).toContain('before the winter');
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('12 in');
    page.keep({ verb: 'drop-point', made_ms: kept().points[0].made_ms });
    await settled();
    expect(kept().points).toEqual([]);
  });

  it('belongs to its design', async () => {
    const { page, kept } = await twoDesigns();
    page.keep({ verb: 'keep-point', name: 'mine' });
    page.keep({ verb: 'open', id: 'design 1' });
    await settled();
    expect(kept().points).toEqual([]);
    page.keep({ verb: 'open', id: 'design 2' });
    await settled();
    expect(kept().points).toHaveLength(1);
  });
});
