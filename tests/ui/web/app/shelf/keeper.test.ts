import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { depth, scenario } from '../held-page.ts';
import { openBrowser, settled } from './held-shelf.ts';

const demoName = 'Larch Hollow in January';

describe('a first visit', () => {
  it('has nothing on the shelf until something is changed', async () => {
    const browser = openBrowser();
    const { kept, design } = await browser.openTab();
    expect(kept()).toMatchObject({ id: null, undo: null, redo: null, saved: null, shelf: [] });
    expect(design().scenario).toBe(scenario);
    expect(await browser.db.list()).toEqual([]);
  });

  it('makes a design of the example with its first change, saved with what was done', async () => {
    const browser = openBrowser();
    const { page, kept } = await browser.openTab();
    page.commit(depth('30 in'), 'lower the water');
    expect(kept()).toMatchObject({ id: 'design 1', undo: 'lower the water' });
    await settled();
    expect(kept().saved?.at).toBe('saved');
    const stored = await browser.db.read('design 1');
    expect(stored?.record).toMatchObject({ name: demoName, began: 'demo', done: 1 });
    expect(stored?.record.scenario.store.water_depth).toBe('30 in');
    expect(stored?.history.entries).toMatchObject([{ n: 1, gesture: 'lower the water' }]);
  });

  it('keeps what was changed before the shelf was awake', async () => {
    const browser = openBrowser();
    const { kept } = await browser.openTab({
      hurried({ page }) {
        page.commit(depth('30 in'), 'lower the water');
        page.commit(depth('29 in'), 'lower the water further');
      },
    });
    expect(kept().undo).toBe('lower the water further');
    await settled();
    const stored = await browser.db.read('design 1');
    expect(stored?.record.scenario.store.water_depth).toBe('29 in');
    expect(stored?.history.entries).toHaveLength(2);
  });
});

describe('the next visit', () => {
  async function visited() {
    const browser = openBrowser();
    const { page, kept } = await browser.openTab();
    page.commit(depth('30 in'), 'lower the water');
    page.commit(depth('29 in'), 'lower the water further');
    page.keep({ verb: 'undo' });
    await settled();
    const id = kept().id ?? '';
    browser.close(id);
    return { browser, id };
  }

  it('opens with the last design as it was left, and what was done can be undone', async () => {
    const { browser, id } = await visited();
    const { page, kept, depth: shown, last } = await browser.openTab();
    expect(kept()).toMatchObject({ id, undo: 'lower the water', redo: 'lower the water further' });
    expect(shown()).toBe('30 in');
    expect(last()).toMatchObject({ how: 'full', scenario: { store: { water_depth: '30 in' } } });
    page.keep({ verb: 'redo' });
    expect(shown()).toBe('29 in');
    page.keep({ verb: 'undo' });
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('32 in');
    expect(kept().undo).toBeNull();
    await settled();
    expect((await browser.db.read(id))?.record).toMatchObject({ done: 0 });
  });

  it('does not take away what was begun before the shelf was awake, and offers the last design', async () => {
    const { browser, id } = await visited();
    const {
      page,
      kept,
      depth: shown,
      names,
    } = await browser.openTab({
      hurried: (tab) => tab.page.commit(depth('20 in'), 'lower the water much'),
    });
    await settled();
    expect(shown()).toBe('20 in');
    expect(kept().id).not.toBe(id);
    expect(names()).toEqual([`${demoName} (2)`, demoName]);
    expect(kept().notice).toMatchObject({ text: expect.stringContaining(demoName) });
    const ask = kept().notice?.offer?.ask;
    if (!ask) throw new Error('expected an offer');
    page.keep(ask);
    await settled();
    expect(shown()).toBe('30 in');
  });

  it('does not take away a handle that is held or a field that is being filled in', async () => {
    const { browser, id } = await visited();
    const holding = await browser.openTab({ hurried: ({ page }) => page.preview(depth('20 in')) });
    expect(holding.get().preview).not.toBeNull();
    expect(holding.kept().id).toBeNull();
    const typing = await browser.openTab({ busy: true });
    expect(typing.kept()).toMatchObject({ id: null, notice: { offer: { ask: { verb: 'open', id } } } });
  });

  it('opens with an example that was only looked at', async () => {
    const { browser } = await visited();
    const first = await browser.openTab();
    await first.page.chooseScenario('other');
    await settled();
    const { design, kept } = await browser.openTab();
    expect(design()).toMatchObject({ id: 'other', name: 'Other' });
    expect(kept().id).toBeNull();
  });
});

