/** The energy balance of whole runs. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenarioText } from '../../../sim/index.ts';
import type { PlantDescription } from '../../../sim/parts/description.ts';
import { simulate } from '../../../sim/run/simulation.ts';
import {
  coilOf,
  collectorOf,
  DIESEL,
  engineOf,
  fullPlant,
  plantOf,
  roomAt,
  storeOf,
  tapsOf,
} from '../support/plant.ts';

/** Every scenario of the house that is meant to run, cut to a week. */
const folder = new URL('../../../scenarios/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json') && !name.endsWith('_broken.json'));

describe('the ledger', () => {
  it.each(files)('of %s closes', (name) => {
    const read = parseScenarioText(readFileSync(new URL(name, folder), 'utf8'));
    if (!read.ok) throw new Error(`${name} - expected a scenario that is valid - got problems`);
    const { run } = read.plant;
    const { ledger } = simulate({ ...read.plant, run: { ...run, days: Math.min(run.days, 7) } });
    expect(ledger.throughput_J).toBeGreaterThan(1e6);
    expect(Math.abs(ledger.residual_J) / ledger.throughput_J).toBeLessThan(1e-6);
  });

  it.each([
    ['open and filled by hand', fullPlant({ store: storeOf({ vapour_share: 1, make_up: 'by hand' }) })],
    ['with everything that leaks', leaky()],
  ] as const)('of a plant %s closes', (_what, plant: PlantDescription) => {
    const { ledger } = simulate({ ...plant, run: { ...plant.run, days: 3 } });
    expect(Math.abs(ledger.residual_J) / ledger.throughput_J).toBeLessThan(1e-9);
  });

  it('holds what a drawn household takes: cold in, heat of coil, lost in pipes, out at the taps', () => {
    const { ledger } = simulate(
      plantOf({
        coils: [coilOf('h')],
        taps: tapsOf('h'),
        run: { days: 2, start: { bottom_C: 60, top_C: 65 } },
      }),
    );
    const path = (key: string) => ledger.paths.find((p) => p.key === key)?.energy_J ?? Number.NaN;
    const kept = path('household_cold_in') + path('household_heat') - path('household_to_taps');
    // Between draws the coil and the pipe hold a share: some 20 kJ/K over 50 K.
    expect(Math.abs(kept - path('tap_pipe_to_air'))).toBeLessThan(0.05 * path('household_heat'));
    expect(path('household_heat')).toBeGreaterThan(1e7);
  });
});

function leaky(): PlantDescription {
  return fullPlant({
    store: storeOf({ vapour_share: 0.2, surroundings: roomAt(5) }),
    engine: engineOf('engine', { standby_loss_W_K: 2, fuel: DIESEL }),
    collector: collectorOf('collector', { check_valve: false, night_loss_W_K: 2 }),
  });
}
