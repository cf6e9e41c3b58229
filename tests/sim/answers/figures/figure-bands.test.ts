import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type FigureBands, figureBands } from '../../../../sim/answers/figures/figure-bands.ts';
import { doHere } from '../../../../sim/answers/job.ts';
import { edited, type Result, readScenario, type Scenario, simulate } from '../../../../sim/index.ts';

const read = () =>
  JSON.parse(readFileSync(new URL('../../../../scenarios/boat.json', import.meta.url), 'utf8'));
const boat: Scenario = read();

function plantOf(scenario: Scenario) {
  const found = readScenario(scenario);
  if (!found.ok) throw new Error('the example is broken');
  return found;
}

function figuresOf(scenario: Scenario): Result['figures'] {
  return simulate(plantOf(scenario).plant).figures;
}

describe('figureBands', () => {
  let base: Result['figures'] = {};
  let found: FigureBands;
  const told: [number, number][] = [];
  beforeAll(async () => {
    base = figuresOf(boat);
    const doJobs = doHere(boat, {});
    found = await figureBands({
      scenario: boat,
      context: {},
      doJobs,
      onProgress: (...at) => told.push(at),
    });
  }, 60_000);

  it('hold the figure between their ends', () => {
    const bands = Object.entries(found.bands);
    expect(bands.length).toBeGreaterThan(5);
    for (const [key, { low, high }] of bands) {
      expect(low, key).toBeLessThanOrEqual(base[key] ?? Number.NaN);
      expect(high, key).toBeGreaterThanOrEqual(base[key] ?? Number.NaN);
    }
  });

  it('try every doubt that may move a figure, and tell how far they are', () => {
    const { filled } = plantOf(boat);
    const doubts = filled.filter(({ band, path }) => band !== null && !path.startsWith('prices.'));
    expect(doubts.length).toBeGreaterThan(10);
    expect(found.untried).toEqual([]);
    // The friction and the bore of the engine's coil move nothing.
    const moving = doubts.filter(({ path }) => !/\.(friction|bore)$/.test(path));
    expect(found.tried).toEqual(expect.arrayContaining(moving.map(({ path }) => path)));
    expect(told.at(-1)).toEqual([2 * found.tried.length + 1, 2 * found.tried.length + 1]);
  });

  it('leave alone what the doubts cannot move', () => {
    // The file names the hours it runs.
    expect(found.bands.engine_s).toBeUndefined();
  });

  it('of one doubt reach exactly as far as the two runs do, and name it', async () => {
    const ends = [1.1, 2.5].map(
      (bridges) => figuresOf({ ...boat, store: { ...boat.store, bridges } }).loss_J,
    );
    const here = doHere(boat, {});
    const { bands } = await figureBands({
      scenario: boat,
      context: {},
      figures: base,
      doJobs: async (jobs) => {
        const own = jobs.map(({ edits }) => edits.some(({ path }) => path === 'store.bridges'));
        const done = await here(jobs.filter((_, i) => own[i]));
        return own.map((each) => (each ? (done.shift() ?? null) : null));
      },
    });
    expect(bands.loss_J.low).toBeCloseTo(ends[0] ?? Number.NaN, 6);
    expect(bands.loss_J.high).toBeCloseTo(ends[1] ?? Number.NaN, 6);
    expect(bands.loss_J.most).toMatchObject({
      path: 'store.bridges',
      measure: expect.stringContaining('cool-down'),
    });
  });

  it('widen with what the file marks as unsure', async () => {
    const marked: Scenario = { ...boat, doubts: [{ unsure: 'a little', input: 'coils[0].roll_length' }] };
    const { tried } = await figureBands({ scenario: marked, context: {}, doJobs: doHere(marked, {}) });
    expect(tried).toContain('coils[0].roll_length');
  });

  it('try a value of a part that the file leaves out whole', async () => {
    const demo: Scenario = JSON.parse(
      readFileSync(new URL('../../../../scenarios/demo.json', import.meta.url), 'utf8'),
    );
    expect(demo.collector?.rating).toBeUndefined();
    const tried: number[] = [];
    await figureBands({
      scenario: demo,
      context: {},
      figures: base,
      doJobs: async (jobs) => {
        for (const { edits } of jobs) {
          if (!JSON.stringify(edits).includes('eta0')) continue;
          const read = readScenario(edited(demo, edits));
          tried.push(read.ok ? Number(read.plant.collector?.eta0) : Number.NaN);
        }
        return jobs.map(() => null);
      },
    });
    expect(tried).toEqual([0.6, 0.7]);
  });

  it('never reach past what a figure can be', () => {
    for (const [key, { low, high }] of Object.entries(found.bands)) {
      if (/_(s|kg|m3)$/.test(key)) expect(low, key).toBeGreaterThanOrEqual(0);
      if (key === 'showers_cold') expect(high).toBeLessThanOrEqual(base.showers ?? 0);
    }
  });

  it('leave the scenario as it was', () => {
    expect(boat).toEqual(read());
  });
});
