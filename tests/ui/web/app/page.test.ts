import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../../sim/index.ts';
import type { Happening } from '../../../../ui/web/app/happenings.ts';
import { isOutdated, isStale, newest } from '../../../../ui/web/app/page-state.ts';
import { handMadeResult } from '../hand-made.ts';
import { depth, facts, problem, scenario, setUp } from './held-page.ts';

describe('the page', () => {
  it('runs the demo on opening', () => {
    const { runs, get } = setUp();
    expect(runs).toMatchObject([{ scenario, how: 'full' }]);
    expect(get()).toMatchObject({ design: { id: 'demo' }, progress: 0, shown: null });
  });

  it('has the demo to show at once where it was built in, and is not stale', () => {
    const shown = { facts, result: handMadeResult(), firstWeekday: 5, filled: [], notes: [] };
    const coil = { at: 'done', answer: { key: 'coil' } as Answer } as const;
    const { runs, get } = setUp({ shown, answers: { coil }, scenarios: [] });
    expect(runs).toEqual([]);
    expect(get().shown?.result.name).toBe('By hand');
    expect(isStale(get())).toBe(false);
    expect(isOutdated(get().answers.coil, get())).toBe(false);
  });

  it('wakes its worker by a run that nobody sees', () => {
    const shown = { facts, result: handMadeResult(), firstWeekday: 5, filled: [], notes: [] };
    const { page, last, finish, get } = setUp({ shown, answers: {}, scenarios: [] });
    const before = get();
    page.wake();
    expect(last()).toMatchObject({ scenario, how: 'estimate' });
    finish();
    expect(get()).toBe(before);
  });

  it('wakes its worker once for a design, however often a hand comes near', () => {
    const shown = { facts, result: handMadeResult(), firstWeekday: 5, filled: [], notes: [] };
    const { page, runs, finish } = setUp({ shown, answers: {}, scenarios: [] });
    page.wake();
    page.wake();
    expect(runs).toHaveLength(1);
    page.commit([{ path: 'store.water_depth', value: '0.7 m' }], 'Less water');
    finish();
    page.wake();
    page.wake();
    expect(runs.map(({ how }) => how)).toEqual(['estimate', 'full', 'estimate']);
  });

  it('does not wake for what runs or fails anyway', () => {
    const { page, runs } = setUp();
    page.wake();
    expect(runs).toHaveLength(1);
  });

  it('shows what came of a run, with what it was the result of', () => {
    const { last, finish, get } = setUp();
    last().heard({ id: 1, kind: 'progress', share: 0.4 });
    expect(get().progress).toBe(0.4);
    finish();
    expect(get()).toMatchObject({ progress: null, facts, shown: { scenario, firstWeekday: 5 } });
    expect(isStale(get())).toBe(false);
  });

  it('runs in full what is committed, and keeps the last good result, stale, until it is done', () => {
    const { page, last, finish, get } = setUp();
    finish();
    page.commit(depth('30 in'), 'water depth');
    expect(last()).toMatchObject({ how: 'full', scenario: { store: { water_depth: '30 in' } } });
    expect(get().design.scenario.store.water_depth).toBe('30 in');
    expect(isStale(get())).toBe(true);
    finish();
    expect(isStale(get())).toBe(false);
  });

  it('leaves the scenario of the catalogue as it is', () => {
    const { page } = setUp();
    page.commit(depth('30 in'), 'water depth');
    expect(scenario.store.water_depth).toBe('32 in');
  });

  it('takes an input out of the design where its value is no longer known', () => {
    const { page, get } = setUp();
    page.commit([{ path: 'store.insulation.lid', value: undefined }], 'don’t know');
    expect(Object.keys(get().design.scenario.store.insulation ?? {})).toEqual(['sides', 'bottom']);
  });

  it('says what is wrong with a change, and keeps the last good result', () => {
    const { page, refuse, finish, get } = setUp();
    finish();
    page.commit(depth('-3 in'), 'water depth');
    refuse();
    expect(get()).toMatchObject({ problems: [problem], progress: null, shown: { scenario } });
    expect(get().design.scenario.store.water_depth).toBe('-3 in');
    expect(isStale(get())).toBe(true);
    page.commit(depth('30 in'), 'water depth');
    finish();
    expect(get().problems).toEqual([]);
  });

  it('says so when a run breaks off', () => {
    const { page, last, finish, get } = setUp();
    finish();
    page.run();
    last().heard({ id: 1, kind: 'failed', problem });
    expect(get()).toMatchObject({ problems: [problem], progress: null, shown: { scenario } });
  });

  it('stops on request', () => {
    const { page, get, stops } = setUp();
    page.stop();
    expect(stops()).toBe(1);
    expect(get().progress).toBeNull();
  });
});

