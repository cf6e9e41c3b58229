/** Words for the figures of a run, in the order and the groups in which a report shows them. */
import { counted } from './locale.ts';

/** The groups a report divides its figures into, top to bottom. */
export const figureGroups = {
  household: 'Hot water',
  store: 'Store',
  engine: 'Engine',
  sun: 'Sun',
  water: 'Water and pump',
  backup: 'Backup heater',
} as const;

export type FigureGroup = keyof typeof figureGroups;

interface FigureWords {
  label: string;
  group: FigureGroup;
  /** Said in place of the value when the run cannot tell. */
  none: string;
}

export const figureWords = {
  showers: { label: 'Showers taken', group: 'household', none: 'none planned' },
  showers_cold: { label: 'Showers that ran cold', group: 'household', none: 'no showers' },
  cold_shower_s: { label: 'Time showers ran cold', group: 'household', none: 'no showers' },
  cold_draw_s: { label: 'Time other draws ran cold', group: 'household', none: 'nothing drawn' },
  first_cold_s: { label: 'From the start to the first cold draw', group: 'household', none: 'never' },
  wanted_m3: { label: 'Hot water wanted', group: 'household', none: 'none' },
  delivered_m3: { label: 'Hot water delivered', group: 'household', none: 'none' },
  cold_m3: { label: 'Wanted hot and got cold', group: 'household', none: 'none' },
  waiting_m3: { label: 'Run off while waiting for hot', group: 'household', none: 'none' },
  household_heat_J: { label: 'Store heat into household water', group: 'household', none: 'none' },
  outlet_C_max: { label: 'Hottest water at the tap', group: 'household', none: 'nothing drawn' },
  scald_s: { label: 'Time the tap was hot enough to scald', group: 'household', none: 'nothing drawn' },

  store_mean_C: { label: 'Store over the run, mean', group: 'store', none: 'unknown' },
  store_mean_C_end: { label: 'Store at the end, mean', group: 'store', none: 'unknown' },
  store_top_C_max: { label: 'Store top, hottest', group: 'store', none: 'unknown' },
  store_top_C_min: { label: 'Store top, coldest', group: 'store', none: 'unknown' },
  loss_J: { label: 'Heat lost from the store', group: 'store', none: 'none' },
  evaporated_kg: { label: 'Water evaporated', group: 'store', none: 'none' },
  boiled_kg: { label: 'Water boiled off', group: 'store', none: 'none' },
  store_mass_kg: { label: 'Water in the store at the end, by weight', group: 'store', none: 'unknown' },
  make_up_kg: { label: 'Water made up', group: 'store', none: 'none' },
  level_m_end: { label: 'Water depth at the end', group: 'store', none: 'unknown' },
  dry_s: { label: 'From the start until the store ran dry', group: 'store', none: 'never' },
  liner_C_max: { label: 'Liner, hottest', group: 'store', none: 'no liner' },
  liner_over_s: { label: 'Time the liner was past its limit', group: 'store', none: 'no limit known' },
  foam_C_max: { label: 'Insulation, hottest', group: 'store', none: 'no insulation' },
  foam_over_s: {
    label: 'Time the insulation was past its limit',
    group: 'store',
    none: 'no limit known',
  },
  wall_C_max: { label: 'Wall, hottest', group: 'store', none: 'no limit known' },
  wall_over_s: { label: 'Time the wall was past its limit', group: 'store', none: 'no limit known' },

  engine_s: { label: 'Engine running', group: 'engine', none: 'no engine' },
  engine_starts: { label: 'Engine starts', group: 'engine', none: 'no engine' },
  fuel_m3: { label: 'Fuel, by volume', group: 'engine', none: 'no engine' },
  fuel_kg: { label: 'Fuel, by weight', group: 'engine', none: 'no engine' },
  engine_heat_J: { label: 'Heat from the engine to the store', group: 'engine', none: 'no engine' },
  radiator_J: { label: 'Heat the radiator threw away', group: 'engine', none: 'no engine' },
  electricity_J: { label: 'Electricity made', group: 'engine', none: 'no engine' },
  coldest_return_C: { label: 'Coldest coolant returning', group: 'engine', none: 'never ran' },
  engine_cold_s: { label: 'Time the coolant returned too cold', group: 'engine', none: 'no engine' },

  solar_heat_J: { label: 'Heat from the sun to the store', group: 'sun', none: 'no collector' },
  solar_share: { label: 'Share of the heat from the sun', group: 'sun', none: 'no heat came in' },
  collector_s: { label: 'Collector pump running', group: 'sun', none: 'no collector' },
  collector_C_max: { label: 'Collector, hottest', group: 'sun', none: 'no collector' },
  collector_C_min: { label: 'Collector, coldest', group: 'sun', none: 'no collector' },
  stagnation_s: { label: 'Collector stagnant in the sun', group: 'sun', none: 'no collector' },
  freezing_s: { label: 'Collector fluid below freezing', group: 'sun', none: 'no collector' },

  pump_electricity_J: { label: 'Electricity for the pumps', group: 'water', none: 'no pump' },
  tap_flow_m3_s_min: { label: 'Weakest flow at the tap', group: 'water', none: 'nothing drawn' },
  tap_pressure_Pa_min: { label: 'Lowest pressure left at the tap', group: 'water', none: 'nothing drawn' },
  tube_speed_m_s_max: { label: 'Fastest water in the household coil', group: 'water', none: 'nothing drawn' },
  pump_at_limit_s: {
    label: 'Time the pump could give no more',
    group: 'water',
    none: 'nothing drawn',
  },
  cistern_C_min: { label: 'Cistern, coldest', group: 'water', none: 'no cistern' },

  backup_heat_J: { label: 'Heat from the backup heater', group: 'backup', none: 'no backup' },
  backup_fuel_m3: { label: 'Fuel for the backup heater', group: 'backup', none: 'no backup' },
} as const satisfies Record<string, FigureWords>;

export type FigureKey = keyof typeof figureWords;

/** How sure a run's figures are. */
export const figureBandWords = {
  toAsk:
    'Bands: worked out when asked for. Each doubtful value behind these figures takes two more runs of the same days.',
  ask: 'Work out the bands',
  told: (tried: number, untried: readonly string[]) =>
    `Bands: ${counted(tried, 'doubtful assumption')} taken to their low and high values one at a time, the deviations added in squares.${
      untried.length > 0 ? ` Not tried: ${untried.join(', ')}.` : ''
    }`,
  /** Figures without one. */
  unmoved: 'A figure without a band is moved by none of them.',
  stopped: 'Stopped: wider bands may come of what was not tried.',
} as const;
