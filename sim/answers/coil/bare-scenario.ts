/** A coil without a scenario: the smallest scenario it fits into, so that defaults, bands and errors are the reader's. */
import type { Scenario } from '../../scenario/index.ts';

/** Each as a scenario file would have it; what is left out takes the file's own default. */
export interface BareCoil {
  tube: { kind: string; size: string };
  /** Length of one roll. */
  length: string;
  rolls?: number;
  join?: string;
  coil_diameter?: string;
  spacing?: string;
  /** At the tap, all of it through the coil. */
  flow: string;
  tank: string;
  cold: string;
  wanted?: string;
}

/** Turns as wide as in the common tote: 0.6 of its narrower side. */
const USUAL_TURNS = '24 in';

/**
 * A household of one shower, one coil and a tall box that any length fits into: in water of one temperature only
 * the tube, its turns and its flow matter.
 */
export function bareScenario(bare: BareCoil): Scenario {
  const { tube, length, rolls, join, coil_diameter = USUAL_TURNS, spacing, flow, tank, cold, wanted } = bare;
  const given = { rolls, join, spacing };
  const coil = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  const scenario = {
    format: 'tankful',
    version: 1,
    name: 'a coil by itself',
    site: { latitude: '44 N' },
    run: { days: 1, start: { bottom: tank } },
    store: { inside: { shape: 'box', length: '20 ft', width: '20 ft', height: '30 ft' } },
    coils: [
      { name: 'coil', tube, roll_length: length, coil_diameter, side_by_side: 20, from: '1 ft', ...coil },
    ],
    supply: { cold: { kind: 'fixed', temperature: cold } },
    taps: {
      coil: 'coil',
      showers: [{ at: '7:00 am', flow, ...(wanted === undefined ? {} : { temperature: wanted }) }],
    },
  };
  // Texts and words are the reader's to check, as in any file.
  return scenario as unknown as Scenario;
}
