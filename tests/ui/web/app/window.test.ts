import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  closeInterval,
  holding,
  inView,
  isClose,
  moved,
  within,
  zoomed,
} from '../../../../ui/web/app/window.ts';

const whole = { from_s: 0, to_s: 86_400 };
const window = { from_s: 30_000, to_s: 40_000 };

describe('the window', () => {
  it('keeps what it is zoomed at in place', () => {
    expect(zoomed(window, whole, 35_000, 0.5)).toEqual({ from_s: 32_500, to_s: 37_500 });
    expect(zoomed(window, whole, 30_000, 2)).toEqual({ from_s: 30_000, to_s: 50_000 });
  });

  it('is all of the run when zoomed out without end', () => {
    expect(zoomed(window, whole, 35_000, Number.POSITIVE_INFINITY)).toEqual(whole);
  });

  it('keeps its length when it is moved against an end', () => {
    expect(moved(window, whole, 1e9)).toEqual({ from_s: 76_400, to_s: 86_400 });
    expect(moved(window, whole, -1e9)).toEqual({ from_s: 0, to_s: 10_000 });
  });

  it('moves no further than it must to have a time in view', () => {
    expect(holding(window, whole, 35_000)).toBe(window);
    expect(holding(window, whole, 41_000)).toEqual({ from_s: 31_000, to_s: 41_000 });
    expect(holding(window, whole, 29_000)).toEqual({ from_s: 29_000, to_s: 39_000 });
  });

  it('never leaves the run and is never shorter than can be seen', () => {
    const time = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(time, time, time, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (a, b, at_s, factor) => {
        const found = zoomed(within({ from_s: a, to_s: b }, whole), whole, at_s, factor);
        expect(found.from_s).toBeGreaterThanOrEqual(-1e-6);
        expect(found.to_s).toBeLessThanOrEqual(86_400 + 1e-6);
        expect(found.to_s - found.from_s).toBeGreaterThan(599);
      }),
    );
  });
});

describe('a cursor in a window', () => {
  const time_s = [0, 600, 1200, 1800, 2400];

  it('stays where it is in view', () => {
    expect(inView({ from_s: 500, to_s: 1300 }, time_s, 700)).toBe(700);
  });

  it('comes to the nearest sample in view from either side', () => {
    expect(inView({ from_s: 500, to_s: 1300 }, time_s, 0)).toBe(600);
    expect(inView({ from_s: 500, to_s: 1300 }, time_s, 2400)).toBe(1200);
    expect(inView({ from_s: 500, to_s: 1200 }, time_s, 2400)).toBe(1200);
  });

  it('stays behind where no sample is in view', () => {
    expect(inView({ from_s: 700, to_s: 1100 }, time_s, 0)).toBe(0);
  });
});

describe('a close look', () => {
  it('begins at three hours', () => {
    expect(isClose({ from_s: 0, to_s: 10_800 })).toBe(true);
    expect(isClose({ from_s: 0, to_s: 10_801 })).toBe(false);
  });

  it('samples more closely the shorter the window is', () => {
    expect([600, 3600, 10_800].map((to_s) => closeInterval({ from_s: 0, to_s }))).toEqual([2, 5, 10]);
  });
});
