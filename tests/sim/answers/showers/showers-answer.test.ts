import { beforeAll, describe, expect, it } from 'vitest';
import type { Answer } from '../../../../sim/answers/answer.ts';
import { type DoJobs, doHere, type Job } from '../../../../sim/answers/job.ts';
import { realDay } from '../../../../sim/answers/showers/morning.ts';
import { firstWarm, recovered, recoveryJobs } from '../../../../sim/answers/showers/recovery.ts';
import { showersAnswer } from '../../../../sim/answers/showers/showers-answer.ts';
import { traceOf } from '../../../../sim/answers/showers/trace.ts';
import { simulate } from '../../../../sim/run/simulation.ts';
import { readScenario, type Scenario } from '../../../../sim/scenario/index.ts';
import { toteScenario } from '../scenarios.ts';

const scenario = toteScenario();

function plantOf(given: Scenario = scenario) {
  const read = readScenario(given);
  if (!read.ok) throw new Error(read.problems[0].path);
  return read.plant;
}

const keysOf = (cautions: readonly { key: string }[]) => cautions.map(({ key }) => key);

describe('showersAnswer', () => {
  let answer: Answer;
  let asked = 0;
  beforeAll(async () => {
    const here = doHere(scenario, {});
    const doJobs: DoJobs = (jobs: Job[], onProgress) => {
      asked += jobs.length;
      return here(jobs, onProgress);
    };
    answer = await showersAnswer({ scenario, context: {}, doJobs, dull_days: 2 });
  }, 120_000);

  it('counts showers now and after dull days, with bands', () => {
    const { showers, showers_dull, dull_days } = answer.facts;
    expect(answer.headline).toBe('showers');
    expect(showers.value).toBeGreaterThan(1);
    expect(showers.low).toBeLessThan(showers.value);
    expect(showers.high).toBeGreaterThan(showers.value);
    expect(showers_dull.value).toBeLessThanOrEqual(showers.value);
    expect(dull_days.value).toBe(2);
    expect(answer.levers.length).toBeGreaterThan(1);
    expect(asked).toBeGreaterThan(50);
  });

  it('tells of none to six dull days, never more showers after more of them', () => {
    const { rows, present } = answer.tables.dull;
    expect(rows.map(([days]) => days)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(present).toBe(2);
    const warm = rows.map((row) => Number(row[3]));
    expect(warm.toSorted((a, b) => b - a)).toEqual(warm);
    expect(answer.facts.warm_s.value).toBe(warm[0]);
    expect(answer.facts.warm_dull_s.value).toBe(warm[2]);
  });

  it('finds the engine’s help quicker than waiting with nothing', () => {
    const waits = Object.fromEntries(answer.tables.waits.rows) as Record<string, number | null>;
    expect(waits.engine).toBeGreaterThan(0);
    if (waits.none !== null) expect(waits.none).toBeGreaterThanOrEqual(waits.engine ?? 0);
    expect(answer.facts.wait_engine_s.value).toBe(waits.engine);
  });

  it('carries the computing’s own doubt apart from the inputs’', () => {
    const { showers } = answer.facts;
    expect(showers.numerical).toBeGreaterThanOrEqual(0);
    expect(showers.numerical).toBeLessThan((showers.high - showers.low) / 4);
  });

  it('warns of what the trace shows', () => {
    expect(keysOf(answer.cautions)).toContain('trapped_coil');
    expect(keysOf(answer.cautions).includes('scald_no_valve')).toBe(false);
  });
});

describe('showersAnswer on odd ground', () => {
  const none: DoJobs = async (jobs) => jobs.map(() => null);

  it('leaves out what was stopped before it was done', async () => {
    const answer = await showersAnswer({ scenario, context: {}, doJobs: none });
    expect(answer.stopped).toBe(true);
    expect(answer.facts.showers).toBeUndefined();
    expect(answer.tables.dull.rows.every((row) => row[1] === null)).toBe(true);
  });

  it('refuses days out of range, a scenario without a household, and runs that all fail', async () => {
    const ask = (given: Scenario, dull_days: number, doJobs = none) =>
      showersAnswer({ scenario: given, context: {}, doJobs, dull_days });
    await expect(ask(scenario, 7)).rejects.toThrow(/^dull days - expected a whole number, 1 to 6 - got 7/);
    const { taps: _, ...bare } = toteScenario();
    await expect(ask(bare as Scenario, 3)).rejects.toThrow(/^taps - expected/);
    const failing: DoJobs = async (jobs) => jobs.map(() => ({ ok: false, problem: 'a - b - c - d' }));
    await expect(ask(scenario, 3, failing)).rejects.toThrow('a - b - c - d');
  });
});

describe('recovery', () => {
  const row = { duration_s: 480, gap_s: 300, spent: 2, begins_s: 60 };

  it('tries one more shower after each wait, behind the spent row', () => {
    const jobs = recoveryJobs(row, 'engine', [600, 1200]);
    const end = 60 + 480 + 300 + 480;
    expect(jobs.map((job) => job.row?.starts_s)).toEqual([
      [60, 840, end + 600],
      [60, 840, end + 1200],
    ]);
    expect(jobs[0].row?.sources).toEqual({ engine_from_s: end });
  });

  it('takes the first wait after which the last shower is warm', () => {
    const done = (...cold_s: number[]) =>
      ({ ok: true, figures: {}, parts: [], cold_s, evaluations: 0, residual_percent: 0 }) as const;
    expect(recovered([done(0, 300, 21), done(0, 300, 20), null])).toEqual([false, true, null]);
    expect(firstWarm([false, true, true], [10, 20, 30])).toBe(20);
    expect(firstWarm([false, false], [10, 20])).toBeNull();
    expect(firstWarm([null, true], [10, 20])).toBeNull();
  });
});

describe('traceOf', () => {
  const hot = toteScenario({ run: { start: { bottom: '160 F' } } });
  const taps = hot.taps as Record<string, unknown>;
  const bare = { ...hot, taps: { ...taps, mixing_valve: { fitted: false } } } as Scenario;

  it('pushes the pipe’s plug out first, then the slug, then the steady stream', () => {
    const trace = traceOf(plantOf(bare));
    const { hot_line_C, wait_s } = trace;
    expect(wait_s).toBeGreaterThan(2);
    expect(wait_s).toBeLessThan(60);
    expect(hot_line_C[1]).toBeLessThan(25);
    // What stood in the coil is as hot as the store, 71.1 C; the stream is not.
    expect(trace.slug_C).toBeGreaterThan(70);
    expect(trace.peak_C).toBeGreaterThan(trace.steady_C + 3);
    expect(trace.steady_C).toBeLessThan(70);
  });

  it('holds still for the minute’s pause and comes hotter after it than before', () => {
    const trace = traceOf(plantOf(bare));
    expect(trace.hot_line_C.slice(481, 539).every((t) => t === null)).toBe(true);
    expect(trace.again_peak_C).toBeGreaterThan(trace.steady_C);
  });

  it('lets a mixing valve cap what reaches the tap, not what leaves the coil', () => {
    const valved = traceOf(plantOf(hot));
    expect(valved.peak_C).toBeLessThan(49.5);
    expect(valved.slug_C).toBeGreaterThan(70);
  });

  it('waits for ever below a cold store', () => {
    const cold = traceOf(plantOf(toteScenario({ run: { start: { bottom: '60 F' } } })));
    expect(cold.wait_s).toBeNull();
  });
});

describe('realDay', () => {
  it('tells of every draw of the day, and counts as the run’s figures do', () => {
    const plant = plantOf(toteScenario({ run: { days: 1, start: { bottom: '110 F', top: '128 F' } } }));
    const day = realDay(plant);
    const { figures } = simulate(plant);
    expect(day.draws).toHaveLength(2);
    expect(day.showers).toBe(figures.showers);
    expect(day.showers - day.warm_showers).toBe(figures.showers_cold);
    const cold_s = day.draws.reduce((sum, draw) => sum + draw.cold_s, 0);
    // Counted in samples of five seconds.
    expect(Math.abs(cold_s - (figures.cold_shower_s ?? 0))).toBeLessThanOrEqual(10 * day.draws.length);
  });

  it('picks the day on which showers run cold for longest', () => {
    // Cold from the start and never heated: each day is colder than the one before.
    const { engine: _, ...rest } = toteScenario({
      run: { days: 3, start: { bottom: '115 F', top: '135 F' } },
    });
    const [household] = rest.coils ?? [];
    const day = realDay(plantOf({ ...rest, coils: [household] } as Scenario));
    expect(day.day).toBe(2);
    expect(day.warm_showers).toBe(0);
  });
});
