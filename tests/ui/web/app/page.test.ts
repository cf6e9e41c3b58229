import { describe, expect, it } from 'vitest';
import demo from '../../../../scenarios/demo.json';
import {
  type Answer,
  type Edit,
  type Problem,
  type RangeAnswer,
  type Result,
  readScenario,
  type Scenario,
  sectionFacts,
} from '../../../../sim/index.ts';
import { openPage, type PageDoors } from '../../../../ui/web/app/page.ts';
import { isOutdated, isStale, newest } from '../../../../ui/web/app/page-state.ts';
import type { Heard } from '../../../../ui/web/worker/pool.ts';
import type { RunReport } from '../../../../ui/web/worker/protocol.ts';
import { handMadeResult } from '../hand-made.ts';

const scenario = demo as unknown as Scenario;
const other = { ...scenario, name: 'Other', run: { days: 3 } } as Scenario;
const entry = (id: string, name: string, own: Scenario) => ({ id, name, note: '', load: async () => own });
const catalogue = [entry('demo', 'Demo', scenario), entry('other', 'Other', other)];
const opening = { id: 'demo', scenario };
const problem: Problem = { path: 'store', expected: 'water', got: 'air', fix: 'fill it' };
const depth = (value: unknown): Edit[] => [{ path: 'store.water_depth', value }];

function readFacts() {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('expected the demo to be sound');
  return sectionFacts(read.plant, read.sketch);
}
const facts = readFacts();

interface Run {
  scenario: Scenario;
  how: string;
  heard(report: RunReport): void;
}

function setUp(builtIn: PageDoors['builtIn'] = null) {
  const runs: Run[] = [];
  let stops = 0;
  const asked: { key: string; scenario: Scenario; heard: Heard<Answer>; stopped: boolean }[] = [];
  const ranges: { vary: string; scenario: Scenario; heard: Heard<RangeAnswer> }[] = [];
  let waiting = () => {};
  const page = openPage({
    catalogue,
    opening,
    builtIn,
    now: () => 0,
    later(act) {
      waiting = act;
      return () => {
        waiting = () => {};
      };
    },
    runner: {
      run: (own, how, heard) => void runs.push({ scenario: own, how, heard }),
      stop: () => void stops++,
    },
    pool: {
      answer(key, own, heard) {
        const entry = { key, scenario: own, heard, stopped: false };
        asked.push(entry);
        return {
          stop() {
            entry.stopped = true;
          },
        };
      },
      range(vary, own, heard) {
        ranges.push({ vary, scenario: own, heard });
        return { stop() {} };
      },
      detail: () => ({ stop() {} }),
    },
  });
  const last = () => runs[runs.length - 1];
  const read = (run = last()) =>
    run.heard({ id: 1, kind: 'read', facts, firstWeekday: 5, filled: [], notes: [] });
  const finish = (run = last(), result: Result = handMadeResult()) => {
    read(run);
    run.heard({ id: 1, kind: 'result', result, ofDays: 2 });
  };
  const refuse = (run = last()) => run.heard({ id: 1, kind: 'refused', problems: [problem], sketch: null });
  return {
    page,
    runs,
    last,
    read,
    finish,
    refuse,
    asked,
    ranges,
    rest: () => waiting(),
    get: page.store.get,
    stops: () => stops,
  };
}

