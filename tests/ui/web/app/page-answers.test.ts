import { describe, expect, it } from 'vitest';
import type { Answer, RangeAnswer } from '../../../../sim/index.ts';
import { isOutdated } from '../../../../ui/web/app/page-state.ts';
import { depth, scenario, setUp } from './held-page.ts';

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
