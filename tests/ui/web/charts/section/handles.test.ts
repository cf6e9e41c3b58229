import { describe, expect, it } from 'vitest';
import demo from '../../../../../scenarios/demo.json' with { type: 'json' };
import { moved, type Scenario } from '../../../../../sim/index.ts';
import { handleNumber, valueAfterKey, valueAfterPull } from '../../../../../ui/web/charts/section/steps.ts';
import { factsOf, tenTurns } from '../../../../sim/answers/section/facts-of.ts';
import { drawn } from './drawn.ts';

const inch = 0.0254;
const facts = factsOf(tenTurns());
const { handles, frame } = drawn(facts);
const handle = (key: string) => {
  const found = handles.find((each) => each.key === key);
  if (!found) throw new Error(key);
  return found;
};

describe('the handles', () => {
  it('are one for the water, two for the coil, one for each face', () => {
    // 3.1 R per inch of fibreglass (trade.md) over 3 1/2 in are R-11.
    expect(handles.map(({ key, label, text }) => `${key}: ${label}: ${text}`)).toEqual([
      'water: Water line: 32 in of water, 239 gal',
      'coil-0-bottom: Coil coil, bottom: starts 4 in up',
      'coil-0-top: Coil coil, top: ends 19 1/2 in up, turns 1 1/2 in apart',
      'sheet-sides: Insulation, sides: 3 1/2 in of fibreglass, R-11',
      'sheet-bottom: Insulation, bottom: 3 1/2 in of fibreglass, R-11',
      'sheet-lid: Insulation, lid: 3 1/2 in of fibreglass, R-11',
    ]);
  });

  it('sit on what they move', () => {
    expect(handle('water').y).toBeCloseTo(frame.bottom_y - 32 * inch * frame.px_per_m, 6);
    expect(handle('coil-0-bottom').y).toBeCloseTo(frame.bottom_y - 4 * inch * frame.px_per_m, 6);
    expect(handle('sheet-lid').y).toBeCloseTo(frame.bottom_y - 39.5 * inch * frame.px_per_m, 6);
    expect(handle('sheet-sides').x).toBeCloseTo(
      frame.middle_x - (24 + 0.75 + 3.5) * inch * frame.px_per_m,
      6,
    );
  });

  it('lie a finger apart on the demo, on a phone too', () => {
    const { handles } = drawn(factsOf(demo as Scenario), { width: 340, height: 600 });
    for (const a of handles) {
      for (const b of handles) {
        if (a !== b) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(40);
      }
    }
  });

  it('say what does not fit where they are', () => {
    const low = drawn(moved(facts, { what: 'water' }, 13.5 * inch)).handles;
    expect(low.find(({ key }) => key === 'water')?.misfit).toBe('coil coil stands out of it');
    expect(low.find(({ key }) => key === 'coil-0-top')?.misfit).toBe('4 of 10 turns stand out of the water');
    expect(handle('water').misfit).toBe('');
  });
});

describe('a key', () => {
  const keyed = (key: string, units: 'US' | 'SI' = 'US', of = handle('water')) => {
    const value = valueAfterKey(of, key, units);
    return value === null ? null : handleNumber(value, units);
  };

  it('moves by a quarter inch, by two inches, to the ends', () => {
    expect(keyed('ArrowUp')).toBe(32.25);
    expect(keyed('ArrowRight')).toBe(32.25);
    expect(keyed('ArrowDown')).toBe(31.75);
    expect(keyed('PageUp')).toBe(34);
    expect(keyed('PageDown')).toBe(30);
    expect(keyed('Home')).toBe(2);
    expect(keyed('End')).toBe(36);
    expect(keyed('a')).toBeNull();
  });

  it('moves by 5 mm, by 50 mm, and first to the next whole step', () => {
    // 32 in are 812.8 mm.
    expect(keyed('ArrowUp', 'SI')).toBe(815);
    expect(keyed('ArrowDown', 'SI')).toBe(810);
    expect(keyed('PageUp', 'SI')).toBe(860);
    expect(keyed('End', 'SI')).toBe(910);
  });

  it('goes no further than the handle', () => {
    expect(keyed('ArrowUp', 'US', { ...handle('water'), value_m: 36 * inch })).toBe(36);
    expect(keyed('PageDown', 'US', { ...handle('water'), value_m: 2.25 * inch })).toBe(2);
  });
});

describe('a pull', () => {
  const px = inch * frame.px_per_m;
  const pulled = (key: string, x: number, y: number) =>
    handleNumber(valueAfterPull(handle(key), { x, y }, frame.px_per_m, 'US'), 'US');

  it('moves by as much as the hand does, to the nearest mark', () => {
    expect(pulled('water', 40, 3 * px)).toBe(29);
    expect(pulled('water', 0, -1.1 * px)).toBe(33);
    expect(pulled('sheet-sides', -2 * px, 5)).toBe(5.5);
    expect(pulled('sheet-bottom', 0, 1 * px)).toBe(4.5);
    expect(pulled('sheet-lid', 0, 1 * px)).toBe(2.5);
  });

  it('stops where the handle does', () => {
    expect(pulled('water', 0, -1000)).toBe(36);
    expect(pulled('sheet-sides', 1000, 0)).toBe(0.25);
  });
});
