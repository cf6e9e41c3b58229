import { describe, expect, it } from 'vitest';
import { hoursAnswer } from '../../../../sim/index.ts';
import { type Asked, fakeRuns } from '../fake-runs.ts';
import { edit, smallScenario } from '../small.ts';

/** What keeps the showers warm, by month [h]; 13: not even half a day. */
const NEED = [6, 5, 3, 2.5, 1, 0, 0, 0.25, 2, 3, 4.5, 5.75];
/** The small scenario charges for two hours. */
const CHARGING_h = 2;
const FLOW_m3_h = 1.5e-3;
const HEAT_J_h = 8e6;

/** Showers run cold by ten minutes a week with less than is needed; half of the heat wanted at half the hours. */
function rule(need: (asked: Asked) => number) {
  return (asked: Asked, part: number | null) => {
    const hours = asked.hours ?? CHARGING_h;
    const days = part === 0 ? 3 : 7;
    return {
      cold_shower_s: hours + 1e-9 < need(asked) ? 600 : 0,
      cold_draw_s: 0,
      engine_s: hours * 3600 * days,
      fuel_m3: hours * FLOW_m3_h * days,
      engine_heat_J: hours * HEAT_J_h * days,
      radiator_J: 0,
      store_top_C_min: 45,
      solar_share: 0,
    };
  };
}

const ask = (need: (asked: Asked) => number, over = {}) => {
  const doJobs = fakeRuns(rule(need));
  const scenario = smallScenario(over);
  return { doJobs, answer: hoursAnswer({ scenario, context: {}, doJobs }) };
};
/** As it stands: no doubt is put in. */
const byMonth = ({ month }: Asked) => NEED[month];

describe('hours', () => {
  it('finds what each month needs, to the quarter', async () => {
    const { tables } = await ask(byMonth).answer;
    expect(tables.months.rows.map(([month, hours_s]) => [month, Number(hours_s) / 3600])).toEqual(
      NEED.map((hours, i) => [i + 1, hours]),
    );
  });

  it('tells of the worst month, and of the fuel beyond what charging needs', async () => {
    const { facts, headline, limit } = await ask(byMonth).answer;
    expect(headline).toBe('worst_s');
    expect(facts.worst_s.value).toBe(6 * 3600);
    const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const extra_h = NEED.reduce((sum, need, i) => sum + Math.max(0, need - CHARGING_h) * DAYS[i], 0);
    expect(facts.extra_year_s.value).toBeCloseTo(extra_h * 3600, 6);
    expect(facts.extra_fuel_m3.value).toBeCloseTo(extra_h * FLOW_m3_h, 9);
    // Diesel at 1.20 a litre, the field catalogue's invented price.
    expect(facts.extra_money.value).toBeCloseTo(extra_h * FLOW_m3_h * 1200, 6);
    // 1.5 L for 8 MJ, which are 2.222 kWh.
    expect(facts.engine_kWh_money.value).toBeCloseTo((1.5 * 1.2) / (8 / 3.6), 6);
    // Propane at 0.80 a litre, 46.33 MJ/kg, 0.507 kg/L, four fifths of it in the water.
    expect(facts.backup_kWh_money.value).toBeCloseTo(0.8 / ((46.33 * 0.507 * 0.8) / 3.6), 6);
    expect(limit).toBe('engine');
  });

  it('says where half a day is not enough, and that a hot store then wants more coil', async () => {
    const hot = fakeRuns((asked, part) => ({
      ...rule(({ month }) => (month === 0 ? 13 : 1))(asked, part),
      store_top_C_min: 75,
    }));
    const { facts, tables, limit } = await hoursAnswer({
      scenario: smallScenario(),
      context: {},
      doJobs: hot,
    });
    expect(tables.months.rows[0][1]).toBeNull();
    expect(tables.months.rows[1][1]).toBe(3600);
    expect(facts.worst_s).toBeUndefined();
    expect(limit).toBe('coil');
  });

  it('lets doubts move the worst month: engines that give their coolant less run longer', async () => {
    const doubtful = (asked: Asked) => {
      const share = edit(asked.edits, 'engine.jacket_share');
      return share === '18 %' ? 9 : share === '33 %' ? 4 : NEED[asked.month];
    };
    const { facts, levers } = await ask(doubtful).answer;
    expect([facts.worst_s.low, facts.worst_s.high].map((s) => s / 3600)).toEqual([4, 9]);
    expect(levers[0]).toMatchObject({
      path: 'engine.jacket_share',
      low: { value: 9 * 3600 },
      high: { value: 4 * 3600 },
    });
    // Every month is taken to need half as much again: 365 days of it.
    expect(facts.mean_s.high / facts.mean_s.value).toBeCloseTo(1.5, 9);
  });

  it('asks for no more than a few runs a month and doubt', async () => {
    const { doJobs, answer } = ask(byMonth);
    const { facts } = await answer;
    expect(facts.worst_s).toBeDefined();
    const plain = doJobs.asked.filter(({ month }) => month !== 0);
    expect(plain.length).toBeLessThanOrEqual(11 * 9);
  });

  it('runs every month from its middle, with the level kept and without a backup heater', async () => {
    const { doJobs, answer } = ask(byMonth);
    await answer;
    for (const { edits, days, dayOfMonth } of doJobs.asked) {
      expect(days).toBe(10);
      expect(Math.abs(dayOfMonth - 10)).toBeLessThanOrEqual(1);
      expect(edit(edits, 'store.make_up')).toBe('float');
      expect(edits.some(({ path, value }) => path === 'backup' && value === undefined)).toBe(true);
    }
  });

  it('keeps what is known when somebody stops', async () => {
    const whole = fakeRuns(rule(byMonth));
    let calls = 0;
    const answer = await hoursAnswer({
      scenario: smallScenario(),
      context: {},
      // The charging runs and the first round get done, then nothing.
      doJobs: async (jobs, onProgress) => (calls++ < 2 ? whole(jobs, onProgress) : jobs.map(() => null)),
    });
    expect(answer.stopped).toBe(true);
    expect(answer.facts).toEqual({});
    expect(answer.tables.months.rows).toHaveLength(12);
  });

  it.each([
    [{ engine: undefined, coils: [] }, /^engine - expected an engine to ask hours of/],
    [{ taps: undefined }, /^taps - expected a household that draws/],
  ])('refuses a scenario without what it asks of', async (over, message) => {
    const { taps, coils } = smallScenario() as unknown as Record<string, unknown>;
    const rest = 'engine' in over ? { taps, coils } : {};
    await expect(ask(byMonth, { ...over, ...rest }).answer).rejects.toThrow(message);
  });
});