describe('a hand that moves something', () => {
  it('sees an estimate of what it holds, not committed', () => {
    const { page, last, finish, get } = setUp();
    finish();
    page.preview(depth('20 in'));
    expect(last()).toMatchObject({ how: 'estimate', scenario: { store: { water_depth: '20 in' } } });
    expect(isStale(get())).toBe(true);
    finish();
    expect(newest(get())).toMatchObject({ ofDays: 2, scenario: { store: { water_depth: '20 in' } } });
    expect(get().shown?.scenario).toBe(scenario);
    expect(get().design.scenario).toBe(scenario);
    expect(isStale(get())).toBe(false);
  });

  it('sees the first days at once and the others when it rests', () => {
    const { page, last, read, finish, rest, get } = setUp();
    finish();
    page.preview(depth('20 in'));
    read();
    const picture = (days: number) =>
      last().heard({ id: 1, kind: 'result', result: { ...handMadeResult(), days }, ofDays: 10 });
    picture(1);
    expect(get().estimate?.result.days).toBe(1);
    picture(4);
    picture(10);
    expect(get().estimate?.result.days).toBe(1);
    rest();
    expect(get().estimate?.result.days).toBe(10);
  });

  it('keeps the estimate, labelled so, until the full run of what it let go of is there', () => {
    const { page, finish, last, get } = setUp();
    finish();
    page.preview(depth('20 in'));
    finish();
    page.commit(depth('20 in'), 'water depth');
    expect(get()).toMatchObject({ preview: null, estimate: { ofDays: 2 } });
    expect(last().how).toBe('full');
    finish();
    expect(get().estimate).toBeNull();
    expect(newest(get())).toBe(get().shown);
  });

  it('gets everything back as it was when it gives up', () => {
    const { page, runs, refuse, finish, get, stops } = setUp();
    finish();
    page.preview(depth('200 in'));
    refuse();
    expect(get().problems).toEqual([problem]);
    page.cancelPreview();
    expect(get()).toMatchObject({ preview: null, estimate: null, problems: [], facts });
    expect(runs).toHaveLength(2);
    expect(stops()).toBe(1);
  });

  it('gets the full run of the design when it gives up before there was one', () => {
    const { page, last } = setUp();
    page.preview(depth('20 in'));
    page.cancelPreview();
    expect(last()).toMatchObject({ how: 'full', scenario });
  });
});

describe('parts of the design', () => {
  it('are added, doubled and taken away, and the next one is opened', async () => {
    const { page, finish, get } = setUp();
    finish();
    const names = () => get().design.scenario.coils?.map(({ name }) => name);
    expect(await page.changePart({ verb: 'add', kind: 'coil' })).toBeNull();
    expect(names()).toEqual(['household', 'engine', 'collector', 'coil']);
    expect(get().part).toBe('coils[3]');
    expect(await page.changePart({ verb: 'duplicate', path: 'coils[3]' })).toBeNull();
    expect(await page.changePart({ verb: 'remove', path: 'coils[3]' })).toBeNull();
    expect(names()).toEqual(['household', 'engine', 'collector', 'coil 2']);
    expect(get().part).toBe('store');
  });

  it('stay when something needs them, with the reason', async () => {
    const { page, runs, finish, get } = setUp();
    finish();
    expect(await page.changePart({ verb: 'remove', path: 'coils[1]' })).toEqual({
      no: 'in use',
      by: 'engine',
    });
    expect(get().design.scenario).toBe(scenario);
    expect(runs).toHaveLength(1);
  });
});

describe('what was typed', () => {
  it('is kept as typed until it is read or given up', () => {
    const { page, get } = setUp();
    page.keepTyped('store.water_depth', '30 im');
    page.keepTyped('supply.lift', 'tall');
    expect(get().typed).toEqual({ 'store.water_depth': '30 im', 'supply.lift': 'tall' });
    page.commit(depth('30 in'), 'water depth');
    page.keepTyped('supply.lift', null);
    expect(get().typed).toEqual({});
  });
});

describe('the units', () => {
  it('change without a run and without a change of the design', () => {
    const { page, runs, get } = setUp();
    page.chooseUnits('mixed');
    expect(get()).toMatchObject({ units: 'mixed', design: { scenario } });
    expect(get().design.scenario).toBe(scenario);
    expect(runs).toHaveLength(1);
  });
});

