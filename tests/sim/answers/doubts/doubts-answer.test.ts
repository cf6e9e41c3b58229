import { beforeAll, describe, expect, it } from 'vitest';
import {
  type Answer,
  type DoJobs,
  doHere,
  doubtsAnswer,
  edited,
  type Job,
  type JobResult,
  readScenario,
  type Scenario,
  simulate,
} from '../../../../sim/index.ts';
import { edit, smallScenario } from '../small.ts';

const days = { from: '01-10', days: 1, layers: 5, tolerance: 0.001, start: { bottom: '58 C' } };
const scenario = smallScenario({ run: days });
const RUNS = 8;
const ask = (doJobs: DoJobs, of: Scenario = scenario, more = {}) =>
  doubtsAnswer({ scenario: of, context: {}, doJobs, runs: RUNS, ...more });

/** Rows of a table by the keys of its columns. */
const rows = ({ tables }: Answer, key: string) =>
  tables[key].rows.map((row) => Object.fromEntries(tables[key].columns.map((each, i) => [each.key, row[i]])));

/** Runs whose mean temperature is a rule of the edits. */
function made(rule: (of: (path: string) => number) => number): DoJobs {
  return async (jobs) =>
    jobs.map(({ edits }) => {
      const value = rule((path) => Number.parseFloat(String(edit(edits, path) ?? Number.NaN)));
      const figures = {
        store_mean_C: value,
        store_top_C_min: value,
        store_top_C_max: value,
        store_mean_C_end: 40,
      };
      return { ok: true, figures, parts: [], evaluations: 1, residual_percent: 0 };
    });
}

const keysOf = (cautions: readonly { key: string }[]) => cautions.map(({ key }) => key);

describe('doubts', () => {
  let answer: Answer;
  let jobs: Job[] = [];
  beforeAll(async () => {
    const here = doHere(scenario, {});
    answer = await ask((batch, onProgress) => {
      jobs = [...jobs, ...batch];
      return here(batch, onProgress);
    });
  });

  it('are runs like any other, at the points of the ensemble', () => {
    const told = rows(answer, 'runs');
    expect(told).toHaveLength(RUNS);
    for (const [i, { edits }] of jobs.slice(1, 1 + RUNS).entries()) {
      const read = readScenario(edited(scenario, edits));
      if (!read.ok) throw new Error('refused');
      const { figures } = simulate(read.plant);
      expect(told[i]).toMatchObject({
        run: i + 1,
        store_mean_C: figures.store_mean_C,
        showers_cold: figures.showers_cold,
      });
    }
  });

  it('count how often each shower ran cold, and how often any did', () => {
    const told = rows(answer, 'runs');
    const any = told.filter(({ showers_cold }) => Number(showers_cold) > 0).length;
    expect(answer.facts.cold_runs.value).toBe(any);
    expect(any).toBeGreaterThan(0);
    expect(any).toBeLessThan(RUNS);
    const sum = (key: string, table: string) =>
      rows(answer, table).reduce((all, row) => all + Number(row[key]), 0);
    expect(sum('cold_runs', 'showers')).toBe(sum('showers_cold', 'runs'));
  });

  it('tell a figure as it stands and the least and most that any run had', () => {
    const means = rows(answer, 'runs').map(({ store_mean_C }) => Number(store_mean_C));
    const { value, low, high } = answer.facts.store_mean_C;
    expect([low, high]).toEqual([Math.min(...means), Math.max(...means)]);
    const read = readScenario(scenario);
    if (!read.ok) throw new Error('refused');
    expect(value).toBe(simulate(read.plant).figures.store_mean_C);
  });

  it('draw a line for each run between the least and the most of all', () => {
    const { at, lines } = answer.curves.top;
    const of = (name: string) => lines.find((line) => line.name === name)?.values.map(Number) ?? [];
    expect(lines.map(({ name }) => name)).toEqual([
      'stands',
      'least',
      'most',
      ...jobs.slice(1, 1 + RUNS).map((_, i) => `run ${i + 1}`),
    ]);
    for (const { name, values } of lines.slice(3)) {
      expect(values).toHaveLength(at.length);
      for (const [i, value] of values.entries()) {
        expect(Number(value), name).toBeGreaterThanOrEqual(of('least')[i]);
        expect(Number(value), name).toBeLessThanOrEqual(of('most')[i]);
      }
    }
  });

  it('claim of a measurement what the same runs give when its inputs really are held so', async () => {
    const [best] = rows(answer, 'measurements');
    const sets = jobs.slice(-2 * RUNS);
    const here = await Promise.all(
      [sets.slice(0, RUNS), sets.slice(RUNS)].map((set) => doHere(scenario, {})(set)),
    );
    const of = (done: (JobResult | null)[]) =>
      done.map((each) => {
        if (!each?.ok) throw new Error('not run');
        const { store_mean_C, cold_shower_s, cold_draw_s } = each.figures;
        return answer.headline === 'cold_s'
          ? Number(cold_shower_s) + Number(cold_draw_s)
          : Number(store_mean_C);
      });
    const reaches = here.map(of).map((values) => [Math.min(...values), Math.max(...values)]);
    expect(reaches).toContainEqual([best.from, best.to]);
    // Nothing but what it tells is another than before.
    const path = String(best.path);
    const own = sets.find(
      ({ edits }, i) => i % RUNS === 0 && edit(edits, path) !== edit(jobs[1].edits, path),
    );
    const moved = (own?.edits ?? []).filter((each) => edit(jobs[1].edits, each.path) !== each.value);
    expect(moved.length).toBeGreaterThan(0);
    const coil = path.startsWith('coils') ? path.slice(0, path.indexOf('.')) : path;
    expect(
      moved.every((each) => each.path.startsWith(coil) || each.path.startsWith('engine.jacket_share')),
    ).toBe(true);
  });

  it('give the same numbers whatever order the runs are done in', async () => {
    const here = doHere(scenario, {});
    expect(await ask(async (batch) => (await here([...batch].reverse())).reverse())).toEqual(answer);
  });
});

