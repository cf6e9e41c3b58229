/** The figures of a run, by glossary key, in SI. */
import { type AmountKey, type PathKey, placeOf } from '../parts/layout.ts';
import type { Plant } from '../plant/plant.ts';
import type { Extreme, Tally } from './tally.ts';

/** @returns every figure the plant can have; null where the run cannot tell (no shower was drawn, no engine) */
export function figuresOf(plant: Plant, tally: Tally, y: ArrayLike<number>): Record<string, number | null> {
  const { store, engine, collector, taps, backup } = {
    ...plant,
    backup: plant.description.backup,
  };
  const of = (key: PathKey | AmountKey) => y[placeOf[key]];
  store.prepare(y);
  const mass = store.mass_kg.reduce((sum, m) => sum + m, 0);
  const sheets = (kind: string) =>
    store.walls.limits.map((limit, i) => ({ ...limit, ...tally.sheets[i] })).filter((s) => s.kind === kind);
  const hottest = (kind: string) => maximum(sheets(kind).map((s) => s.hottest_C));
  const over = (kind: string) => maximum(sheets(kind).map((s) => s.over_s));
  const hot = of('engine_to_store') + of('collector_to_store');
  const figures: Record<string, number | null> = {
    store_mean_C_end: store.mean_C,
    store_mean_C: tally.counted_s > 0 ? tally.store_Cs / tally.counted_s : null,
    store_mass_kg: mass,
    store_top_C_min: seen(tally.topLow),
    store_top_C_max: seen(tally.topHigh),
    household_heat_J: taps ? of('household_heat') : null,
    delivered_m3: taps ? tally.warm_m3 : null,
    wanted_m3: taps ? tally.wanted_m3 : null,
    cold_m3: taps ? tally.cold_m3 : null,
    waiting_m3: taps ? tally.waiting_m3 : null,
    cold_shower_s: taps ? tally.coldShower_s : null,
    cold_draw_s: taps ? tally.coldDraw_s : null,
    showers: taps ? tally.showers : null,
    showers_cold: taps ? tally.showersCold : null,
    first_cold_s: tally.firstCold_s,
    scald_s: taps ? tally.scald_s : null,
    outlet_C_max: seen(tally.hotLineHigh),
    tap_pressure_Pa_min: seen(tally.pressureLow),
    tap_flow_m3_s_min: seen(tally.flowLow),
    tube_speed_m_s_max: seen(tally.speedHigh),
    pump_at_limit_s: taps ? tally.pumpAtLimit_s : null,
    cistern_C_min: seen(tally.coldLow),
    engine_s: engine ? tally.engine_s : null,
    engine_starts: engine ? tally.engineStarts : null,
    fuel_kg: engine ? of('fuel_kg') : null,
    fuel_m3: engine ? of('fuel_kg') / engine.description.fuel.density_kg_m3 : null,
    engine_heat_J: engine ? of('engine_to_store') : null,
    engine_cold_s: engine ? tally.engineCold_s : null,
    coldest_return_C: seen(tally.returnLow),
    radiator_J: engine ? of('radiator_to_air') : null,
    electricity_J: engine ? of('engine_electricity_J') : null,
    solar_heat_J: collector ? of('collector_to_store') : null,
    solar_share: collector && hot > 0 ? of('collector_to_store') / hot : null,
    collector_s: collector ? tally.pump_s : null,
    stagnation_s: collector ? tally.stagnant_s : null,
    collector_C_max: seen(tally.collectorHigh),
    collector_C_min: seen(tally.collectorLow),
    freezing_s: collector ? tally.freezing_s : null,
    pump_electricity_J: of('pump_electricity_J'),
    loss_J: of('store_conducted') + of('store_surface_air') + of('store_lid_vapour'),
    evaporated_kg: of('evaporated_kg'),
    boiled_kg: of('boiled_kg'),
    make_up_kg: store.description.make_up === 'float' ? of('evaporated_kg') + of('boiled_kg') : 0,
    level_m_end: store.depth_m,
    dry_s: tally.dry_s,
    liner_C_max: hottest('liner'),
    liner_over_s: over('liner'),
    foam_C_max: hottest('foam'),
    foam_over_s: over('foam'),
    wall_C_max: hottest('wall'),
    wall_over_s: over('wall'),
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
