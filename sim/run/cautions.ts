/**
 * What the person should know before relying on a figure. Keys and the figure each stands beside; the words
 * are in `ui/words`. Limits are the usual ones of the trade; local codes and licensed practice decide.
 */

import { filledWeight } from '../parts/filled-weight.ts';
import { fluidBoilingPoint } from '../physics/fluid.ts';
import type { Plant } from '../plant/plant.ts';
import { LEAST_PRESSURE, NEAR_BOILING_K, PEX_C, TUBE_SPEED } from './limits.ts';
import type { Caution } from './result.ts';
import { type CautionKey, SEVERITIES, type Severity } from './severities.ts';
import { SCALD_FROM, type Tally } from './tally.ts';
import { weightSeverity } from './weight-severity.ts';

/** Hottest water a closed coil may stand in before trapped water is dangerous at once [C]: any heating is; warn from here. */
const TRAPPED_FROM = 40;
/** Water kept in this range for long grows Legionella [C]. */
const LEGIONELLA_BELOW = 50;
/** Starts a day from which an engine or pump is short-cycling. */
const STARTS_A_DAY = 12;

export function cautionsOf(plant: Plant, tally: Tally, figures: Record<string, number | null>): Caution[] {
  const list: Caution[] = [];
  const add: Add = (key, part, figure, value, severity = SEVERITIES[key]) => {
    const caution: Caution = { key, part, severity };
    if (figure !== undefined) caution.figure = figure;
    if (value !== undefined && value !== null) caution.value = value;
    list.push(caution);
  };
  storeCautions(plant, tally, figures, add);
  trappedCautions(plant, figures, add);
  householdCautions(plant, figures, add);
  engineCautions(plant, figures, add);
  collectorCautions(plant, tally, figures, add);
  materialCautions(plant, figures, add);
  if (plant.description.run.faults.length > 0) add('faults_played', 'run');
  if (plant.description.weather.made_up) add('weather_generated', 'weather');
  add('estimate_only', 'plant');
  return list;
}

type Add = (
  key: CautionKey,
  part: string,
  figure?: string,
  value?: number | null,
  severity?: Severity,
) => void;
type Figures = Record<string, number | null>;

function storeCautions(plant: Plant, tally: Tally, f: Figures, add: Add): void {
  const { store } = plant;
  // The floor carries the store as filled, not as it stands when much has boiled off.
  const mass = filledWeight(store.description, plant.description.coils).filled_kg;
  add('weight', 'store', 'store_mass_kg', mass, weightSeverity(plant.description));
  if ((f.boiled_kg ?? 0) > 0.01) add('boiling', 'store', 'boiled_kg', f.boiled_kg);
  else if (tally.topHigh.value > store.boiling_C - NEAR_BOILING_K)
    add('boil_over', 'store', 'store_top_C_max', tally.topHigh.value);
  for (const kind of ['liner', 'foam', 'wall'] as const) {
    if ((f[`${kind}_over_s`] ?? 0) > 0) add(`${kind}_limit`, 'store', `${kind}_C_max`, f[`${kind}_C_max`]);
  }
  if (f.dry_s !== null && f.dry_s !== undefined) add('runs_dry', 'store', 'dry_s', f.dry_s);
  const lowered = 1 - store.depth_m / store.description.water_depth_m;
  if (lowered > 0.02) add('level_low', 'store', 'level_m_end', store.depth_m);
}

/**
 * Whatever coil can be shut in: by a check valve and closed taps or a standing pump, by valves, or by caps while nothing
 * is connected. Only a loop that drains back stands empty, and has air to give. Source: shared/trade.md section 6.
 */
function trappedCautions({ description }: Plant, { store_top_C_max: top_C }: Figures, add: Add): void {
  const { coils, collector } = description;
  if (top_C === null || top_C <= TRAPPED_FROM) return;
  for (const { name } of coils) {
    if (collector?.loop === 'drain-back' && collector.coil === name) continue;
    add('trapped_coil', name, 'store_top_C_max', top_C);
  }
}

