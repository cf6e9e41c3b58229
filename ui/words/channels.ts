/** Words for the channels of a run's series. */
export const channelWords = {
  outlet_C: 'Water at the tap',
  hot_line_C: 'Hot pipe, at the tap',
  coil_outlet_C: 'Household coil, outlet',
  hot_flow_m3_s: 'Flow through the household coil',
  mixed_flow_m3_s: 'Flow at the tap',
  wanted_C: 'Wanted at the tap',
  ran_cold_s: 'Time draws ran cold',
  engine_W: 'Engine to store',
  collector_W: 'Collector to store',
  household_W: 'Store to household water',
  loss_W: 'Store losses',
  evaporation_W: 'Evaporation',
  radiator_W: 'Radiator to air',
  fuel_W: 'Fuel burnt by the engine',
  backup_W: 'Backup heater',
  engine_C: 'Engine coolant',
  collector_C: 'Collector fluid',
  air_C: 'Outdoor air',
  sun_W_m2: 'Sun on the collector',
  cold_C: 'Cold water',
  level_m: 'Water depth',
} as const;

/** Words for what the layers of the store show. */
export const storeWords = {
  title: 'Store temperature',
  top: 'top',
  middle: 'middle',
  bottom: 'bottom',
} as const;
