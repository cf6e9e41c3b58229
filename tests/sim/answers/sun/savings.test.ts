import { describe, expect, it } from 'vitest';
import { needBySize, sparedTime } from '../../../../sim/answers/sun/savings.ts';
import type { Size } from '../../../../sim/answers/sun/sizes.ts';
import { Sweep } from '../../../../sim/answers/sweep.ts';
import { readScenario } from '../../../../sim/index.ts';
import { fakeRuns } from '../fake-runs.ts';
import { sunnyScenario } from '../small.ts';

const read = readScenario(sunnyScenario());
if (!read.ok || !read.plant.engine) throw new Error('refused');
const { plant } = read;
const { engine } = read.plant;

const AREAS = [0, 1, 2, 3, 4, 6];
const sizes: Size[] = AREAS.map((area_m2) => ({
  area_m2,
  tubes: null,
  present: area_m2 === 2,
  edits:
    area_m2 === 0
      ? [{ path: 'collector', value: undefined }]
      : [{ path: 'collector.size.area', value: `${area_m2} m2` }],
}));

/** Hours that keep warm: less by a quarter for each square metre and half hour of sun; in January never enough. */
function need(month: number, area_m2: number): number {
  if (month === 0) return area_m2 >= 4 ? 11 : 14;
  return Math.max(0, 6 - 0.25 * area_m2 * month);
}
const runs = fakeRuns(({ month, hours, area_m2 }) => ({
  cold_shower_s: (hours ?? 0) + 1e-9 < need(month, area_m2 ?? 2) ? 600 : 0,
}));

describe('what each size needs of the engine', () => {
  it('is found for every month, in fewer runs than size by size would take', async () => {
    const found = await needBySize(new Sweep(runs, 1), plant, engine, sizes);
    const hours = found.map((months) =>
      months.map((time_s) => (typeof time_s === 'number' ? time_s / 3600 : time_s)),
    );
    AREAS.forEach((area, i) => {
      const expected = Array.from({ length: 12 }, (_, month) => need(month, area));
      expect(hours[i]).toEqual(expected.map((each) => (each > 12 ? null : each)));
    });
    // Six sizes, twelve months: by halves alone each would take six runs.
    expect(runs.asked.length).toBeLessThan(6 * 12 * 5);
  });

  it('is not known where runs were left undone', async () => {
    const stopped = async (jobs: unknown[]) => jobs.map(() => null);
    const found = await needBySize(new Sweep(stopped, 1), plant, engine, sizes);
    expect(found.flat().every((time_s) => time_s === undefined)).toBe(true);
  });
});

describe('sparedTime', () => {
  const hour = 3600;
  it('is the difference over the days of the month', () => {
    expect(sparedTime(5 * hour, 3 * hour, 1, 0)).toBe(28 * 2 * hour);
  });
  it('leaves out what charging runs anyway', () => {
    expect(sparedTime(5 * hour, 3 * hour, 1, 4 * hour)).toBe(28 * 1 * hour);
    expect(sparedTime(4 * hour, 3 * hour, 1, 4 * hour)).toBe(0);
  });
  it('counts half a day where not even that is enough, and knows nothing of what was not run', () => {
    expect(sparedTime(null, 10 * hour, 0, 0)).toBe(31 * 2 * hour);
    expect(sparedTime(undefined, 0, 0, 0)).toBeNull();
  });
});
