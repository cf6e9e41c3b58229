import { describe, expect, it } from 'vitest';
import { FAILURES, NIGHT_C, type NotApplying, whyNot } from '../../../../sim/answers/breaks/failures.ts';
import { LEAD_DAYS, OFF_DAYS, planOf } from '../../../../sim/answers/breaks/runs.ts';
import { doJob, edited, type Job, readScenario, type Scenario, Simulation } from '../../../../sim/index.ts';
import { smallScenario, sunnyScenario } from '../small.ts';

function plantOf(scenario: Scenario) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.plant;
}

function done(scenario: Scenario, job: Job | undefined) {
  if (!job) throw new Error('no such run');
  const result = doJob(scenario, job, {});
  if (!result.ok) throw new Error(result.problem);
  return result;
}

const scenario = sunnyScenario();
const { jobs, sunny_day } = planOf(plantOf(scenario));

describe('failures', () => {
  it('are tried where the plant has what fails, and only there', () => {
    const reasons = (of: Scenario) =>
      Object.fromEntries(FAILURES.map((failure) => [failure, whyNot(failure, plantOf(of))]));
    expect(reasons(scenario)).toMatchObject({ pump: null, away: null, off: null, engine_valve: null });
    const none: Record<string, NotApplying> = {
      pump: 'no_collector',
      away: 'no_collector',
      night: 'no_collector',
      sun_valve: 'no_collector',
      cistern: 'no_cistern',
    };
    expect(reasons(smallScenario())).toMatchObject(none);
    expect(reasons(smallScenario({ engine: undefined, taps: undefined }))).toMatchObject({
      off: 'no_engine',
      mixing: 'no_household',
      pipe: 'no_household',
      trapped: 'no_metal_coil',
      power: 'nothing_to_stop',
    });
  });

  it('of frost are left out where the weather has none', () => {
    const sun = [1.7, 2.6, 3.7, 4.5, 5.3, 5.7, 5.8, 5, 3.9, 2.6, 1.6, 1.3].map(
      (kWh) => `${kWh} kWh/m2 per day`,
    );
    const warm = { kind: 'monthly', air: Array(12).fill('25 C'), sun };
    expect(whyNot('pipe', plantOf(smallScenario({ weather: warm })))).toBe('no_frost');
    expect(whyNot('pipe', plantOf(smallScenario()))).toBeNull();
  });

  it('have no run for what the plant does not have', () => {
    const { jobs: fewer } = planOf(plantOf(smallScenario()));
    expect(Object.keys(fewer).sort()).toEqual(
      ['engine_valve', 'lid', 'mixing', 'off', 'power', 'still', 'summer', 'winter'].sort(),
    );
  });
});

describe('a run in which something fails', () => {
  it('is the plain one to the bit once the failure is taken out of it', () => {
    const off = jobs.off;
    const mended = { ...off, edits: [...(off?.edits ?? []), { path: 'run.faults', value: undefined }] };
    const [plain, again] = [done(scenario, jobs.winter), done(scenario, mended)];
    expect(again.figures).toEqual(plain.figures);
    expect(again.course).toEqual(plain.course);
  });

  it('is what a file that plays the failure gives, run by itself', () => {
    const file = edited(scenario, [
      { path: 'run.from', value: '01-10' },
      { path: 'run.first_weekday', value: 'Monday' },
      { path: 'run.days', value: LEAD_DAYS + 2 * OFF_DAYS },
      { path: 'run.faults', value: [{ kind: 'engine', from: '5 days', to: '8 days' }] },
    ]);
    const simulation = new Simulation(plantOf(file), [5, 8]);
    simulation.advance(11);
    const off = done(scenario, jobs.off);
    expect(off.parts[1].figures).toEqual(simulation.parts[1].figures);
    expect(off.figures.fuel_kg).toBe(simulation.result().figures.fuel_kg);
  });

  it('has a colder store and no less cold water than without', () => {
    const [plain, off] = [jobs.winter, jobs.off].map((job) => done(scenario, job).parts[1].figures);
    expect(off.store_mean_C_end).toBeLessThan(plain.store_mean_C_end ?? 0);
    expect(off.cold_shower_s).toBeGreaterThanOrEqual(plain.cold_shower_s ?? 0);
  });

  it('lets the pump fail at noon of a day away, and the collector then only cools by itself', () => {
    expect(sunny_day).toBeGreaterThanOrEqual(LEAD_DAYS);
    const pump = done(scenario, jobs.pump);
    const { events = [], collector_C } = pump.course ?? {};
    const noon_s = sunny_day * 86_400 + 43_200;
    expect(events.find(({ name }) => name === 'fault.begins')?.time_s).toBe(noon_s);
    const pumped = events.filter(
      ({ name, time_s }) =>
        name === 'collector.pump.on' && time_s > noon_s && time_s < noon_s + OFF_DAYS * 86_400,
    );
    expect(pumped).toEqual([]);
    expect(Math.max(...(collector_C ?? []))).toBeGreaterThan(100);
  });

  it('has air as cold as the night that is tried, and no colder', () => {
    const night = done(scenario, jobs.night).parts[1].figures.collector_C_min ?? 0;
    expect(night).toBeGreaterThan(NIGHT_C - 0.5);
    expect(night).toBeLessThan(NIGHT_C + 8);
  });
});
