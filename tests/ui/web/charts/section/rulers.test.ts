import { describe, expect, it } from 'vitest';
import { rulerTicks } from '../../../../../ui/web/charts/section/rulers.ts';

const inch = 0.0254;

describe('rulerTicks', () => {
  it('has a tick an inch and a number every foot where an inch is four pixels', () => {
    const ticks = rulerTicks(36 * inch, 4 / inch, 'US');
    expect(ticks).toHaveLength(37);
    expect(ticks.filter(({ number }) => number !== null).map(({ number }) => number)).toEqual([
      '0',
      '12',
      '24',
      '36',
    ]);
    expect(ticks[1].at_m).toBeCloseTo(inch, 9);
  });

  it('has the fractions of the tape where there is room', () => {
    const ticks = rulerTicks(2 * inch, 32 / inch, 'US');
    expect(ticks).toHaveLength(17);
    expect(ticks[1].at_m).toBeCloseTo(inch / 8, 9);
    expect(ticks.filter(({ number }) => number !== null).map(({ number }) => number)).toEqual([
      '0',
      '1',
      '2',
    ]);
  });

  it('counts centimetres in SI', () => {
    const ticks = rulerTicks(1, 400, 'SI');
    expect(ticks).toHaveLength(101);
    expect(ticks.filter(({ number }) => number !== null).map(({ number }) => number)).toEqual(
      Array.from({ length: 11 }, (_, i) => String(i * 10)),
    );
  });

  it('ends where the length does, not past it', () => {
    const last = rulerTicks(43.3 * inch, 4 / inch, 'US').at(-1);
    expect(last?.at_m).toBeCloseTo(43 * inch, 9);
  });
});
