import { describe, expect, it } from 'vitest';
import { problemsWith, sound } from './support.ts';

/** A year of a table with units in its head: a sine of sun by day, warm afternoons. */
function table(hours = 8760): string {
  const rows = Array.from({ length: hours }, (_, h) => {
    const start = new Date(Date.UTC(2023, 0, 1, h)).toISOString().slice(0, 16);
    const sun = Math.max(0, 400 * Math.sin((((h % 24) + 0.5 - 6) * Math.PI) / 12));
    return `${start},${(40 + 10 * Math.sin(((h % 24) * Math.PI) / 12)).toFixed(1)},${sun.toFixed(0)}`;
  });
  return ['time (start),air (F),sun (W/m2)', ...rows].join('\n');
}
const weather = { kind: 'file', file: 'valley.csv' } as const;

describe('a weather file', () => {
  it('is found by its name and read', () => {
    const { plant } = sound({ weather, coils: [] }, { 'valley.csv': table() });
    const mean = plant.weather.air_C.reduce((a, b) => a + b) / 8760;
    expect(mean).toBeCloseTo((40 - 32) / 1.8, 1);
    expect(Math.max(...plant.weather.global_horizontal_W_m2)).toBeGreaterThan(380);
  });

  it('that is not at hand is asked for by the names that are', () => {
    expect(problemsWith({ weather }, { 'hill.csv': '' })).toEqual([
      {
        path: 'weather.file',
        expected: 'a file at hand: "hill.csv"',
        got: '"valley.csv"',
        fix: expect.stringContaining('by latitude'),
      },
    ]);
  });

  it('named like something every object has is not found', () => {
    expect(problemsWith({ weather: { kind: 'file', file: 'toString' } })[0].path).toBe('weather.file');
  });

  it('that is broken is refused with its own problems', () => {
    const [problem] = problemsWith({ weather }, { 'valley.csv': 'time,air\n2023-01-01 00:00,40\n' });
    expect(problem.path).toBe('weather.file');
    expect(problem.got).toContain('valley.csv');
  });

  it('that covers part of a year is refused, or filled with made weather when asked', () => {
    const files = { 'valley.csv': table(24 * 40) };
    expect(problemsWith({ weather }, files).length).toBeGreaterThan(0);
    const { plant, notes } = sound({ weather: { ...weather, rest: 'average' }, coils: [] }, files);
    expect(plant.weather.air_C).toHaveLength(8760);
    expect(notes.some(({ path }) => path === 'weather.file')).toBe(true);
  });
});
