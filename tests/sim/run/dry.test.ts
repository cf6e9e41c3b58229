/** A store whose level nobody keeps. */
import { describe, expect, it } from 'vitest';
import { IntegrationError } from '../../../sim/index.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import { coilOf, plantOf, storeOf, tapsOf } from '../support/plant.ts';
import { steadyWeather } from '../support/weather.ts';

// Shallow, so that weeks are enough.
const coil = coilOf('household', { bottom_m: 0.05, top_m: 0.2, roll_length_m: 6 });
const half_m = (coil.bottom_m + coil.top_m) / 2;

function steaming(make_up: 'by hand' | 'float', days: number, start_C = 95) {
  const store = storeOf({ lid: 'open', vapour_share: 1, make_up, water_depth_m: 0.22 });
  const run = { days, layers: 5, interval_s: 600, start: { bottom_C: start_C, top_C: start_C } };
  // In hot air it stays so warm that it goes on steaming.
  return plantOf({
    weather: steadyWeather(55),
    store: { ...store, surroundings: { kind: 'outdoors' } },
    coils: [coil],
    taps: tapsOf('household', { draws: [] }),
    run,
  });
}

describe('a store that steams with its level kept by hand', () => {
  const { figures, series, cautions } = simulate(steaming('by hand', 60));

  it('runs dry when the water no longer covers half of the coil in use', () => {
    const { level_m } = series.channels;
    const sample = Array.from(level_m).findIndex((level) => level < half_m);
    expect(sample).toBeGreaterThan(0);
    expect(figures.dry_s).toBeGreaterThan(series.time_s[sample - 1] - 3600);
    // The level is taken down at restarts, an hour apart at most.
    expect(figures.dry_s).toBeLessThanOrEqual(series.time_s[sample] + 3600);
  });

  it('is warned of beside that time', () => {
    expect(cautions).toContainEqual({
      key: 'runs_dry',
      part: 'store',
      severity: 'danger',
      figure: 'dry_s',
      value: figures.dry_s,
    });
  });

  it('does not run dry with a float', () => {
    const kept = simulate(steaming('float', 60));
    expect(kept.figures.dry_s).toBeNull();
    expect(kept.cautions.map(({ key }) => key)).not.toContain('runs_dry');
  });

  it('ends the run, in words, once it is all but empty', () => {
    const run = () => simulate(steaming('by hand', 366));
    expect(run).toThrow(IntegrationError);
    expect(run).toThrow(/^store on day \d+ - expected water in it - got a store run dry - keep its level/);
  });
});