describe('the page', () => {
  it('runs the demo on opening', () => {
    const { runs, get } = setUp();
    expect(runs).toMatchObject([{ scenario, how: 'full' }]);
    expect(get()).toMatchObject({ design: { id: 'demo' }, progress: 0, shown: null });
  });

  it('has the demo to show at once where it was built in, and is not stale', () => {
    const shown = { facts, result: handMadeResult(), firstWeekday: 5, filled: [], notes: [] };
    const coil = { at: 'done', answer: { key: 'coil' } as Answer } as const;
    const { runs, get } = setUp({ shown, answers: { coil } });
    expect(runs).toEqual([]);
    expect(get().shown?.result.name).toBe('By hand');
    expect(isStale(get())).toBe(false);
    expect(isOutdated(get().answers.coil, get())).toBe(false);
  });

  it('wakes its worker by a run that nobody sees', () => {
    const shown = { facts, result: handMadeResult(), firstWeekday: 5, filled: [], notes: [] };
    const { page, last, finish, get } = setUp({ shown, answers: {} });
    const before = get();
    page.wake();
    expect(last()).toMatchObject({ scenario, how: 'estimate' });
    finish();
    expect(get()).toBe(before);
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
    expect(get().gesture).toBe('water depth');
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

describe('answers', () => {
  it('that are quick come unasked after each run of a new design that rests', () => {
    const { page, asked, finish, rest } = setUp();
    finish();
    expect(asked).toEqual([]);
    rest();
    const keys = asked.map(({ key }) => key);
    expect(keys).toContain('coil');
    page.run();
    for (const { heard } of asked) heard.answered({} as Answer);
    finish();
    rest();
    expect(asked).toHaveLength(keys.length);
    page.commit(depth('30 in'), 'water depth');
    finish();
    rest();
    expect(asked.map(({ key }) => key)).toEqual([...keys, ...keys]);
  });

  it('are not begun, and stopped, for a design that is being changed again', () => {
    const { page, asked, finish, rest } = setUp();
    finish();
    page.preview(depth('30 in'));
    rest();
    expect(asked).toEqual([]);
    page.cancelPreview();
    rest();
    expect(asked.length).toBeGreaterThan(0);
    page.preview(depth('31 in'));
    expect(asked.every(({ stopped }) => stopped)).toBe(true);
  });

  it('tell how far they are, and what they are the answer for', () => {
    const { page, asked, finish, get } = setUp();
    finish();
    page.ask('store');
    const { heard } = asked[asked.length - 1];
    heard.progress(3, 24);
    expect(get().answers.store).toMatchObject({ at: 'working', progress: [3, 24] });
    heard.answered({ key: 'store' } as Answer);
    expect(get().answers.store).toMatchObject({ at: 'done', of: scenario });
    page.commit(depth('30 in'), 'water depth');
    expect(isOutdated(get().answers.store, get())).toBe(true);
    expect(get().answers.store.answer).toEqual({ key: 'store' });
  });

  it('are stopped on request, and keep what was finished', () => {
    const { page, asked, get } = setUp();
    page.ask('store');
    page.stopAsking('store');
    expect(asked[0].stopped).toBe(true);
    asked[0].heard.answered({ key: 'store', stopped: true } as Answer);
    expect(get().answers.store).toMatchObject({ at: 'stopped', answer: { stopped: true } });
  });

  it('of a design that is no more are stopped and not taken in', () => {
    const { page, asked, get } = setUp();
    page.ask('store');
    page.commit(depth('30 in'), 'water depth');
    expect(asked[0].stopped).toBe(true);
    asked[0].heard.answered({ key: 'store' } as Answer);
    expect(get().answers.store).toMatchObject({ at: 'none' });
  });

  it('say why they failed', () => {
    const { page, asked, get } = setUp();
    page.ask('store');
    asked[0].heard.failed('the store has no bottom');
    expect(get().answers.store).toMatchObject({ at: 'failed', problem: 'the store has no bottom' });
  });
});

describe('an input varied over a range', () => {
  const spec = { path: 'store.water_depth', from: '20 in', to: '32 in', n: 4 };

  it('is run and told of as it goes', () => {
    const { page, ranges, get } = setUp();
    page.tryRange(spec);
    expect(ranges).toMatchObject([{ vary: 'store.water_depth=20 in:32 in:4', scenario }]);
    ranges[0].heard.progress(1, 4);
    expect(get().range).toMatchObject({ spec, at: 'working', progress: [1, 4] });
    ranges[0].heard.answered({ points: [{}, {}], done: 2 } as RangeAnswer);
    expect(get().range).toMatchObject({ at: 'done', answer: { done: 2 }, of: scenario });
  });

  it('is marked where it was stopped', () => {
    const { page, ranges, get } = setUp();
    page.tryRange(spec);
    ranges[0].heard.answered({ points: [{}, {}], done: 1 } as RangeAnswer);
    expect(get().range?.at).toBe('stopped');
  });

  it('gives way to another one', () => {
    const { page, ranges, get } = setUp();
    page.tryRange(spec);
    page.tryRange({ ...spec, n: 7 });
    ranges[0].heard.answered({ points: [], done: 0 } as unknown as RangeAnswer);
    expect(get().range).toMatchObject({ at: 'working', spec: { n: 7 } });
    expect(get().range?.answer).toBeUndefined();
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

  it('is taken from a file only when it can at least be drawn', () => {
    const { page, last, refuse, read, get } = setUp();
    page.openScenario({ name: 'nonsense' });
    refuse();
    expect(get()).toMatchObject({ design: { id: 'demo' }, problems: [problem] });
    page.openScenario({ ...scenario, name: 'mine' });
    read();
    expect(get().design).toMatchObject({ id: 'own', name: 'mine' });
    expect(last().how).toBe('full');
  });
});