function householdCautions(plant: Plant, f: Figures, add: Add): void {
  const { taps, supply } = plant;
  if (!taps) return;
  const hottest = f.outlet_C_max;
  if (taps.description.mixing_valve_C === null) add('scald_no_valve', 'taps', 'outlet_C_max', hottest);
  else if ((hottest ?? 0) > SCALD_FROM) add('scald', 'taps', 'outlet_C_max', hottest);
  if ((f.store_top_C_min ?? 100) < LEGIONELLA_BELOW) {
    add('legionella', taps.coil.description.name, 'store_top_C_min', f.store_top_C_min);
  }
  if ((f.tube_speed_m_s_max ?? 0) > TUBE_SPEED) {
    add('tube_speed', taps.coil.description.name, 'tube_speed_m_s_max', f.tube_speed_m_s_max);
  }
  if ((f.pump_at_limit_s ?? 0) > 0) add('pump_at_limit', 'supply', 'pump_at_limit_s', f.pump_at_limit_s);
  const pressure = f.tap_pressure_Pa_min;
  if (pressure !== null && pressure < LEAST_PRESSURE)
    add('tap_pressure_low', 'supply', 'tap_pressure_Pa_min', pressure);
  add('wiring', 'supply');
  // A mixer with a head shut off behind it crosses hot and cold over; nobody says whether check valves are fitted.
  if (taps.description.draws.some((draw) => draw.shower)) add('back_feed', 'taps');
  if (supply.description.cold.kind === 'cistern' && (f.cistern_C_min ?? 10) < 1) {
    add('freezing_cistern', 'cistern', 'cistern_C_min', f.cistern_C_min);
  }
}

function engineCautions(plant: Plant, f: Figures, add: Add): void {
  const { engine, description } = plant;
  if (!engine) return;
  const part = engine.description.name;
  // An empty timetable makes no engine harmless: then the sentences stand without a time.
  const ran_s = f.engine_s || null;
  add('carbon_monoxide', part, 'engine_s', ran_s);
  add('hot_engine', part, 'engine_s', ran_s);
  add('wiring', part);
  if (engine.description.coolant.kind === 'ethylene glycol') add('coolant_poison', part);
  if ((f.engine_cold_s ?? 0) > 0) add('engine_cold', part, 'coldest_return_C', f.coldest_return_C);
  if ((f.engine_starts ?? 0) > STARTS_A_DAY * description.run.days)
    add('short_cycling', part, 'engine_starts', f.engine_starts);
  const asked = Math.max(...engine.description.load.map((l) => l.output_W));
  const most = Math.max(...engine.description.load.map((l) => engine.output_W(l.from_s)));
  if (most < asked) add('altitude_output', part, 'electricity_J', most);
}

function collectorCautions(plant: Plant, tally: Tally, f: Figures, add: Add): void {
  const { collector, air } = plant;
  if (!collector) return;
  const part = collector.description.name;
  add('wiring', part);
  if ((f.freezing_s ?? 0) > 0) add('freezing_loop', part, 'collector_C_min', f.collector_C_min);
  const boiling = fluidBoilingPoint(collector.description.fluid, air.pressure_Pa);
  if (tally.collectorHigh.value > boiling) add('stagnation', part, 'collector_C_max', f.collector_C_max);
  if (collector.description.fluid.kind === 'ethylene glycol') add('coolant_poison', part);
}

/** Plastic that gets hotter than it is rated for, and metals that eat each other. */
function materialCautions({ description }: Plant, f: Figures, add: Add): void {
  const { coils, engine, store } = description;
  for (const { name, tube } of coils) {
    if (tube.material !== 'PEX') continue;
    const top_C = f.store_top_C_max ?? Number.NEGATIVE_INFINITY;
    if (top_C > PEX_C) add('plastic_tube', name, 'store_top_C_max', top_C);
    // The coolant is as hot as its thermostat, whatever the store.
    else if (engine?.coil === name && engine.thermostat_full_C > PEX_C)
      add('plastic_tube', name, 'store_top_C_max');
  }
  const copper = coils.some(({ tube }) => tube.material === 'copper');
  if (copper && store.wall.material === 'steel' && store.liner === null) add('mixed_metals', 'store');
}
