import { beforeAll, describe, expect, it } from 'vitest';
import { ranking, type Weighed } from '../../../../sim/answers/next/next-answer.ts';
import {
  type Answer,
  type DoJobs,
  doHere,
  edited,
  type Job,
  nextAnswer,
  readScenario,
  type Scenario,
  simulate,
} from '../../../../sim/index.ts';
import { smallScenario } from '../small.ts';

const days = { from: '01-10', days: 1, layers: 5, tolerance: 0.001, start: { bottom: '50 C' } };
const rows = ({ tables: { changes } }: Answer) =>
  changes.rows.map((row) => Object.fromEntries(changes.columns.map((each, i) => [each.key, row[i]])));

describe('the next dollar', () => {
  const scenario = smallScenario({ run: days });
  let answer: Answer;
  let jobs: Job[] = [];
  beforeAll(async () => {
    const here = doHere(scenario, {});
    answer = await nextAnswer({
      scenario,
      context: {},
      doJobs: (batch) => {
        jobs = [...jobs, ...batch];
        return here(batch);
      },
    });
  });
  const warm = (of: Scenario, { edits }: Job) => {
    const read = readScenario(edited(of, edits));
    if (!read.ok) throw new Error('refused');
    return (simulate(read.plant).figures.delivered_m3 ?? 0) / read.plant.run.days;
  };

  it('weighs warm water where some is missing, and agrees with runs of each design', () => {
    expect(Object.keys(answer.facts)).toContain('warm_m3_day');
    // The finer run, each design as it stands, then five runs of each with everything unsure varied.
    const many = rows(answer).length;
    const [, base, ...changed] = jobs.slice(0, many + 2);
    const spread = jobs.slice(many + 2);
    expect(spread).toHaveLength(5 * (many + 1));
    for (const [i, job] of changed.slice(0, 2).entries()) {
      const gains = [warm(scenario, job) - warm(scenario, base)];
      for (let k = 0; k < 5; k++)
        gains.push(warm(scenario, spread[5 * (i + 1) + k]) - warm(scenario, spread[k]));
      const mean = gains.reduce((sum, each) => sum + each, 0) / gains.length;
      const found = rows(answer).find(({ gain }) => Math.abs(Number(gain) - mean) < 1e-12);
      expect(found, JSON.stringify(job.edits)).toBeDefined();
      expect(found?.gain_low).toBeCloseTo(Math.min(...gains), 12);
      expect(found?.gain_high).toBeCloseTo(Math.max(...gains), 12);
    }
  });

  it('varies what is unsure alike in every design', () => {
    const many = rows(answer).length;
    const spread = jobs.slice(many + 2);
    const unsure = (job: Job) =>
      job.edits.filter(({ path }) => path === 'store.bridges' || path === 'weather.seed');
    for (let i = 1; i <= many; i++) {
      for (let k = 0; k < 5; k++) expect(unsure(spread[5 * i + k])).toEqual(unsure(spread[k]));
    }
  });

  it('puts what costs nothing and gains first, then gain for the money', () => {
    const ranked = rows(answer).filter(({ rank }) => rank !== null);
    expect(ranked.length).toBeGreaterThan(1);
    expect(ranked.map(({ rank }) => rank)).toEqual(ranked.map((_, i) => i + 1));
    const paid = ranked.findIndex(({ per_hundred }) => per_hundred !== null);
    for (const row of ranked.slice(0, paid)) expect(row.cost).toBe(0);
    const per = ranked.slice(paid).map(({ per_hundred }) => Number(per_hundred));
    expect(per).toEqual([...per].sort((a, b) => b - a));
  });

  it('tells what an hour of engine a day is worth in fuel, by the file’s own prices', () => {
    const read = readScenario(scenario);
    if (!read.ok) throw new Error('refused');
    const { engine, prices } = read.plant;
    if (!engine) throw new Error('no engine');
    const kg_s = engine.no_load_kg_s + engine.slope_kg_J * 4000;
    const litres = ((kg_s * 3600) / engine.fuel.density_kg_m3) * 1000;
    const more = rows(answer).find(({ change }) => change === 'hour_more');
    expect(more?.fuel_year).toBeCloseTo(litres * 365 * prices.fuel_per_litre.diesel, 0);
  });

  it('says what is for safety without a rank', () => {
    expect(answer.cautions.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['fit_relief', 'vent_stays_open']),
    );
    expect(rows(answer).some(({ change }) => /mixing|relief/.test(String(change)))).toBe(false);
  });

  it('keeps what is finished when somebody stops', async () => {
    const here = doHere(scenario, {});
    const some: DoJobs = async (batch) => [
      ...(await here(batch.slice(0, 4))),
      ...batch.slice(4).map(() => null),
    ];
    const stopped = await nextAnswer({ scenario, context: {}, doJobs: some });
    expect(stopped.stopped).toBe(true);
    expect(rows(stopped).length).toBeGreaterThan(0);
    expect(rows(stopped).length).toBeLessThan(rows(answer).length);
  });

  it('has costs that reach as far as the prices do, and as they are typed', async () => {
    const none: DoJobs = async (batch) =>
      batch.map(() => ({
        ok: true,
        figures: { store_mean_C_end: 50, delivered_m3: 1, wanted_m3: 1, cold_m3: 0, household_heat_J: 1e7 },
        parts: [],
        evaluations: 1,
        residual_percent: 0,
      }));
    const seal = async (of: Scenario) =>
      rows(await nextAnswer({ scenario: of, context: {}, doJobs: none })).find(
        ({ change }) => change === 'seal_lid',
      );
    const invented = await seal(scenario);
    expect(
      [invented?.cost_low, invented?.cost_high].map((each) => Number(each) / Number(invented?.cost)),
    ).toEqual([expect.closeTo(1 / 1.5, 2), expect.closeTo(1.5, 2)]);
    const typed = await seal(smallScenario({ run: days, prices: { lid_seal_per_m: 2 } }));
    expect([typed?.cost_low, typed?.cost, typed?.cost_high]).toEqual(
      new Array(3).fill(expect.closeTo(6.4, 9)),
    );
  });
});

describe('the ranking', () => {
  const weighed = (
    what: string,
    gain: number,
    cost: number | null,
    more: Partial<Weighed> = {},
  ): Weighed => ({
    change: { key: 'foam', what, edits: [], cost: () => cost },
    gain: { value: gain, low: gain, high: gain },
    cost: cost === null ? null : { value: cost, low: cost, high: cost },
    fuel_year: 0,
    per_money: null,
    rank: null,
    harm: '',
    showers_warm: null,
    ...more,
  });

  it('is by hand', () => {
    const told = ranking(
      [
        weighed('dear', 10, 1000),
        weighed('cheap', 5, 100),
        weighed('fuel', 20, 0, { fuel_year: 500 }),
        weighed('free', 1, 0),
        weighed('spares', 0, 0, { fuel_year: -300 }),
        weighed('no price', 9, null),
        weighed('boils', 50, 10, { harm: 'boils' }),
        weighed('too little to tell', 0.05, 10),
        weighed('loses', -3, 0, { fuel_year: -300 }),
      ],
      0.1,
    );
    expect(told.map(({ change, rank }) => [change.what, rank])).toEqual([
      ['free', 1],
      ['spares', 2],
      ['cheap', 3],
      ['fuel', 4],
      ['dear', 5],
      ['boils', null],
      ['no price', null],
      ['too little to tell', null],
      ['loses', null],
    ]);
    expect(told.find(({ change }) => change.what === 'fuel')?.per_money).toBeCloseTo(20 / 500, 12);
  });
});
