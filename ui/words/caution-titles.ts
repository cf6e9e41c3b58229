import type { CautionKey as SimCautionKey } from '../../sim/index.ts';

/** What each caution is called, and how serious one is: enough to name it, without the sentences about it. */
export const cautionTitles = {
  scald: 'Scalding water at the tap',
  scald_no_valve: 'No mixing valve',
  trapped_coil: 'Water trapped in a coil',
  carbon_monoxide: 'Carbon monoxide',
  hot_engine: 'A hot engine burns',
  plastic_tube: 'Plastic tube too hot',
  mixed_metals: 'Copper beside zinc',
  coolant_poison: 'Poisonous coolant',
  boil_over: 'Nothing stops it before it boils',
  boiling: 'The store boils',
  liner_limit: 'Liner too hot',
  foam_limit: 'Insulation too hot',
  wall_limit: 'Wall too hot',
  engine_cold: 'Engine kept too cold',
  freezing_loop: 'Collector loop freezes',
  freezing_cistern: 'Cistern near freezing',
  legionella: 'Warm water that stands',
  weight: 'Weight',
  wiring: 'Wiring near water',
  estimate_only: 'An estimate',
  stagnation: 'Collector stands in the sun without flow',
  level_low: 'Water level low',
  runs_dry: 'The store runs dry',
  pump_at_limit: 'Pump at its limit',
  tap_pressure_low: 'Little pressure left at the tap',
  tube_speed: 'Water too fast in the tube',
  short_cycling: 'Switches too often',
  back_feed: 'Hot water can push past a shut head',
  altitude_output: 'Thin air weakens the engine',
  faults_played: 'Something fails in this run',
  weather_generated: 'Made-up weather',
} as const satisfies Record<SimCautionKey, string>;

export type CautionKey = keyof typeof cautionTitles;

export function isCaution(key: string): key is CautionKey {
  return Object.hasOwn(cautionTitles, key);
}

/** Words for how serious a caution is. */
export const severityWords = { danger: 'Danger', warning: 'Warning', note: 'Note' } as const;
