import { describe, expect, it } from 'vitest';
import {
  axes,
  day_s,
  type Frame,
  inside,
  rangeOf,
  timeAt,
  timeAxis,
  timeScale,
  timeTicks,
} from '../../../../ui/web/charts/frame.ts';

const frame: Frame = { width: 840, height: 200, left: 40, right: 80, top: 10, bottom: 20 };
const week = { from_s: 0, to_s: 7 * day_s };

describe('the time scale', () => {
  it('spans the space between the margins', () => {
    const x = timeScale(frame, week);
    expect([x(0), x(3.5 * day_s), x(7 * day_s)]).toEqual([40, 400, 760]);
  });

  it('finds the time under a point, and stays inside the span', () => {
    expect(timeAt(400, frame, week)).toBe(3.5 * day_s);
    expect(timeAt(0, frame, week)).toBe(0);
    expect(timeAt(2000, frame, week)).toBe(7 * day_s);
  });
});

describe('timeTicks', () => {
  it('stands at every midnight of a week when there is room for ten', () => {
    const ticks = timeTicks(frame, week, 72);
    expect(ticks.map(({ time_s }) => time_s / day_s)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(ticks.every(({ midnight }) => midnight)).toBe(true);
  });

  it('counts a single day in hours that divide it', () => {
    const ticks = timeTicks(frame, { from_s: 0, to_s: day_s }, 72);
    expect(ticks.map(({ time_s }) => time_s / 3600)).toEqual([0, 3, 6, 9, 12, 15, 18, 21, 24]);
  });

  it('counts a shower in minutes', () => {
    const ticks = timeTicks(frame, { from_s: 36_000, to_s: 36_600 }, 72);
    expect(ticks.map(({ time_s }) => (time_s - 36_000) / 60)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  });

  it('keeps the ticks of a year apart on a phone', () => {
    const phone = { ...frame, width: 300, right: 20 };
    const year = { from_s: 0, to_s: 365 * day_s };
    const x = timeScale(phone, year);
    const at = timeTicks(phone, year, 48).map(({ time_s }) => x(time_s));
    for (let i = 1; i < at.length; i++) expect(at[i] - at[i - 1]).toBeGreaterThanOrEqual(36);
  });
});

describe('timeAxis', () => {
  it('words each tick and leaves off the word that would run out of the chart', () => {
    const narrow = { ...frame, width: 760, right: 0 };
    const drawn = timeAxis(
      narrow,
      week,
      timeTicks(narrow, week, 72),
      ({ time_s }) => `day ${time_s / day_s}`,
      72,
    );
    expect(drawn).toContain('>day 6</text>');
    expect(drawn).not.toContain('>day 7</text>');
    expect(drawn.match(/class="midnight"/g)).toHaveLength(8);
  });
});

describe('rangeOf', () => {
  it('ends on round numbers', () => {
    expect(rangeOf(12, 33)).toEqual({ low: 10, high: 35, at: [10, 15, 20, 25, 30, 35] });
  });

  it('is not empty for one value, and does not reach below nought for what rounding left of it', () => {
    const { low, high } = rangeOf(50, 50);
    expect(high).toBeGreaterThan(low);
    expect(rangeOf(-1e-12, 2)).toMatchObject({ low: 0, high: 2 });
  });
});

describe('axes', () => {
  it('leave out every other value where they would run into each other', () => {
    const options = {
      frame,
      span: week,
      timeWords: () => '',
      valueWords: String,
      apart_px: 60,
      of: (v: number) => v,
    };
    const values = (height: number) =>
      axes({ ...options, frame: { ...frame, height } }, (v) => v, [0, 1, 2, 3, 4]).match(/class="value"/g);
    expect(values(200)).toHaveLength(5);
    expect(values(90)).toHaveLength(3);
  });
});

describe('inside', () => {
  it('cuts off at the axes and keeps the chart’s coordinates', () => {
    expect(inside(frame, '<path/>')).toBe(
      '<svg x="40" y="10" width="720" height="170" viewBox="40 10 720 170" class="inside"><path/></svg>',
    );
  });
});
