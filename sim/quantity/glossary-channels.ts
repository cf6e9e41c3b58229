/** Names of a run's series and of the paths of its ledger. */
import { entries } from './glossary-entry.ts';

/** Water that is liquid in an open store, a little past boiling for a start-up bump [C]. */
const water_C = [0, 105] as const;
/** Outdoor air anywhere people live [C]. */
const air_C = [-65, 60] as const;
/** From the deepest winter night to a dry evacuated tube in full sun [C]. */
const collector_C = [-65, 350] as const;
/** Heat through one part of a household's plant; backwards where a part can draw heat out again [W]. */
const heat_W = [0, 2e5] as const;
const eitherWay_W = [-2e4, 2e5] as const;
const flow_m3_s = [0, 2e-3] as const;

export const channels = entries('channel', [
  ['outlet_C', 'T_tap', 'temperature', water_C, 'mixed water at the tap, while it is drawn'],
  [
    'coil_outlet_C',
    'T_coil',
    'temperature',
    water_C,
    'household water where it leaves its coil in the store',
  ],
  ['hot_line_C', 'T_hot', 'temperature', water_C, 'hot water at the end of its pipe, before a tap mixes it'],
  ['hot_flow_m3_s', 'V_hot', 'flow', flow_m3_s, 'household water through its coil'],
  ['mixed_flow_m3_s', 'V_tap', 'flow', flow_m3_s, 'mixed water at the tap'],
  ['engine_W', 'Q_eng', 'power', eitherWay_W, 'heat from the engine’s coil into the store'],
  ['collector_W', 'Q_sol', 'power', eitherWay_W, 'heat from the collector’s coil into the store'],
  ['household_W', 'Q_hw', 'power', eitherWay_W, 'heat from the store into the household coil'],
  [
    'loss_W',
    'Q_loss',
    'power',
    eitherWay_W,
    'heat out of the store through walls, bottom, lid and open surface, without vapour',
  ],
  ['evaporation_W', 'Q_vap', 'power', eitherWay_W, 'heat that leaves the store as vapour, boiling included'],
  ['radiator_W', 'Q_rad', 'power', heat_W, 'heat the engine’s radiator gives to the air'],
  ['fuel_W', 'Q_fuel', 'power', heat_W, 'heat of the fuel that reaches the engine’s coolant'],
  ['backup_W', 'Q_bak', 'power', heat_W, 'heat from the backup heater into the household water'],
  [
    'engine_loss_W',
    'Q_block',
    'power',
    eitherWay_W,
    'heat from the engine’s block and coolant pipes to the air',
  ],
  ['standby_W', 'Q_standby', 'power', eitherWay_W, 'heat that creeps from the store to the stopped engine'],
  ['absorbed_W', 'Q_abs', 'power', eitherWay_W, 'sunshine taken up by the collector, less its own losses'],
  ['collector_loss_W', 'Q_cpipe', 'power', eitherWay_W, 'heat from the collector’s pipes to the air'],
  [
    'night_W',
    'Q_night',
    'power',
    eitherWay_W,
    'heat that creeps from the store to the collector while its pump stands',
  ],
  ['make_up_W', 'Q_make', 'power', eitherWay_W, 'heat brought by water added to keep the level'],
  [
    'taps_W',
    'Q_tap',
    'power',
    eitherWay_W,
    'heat of the water at the taps beyond that of the cold water drawn for it',
  ],
  ['tap_pipe_W', 'Q_tpipe', 'power', eitherWay_W, 'heat from the pipe to the taps to the air'],
  [
    'stored_W',
    'Q_store',
    'power',
    [-2e5, 2e5],
    'heat taken up by store, coils, engine, collector and pipes together',
  ],
  ['engine_C', 'T_eng', 'temperature', [-65, 160], 'engine block and its coolant'],
  ['collector_C', 'T_sol', 'temperature', collector_C, 'collector, fluid and absorber'],
  ['air_C', 'T_air', 'temperature', air_C, 'outdoor air'],
  ['sun_W_m2', 'G', 'irradiance', [0, 1600], 'sunshine on the collector’s plane'],
  ['cold_C', 'T_cold', 'temperature', [-5, 40], 'cold water as it enters the household coil'],
  ['level_m', 'h_w', 'length', [0, 10], 'depth of water in the store'],
  ['wanted_C', 'T_want', 'temperature', water_C, 'temperature wanted at the tap, while water is drawn'],
  [
    'ran_cold_s',
    't_cold',
    'time',
    [0, 86_400],
    'time since the sample before in which draws ran colder than wanted',
  ],
]);

/** A year of the greatest heat above [J]. */
const energy_J = [0, 6.4e12] as const;
/** Paths along which heat may also run backwards, as into a store colder than its room. */
const eitherWay_J = [-6.4e12, 6.4e12] as const;

export const paths = entries('path', [
  ['fuel_to_coolant', 'E_jacket', 'energy', energy_J, 'heat of the fuel that reached the engine’s coolant'],
  ['engine_to_store', 'E_eng', 'energy', eitherWay_J, 'heat from the engine’s coil into the store'],
  ['radiator_to_air', 'E_rad', 'energy', energy_J, 'coolant’s heat that the radiator gave to the air'],
  ['block_to_air', 'E_block', 'energy', eitherWay_J, 'heat from the engine’s block to the air around it'],
  [
    'engine_pipes_to_air',
    'E_epipe',
    'energy',
    eitherWay_J,
    'heat from the engine’s coolant pipes to the air',
  ],
  [
    'sun_to_collector',
    'E_abs',
    'energy',
    eitherWay_J,
    'sunshine taken up by the collector, less its own losses',
  ],
  ['collector_to_store', 'E_sol', 'energy', eitherWay_J, 'heat from the collector’s coil into the store'],
  ['collector_pipes_to_air', 'E_cpipe', 'energy', eitherWay_J, 'heat from the collector’s pipes to the air'],
  ['store_conducted', 'E_wall', 'energy', eitherWay_J, 'heat through the store’s sides, bottom and lid'],
  ['store_lid_vapour', 'E_vap', 'energy', eitherWay_J, 'heat of the vapour that escaped from the store'],
  [
    'store_surface_air',
    'E_surf',
    'energy',
    eitherWay_J,
    'heat from the open water surface by moving air and by radiation',
  ],
  ['store_boiled', 'E_boil', 'energy', energy_J, 'heat of the steam that boiled off'],
  ['make_up_water', 'E_make', 'energy', eitherWay_J, 'heat brought by water added to keep the level'],
  ['household_heat', 'E_hw', 'energy', eitherWay_J, 'heat from the store into the household water'],
  ['household_to_taps', 'E_tap', 'energy', eitherWay_J, 'heat of the household water as it reaches the taps'],
  [
    'household_cold_in',
    'E_cold',
    'energy',
    eitherWay_J,
    'heat of the cold water as it enters the household coil',
  ],
  ['tap_pipe_to_air', 'E_tpipe', 'energy', eitherWay_J, 'heat from the pipe to the taps to the air'],
  ['backup_to_water', 'E_bak', 'energy', energy_J, 'heat from the backup heater into the household water'],
  [
    'standby_to_engine',
    'E_standby',
    'energy',
    eitherWay_J,
    'heat that crept from the store to the stopped engine',
  ],
  [
    'night_to_collector',
    'E_night',
    'energy',
    eitherWay_J,
    'heat that crept from the store to the collector while its pump stood',
  ],
]);
