import { describe, expect, it } from 'vitest';
import {
  doHere,
  edited,
  readScenario,
  type Scenario,
  Simulation,
  seasonAnswer,
} from '../../../../sim/index.ts';
import { fakeRuns } from '../fake-runs.ts';
import { smallScenario, sunnyScenario } from '../small.ts';

const kWh = 3.6e6;
/** A month brings as much sun as its number, in the four stretches as in the year. */
const made = fakeRuns(({ month, edits }, part) => ({
  engine_s: 3600,
  fuel_m3: 0.001,
  engine_heat_J: kWh,
  solar_heat_J: (part ?? month) * kWh * (edits.some(({ value }) => value === 0.7) ? 0.5 : 1),
  solar_share: 0.5,
  showers: 2,
  showers_cold: 0,
  store_top_C_max: 70,
  store_top_C_min: 40,
  loss_J: kWh,
  make_up_kg: 3,
  dry_s: null,
}));

const keysOf = (cautions: readonly { key: string }[]) => cautions.map(({ key }) => key);

describe('the season', () => {
  it('is one year in one piece, its months in a table with columns for what the plant has', async () => {
    const answer = await seasonAnswer({ scenario: sunnyScenario(), context: {}, doJobs: made });
    const [year] = made.asked;
    expect(year).toMatchObject({ month: 0, dayOfMonth: 1, days: 365 });
    const { columns, rows } = answer.tables.months;
    expect(rows).toHaveLength(12);
    expect(rows.map((row) => row[columns.findIndex(({ key }) => key === 'solar_heat_J')])).toEqual(
      Array.from({ length: 12 }, (_, part) => part * kWh),
    );
    const without = await seasonAnswer({ scenario: smallScenario(), context: {}, doJobs: made });
    expect(without.tables.months.columns.map(({ key }) => key)).not.toContain('solar_heat_J');
  });

  // Of 730 showers a year 3 run cold, of 8 in a stretch none, but 1 where a coil's film is at its low end.
  it('tells how many showers may run cold by the stretches in which more do', async () => {
    const runs = fakeRuns(({ days, edits }) => ({
      showers: days === 365 ? 730 : 8,
      showers_cold: (days === 365 ? 3 : 0) + (edits.some(({ value }) => value === 0.5) ? 1 : 0),
      loss_J: kWh,
    }));
    const scenario = smallScenario();
    const { facts } = await seasonAnswer({ scenario, context: {}, doJobs: runs });
    const { value, low, high } = facts.showers_cold;
    expect([value, low]).toEqual([3, 3]);
    // An eighth of the year's, for each of two coils.
    expect(high).toBeCloseTo(3 + (730 / 8) * Math.SQRT2, 6);
    expect(facts.showers.low).toBe(730);
  });

  it('tries a year with nobody to keep the level only where it is kept by hand', async () => {
    const floats = smallScenario({ store: { ...smallScenario().store, make_up: 'float' } });
    const years = async (scenario: Scenario) => {
      const runs = fakeRuns(() => ({ dry_s: 200 * 86_400, loss_J: kWh }));
      const answer = await seasonAnswer({ scenario, context: {}, doJobs: runs });
      return { count: runs.asked.filter(({ days }) => days === 365).length, answer };
    };
    expect((await years(floats)).count).toBe(1);
    const byHand = await years(smallScenario());
    expect(byHand.count).toBe(2);
    expect(byHand.answer.facts.dry_s.value).toBe(200 * 86_400);
    expect(keysOf(byHand.answer.cautions)).toContain('runs_dry');
    expect(keysOf((await years(floats)).answer.cautions)).not.toContain('runs_dry');
  });

  it('keeps what is told of months and year together: months of a real year add up to it', async () => {
    const scenario = smallScenario({ taps: undefined, run: { ...smallScenario().run, layers: 3 } });
    const doJobs = doHere(scenario, {});
    const answer = await seasonAnswer({
      scenario,
      context: {},
      // Years alone: bands are not what is asked here.
      doJobs: async (jobs) => (jobs.length > 2 ? jobs.map(() => null) : doJobs(jobs)),
    });
    const { columns, rows } = answer.tables.months;
    const sum = (key: string) => {
      const at = columns.findIndex((column) => column.key === key);
      return rows.reduce((all, row) => all + Number(row[at]), 0);
    };
    expect(sum('fuel_m3')).toBeCloseTo(answer.facts.fuel_m3.value, 9);
    expect(sum('loss_J') / answer.facts.loss_J.value).toBeCloseTo(1, 9);
    expect(sum('engine_s')).toBe(365 * 2 * 3600);
    // A year by itself, of the same edits.
    const read = readScenario(
      edited(scenario, [
        { path: 'run.from', value: '01-01' },
        { path: 'run.first_weekday', value: 'Monday' },
        { path: 'run.days', value: 31 },
        { path: 'store.make_up', value: 'float' },
      ]),
    );
    if (!read.ok) throw new Error('not read');
    const january = new Simulation(read.plant);
    january.advance(31);
    const { figures } = january.result();
    expect(rows[0][columns.findIndex(({ key }) => key === 'loss_J')]).toBe(figures.loss_J);
  });
});
