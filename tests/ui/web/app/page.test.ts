import { describe, expect, it } from 'vitest';
import { openPage } from '../../../../ui/web/app/page.ts';
import { isStale } from '../../../../ui/web/app/page-state.ts';
import type { Report } from '../../../../ui/web/worker/protocol.ts';
import { handMadeResult } from '../hand-made.ts';

const scenario = (days: number) => ({ name: 'n', run: { from: '2027-01-09', days } });
const catalogue = [
  { id: 'demo', name: 'Demo', note: '', scenario: scenario(7) },
  { id: 'other', name: 'Other', note: '', scenario: scenario(3) },
];
const done: Report = { kind: 'done', result: handMadeResult(), firstWeekday: 5, filled: 4 };
const refused: Report = {
  kind: 'refused',
  troubles: [{ where: 'store', expected: 'water', got: 'air', fix: 'fill it' }],
};

function setUp() {
  const orders: { scenario: unknown; heard: (report: Report) => void }[] = [];
  let stops = 0;
  const runner = {
    run: (order: unknown, heard: (report: Report) => void) => void orders.push({ scenario: order, heard }),
    stop: () => {
      stops++;
    },
  };
  const page = openPage(catalogue, runner);
  return { page, orders, get: page.store.get, stops: () => stops };
}

describe('the page', () => {
  it('runs the demo on opening', () => {
    const { orders, get } = setUp();
    expect(orders.map((order) => order.scenario)).toEqual([scenario(7)]);
    expect(get()).toMatchObject({ choice: { scenario: 'demo', days: 7 }, progress: 0, shown: null });
  });

  it('shows what came of it, with what it was the result of', () => {
    const { orders, get } = setUp();
    orders[0].heard({ kind: 'progress', share: 0.4 });
    expect(get().progress).toBe(0.4);
    orders[0].heard(done);
    expect(get()).toMatchObject({ progress: null, shown: { choice: { scenario: 'demo' }, filled: 4 } });
    expect(isStale(get())).toBe(false);
  });

  it('takes up the span of a scenario when it is chosen, and keeps the old result until the new one is there', () => {
    const { page, orders, get } = setUp();
    orders[0].heard(done);
    page.chooseScenario('other');
    expect(get().choice).toEqual({ scenario: 'other', from: '2027-01-09', days: 3 });
    expect(get().shown?.choice.scenario).toBe('demo');
    expect(isStale(get())).toBe(true);
    orders[1].heard(done);
    expect(isStale(get())).toBe(false);
  });

  it('keeps the last good result when a run is refused, and says why', () => {
    const { page, orders, get } = setUp();
    orders[0].heard(done);
    page.chooseSpan({ days: 9 });
    orders[1].heard(refused);
    expect(get().troubles).toEqual(refused.kind === 'refused' ? refused.troubles : null);
    expect(get().shown?.choice.days).toBe(7);
    expect(isStale(get())).toBe(true);
  });

  it('runs nothing for a span that cannot be, and ends what ran', () => {
    const { page, orders, get, stops } = setUp();
    const before = stops();
    page.chooseSpan({ days: 400 });
    expect(orders).toHaveLength(1);
    expect(stops()).toBe(before + 1);
    expect(get()).toMatchObject({ progress: null, troubles: [{ where: 'Days' }] });
  });

  it('clears the troubles once a choice runs', () => {
    const { page, get } = setUp();
    page.chooseSpan({ days: 400 });
    page.chooseSpan({ days: 4 });
    expect(get().troubles).toEqual([]);
  });

  it('runs nothing again for other units', () => {
    const { page, orders, get } = setUp();
    page.chooseUnits('SI');
    expect(get().units).toBe('SI');
    expect(orders).toHaveLength(1);
  });

  it('stops on request', () => {
    const { page, get, stops } = setUp();
    const before = stops();
    page.stop();
    expect(stops()).toBe(before + 1);
    expect(get().progress).toBeNull();
  });
});
