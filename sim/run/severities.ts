/** How serious each caution of a run is, wherever it is shown: in a run, an answer, or beside a part before any run. */

/** A danger can maim or kill; a warning harms the plant, or people in time; a note is good to know. */
export type Severity = 'danger' | 'warning' | 'note';

export const SEVERITIES = {
  scald: 'danger',
  scald_no_valve: 'danger',
  trapped_coil: 'danger',
  carbon_monoxide: 'danger',
  coolant_poison: 'danger',
  // Before it boils: the store is as good as boiling once a pump stands or nobody draws.
  boil_over: 'danger',
  boiling: 'danger',
  runs_dry: 'danger',
  freezing_loop: 'danger',
  stagnation: 'warning',
  liner_limit: 'warning',
  foam_limit: 'warning',
  wall_limit: 'warning',
  plastic_tube: 'warning',
  mixed_metals: 'warning',
  engine_cold: 'warning',
  short_cycling: 'warning',
  freezing_cistern: 'warning',
  legionella: 'warning',
  level_low: 'warning',
  // As long as nobody knows the floor; a run says how heavy it is for one.
  weight: 'note',
  hot_engine: 'note',
  wiring: 'note',
  back_feed: 'note',
  pump_at_limit: 'note',
  tap_pressure_low: 'note',
  tube_speed: 'note',
  altitude_output: 'note',
  faults_played: 'note',
  weather_generated: 'note',
  estimate_only: 'note',
} as const satisfies Record<string, Severity>;

export type CautionKey = keyof typeof SEVERITIES;