describe('doubts of made-up runs', () => {
  const marks = [
    { input: 'store.water_depth', unsure: 'between', from: '0.7 m', to: '0.85 m' },
    { input: 'supply.cold.temperature', unsure: 'between', from: '4 C', to: '16 C' },
    { input: 'engine.typical_load', unsure: 'a lot' },
  ];
  const marked = smallScenario({ run: days, doubts: marks });

  it('rank inputs by a dependence that is known', async () => {
    // 3 per degree of the cold, 20 per metre of depth, which is written in millimetres; the load does nothing.
    const or = (value: number, usual: number) => (Number.isNaN(value) ? usual : value);
    const found = await ask(
      made((of) => 3 * or(of('supply.cold.temperature'), 8) - 0.02 * or(of('store.water_depth'), 800)),
      marked,
    );
    const ranked = rows(found, 'inputs').filter(({ rank }) => rank !== null);
    expect(ranked.map(({ path }) => path)).toEqual(['supply.cold.temperature', 'store.water_depth']);
    expect(ranked.map(({ moves }) => moves)).toEqual([expect.closeTo(36, 9), expect.closeTo(3, 9)]);
    expect(ranked.map(({ marked: mark }) => mark)).toEqual(['yes', 'yes']);
    expect(found.facts.marked.value).toBe(3);
  });

  it('find that a thermometer in the cold water narrows what hangs on it alone', async () => {
    const or = (value: number) => (Number.isNaN(value) ? 8 : value);
    const found = await ask(
      made((of) => 3 * or(of('supply.cold.temperature'))),
      marked,
      { runs: 20 },
    );
    const [best] = rows(found, 'measurements');
    expect(best).toMatchObject({ path: 'supply.cold.temperature', recipe: 'reading' });
    // Half a kelvin, nine in ten: 1.645 x 0.5 K either way of 8 C, of the 12 K there were.
    expect(Number(best.left)).toBeLessThan((2 * 1.645 * 0.5) / 12 + 0.05);
  });

  it('keep what is finished when somebody stops', async () => {
    const here = doHere(scenario, {});
    const stopped = await ask(async (batch) => [
      ...(await here(batch.slice(0, 4))),
      ...batch.slice(4).map(() => null),
    ]);
    expect(stopped).toMatchObject({ stopped: true, facts: { runs: { value: 3 } } });
    expect(rows(stopped, 'runs').map(({ run }) => run)).toEqual([1, 2, 3]);
  });

  it('say how many runs could not be made, and go on with the others', async () => {
    const some: DoJobs = async (batch) => {
      const done = await made(() => 50)(batch);
      return done.map((each, i) => (i === 2 ? { ok: false, problem: 'x - expected y - got z - w' } : each));
    };
    const found = await ask(some, marked);
    expect(found.facts).toMatchObject({ runs: { value: RUNS - 1 }, asked: { value: RUNS } });
    expect(keysOf(found.cautions)).toContain('not_run');
  });

  it('are refused for runs out of range', async () => {
    for (const runs of [1, 201, 2.5]) {
      await expect(
        ask(
          made(() => 1),
          scenario,
          { runs },
        ),
      ).rejects.toThrow(/^runs - expected a whole number, 2 to 200 - got/);
    }
    await expect(
      ask(
        made(() => 1),
        scenario,
        { seed: -1 },
      ),
    ).rejects.toThrow(/^seed - expected/);
  });
});
