import { describe, expect, it } from 'vitest';
import { awayJob, daysToBoil, lastPart, weekJob, yearJob } from '../../../../sim/answers/sun/runs.ts';
import { collectorAnswer, type DoJobs, doJob } from '../../../../sim/index.ts';
import { type Asked, fakeRuns } from '../fake-runs.ts';
import { edit, sunnyScenario } from '../small.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const called = { kind: 'call for heat', below: '40 C', until: '60 C' };
const { engine } = sunnyScenario() as unknown as { engine: Record<string, unknown> };

/** Heat by month and area [J]: summer four times winter, each square metre less than the one before. */
function heat(month: number, area_m2: number): number {
  return (
    DAYS[month] *
    1e7 *
    (2.5 - 1.5 * Math.cos((2 * Math.PI * (month + 0.5)) / 12)) *
    (area_m2 - 0.075 * area_m2 ** 2)
  );
}

/** Years by month; the engine called 100 h a month less 1 h for each 36 MJ of sun; boils on the fourth day unlimited. */
function rule(asked: Asked, part: number | null) {
  const area = asked.area_m2 ?? 2;
  // The scenario has no rating: one of its values is put in with the others that stood in.
  const eta0 = (edit(asked.edits, 'collector.rating') as { eta0?: number } | undefined)?.eta0;
  const bright = eta0 === 0.83 ? 1.2 : eta0 === 0.75 ? 0.9 : 1;
  const year = (of: (month: number) => number) => DAYS.reduce((sum, _, month) => sum + of(month), 0);
  const over = (of: (month: number) => number) => (part === null ? year(of) : of(Math.min(11, part)));
  const isYear = asked.days === 365;
  const sun_J = isYear ? over((month) => heat(month, area)) : 1e7 * area * bright;
  const engine_h = over((month) => 100 - heat(month, area) / 3.6e7);
  const limit = edit(asked.edits, 'collector.high_limit');
  return {
    solar_heat_J: area > 0 ? sun_J : null,
    engine_heat_J: 3e7,
    solar_share: sun_J / (sun_J + 3e7),
    engine_s: 3600 * engine_h,
    fuel_m3: engine_h * 1.5e-3,
    store_mean_C: 50,
    store_top_C_max: limit === undefined ? 80 : 99,
    boiled_kg: limit === '100 C' && (part ?? 3) >= 3 ? 2 : 0,
    collector_C_max: limit === '0 C' ? 170 : 95,
    liner_over_s: null,
    wall_over_s: isYear ? 3600 * area : 0,
    stagnation_s: 0,
    cold_shower_s: 0,
  };
}

const ask = (over: Record<string, unknown> = {}, doJobs: DoJobs = fakeRuns(rule)) =>
  collectorAnswer({ scenario: sunnyScenario(over), context: {}, doJobs });

const keysOf = (cautions: readonly { key: string }[]) => cautions.map(({ key }) => key);