describe('an example', () => {
  it('that is chosen leaves the design before it on the shelf as it was', async () => {
    const { page, kept, names, depth: shown } = await openBrowser().openTab();
    page.commit(depth('30 in'), 'lower the water');
    await page.chooseScenario('demo');
    await settled();
    expect(kept()).toMatchObject({ id: null, undo: null });
    expect(shown()).toBe('32 in');
    page.commit(depth('28 in'), 'lower the water');
    expect(names()).toEqual([`${demoName} (2)`, demoName]);
    await settled();
    page.keep({ verb: 'open', id: 'design 1' });
    await settled();
    expect(shown()).toBe('30 in');
    expect(kept().undo).toBe('lower the water');
  });
});

describe('a design from a file', () => {
  it('stands on the shelf at once, with its weather files', async () => {
    const browser = openBrowser();
    const { page, read, kept, design } = await browser.openTab();
    page.commit(depth('30 in'), 'lower the water');
    const opened = page.openScenario(scenario, { attached: { 'days.csv': 'hour\n' } });
    read();
    await opened;
    await settled();
    expect(kept()).toMatchObject({ id: 'design 2', undo: null });
    expect(design()).toMatchObject({ id: 'own', name: `${demoName} (2)` });
    expect(await browser.db.read('design 2')).toMatchObject({
      record: { began: 'own', name: `${demoName} (2)` },
      attached: { 'days.csv': 'hour\n' },
    });
  });
});

describe('undoing', () => {
  it('does nothing while a handle is held', async () => {
    const { page, get, depth: shown } = await openBrowser().openTab();
    page.commit(depth('30 in'), 'lower the water');
    page.preview(depth('20 in'));
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('30 in');
    expect(get().preview).not.toBeNull();
  });

  it('closes the card of a part that is gone with it', async () => {
    const { page, get } = await openBrowser().openTab();
    await page.changePart({ verb: 'add', kind: 'coil' });
    expect(get().part).toBe('coils[3]');
    page.keep({ verb: 'undo' });
    expect(get()).toMatchObject({ part: null, design: { scenario } });
  });

  it('keeps text that could not be read', async () => {
    const { page, get } = await openBrowser().openTab();
    page.commit(depth('30 in'), 'lower the water');
    page.keepTyped('supply.lift', 'tall');
    page.keep({ verb: 'undo' });
    expect(get().typed).toEqual({ 'supply.lift': 'tall' });
  });
});

describe('where nothing can be written', () => {
  const full = () => new DOMException('no room', 'QuotaExceededError');

  it('says why, goes on, and writes all of it once it can', async () => {
    let error: Error | null = full();
    const browser = openBrowser();
    const { page, kept, depth: shown } = await browser.openTab({ failing: () => error });
    page.commit(depth('30 in'), 'lower the water');
    await settled();
    expect(kept().saved).toEqual({ at: 'failed', why: 'full' });
    error = new DOMException('no', 'InvalidStateError');
    page.commit(depth('29 in'), 'lower it further');
    await settled();
    expect(kept().saved).toEqual({ at: 'failed', why: 'refused' });
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('30 in');
    error = null;
    page.keep({ verb: 'redo' });
    await settled();
    expect(kept().saved?.at).toBe('saved');
    expect((await browser.db.read('design 1'))?.history.entries).toHaveLength(2);
  });

  it('has what was left unwritten as long as the page stands, and writes it when it is opened again', async () => {
    let error: Error | null = full();
    const browser = openBrowser();
    const { page, kept, depth: shown, names } = await browser.openTab({ failing: () => error });
    page.commit(depth('30 in'), 'lower the water');
    await page.chooseScenario('other');
    await settled();
    expect(names()).toEqual([demoName]);
    page.keep({ verb: 'open', id: 'design 1' });
    await settled();
    expect(shown()).toBe('30 in');
    expect(kept()).toMatchObject({ undo: 'lower the water', saved: { at: 'failed' } });
    await page.chooseScenario('other');
    error = null;
    page.keep({ verb: 'open', id: 'design 1' });
    await settled();
    expect(kept().saved?.at).toBe('saved');
    expect((await browser.db.read('design 1'))?.record.scenario.store.water_depth).toBe('30 in');
  });

  it('is told as soon as the page stands where the browser keeps nothing at all', async () => {
    const browser = openBrowser();
    const real = globalThis.indexedDB;
    const refusing = {
      open: () => {
        throw new DOMException('no', 'SecurityError');
      },
    };
    globalThis.indexedDB = refusing as unknown as IDBFactory;
    const { page, kept, depth: shown } = await browser.openTab();
    expect(kept().saved).toEqual({ at: 'failed', why: 'refused' });
    page.commit(depth('30 in'), 'lower the water');
    page.keep({ verb: 'undo' });
    expect(shown()).toBe('32 in');
    await settled();
    globalThis.indexedDB = real;
  });
});
