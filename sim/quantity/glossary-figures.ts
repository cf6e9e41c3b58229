/** Names of a run's figures. Times are in seconds, as everywhere in `sim`, whatever unit a name speaks of. */
import { entries } from './glossary-entry.ts';

/** A year [s]. */
const time_s = [0, 366 * 86_400] as const;
const energy_J = [0, 6.4e12] as const;
const eitherWay_J = [-6.4e12, 6.4e12] as const;
const water_C = [0, 105] as const;
/** A year of a large household's draws, or of an engine's fuel [m3]. */
const water_m3 = [0, 2000] as const;
const fuel_m3 = [0, 100] as const;
/** A year of water lost or added [kg]. */
const water_kg = [0, 1e6] as const;
const times = [0, 1e5] as const;

export const figures = entries('figure', [
  ['store_mean_C', 'T_mean', 'temperature', water_C, 'mean temperature of the store over the run'],
  ['store_mean_C_end', 'T_end', 'temperature', water_C, 'mean temperature of the store at the end'],
  ['store_top_C_min', 'T_top,min', 'temperature', water_C, 'coldest the top of the store was'],
  ['store_top_C_max', 'T_top,max', 'temperature', water_C, 'hottest the top of the store was'],
  ['delivered_m3', 'V_del', 'volume', water_m3, 'mixed water that came at or above the temperature wanted'],
  ['wanted_m3', 'V_want', 'volume', water_m3, 'mixed water that was wanted'],
  ['cold_shower_s', 't_cold,sh', 'time', time_s, 'time a shower ran colder than wanted'],
  ['cold_draw_s', 't_cold', 'time', time_s, 'time any draw ran colder than wanted'],
  ['cold_m3', 'V_cold', 'volume', water_m3, 'mixed water that came colder than wanted'],
  ['waiting_m3', 'V_wait', 'volume', water_m3, 'water run off while the pipe’s cold plug passed'],
  ['showers', 'n_sh', 'count', times, 'showers taken', 6],
  ['showers_cold', 'n_sh,cold', 'count', times, 'showers that ran colder than wanted at some time', 6],
  ['first_cold_s', 't_first', 'time', time_s, 'time from the start to the first cold draw'],
  ['scald_s', 't_scald', 'time', time_s, 'time water above 49 °C came out of a tap'],
  ['outlet_C_max', 'T_tap,max', 'temperature', water_C, 'hottest water at a tap'],
  ['household_heat_J', 'E_hw', 'energy', eitherWay_J, 'heat the household’s water took from the store'],
  ['engine_s', 't_eng', 'time', time_s, 'time the engine ran'],
  ['engine_starts', 'n_eng', 'count', times, 'times the engine was started', 6],
  ['fuel_m3', 'V_fuel', 'volume', fuel_m3, 'fuel the engine burnt, by volume'],
  ['fuel_kg', 'm_fuel', 'mass', [0, 1e5], 'fuel the engine burnt, by mass'],
  ['engine_heat_J', 'E_eng', 'energy', eitherWay_J, 'heat from the engine into the store'],
  ['engine_cold_s', 't_ret', 'time', time_s, 'time the coolant returned colder than the engine bears'],
  [
    'coldest_return_C',
    'T_ret,min',
    'temperature',
    [-65, 160],
    'coldest coolant that returned to the running engine',
  ],
  ['radiator_J', 'E_rad', 'energy', energy_J, 'heat the engine’s radiator gave to the air'],
  ['electricity_J', 'E_el', 'electric_energy', energy_J, 'electricity the engine made'],
  ['solar_heat_J', 'E_sol', 'energy', eitherWay_J, 'heat from the collector into the store'],
  ['solar_share', 'f_sol', 'share', [0, 1], 'share of the heat put into the store that came from the sun'],
  ['collector_s', 't_sol', 'time', time_s, 'time the collector’s pump ran'],
  ['stagnation_s', 't_stag', 'time', time_s, 'time the collector stood hot in the sun without flow'],
  ['collector_C_max', 'T_sol,max', 'temperature', [-65, 350], 'hottest the collector was'],
  ['collector_C_min', 'T_sol,min', 'temperature', [-65, 350], 'coldest the collector was'],
  ['freezing_s', 't_frz', 'time', time_s, 'time the collector’s fluid was below its freezing point'],
  ['pump_electricity_J', 'E_pump', 'electric_energy', energy_J, 'electricity the pumps took'],
  [
    'loss_J',
    'E_loss',
    'energy',
    eitherWay_J,
    'heat the store lost through its walls, lid and surface, vapour included',
  ],
  ['evaporated_kg', 'm_vap', 'mass', water_kg, 'water that left the store as vapour below boiling'],
  ['boiled_kg', 'm_boil', 'mass', water_kg, 'water that boiled off'],
  ['make_up_kg', 'm_make', 'mass', water_kg, 'water added to keep the level'],
  ['level_m_end', 'h_end', 'length', [0, 10], 'depth of water in the store at the end'],
  ['dry_s', 't_dry', 'time', time_s, 'time from the start until the water no longer covered half of a coil'],
  ['tube_speed_m_s_max', 'v_tube', 'speed', [0, 20], 'fastest the water ran in the household coil'],
  ['store_mass_kg', 'm_w', 'mass', [0, 1e5], 'water in the store at the end'],
  ['wall_C_max', 'T_wall', 'temperature', water_C, 'hottest the warm side of the store’s wall was'],
  ['wall_over_s', 't_wall', 'time', time_s, 'time the wall was hotter than its limit'],
  ['liner_C_max', 'T_liner', 'temperature', water_C, 'hottest the liner was'],
  ['liner_over_s', 't_liner', 'time', time_s, 'time the liner was hotter than its limit'],
  ['foam_C_max', 'T_foam', 'temperature', water_C, 'hottest the warm face of the insulation was'],
  ['foam_over_s', 't_foam', 'time', time_s, 'time the insulation was hotter than its limit'],
  ['tap_pressure_Pa_min', 'p_tap', 'pressure', [0, 1.5e6], 'lowest pressure left at a tap while it was open'],
  ['tap_flow_m3_s_min', 'V_tap,min', 'flow', [0, 2e-3], 'weakest flow at a tap while it was open'],
  [
    'pump_at_limit_s',
    't_lim',
    'time',
    time_s,
    'time the water pump could give no more and the flow fell short',
  ],
  ['cistern_C_min', 'T_cist', 'temperature', [-5, 40], 'coldest the cistern was'],
  ['backup_fuel_m3', 'V_bak', 'volume', fuel_m3, 'fuel the backup heater burnt'],
  ['backup_heat_J', 'E_bak', 'energy', energy_J, 'heat from the backup heater into the household water'],
]);
