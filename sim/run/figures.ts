/** The figures of a run, by glossary key, in SI. */
import { type AmountKey, type PathKey, placeOf } from '../parts/layout.ts';
import type { Plant } from '../plant/plant.ts';
import type { Extreme, Tally } from './tally.ts';

/** @returns every figure the plant can have; null where the run cannot tell (no shower was drawn, no engine) */
export function figuresOf(
  plant: Plant,
  tally: Tally,
  y: ArrayLike<number>,
  days: number,
): Record<string, number | null> {
  const { store, engine, collector, taps, backup } = {
    ...plant,
    backup: plant.description.backup,
  };
  const of = (key: PathKey | AmountKey) => y[placeOf[key]];
  store.prepare(y);
  const mass = store.mass_kg.reduce((sum, m) => sum + m, 0);
  const mean = store.mass_kg.reduce((sum, m, i) => sum + m * store.layer_C[i], 0) / mass;
  const sheets = (kind: string) =>
    store.walls.limits.map((limit, i) => ({ ...limit, ...tally.sheets[i] })).filter((s) => s.kind === kind);
  const hottest = (kind: string) => maximum(sheets(kind).map((s) => s.hottest_C));
  const over = (kind: string) => maximum(sheets(kind).map((s) => s.over_s));
  const hot = of('engine_to_store') + of('collector_to_store');
  const figures: Record<string, number | null> = {
    store_mean_C_end: mean,
    store_top_C_min: seen(tally.topLow),
    store_top_C_max: seen(tally.topHigh),
    household_heat_J: taps ? of('household_heat') : null,
    delivered_m3: taps ? tally.warm_m3 : null,
    wanted_m3: taps ? tally.wanted_m3 : null,
    cold_m3: taps ? tally.cold_m3 : null,
    waiting_m3: taps ? tally.waiting_m3 : null,
    cold_shower_minutes: taps ? tally.coldShower_s / 60 : null,
    cold_draw_minutes: taps ? tally.coldDraw_s / 60 : null,
    showers: taps ? tally.showers : null,
    showers_cold: taps ? tally.showersCold : null,
    first_cold_s: tally.firstCold_s,
    scald_minutes: taps ? tally.scald_s / 60 : null,
    outlet_C_max: seen(tally.hotLineHigh),
    tap_pressure_Pa_min: seen(tally.pressureLow),
    tap_flow_m3_s_min: seen(tally.flowLow),
    tube_speed_m_s_max: seen(tally.speedHigh),
    pump_at_limit_minutes: taps ? tally.pumpAtLimit_s / 60 : null,
    cistern_C_min: seen(tally.coldLow),
    engine_hours: engine ? tally.engine_s / 3600 : null,
    engine_hours_a_day: engine && days > 0 ? tally.engine_s / 3600 / days : null,
    engine_starts: engine ? tally.engineStarts : null,
    fuel_kg: engine ? of('fuel_kg') : null,
    fuel_m3: engine ? of('fuel_kg') / engine.description.fuel.density_kg_m3 : null,
    engine_heat_J: engine ? of('engine_to_store') : null,
    engine_cold_minutes: engine ? tally.engineCold_s / 60 : null,
    coldest_return_C: seen(tally.returnLow),
    radiator_J: engine ? of('radiator_to_air') : null,
    electricity_J: engine ? of('engine_electricity_J') : null,
    solar_heat_J: collector ? of('collector_to_store') : null,
    solar_share: collector && hot > 0 ? of('collector_to_store') / hot : null,
    collector_hours: collector ? tally.pump_s / 3600 : null,
    stagnation_hours: collector ? tally.stagnant_s / 3600 : null,
    collector_C_max: seen(tally.collectorHigh),
    collector_C_min: seen(tally.collectorLow),
    freezing_hours: collector ? tally.freezing_s / 3600 : null,
    pump_electricity_J: of('pump_electricity_J'),
    loss_J: of('store_conducted') + of('store_surface_air') + of('store_lid_vapour'),
    evaporated_kg: of('evaporated_kg'),
    boiled_kg: of('boiled_kg'),
    make_up_kg: store.description.make_up === 'float' ? of('evaporated_kg') + of('boiled_kg') : 0,
    level_m_end: store.depth_m,
    liner_C_max: hottest('liner'),
    liner_hours_over: hours(over('liner')),
    foam_C_max: hottest('foam'),
    foam_hours_over: hours(over('foam')),
    wall_C_max: hottest('wall'),
    wall_hours_over: hours(over('wall')),
    backup_heat_J: backup ? of('backup_to_water') : null,
    backup_fuel_m3: backup ? of('backup_fuel_kg') / backup.fuel.density_kg_m3 : null,
  };
  return figures;
}

function seen(extreme: Extreme): number | null {
  return Number.isFinite(extreme.value) ? extreme.value : null;
}

function maximum(values: number[]): number | null {
  return values.length > 0 ? Math.max(...values) : null;
}

function hours(seconds: number | null): number | null {
  return seconds === null ? null : seconds / 3600;
}