describe('the collector’s answer', () => {
  it('tells of the year, its months and the dullest week of every size', async () => {
    const { facts, tables } = await ask({ engine: { ...engine, runs: called } });
    const year_J = DAYS.reduce((sum, _, month) => sum + heat(month, 2), 0);
    expect(facts.heat_J.value).toBeCloseTo(year_J, 0);
    // Seven days of it: the dullest week's heat counts by the day.
    expect(facts.dull_day_J.value).toBeCloseTo((1e7 * 2) / 7, 3);
    const { columns, rows, present } = tables.sizes;
    const at = (key: string) => columns.findIndex((column) => column.key === key);
    expect(rows.map((row) => row[at('area_m2')])).toEqual([0, 1, 2, 3, 4, 6]);
    expect(present).toBe(2);
    expect(rows[2][at('heat_J')]).toBeCloseTo(year_J, 0);
    expect(tables.months.rows[6].slice(1)).toEqual(
      [1, 2, 3, 4, 6].map((area) => expect.closeTo(heat(6, area), 0)),
    );
    expect(tables.long.rows).toHaveLength(6 * 12);
  });

  it('spares an engine that is called for heat what its years say', async () => {
    const { facts, taken } = await ask({ engine: { ...engine, runs: called } });
    const year_J = DAYS.reduce((sum, _, month) => sum + heat(month, 2), 0);
    const spared_h = year_J / 3.6e7;
    expect(facts.spared_s.value).toBeCloseTo(3600 * spared_h, 3);
    expect(facts.spared_fuel_m3.value).toBeCloseTo(1.5e-3 * spared_h, 9);
    // Diesel at 1.20 a litre, collectors at 250 a square metre: the catalogue's invented prices.
    const money = 1.5e-3 * spared_h * 1200;
    expect(facts.spared_money.value).toBeCloseTo(money, 6);
    expect(facts.payback_years.value).toBeCloseTo(500 / money, 9);
    expect(facts.payback_years.low).toBeLessThan(facts.payback_years.value);
    expect(facts.payback_years.high).toBeGreaterThan(facts.payback_years.value);
    expect(taken).toContain('spared_by_calls');
  });

  it('spares an engine by timetable what its hours say', async () => {
    // Warm from the first minute, sun or not: nothing to spare, and it never pays.
    const { facts, taken } = await ask();
    expect(taken).toContain('spared_by_hours');
    expect(facts.spared_s.value).toBe(0);
    expect(facts.payback_years).toBeUndefined();
  });

  it('finds where more stops paying', async () => {
    const { facts, curves } = await ask();
    // Heat goes with a - 0.075 a^2: 0.925 a square metre at first, and half of that from 3.5 (0.475) to 5 (0.25).
    const at_m2 = 3.5 + ((0.475 - 0.4625) / (0.475 - 0.25)) * 1.5;
    expect(facts.stops_paying_m2.value).toBeCloseTo(at_m2, 9);
    expect(curves.size.knee).toBe(facts.stops_paying_m2.value);
  });

  it('counts the days to boiling with nobody home and the limit failing', async () => {
    const { facts, cautions } = await ask();
    expect(facts.boils_s.value).toBe(4 * 86_400);
    expect(facts.away_top_C.value).toBe(80);
    expect(facts.dead_collector_C.value).toBe(170);
    expect(keysOf(cautions)).toContain('boil_over');
  });

  it('takes the year to change as four stretches of it do', async () => {
    const { facts, levers } = await ask();
    expect(facts.heat_J.high / facts.heat_J.value).toBeCloseTo(1.2, 9);
    expect(facts.heat_J.low / facts.heat_J.value).toBeCloseTo(0.9, 9);
    expect(levers.map(({ path }) => path)).toEqual(['collector.rating.eta0']);
  });

  it('keeps the present size when somebody stops early', async () => {
    const whole = fakeRuns(rule);
    let calls = 0;
    const one: DoJobs = async (jobs, onProgress) => {
      const first = calls++ === 0 ? await whole(jobs.slice(0, 1), onProgress) : [];
      return jobs.map((_, i) => first[i] ?? null);
    };
    const { stopped, tables, facts } = await ask({}, one);
    expect(stopped).toBe(true);
    expect(facts.heat_J.value).toBeGreaterThan(0);
    const heats = tables.sizes.rows.map((row) => row[1]);
    expect(heats.filter((each) => each !== null && each !== 0)).toHaveLength(1);
  });

  it('refuses a scenario without a collector', async () => {
    await expect(ask({ collector: undefined })).rejects.toThrow(
      /^collector - expected a collector to ask of/,
    );
  });
});

/** Nothing draws and no engine runs: a year takes a second. */
const sunAlone = {
  coils: [
    {
      name: 'sun',
      tube: { kind: 'plumbing L', size: '1/2 in' },
      roll_length: '60 ft',
      coil_diameter: '40 cm',
    },
  ],
  engine: undefined,
  taps: undefined,
};

describe('the runs behind it', () => {
  it('make a year of twelve months that sum up to it', () => {
    const done = doJob(sunnyScenario(sunAlone), yearJob([]), {});
    if (!done.ok) throw new Error(done.problem);
    expect(done.parts.map(({ days }) => days)).toEqual(DAYS);
    const sum = done.parts.reduce((total, { figures }) => total + (figures.solar_heat_J ?? 0), 0);
    expect(sum / (done.figures.solar_heat_J ?? 0)).toBeCloseTo(1, 9);
  }, 60_000);

  it('bring more heat with more area, in a dull week and a bright one', () => {
    const scenario = sunnyScenario();
    for (const from_day of [10, 180]) {
      const heats = [0.5, 1, 2, 4].map((area) => {
        const done = doJob(
          scenario,
          weekJob(from_day, [{ path: 'collector.size.area', value: `${area} m2` }]),
          {},
        );
        if (!done.ok) throw new Error(done.problem);
        return lastPart(done).solar_heat_J ?? Number.NaN;
      });
      expect(heats.every((heat, i) => heat > (i === 0 ? 0 : heats[i - 1]))).toBe(true);
    }
  }, 30_000);

  it('boil sooner without the high limit, and leave the store alone with the pump dead', () => {
    const scenario = sunnyScenario({
      store: {
        inside: { shape: 'box', length: '0.6 m', width: '0.6 m', height: '0.9 m' },
        insulation: { sides: [{ material: 'mineral wool', thickness: '200 mm' }] },
        lid: 'closed',
        bridges: 1,
        vapour_escape: '0 %',
      },
      ...sunAlone,
      collector: {
        coil: 'sun',
        kind: 'evacuated tubes',
        size: { by: 'area', area: '6 m2', basis: 'absorber' },
      },
    });
    const away = (failing: 'none' | 'limit' | 'pump') => {
      const done = doJob(scenario, awayJob(true, 50, failing), {});
      if (!done.ok) throw new Error(done.problem);
      return done;
    };
    const [held, failed, dead] = [away('none'), away('limit'), away('pump')];
    expect(daysToBoil(failed)).toBeGreaterThan(0);
    expect(daysToBoil(held)).toBeNull();
    expect(held.figures.store_top_C_max).toBeLessThan(92);
    expect(dead.figures.solar_heat_J).toBe(0);
    expect(dead.figures.collector_C_max).toBeGreaterThan(150);
  }, 30_000);
});
