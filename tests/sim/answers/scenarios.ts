/** Scenarios for the answers' tests, as a file would have them. */
import type { Scenario } from '../../../sim/scenario/index.ts';

/** A tote with one coil for two showers, charged by a small engine; every store temperature stated. */
export function toteScenario(over: Record<string, unknown> = {}): Scenario {
  const scenario = {
    format: 'tankful',
    version: 1,
    name: 'tote for tests',
    site: { latitude: '44 N' },
    run: { days: 2, start: { bottom: '142 F' } },
    store: { inside: { shape: 'tote' } },
    coils: [
      {
        name: 'household',
        tube: { kind: 'refrigeration', size: '3/8 in' },
        rolls: 2,
        roll_length: '50 ft',
        join: 'parallel',
      },
      { name: 'engine', tube: { kind: 'plumbing L', size: '1/2 in' }, roll_length: '60 ft' },
    ],
    engine: {
      coil: 'engine',
      fuel: 'diesel',
      rated_output: '6 kW',
      runs: { kind: 'timetable', spans: [{ from: '4:00 pm', to: '7:00 pm' }] },
    },
    supply: { cold: { kind: 'fixed', temperature: '45 F' } },
    taps: {
      coil: 'household',
      showers: [{ at: '7:00 am', people: 2, lasts: '8 min', flow: '1.5 gpm', temperature: '105 F' }],
    },
    ...over,
  };
  return scenario as unknown as Scenario;
}
