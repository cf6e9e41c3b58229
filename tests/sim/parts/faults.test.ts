import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../sim/parts/description.ts';
import type { Opening } from '../../../sim/parts/draw-calendar.ts';
import { fails, faultEdges, withColdSpells, withoutFailedDraws } from '../../../sim/parts/faults.ts';
import { drawOf } from '../support/plant.ts';

const HOUR = 3600;
const spell: Fault = { kind: 'cold spell', from_s: 10 * HOUR, to_s: 20 * HOUR, temperature_C: -30 };
const away: Fault = { kind: 'household', from_s: 10 * HOUR, to_s: 20 * HOUR };

describe('a fault', () => {
  it('holds from its beginning until before its end, for its own kind', () => {
    const at = (hour: number) => fails([away], 'household', hour * HOUR);
    expect([9.99, 10, 19.99, 20].map(at)).toEqual([false, true, true, false]);
    expect(fails([away], 'engine', 15 * HOUR)).toBe(false);
  });

  it('restarts a run where it begins and ends, a cold spell also where its front has passed', () => {
    expect(faultEdges([away])).toEqual([10 * HOUR, 20 * HOUR]);
    expect(faultEdges([spell])).toEqual([10, 11, 19, 20].map((hour) => hour * HOUR));
  });
});

describe('a cold spell', () => {
  const outdoors = (hour: number, weather_C = 5) => withColdSpells([spell], hour * HOUR, weather_C);

  it('leaves the weather alone before and after it, and comes without a jump', () => {
    expect([0, 10, 20, 30].map((hour) => outdoors(hour))).toEqual([5, 5, 5, 5]);
    expect(outdoors(10.5)).toBeCloseTo(-12.5, 9);
    expect(outdoors(10.001)).toBeCloseTo(5, 0);
  });

  it('holds its temperature once its front has passed, and never warms colder weather', () => {
    expect(outdoors(15)).toBe(-30);
    expect(outdoors(15, -38)).toBe(-38);
  });
});

describe('a household that cannot draw', () => {
  const open = (from: number, to: number): Opening => ({
    draw: drawOf(),
    from_s: from * HOUR,
    to_s: to * HOUR,
  });

  it('leaves out what would begin, ends what is under way, and keeps the rest', () => {
    const openings = [open(8, 9), open(9.5, 10.5), open(12, 13), open(19.5, 20.5), open(20, 21)];
    const left = withoutFailedDraws(openings, [away]).map(({ from_s, to_s }) => [from_s / HOUR, to_s / HOUR]);
    expect(left).toEqual([
      [8, 9],
      [9.5, 10],
      [20, 21],
    ]);
  });
});
