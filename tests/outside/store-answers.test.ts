/** What the store's answer says against the trade's hand calculations. Sources in SOURCES.md. */
import { describe, it } from 'vitest';
import { variantJobs } from '../../sim/answers/store/runs.ts';
import { doJob, readScenario } from '../../sim/index.ts';
import { smallScenario } from '../sim/answers/small.ts';
import { expectWithin } from './near.ts';

const BTU_J = 1055.056;
const celsius = (F: number) => (F - 32) / 1.8;

/**
 * A caged tote as the trade's figures have it, 48 by 40 by 46 in outside, all of its surface at the store's
 * temperature: filled to the brim, so that no dry wall is left out. Nothing but the foam resists, nothing leaks.
 */
function tote(resistance: string, over: Record<string, unknown> = {}) {
  const foam = [{ material: 'XPS', thickness: '25 mm', resistance }];
  return smallScenario({
    store: {
      inside: { shape: 'box', length: '48 in', width: '40 in', height: '46 in' },
      water_depth: '46 in',
      wall: { material: 'polyethylene', thickness: '2 mm' },
      insulation: { sides: foam, bottom: foam, lid: foam },
      stands: { where: 'room', temperature: '50 F', swing: '0 K', humidity: '50 %' },
      vapour_escape: '0 %',
      bridges: 1,
      make_up_temperature: '90 F',
    },
    ...over,
  });
}

const AT = { usual_C: celsius(140), full_C: celsius(140), fresh_C: celsius(90) };

function jobsOf(scenario: ReturnType<typeof smallScenario>) {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return variantJobs(read.plant, [], AT);
}

describe('the tote of 275 gallons', () => {
  // Hand calculation: 275 gal at 140 F in 50 F air lose by their whole surface; stated to a digit or two.
  it.each([
    [5, 16],
    [10, 8],
    [20, 4],
    [30, 2.6],
  ])('in R-%d loses what cools it by %d F a day', (resistance, drop_F) => {
    const scenario = tote(`R-${resistance}`);
    const done = doJob(scenario, jobsOf(scenario).cool, {});
    if (!done.ok) throw new Error(done.problem);
    // The brim holds 382 gal; what it loses would cool 275 gal by the degrees of the hand calculation.
    const lost_F = (done.figures.loss_J ?? 0) / BTU_J / (275 * 8.34);
    // The hand leaves the air's film out, R-0.7, and holds 140 F all day, where the store falls by half its drop on the mean.
    const film = resistance / (resistance + 0.7);
    const falling = 1 - (drop_F * 275) / 382 / 90 / 2;
    expectWithin(lost_F, drop_F * film * falling, 0.06);
  });

  it('heated by 15,000 Btu/h rises 50 F in about 7.5 hours', () => {
    // 275 gal: 48 x 40 in filled 33 in deep. Jacket heat 15,000 Btu/h: a quarter of what 0.465 gal/h of diesel hold.
    const { coils, engine, store } = tote('R-30') as unknown as Record<string, Record<string, unknown>>;
    const scenario = tote('R-30', {
      store: { ...store, water_depth: '33 in' },
      coils,
      engine: {
        ...engine,
        typical_load: '6 kW',
        fuel_use: [{ output: '6 kW', fuel: '0.465 gal/h' }],
        jacket_share: '25 %',
        pipes: { length: '0.1 m' },
      },
    });
    const { heat } = jobsOf(scenario);
    const done = heat && doJob(scenario, heat, {});
    if (!done?.ok) throw new Error('failed');
    // The hand warms neither engine nor coil, and loses nothing: an hour in all is its roughness.
    expectWithin((done.figures.engine_s ?? 0) / 3600, 7.5, 0.13);
  });
});