describe('a pinned design', () => {
  it('stays as it is while the page goes on', () => {
    const { page, finish, get } = setUp();
    finish();
    page.pin();
    page.commit(depth('30 in'), 'water depth');
    finish();
    expect(get().pinned).toMatchObject({ scenario, name: 'Larch Hollow in January' });
    expect(get().pinned?.shown.scenario).toBe(scenario);
    page.unpin();
    expect(get().pinned).toBeNull();
  });
});

describe('another scenario', () => {
  it('is run over its own days, without the answers and texts of the one before', async () => {
    const { page, last, finish, get } = setUp();
    finish();
    page.keepTyped('supply.lift', 'tall');
    await page.chooseScenario('other');
    expect(last().scenario).toMatchObject({ name: 'Other' });
    expect(get()).toMatchObject({ design: { id: 'other' }, typed: {}, window_s: [0, 3 * 86_400] });
    expect(Object.values(get().answers).every(({ at }) => at === 'none')).toBe(true);
  });

  it('is the last one chosen, whichever is loaded first', async () => {
    const { page, get } = setUp();
    await Promise.all([page.chooseScenario('other'), page.chooseScenario('demo')]);
    expect(get().design.id).toBe('demo');
  });

  it('is taken from a file only when it can at least be drawn', async () => {
    const { page, last, refuse, read, get } = setUp();
    const nonsense = page.openScenario({ name: 'nonsense' });
    refuse();
    expect(await nonsense).toEqual({ taken: false, problems: [problem] });
    expect(get()).toMatchObject({ design: { id: 'demo' }, problems: [] });
    expect(last()).toMatchObject({ scenario, how: 'full' });
    const mine = page.openScenario({ ...scenario, name: 'mine' });
    read();
    expect(await mine).toEqual({ taken: true, problems: [] });
    expect(get().design).toMatchObject({ id: 'own', name: 'mine' });
    expect(last().how).toBe('full');
  });

  it('is called as its file is, unless it has a name of its own', async () => {
    const { page, read, get } = setUp();
    const { name: _, ...nameless } = scenario;
    const opened = page.openScenario(nameless, { name: 'tank' });
    read();
    await opened;
    expect(get().design).toMatchObject({ name: 'tank', scenario: { name: 'tank' } });
  });
});

describe('what designs go through', () => {
  const setUpHearing = () => {
    const held = setUp();
    const heard: Happening[] = [];
    return { ...held, heard, hear: () => held.page.hear((happening) => heard.push(happening)) };
  };

  it('is told whole, also to who comes late', async () => {
    const { page, read, heard, hear } = setUpHearing();
    page.commit(depth('30 in'), 'lower the water');
    expect(heard).toEqual([]);
    hear();
    await page.chooseScenario('other');
    const opened = page.openScenario({ ...scenario, name: 'mine' });
    read();
    await opened;
    expect(heard).toMatchObject([
      {
        kind: 'committed',
        before: { store: { water_depth: '32 in' } },
        design: { id: 'demo', scenario: { store: { water_depth: '30 in' } } },
        gesture: 'lower the water',
      },
      { kind: 'begun', own: false, design: { id: 'other' } },
      { kind: 'begun', own: true, design: { id: 'own', name: 'mine' } },
    ]);
  });

  it('is nothing where views change, a kept design is shown, or something is undone', () => {
    const { page, heard, hear, get } = setUpHearing();
    hear();
    page.chooseUnits('SI');
    page.moveCursor(3600);
    page.zoom([0, 3600]);
    page.openPart('store');
    page.preview(depth('20 in'));
    page.cancelPreview();
    page.show({ id: 'other', name: 'Kept', scenario: { ...scenario, name: 'Kept' } });
    page.put({ ...scenario, name: 'Kept before' });
    expect(get().design).toMatchObject({ id: 'other', name: 'Kept before' });
    expect(heard).toEqual([]);
  });

  it('is told as refused, and changes nothing, where the design is only read', async () => {
    const { page, runs, heard, hear, get, finish } = setUpHearing();
    finish();
    hear();
    page.store.set({ readOnly: true });
    page.preview(depth('20 in'));
    page.commit(depth('20 in'), 'lower the water');
    expect(heard).toEqual([{ kind: 'refused', edits: depth('20 in'), gesture: 'lower the water' }]);
    await page.changePart({ verb: 'add', kind: 'coil' });
    expect(heard[1]).toMatchObject({ kind: 'refused', gesture: 'add a coil' });
    expect(get()).toMatchObject({ design: { scenario }, preview: null, part: null });
    expect(runs.map(({ how }) => how)).toEqual(['full', 'estimate']);
  });
});
