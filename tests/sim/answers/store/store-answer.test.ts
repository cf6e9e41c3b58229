import { beforeAll, describe, expect, it } from 'vitest';
import { temperaturesOf, variantJobs } from '../../../../sim/answers/store/runs.ts';
import { type Answer, type DoJobs, doHere, doJob, readScenario, storeAnswer } from '../../../../sim/index.ts';
import { only, smallScenario } from '../small.ts';

const scenario = smallScenario();
/** Runs of variants; those at the ends of doubts would take as long again each. */
const VARIED =
  /^(store\.(insulation|lid|inside|water_depth|wall|vapour_escape)|run\.|engine\.runs|taps$|backup$)/;
const variants: DoJobs = only(scenario, (edits) => edits.every(({ path }) => VARIED.test(path)));

let answer: Answer;
beforeAll(async () => {
  answer = await storeAnswer({ scenario, context: {}, doJobs: variants });
}, 60_000);

const rowsOf = (key: string) => {
  const { columns, rows } = answer.tables[key];
  return rows.map((row) => Object.fromEntries(columns.map((column, i) => [column.key, row[i]])));
};
const numbers = (rows: Record<string, unknown>[], key: string) => rows.map((row) => Number(row[key]));
const rising = (values: number[]) => values.every((value, i) => i === 0 || value > values[i - 1]);

describe('the store’s answer', () => {
  it('agrees with direct runs at the present store', () => {
    const read = readScenario(scenario);
    if (!read.ok) throw new Error('refused');
    const { facts } = answer;
    const at = { usual_C: facts.usual_C.value, full_C: facts.full_C.value, fresh_C: facts.fresh_C.value };
    const own = doJob(scenario, { edits: [] }, {});
    if (!own.ok) throw new Error(own.problem);
    expect(at).toEqual(temperaturesOf(read.plant, own));
    const { cool, carry, heat } = variantJobs(read.plant, [], at);
    const figures = (job: typeof carry) => {
      const done = job && doJob(scenario, job, {});
      if (!done?.ok) throw new Error('failed');
      return done.figures;
    };
    expect(facts.drop_K.value).toBe(at.usual_C - (figures(cool).store_mean_C_end ?? 0));
    // Nothing flows back through a loop with a check valve: what cools it is what its skin loses, but for the heat that
    // the evaporated water held already, some 8 % of the vapour's.
    const skin_W = (figures(cool).loss_J ?? 0) / 86_400;
    expect(facts.loss_W.value / skin_W).toBeGreaterThan(0.97);
    expect(facts.loss_W.value / skin_W).toBeLessThan(1.005);
    expect(facts.loops_share.value).toBeLessThan(0.01);
    expect(facts.carried_s.value).toBe(figures(carry).first_cold_s);
    expect(facts.heat_up_s.value).toBe(figures(heat).engine_s);
  });

  it('loses less with more insulation under every lid, and never more', () => {
    for (const lid of ['closed', 'ajar', 'open']) {
      const drops = numbers(
        rowsOf('insulation').filter((row) => row.lid === lid),
        'drop_K',
      );
      expect(drops).toHaveLength(5);
      expect(rising(drops.reverse())).toBe(true);
    }
  });

  it('loses more the further its lid is open', () => {
    const rows = rowsOf('insulation');
    for (let i = 0; i < rows.length; i += 3) {
      expect(rows.slice(i, i + 3).map(({ lid }) => lid)).toEqual(['closed', 'ajar', 'open']);
      expect(rising(numbers(rows.slice(i, i + 3), 'drop_K'))).toBe(true);
    }
  });

  it('cools slower, carries longer and heats slower the larger it is', () => {
    const sides = rowsOf('size')[0].sides_m;
    const rows = rowsOf('size').filter((row) => row.sides_m === sides && row.drop_K !== null);
    expect(rows.length).toBeGreaterThanOrEqual(4);
    expect(rising(numbers(rows, 'drop_K').reverse())).toBe(true);
    expect(rising(numbers(rows, 'heat_up_s'))).toBe(true);
    const carried = numbers(rows, 'carried_s');
    expect(carried.every((value, i) => i === 0 || value >= carried[i - 1])).toBe(true);
  });

  it('marks the store as it is, in tables and curves', () => {
    for (const key of ['insulation', 'size', 'all']) {
      const { present } = answer.tables[key];
      const row = rowsOf(key)[present ?? -1];
      expect([row.lid, row.foam_money, row.drop_K]).toEqual(['closed', 0, answer.facts.drop_K.value]);
    }
    expect(answer.curves.insulation.at).toContain(answer.curves.insulation.present);
    expect(answer.curves.insulation.lines.map(({ name }) => name)).toEqual(['closed', 'ajar', 'open']);
  });

  it('tells how much of the loss is vapour', () => {
    const { vapour_share } = answer.facts;
    expect(vapour_share.value).toBeGreaterThan(0.05);
    expect(vapour_share.value).toBeLessThan(0.6);
    expect(answer.limit).toBe('insulation');
  });

  it('leaves out the rows whose coils do not fit', async () => {
    const wide = smallScenario();
    const { coils } = wide as unknown as { coils: Record<string, unknown>[] };
    const tight = smallScenario({ coils: coils.map((coil) => ({ ...coil, coil_diameter: '75 cm' })) });
    const first = only(tight, (edits) => edits.every(({ path }) => VARIED.test(path)));
    const { tables } = await storeAnswer({ scenario: tight, context: {}, doJobs: first });
    const drops = tables.size.rows.map((row) => row[6]);
    expect(drops[0]).toBeNull();
    expect(drops.at(-1)).not.toBeNull();
  }, 60_000);
});

describe('a stopped engine without a check valve', () => {
  it('takes a share of what the store loses', async () => {
    const { engine } = smallScenario() as unknown as { engine: Record<string, unknown> };
    const open = smallScenario({ engine: { ...engine, check_valve: false, standby_loss: '4 W/K' } });
    const first = only(open, (edits) => edits.every(({ path }) => VARIED.test(path)));
    const { facts } = await storeAnswer({ scenario: open, context: {}, doJobs: first });
    expect(facts.loops_share.value).toBeGreaterThan(0.1);
    expect(facts.drop_K.value).toBeGreaterThan(answer.facts.drop_K.value);
  }, 60_000);
});

describe('doubts of the store', () => {
  it('widen the band: lids that leak more, bridges that carry more', async () => {
    const here = doHere(scenario, {});
    const doubted = /^store\.(bridges|vapour_escape)$/;
    const few: DoJobs = async (jobs) => {
      const wanted = jobs.map(
        ({ edits }, i) => jobs.length === 1 || i < 3 || edits.some(({ path }) => doubted.test(path)),
      );
      const done = await here(jobs.filter((_, i) => wanted[i]));
      return jobs.map((_, i) => (wanted[i] ? (done.shift() ?? null) : { ok: false, problem: 'not asked' }));
    };
    const { facts, levers } = await storeAnswer({ scenario, context: {}, doJobs: few });
    expect(facts.drop_K.low).toBeLessThan(facts.drop_K.value);
    expect(facts.drop_K.high).toBeGreaterThan(facts.drop_K.value);
    expect(levers.map(({ path }) => path).sort()).toEqual(['store.bridges', 'store.vapour_escape']);
  }, 60_000);
});
