/** Small, quick scenarios for answers that take many runs. */
import { type DoJobs, doHere, type Edit, type Scenario } from '../../../sim/index.ts';

/** A box of five layers with one shower a day, a small engine called on by timetable, next to nothing left open. */
export function smallScenario(over: Record<string, unknown> = {}): Scenario {
  const room = { where: 'room', temperature: '15 C', swing: '0 K', humidity: '50 %' };
  const coil = { tube: { kind: 'plumbing L', size: '1/2 in' }, roll_length: '60 ft', spacing: 'finger gap' };
  const scenario = {
    format: 'tankful',
    version: 1,
    name: 'small box for tests',
    site: { latitude: '45 N', longitude: '0 E' },
    weather: { kind: 'by latitude', climate: 'average', seed: 5 },
    run: {
      from: '01-10',
      days: 3,
      layers: 5,
      tolerance: 0.001,
      interval: '24 h',
      start: { bottom: '55 C' },
    },
    store: {
      inside: { shape: 'box', length: '0.8 m', width: '0.8 m', height: '0.9 m' },
      water_depth: '0.8 m',
      insulation: { sides: [{ material: 'XPS', thickness: '100 mm' }] },
      stands: room,
    },
    coils: [
      { name: 'household', ...coil },
      { name: 'engine', ...coil },
    ],
    engine: {
      coil: 'engine',
      fuel: 'diesel',
      rated_output: '6 kW',
      typical_load: '4 kW',
      stands: room,
      check_valve: true,
      runs: { kind: 'timetable', spans: [{ from: '16:00', to: '18:00' }] },
    },
    supply: { cold: { kind: 'fixed', temperature: '8 C' } },
    taps: {
      coil: 'household',
      showers: [
        {
          at: '18:30',
          people: 2,
          lasts: '6 min',
          flow: '6 L/min',
          temperature: '40 C',
          rated_pressure: '140 kPa',
        },
      ],
    },
    ...over,
  };
  return scenario as unknown as Scenario;
}

/** The same with a collector of 2 m2 on a coil of its own. */
export function sunnyScenario(over: Record<string, unknown> = {}): Scenario {
  const small = smallScenario() as unknown as { coils: unknown[] };
  return smallScenario({
    coils: [
      ...small.coils,
      {
        name: 'sun',
        tube: { kind: 'plumbing L', size: '1/2 in' },
        roll_length: '60 ft',
        coil_diameter: '40 cm',
      },
    ],
    collector: { coil: 'sun', kind: 'flat plate', size: { by: 'area', area: '2 m2', basis: 'aperture' } },
    ...over,
  });
}

/** Does the jobs that `asked` picks by their edits; the others count as failed, so that bands cost no runs. */
export function only(scenario: Scenario, asked: (edits: readonly Edit[]) => boolean): DoJobs {
  const here = doHere(scenario, {});
  return async (jobs, onProgress) => {
    const done = await here(
      jobs.filter(({ edits }) => asked(edits)),
      onProgress,
    );
    return jobs.map(({ edits }) =>
      asked(edits) ? (done.shift() ?? null) : { ok: false, problem: 'not asked' },
    );
  };
}

/** The value that a job's edits put at a path, or undefined. */
export function edit(edits: readonly Edit[], path: string): unknown {
  return edits.findLast((each) => each.path === path)?.value;
}
