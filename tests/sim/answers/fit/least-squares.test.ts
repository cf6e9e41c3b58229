import { describe, expect, it } from 'vitest';
import { information, inverse, solve } from '../../../../sim/answers/fit/least-squares.ts';
import { roomOf } from '../../../../sim/answers/fit/log-edits.ts';
import { alikeness, driftOf } from '../../../../sim/answers/fit/misfit.ts';

const free = { least: [-50, -50], greatest: [50, 50] };

describe('least squares with priors', () => {
  it('weighs one reading of equal doubt and its prior alike', async () => {
    // Minimum of (u - 4)^2 + u^2 at 2; information 1 + 1.
    const residuals = async (trials: readonly (readonly number[])[]) => trials.map(([u]) => [u - 4]);
    const found = await solve({ size: 1, residuals, least: [-9], greatest: [9] }, [0]);
    expect(found?.u[0]).toBeCloseTo(2, 2);
    expect(information(found?.slopes ?? [], 1)[0][0]).toBeCloseTo(2, 9);
  });

  it('finds two unknowns of a curve, and stays within bounds', async () => {
    const at = [0, 1, 2, 3, 4];
    const curve = (u: readonly number[], x: number) =>
      5 * Math.exp(0.3 * u[0] - 0.2 * Math.exp(0.3 * u[1]) * x);
    const residuals = async (trials: readonly (readonly number[])[]) =>
      trials.map((u) => at.map((x) => (curve(u, x) - curve([1, -1], x)) / 1e-3));
    const found = await solve({ size: 2, residuals, ...free }, [0, 0]);
    expect(found?.settled).toBe(true);
    // The search ends where a step is under 0.02.
    expect(Math.abs((found?.u[0] ?? 9) - 1)).toBeLessThan(0.02);
    expect(Math.abs((found?.u[1] ?? 9) + 1)).toBeLessThan(0.02);
    const held = await solve({ size: 2, residuals, least: [-50, -0.5], greatest: [0.5, 50] }, [0, 0]);
    expect(held?.u[0]).toBeLessThanOrEqual(0.5);
    expect(held?.u[1]).toBeGreaterThanOrEqual(-0.5);
  });

  it('gives nothing where a run fails', async () => {
    const residuals = async (trials: readonly unknown[]) => trials.map(() => null);
    expect(await solve({ size: 2, residuals, ...free }, [0, 0])).toBeNull();
  });

  it('inverts a matrix, and refuses one without an inverse', () => {
    // By hand: determinant 4 * 3 - 2 * 2 = 8.
    const found = inverse([
      [4, 2],
      [2, 3],
    ]).flat();
    [3 / 8, -2 / 8, -2 / 8, 4 / 8].forEach((value, i) => void expect(found[i]).toBeCloseTo(value, 12));
    const flat = [
      [1, 1],
      [1, 1],
    ];
    expect(() => inverse(flat)).toThrow(/^least squares - expected a positive definite matrix/);
  });
});

describe('what is left', () => {
  const place = { kind: 'stirred' } as const;
  const readings = Array.from({ length: 40 }, (_, i) => ({ time_s: i * 600, place, probe: 0, value_C: 50 }));

  it('counts neighbours that are alike for less than they are', () => {
    const turning = readings.map((_, i) => (i % 2 === 0 ? 1 : -1));
    const halves = readings.map((_, i) => (i < 20 ? 1 : -1));
    expect(alikeness(turning, readings)).toBe(1);
    expect(alikeness(halves, readings)).toBeGreaterThan(2);
  });

  it('tells a drift from none', () => {
    const times_s = readings.map(({ time_s }) => time_s);
    const wiggle = readings.map((_, i) => (i % 2 === 0 ? 0.1 : -0.1));
    expect(driftOf(wiggle, times_s)).toBeNull();
    // 2 K in 39 x 600 s are 7.4 K a day.
    const drifting = wiggle.map((each, i) => each + (2 * i) / 39);
    expect(driftOf(drifting, times_s)).toBeCloseTo((2 * 86_400) / (39 * 600), 0);
  });
});

describe('the room of a log', () => {
  it('is a mean over a night and a swing over a day', () => {
    const hours = Array.from({ length: 25 }, (_, h) => h);
    const room = hours.map((h) => ({
      time_s: h * 3600,
      value_C: 10 + 3 * Math.cos((2 * Math.PI * (h - 16)) / 24),
    }));
    const day = roomOf(room);
    expect(Number.parseFloat(day.temperature)).toBeCloseTo(10, 2);
    expect(Number.parseFloat(day.swing)).toBeCloseTo(6, 2);
    expect(day.warmest).toMatch(/^(15:59|16:00)$/);
    const night = roomOf(room.slice(0, 3));
    expect(night.swing).toBe('0 K');
  });
});
