/**
 * What the person should know before relying on a figure. Keys and the figure each stands beside; the words
 * are in `ui/words`. Limits are the usual ones of the trade; local codes and licensed practice decide.
 */

import { filledWeight } from '../parts/filled-weight.ts';
import { fluidBoilingPoint } from '../physics/fluid.ts';
import type { Plant } from '../plant/plant.ts';
import type { Caution } from './result.ts';
import { SCALD_FROM, type Tally } from './tally.ts';

/** Hottest water a closed coil may stand in before trapped water is dangerous at once [C]: any heating is; warn from here. */
const TRAPPED_FROM = 40;
/** Water kept in this range for long grows Legionella [C]. */
const LEGIONELLA_BELOW = 50;
/** Copper's usual ceiling of speed for hot water [m/s] (5 ft/s). */
const TUBE_SPEED = 1.52;
/** Pressure most heads and heaters need [Pa] (20 psi). */
const LEAST_PRESSURE = 138_000;
/** Starts a day from which an engine or pump is short-cycling. */
const STARTS_A_DAY = 12;
/** PEX tube is rated to 180 F at 100 psi [C]: above, at less pressure only. */
const PEX_C = 82.2;
/** Floors of houses are built for about 40 lb/ft2 [kg/m2]. */
const FLOOR_KG_M2 = 195;

export function cautionsOf(plant: Plant, tally: Tally, figures: Record<string, number | null>): Caution[] {
  const list: Caution[] = [];
  const add = (
    key: string,
    part: string,
    severity: Caution['severity'],
    figure?: string,
    value?: number | null,
  ): void => {
    const caution: Caution = { key, part, severity };
    if (figure !== undefined) caution.figure = figure;
    if (value !== undefined && value !== null) caution.value = value;
    list.push(caution);
  };
  storeCautions(plant, tally, figures, add);
  householdCautions(plant, figures, add);
  engineCautions(plant, figures, add);
  collectorCautions(plant, tally, figures, add);
  materialCautions(plant, figures, add);
  if (plant.description.run.faults.length > 0) add('faults_played', 'run', 'note');
  if (plant.description.weather.made_up) add('weather_generated', 'weather', 'note');
  add('estimate_only', 'plant', 'note');
  return list;
}

type Add = (
  key: string,
  part: string,
  severity: Caution['severity'],
  figure?: string,
  value?: number | null,
) => void;
type Figures = Record<string, number | null>;

function storeCautions(plant: Plant, tally: Tally, f: Figures, add: Add): void {
  const { store } = plant;
  // The floor carries the store as filled, not as it stands when much has boiled off.
  const mass = filledWeight(store.description, plant.description.coils).filled_kg;
  const perArea = mass / (store.geometry.bottom_m2 || store.geometry.surface_m2);
  add('weight', 'store', perArea > FLOOR_KG_M2 ? 'warning' : 'note', 'store_mass_kg', mass);
  if ((f.boiled_kg ?? 0) > 0.01) add('boiling', 'store', 'danger', 'boiled_kg', f.boiled_kg);
  else if (tally.topHigh.value > store.boiling_C - 8)
    add('boil_over', 'store', 'warning', 'store_top_C_max', tally.topHigh.value);
  for (const kind of ['liner', 'foam', 'wall'] as const) {
    if ((f[`${kind}_over_s`] ?? 0) > 0)
      add(`${kind}_limit`, 'store', 'warning', `${kind}_C_max`, f[`${kind}_C_max`]);
  }
  if (f.dry_s !== null && f.dry_s !== undefined) add('runs_dry', 'store', 'danger', 'dry_s', f.dry_s);
  const lowered = 1 - store.depth_m / store.description.water_depth_m;
  if (lowered > 0.02) add('level_low', 'store', 'warning', 'level_m_end', store.depth_m);
}

