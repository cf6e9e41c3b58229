/** Words for the paths of the ledger ("Where the heat goes"): what carries the heat, and where to. */
export const ledgerWords = {
  fuel_to_coolant: 'Fuel heat into the coolant',
  engine_to_store: 'Engine to store',
  radiator_to_air: 'Radiator to air',
  block_to_air: 'Engine block to air',
  engine_pipes_to_air: 'Engine pipes to air',
  sun_to_collector: 'Sun caught by the collector',
  collector_to_store: 'Collector to store',
  collector_pipes_to_air: 'Collector pipes to air',
  store_conducted: 'Store walls, lid and floor',
  store_lid_vapour: 'Vapour past the lid',
  store_surface_air: 'Open water surface to air',
  store_boiled: 'Steam boiled off',
  make_up_water: 'Make-up water',
  household_heat: 'Store to household water',
  household_to_taps: 'Hot water to the taps',
  household_cold_in: 'Cold water coming in',
  tap_pipe_to_air: 'Pipe to the taps, to air',
  backup_to_water: 'Backup heater to water',
  standby_to_engine: 'Store to the stopped engine',
  night_to_collector: 'Store to the collector at night',
} as const;

/** Words for the three columns of the ledger. */
export const ledgerSideWords = {
  in: 'Into the plant',
  out: 'Out of the plant',
  inside: 'From part to part (not in the balance)',
} as const;

export const ledgerTotalWords = {
  title: 'Where the heat goes',
  allIn: 'All in',
  allOut: 'All out',
  stored: 'More in store than at the start',
  unstored: 'Less in store than at the start',
  residual: 'Unaccounted for',
  base: 'Shares are of all that came in, with what the plant gave up where it cooled down. Heat of the household’s water counts from its cold water up.',
} as const;
