import { describe, expect, it } from 'vitest';
import { trappedCoils } from '../../../../sim/answers/breaks/by-hand.ts';
import {
  type Answer,
  breaksAnswer,
  doHere,
  type Edit,
  readScenario,
  type Scenario,
} from '../../../../sim/index.ts';
import { edit, only, smallScenario, sunnyScenario } from '../small.ts';

/** Without the ends of doubts, whose edits come before a run's own. */
async function answerTo(scenario: Scenario): Promise<Answer> {
  const own = (edits: readonly Edit[]) =>
    edits.every(
      ({ path }) => /^(run|taps\.mixing_valve|store\.(lid|vapour_escape))/.test(path) || OWN.has(path),
    ) && edit(edits, 'run.layers') === undefined;
  return breaksAnswer({ scenario, context: {}, doJobs: only(scenario, own) });
}

const OWN = new Set([
  'collector.high_limit',
  'collector.check_valve',
  'collector.night_loss',
  'collector.fluid',
  'engine.check_valve',
  'engine.standby_loss',
  'store.evaporation',
  'supply.cold.stands',
]);

const answer = await answerTo(
  sunnyScenario({ supply: { cold: { kind: 'cistern', volume: '200 L', start: '8 C' } } }),
);
const value = (key: string) => answer.facts[key]?.value ?? Number.NaN;

describe('what breaks it', () => {
  it('has a row for each failure that applies, and a reason for each that does not', () => {
    const rows = (key: string) => answer.tables[key].rows.map(([first]) => first);
    expect(rows('failures')).toEqual(
      expect.arrayContaining([
        'pump',
        'away',
        'trapped',
        'mixing',
        'off',
        'power',
        'night',
        'cistern',
        'lid',
      ]),
    );
    expect(new Set([...rows('failures'), ...rows('spared')]).size).toBe(13);
  });

  it('finds the failures each do what they must: hotter, colder, later', () => {
    expect(value('pump_collector_C')).toBeGreaterThan(100);
    expect(value('limitless_top_C')).toBeGreaterThanOrEqual(value('away_top_C') - 1e-6);
    expect(value('mixing_tap_C')).toBeGreaterThanOrEqual(value('mixing_plain_C'));
    expect(value('off_mean_C')).toBeLessThan(value('plain_mean_C'));
    expect(value('power_missed')).toBe(6);
    expect(value('lid_more_K')).toBeGreaterThan(0);
    expect(value('sun_valve_more_K')).toBeGreaterThan(0);
    expect(value('engine_valve_more_K')).toBeGreaterThan(0);
    expect(value('weak_freezes_C')).toBeGreaterThan(value('night_freezes_C'));
    expect(value('weak_freezing_s')).toBeGreaterThanOrEqual(value('night_freezing_s'));
  });

  // Evaporation lies 35 % lower or 40 % higher; the store it cools then gives off less, but never so much less.
  it('does not know the vapour of an open lid closer than the forms for evaporation do', () => {
    const { value: kg, low, high } = answer.facts.lid_vapour_kg;
    expect(low / kg).toBeLessThan(0.9);
    expect(high / kg).toBeGreaterThan(1.1);
    expect(low / kg).toBeGreaterThan(0.6);
    expect(high / kg).toBeLessThan(1.45);
  });

  it('freezes a cistern out in the cold as its energy balance in closed form says', () => {
    const read = readScenario(
      sunnyScenario({ supply: { cold: { kind: 'cistern', volume: '200 L', start: '8 C' } } }),
    );
    if (!read.ok || read.plant.supply.cold.kind !== 'cistern') throw new Error('no cistern');
    const { conductance_W_K } = read.plant.supply.cold;
    // m c / UA ln((8 + 30) / 30), from 8 C in air of -30 C; the front takes its hour, draws bring 8 C again: later, not sooner.
    const still_s = ((200 * 4200) / conductance_W_K) * Math.log(38 / 30);
    expect(value('cistern_ice_s')).toBeGreaterThan(still_s);
    expect(value('cistern_ice_s')).toBeLessThan(still_s * 2 + 3600);
  });

  it('tells the least warming of any coil first, and every coil in a table', () => {
    const read = readScenario(sunnyScenario());
    if (!read.ok) throw new Error('not read');
    const coils = trappedCoils(read.plant, 8);
    expect(coils.map(({ coil }) => coil)).toEqual(['household', 'engine', 'sun']);
    // A loop that is shut while hot needs less: hot water swells more than cold.
    expect(coils[1].rated_K).toBeLessThan(coils[0].rated_K ?? 0);
    for (const { rated_K, burst_K } of coils) expect(burst_K).toBeGreaterThan(rated_K ?? 0);
  });

  it('stands beside a caution for everything that can hurt', () => {
    expect(answer.cautions.map(({ key }) => key)).toEqual(
      expect.arrayContaining([
        'stagnation',
        'boil_over',
        'trapped_coil',
        'scald',
        'freezing_loop',
        'open_lid',
      ]),
    );
  });

  it('says what is missing where somebody stopped', async () => {
    const scenario = smallScenario();
    const doJobs = async (jobs: unknown[]) => jobs.map(() => null);
    const stopped = await breaksAnswer({ scenario, context: {}, doJobs });
    expect(stopped.stopped).toBe(true);
    expect(stopped.facts.off_mean_C).toBeUndefined();
    expect(stopped.facts.trapped_rated_K?.value).toBeGreaterThan(1);
  });

  it('refuses a scenario that no run can be made of', async () => {
    const scenario = smallScenario({ coils: [] });
    const ask = breaksAnswer({ scenario, context: {}, doJobs: doHere(scenario, {}) });
    await expect(ask).rejects.toThrow(/engine\.coil - expected/);
  });
});
