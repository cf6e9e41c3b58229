/** Reads small scenarios: a box of 48 x 36 x 36 in at 44 N with whatever the test adds. */
import {
  type ReadScenario,
  readScenario,
  type Scenario,
  withWeather,
} from '../../../../sim/scenario/index.ts';

export const coil = {
  name: 'coil',
  tube: { kind: 'plumbing L', size: '3/4 in' },
  roll_length: '60 ft',
  coil_diameter: '28 in',
} as const;

export const engine = {
  coil: 'coil',
  fuel: 'diesel',
  rated_output: '8 kW',
  runs: { kind: 'timetable', spans: [{ from: '4 pm', to: '6 pm' }] },
} as const satisfies Scenario['engine'];

export const collector = {
  coil: 'coil',
  kind: 'flat plate',
  size: { by: 'area', area: '4 m2', basis: 'gross' },
} as const satisfies Scenario['collector'];

function readWith(parts: Partial<Scenario>, weatherFiles: Record<string, string> = {}): ReadScenario {
  const box = { shape: 'box', length: '48 in', width: '36 in', height: '36 in' } as const;
  const scenario: Scenario = {
    format: 'tankful',
    version: 1,
    name: 'test',
    site: { latitude: '44 N' },
    store: { inside: box },
    coils: [coil],
    ...parts,
  };
  return readScenario(scenario, withWeather(weatherFiles));
}

/** The plant and what was said of it; a refused scenario fails the test. */
export function sound(parts: Partial<Scenario>, weatherFiles: Record<string, string> = {}) {
  const read = readWith(parts, weatherFiles);
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1));
  const byPath = new Map(read.filled.map((entry) => [entry.path, entry]));
  return { ...read, byPath };
}

export function problemsWith(parts: Partial<Scenario>, weatherFiles: Record<string, string> = {}) {
  const read = readWith(parts, weatherFiles);
  if (read.ok) throw new Error('the scenario was read');
  return read.problems;
}
