import { describe, expect, it, vi } from 'vitest';
import { rememberLast } from '../../../sim/scenario/remember.ts';

describe('a remembered function', () => {
  it('computes once for the same keys, again for others, and forgets all but the last', () => {
    const make = vi.fn((a: number, b: string) => ({ sum: a + b.length }));
    const remembered = rememberLast(make, (a, b) => [a, b]);
    const first = remembered(1, 'xy');
    expect(remembered(1, 'xy')).toBe(first);
    expect(first).toEqual({ sum: 3 });
    expect(remembered(2, 'xy')).toEqual({ sum: 4 });
    expect(remembered(1, 'xy')).toEqual(first);
    expect(make).toHaveBeenCalledTimes(3);
  });

  it('keeps nothing of a call that threw', () => {
    let sound = false;
    const remembered = rememberLast(
      () => {
        if (!sound) throw new RangeError('not yet');
        return 1;
      },
      () => [],
    );
    expect(() => remembered()).toThrow('not yet');
    sound = true;
    expect(remembered()).toBe(1);
  });
});