function householdCautions(plant: Plant, f: Figures, add: Add): void {
  const { taps, supply } = plant;
  if (!taps) return;
  const hottest = f.outlet_C_max;
  if (taps.description.mixing_valve_C === null)
    add('scald_no_valve', 'taps', 'danger', 'outlet_C_max', hottest);
  else if ((hottest ?? 0) > SCALD_FROM) add('scald', 'taps', 'danger', 'outlet_C_max', hottest);
  if ((f.store_top_C_max ?? 0) > TRAPPED_FROM) {
    add('trapped_coil', taps.coil.description.name, 'danger', 'store_top_C_max', f.store_top_C_max);
  }
  if ((f.store_top_C_min ?? 100) < LEGIONELLA_BELOW) {
    add('legionella', taps.coil.description.name, 'warning', 'store_top_C_min', f.store_top_C_min);
  }
  if ((f.tube_speed_m_s_max ?? 0) > TUBE_SPEED) {
    add('tube_speed', taps.coil.description.name, 'note', 'tube_speed_m_s_max', f.tube_speed_m_s_max);
  }
  if ((f.pump_at_limit_s ?? 0) > 0)
    add('pump_at_limit', 'supply', 'note', 'pump_at_limit_s', f.pump_at_limit_s);
  const pressure = f.tap_pressure_Pa_min;
  if (pressure !== null && pressure < LEAST_PRESSURE)
    add('tap_pressure_low', 'supply', 'note', 'tap_pressure_Pa_min', pressure);
  add('wiring', 'supply', 'note');
  // A mixer with a head shut off behind it crosses hot and cold over; nobody says whether check valves are fitted.
  if (taps.description.draws.some((draw) => draw.shower)) add('back_feed', 'taps', 'note');
  if (supply.description.cold.kind === 'cistern' && (f.cistern_C_min ?? 10) < 1) {
    add('freezing_cistern', 'cistern', 'warning', 'cistern_C_min', f.cistern_C_min);
  }
}

function engineCautions(plant: Plant, f: Figures, add: Add): void {
  const { engine, description } = plant;
  if (!engine) return;
  const part = engine.description.name;
  add('carbon_monoxide', part, 'danger', 'engine_s', f.engine_s);
  add('hot_engine', part, 'note', 'engine_s', f.engine_s);
  if (engine.description.coolant.kind === 'ethylene glycol') add('coolant_poison', part, 'danger');
  if ((f.engine_cold_s ?? 0) > 0) add('engine_cold', part, 'warning', 'coldest_return_C', f.coldest_return_C);
  if ((f.engine_starts ?? 0) > STARTS_A_DAY * description.run.days)
    add('short_cycling', part, 'warning', 'engine_starts', f.engine_starts);
  const asked = Math.max(...engine.description.load.map((l) => l.output_W));
  const most = Math.max(...engine.description.load.map((l) => engine.output_W(l.from_s)));
  if (most < asked) add('altitude_output', part, 'note', 'electricity_J', most);
}

function collectorCautions(plant: Plant, tally: Tally, f: Figures, add: Add): void {
  const { collector, air } = plant;
  if (!collector) return;
  const part = collector.description.name;
  if ((f.freezing_s ?? 0) > 0) add('freezing_loop', part, 'danger', 'collector_C_min', f.collector_C_min);
  const boiling = fluidBoilingPoint(collector.description.fluid, air.pressure_Pa);
  if (tally.collectorHigh.value > boiling)
    add('stagnation', part, 'warning', 'collector_C_max', f.collector_C_max);
  if (collector.description.fluid.kind === 'ethylene glycol') add('coolant_poison', part, 'danger');
}

/** Plastic that gets hotter than it is rated for, and metals that eat each other. */
function materialCautions({ description }: Plant, f: Figures, add: Add): void {
  const { coils, engine, store } = description;
  for (const { name, tube } of coils) {
    if (tube.material !== 'PEX') continue;
    const top_C = f.store_top_C_max ?? Number.NEGATIVE_INFINITY;
    if (top_C > PEX_C) add('plastic_tube', name, 'warning', 'store_top_C_max', top_C);
    // The coolant is as hot as its thermostat, whatever the store.
    else if (engine?.coil === name && engine.thermostat_full_C > PEX_C)
      add('plastic_tube', name, 'warning', 'store_top_C_max');
  }
  const copper = coils.some(({ tube }) => tube.material === 'copper');
  if (copper && store.wall.material === 'steel' && store.liner === null)
    add('mixed_metals', 'store', 'warning');
}
