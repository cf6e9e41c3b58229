import { describe, expect, it } from 'vitest';
import { euDraw, patternDraws, showerDraws } from '../../../sim/scenario/draws-of-day.ts';
import { EU_PROFILES, PATTERN_NAMES } from '../../../sim/scenario/patterns.ts';

const GALLON_M3 = 3.785411784e-3;

describe('a published row', () => {
  it('of the EU becomes a draw that carries its energy', () => {
    // 1.4 kWh at 6 L/min, 40 C over 10 C: 5.04e6 J / (992.22 kg/m3 x 4181 J/kgK x 30 K) = 40.50 L, 405.0 s.
    const draw = euDraw('x', ['07:05', 1.4, 6, 40, null]);
    expect(draw).toMatchObject({
      at_s: 7 * 3600 + 300,
      wanted_C: 40,
      outlet: { kind: 'tap' },
      shower: false,
    });
    expect(draw.flow_m3_s).toBeCloseTo(1e-4, 12);
    expect(draw.duration_s).toBeCloseTo(405, 0);
  });

  it('of the EU wants its peak temperature, and never less than 40 C', () => {
    expect(euDraw('x', ['12:45', 0.315, 4, 10, 55]).wanted_C).toBe(55);
    expect(euDraw('x', ['07:00', 0.105, 3, 25, null]).wanted_C).toBe(40);
    expect(euDraw('x', ['21:30', 0.525, 5, 45, null]).wanted_C).toBe(45);
  });

  it('of the US keeps its volume and counts from the start', () => {
    const draws = patternDraws('US low use', 6.5 * 3600);
    // 38 gallons a day is the pattern's published total.
    const gallons = draws.reduce((sum, d) => sum + (d.duration_s * d.flow_m3_s) / GALLON_M3, 0);
    expect(gallons).toBeCloseTo(38, 9);
    expect(draws[0]).toMatchObject({ at_s: 23_400, wanted_C: expect.closeTo(51.667, 3) });
    expect(draws.at(-1)?.at_s).toBe(23.5 * 3600);
  });

  it('of the US that passes midnight begins early in the day', () => {
    const draws = patternDraws('US high use', 20 * 3600);
    expect(draws.every((d) => d.at_s >= 0 && d.at_s < 86_400)).toBe(true);
    expect(draws.some((d) => d.at_s === 13 * 3600)).toBe(true);
  });
});

it.each(PATTERN_NAMES)('the pattern %s has draws of a second to an hour', (name) => {
  const draws = patternDraws(name, 0);
  expect(draws.length).toBeGreaterThan(2);
  for (const draw of draws) {
    expect(draw.duration_s).toBeGreaterThan(1);
    expect(draw.duration_s).toBeLessThan(3600);
  }
});

it('rows of a profile stand in the order of the day', () => {
  for (const rows of Object.values(EU_PROFILES)) {
    const times = rows.map(([at]) => at);
    expect(times).toEqual([...times].sort());
  }
});

describe('showers', () => {
  const one = {
    name: 'wash',
    at_s: 7 * 3600,
    days: [0, 6],
    people: 1,
    gap_s: 120,
    lasts_s: 480,
    flow_m3_s: 1e-4,
    wanted_C: 40,
    rated_Pa: 1e5,
  };

  it('follow one another with the pause between', () => {
    const draws = showerDraws({ ...one, people: 3 });
    expect(draws.map((d) => d.at_s)).toEqual([25_200, 25_800, 26_400]);
    expect(draws.map((d) => d.name)).toEqual(['wash 1', 'wash 2', 'wash 3']);
    expect(draws.every((d) => d.shower && d.outlet.kind === 'head')).toBe(true);
  });

  it('that would begin after midnight begin on the next day', () => {
    const draws = showerDraws({ ...one, at_s: 23 * 3600 + 3540, people: 2 });
    expect(draws[1]).toMatchObject({ at_s: 540, days: [0, 1] });
    expect(draws[0].days).toEqual([0, 6]);
  });
});
