/**
 * A plant made by hand, so that a test of sim needs no scenario file: a box of water in a room, nothing flows.
 * Each maker takes what the test wants otherwise.
 */
import type {
  BackupDescription,
  CoilDescription,
  CollectorDescription,
  Draw,
  EngineDescription,
  Fuel,
  PlantDescription,
  Prices,
  StoreDescription,
  SupplyDescription,
  Surroundings,
  TapsDescription,
  Tube,
  WallLayer,
} from '../../../sim/parts/description.ts';
import { findTube, type TubeStandard } from '../../../sim/physics/tubes.ts';
import { steadyWeather, sunnyWeather } from './weather.ts';

export const EVERY_DAY = [0, 1, 2, 3, 4, 5, 6];

export function roomAt(mean_C: number): Surroundings {
  return { kind: 'room', mean_C, swing_K: 0, warmest_s: 54_000, relative_humidity: 0.5 };
}

/** A sheet of a resistance [m2 K/W] and next to no thickness. */
export function sheet(resistance_m2K_W: number): WallLayer {
  return { material: 'sheet', thickness_m: 1e-6, resistance_m2K_W, max_C: null };
}

/** What conducts nothing to speak of. */
export const SEALED = [sheet(1e12)];

export function tubeOf(standard: TubeStandard, size: string): Tube {
  const tube = findTube(standard, size);
  if (!tube) throw new Error(`tests - expected a tube that is sold - got ${standard} ${size}`);
  return tube;
}

export function storeOf(over: Partial<StoreDescription> = {}): StoreDescription {
  return {
    shape: { kind: 'box', length_m: 1, width_m: 0.8, height_m: 1 },
    water_depth_m: 0.8,
    wall: { material: 'plywood', thickness_m: 0.018, conductivity_W_mK: 0.12, max_C: null },
    liner: null,
    insulation: { sides: [sheet(4)], bottom: [sheet(3)], lid: [sheet(4)] },
    lid: 'closed',
    vapour_share: 0,
    evaporation: 1,
    surroundings: roomAt(15),
    ground_C: null,
    bridges: 1.5,
    make_up: 'float',
    make_up_C: 10,
    ...over,
  };
}

export function coilOf(name: string, over: Partial<CoilDescription> = {}): CoilDescription {
  return {
    name,
    tube: tubeOf('plumbing L', '3/4'),
    rolls: 1,
    roll_length_m: 30,
    join: 'series',
    coil_diameter_m: 0.6,
    spacing: 'finger gap',
    pitch_m: 0.04,
    bottom_m: 0.05,
    top_m: 0.75,
    fed_from: 'bottom',
    fouling_m2K_W: 0,
    bundling: 0.75,
    outside_film: 0.8,
    inside_film: 1,
    friction: 1,
    ...over,
  };
}

export const DIESEL: Fuel = { name: 'diesel', lower_heating_value_J_kg: 42.8e6, density_kg_m3: 840 };

export function engineOf(coil: string, over: Partial<EngineDescription> = {}): EngineDescription {
  return {
    name: 'set',
    coil,
    fuel: DIESEL,
    rated_output_W: 8000,
    no_load_kg_s: 1e-4,
    slope_kg_J: 5.5e-8,
    load: [{ from_s: 0, output_W: 4000 }],
    jacket_share: { rated: 0.28, quarter: 0.34 },
    exhaust_share: 0,
    heat_capacity_J_K: 60_000,
    coolant: { kind: 'ethylene glycol', mass_share: 0.5 },
    coolant_flow_m3_s: 4e-4,
    thermostat_open_C: 78,
    thermostat_full_C: 90,
    radiator: { starts_C: 92, full_C: 100, conductance_W_K: 150 },
    block_loss_W_K: 8,
    standby_loss_W_K: 0,
    coldest_return_C: 60,
    pipes: { length_m: 6, conductance_W_mK: 0.2 },
    surroundings: roomAt(15),
    runs: { kind: 'timetable', spans: [{ days: EVERY_DAY, from_s: 54_000, to_s: 68_400 }] },
    ...over,
  };
}

/** An engine that is nothing but a heater of `power_W`: always open to its coil, no radiator, a block that holds little. */
export function heaterOf(coil: string, power_W: number, to_s = 86_400): EngineDescription {
  return engineOf(coil, {
    name: 'heater',
    no_load_kg_s: power_W / 1e7,
    slope_kg_J: 0,
    load: [{ from_s: 0, output_W: 0 }],
    fuel: { name: 'heat', lower_heating_value_J_kg: 1e7, density_kg_m3: 1 },
    jacket_share: { rated: 1, quarter: 1 },
    heat_capacity_J_K: 150,
    coolant: { kind: 'water', mass_share: 0 },
    coolant_flow_m3_s: 2e-4,
    thermostat_open_C: -40,
    thermostat_full_C: -39,
    radiator: { starts_C: 240, full_C: 250, conductance_W_K: 1 },
    block_loss_W_K: 0,
    pipes: { length_m: 0, conductance_W_mK: 0 },
    runs: { kind: 'timetable', spans: [{ days: EVERY_DAY, from_s: 0, to_s }] },
  });
}

export function collectorOf(coil: string, over: Partial<CollectorDescription> = {}): CollectorDescription {
  return {
    name: 'panels',
    coil,
    kind: 'flat plate',
    area_m2: 4,
    basis: 'gross',
    tubes: null,
    eta0: 0.7,
    a1_W_m2K: 3.5,
    a2_W_m2K2: 0.012,
    incidence: { kind: 'single', b0: 0.1 },
    diffuse_modifier: 0.9,
    heat_capacity_J_m2K: 8000,
    ceiling_C: 200,
    tilt_rad: Math.PI / 4,
    azimuth_rad: Math.PI,
    horizon: [],
    shade_by_month: new Array<number>(12).fill(0),
    fluid: { kind: 'propylene glycol', mass_share: 0.45 },
    loop: 'filled',
    pump_flow_m3_s: 6e-5,
    pump_power_W: 30,
    on_K: 7,
    off_K: 3,
    high_limit_C: 90,
    pipes: { length_m: 15, conductance_W_mK: 0.2, outdoor_share: 0.4 },
    check_valve: true,
    night_loss_W_K: 0,
    ...over,
  };
}

export function supplyOf(over: Partial<SupplyDescription> = {}): SupplyDescription {
  return {
    cold: { kind: 'fixed', temperature_C: 8 },
    pump: { open_flow_m3_s: 2.5e-4, cut_out_Pa: 345_000, power_W: 90 },
    lift_m: 2,
    ...over,
  };
}

export function drawOf(over: Partial<Draw> = {}): Draw {
  return {
    name: 'shower',
    days: EVERY_DAY,
    at_s: 25_200,
    duration_s: 480,
    flow_m3_s: 1e-4,
    wanted_C: 40,
    outlet: { kind: 'tap' },
    shower: true,
    ...over,
  };
}

export function tapsOf(coil: string, over: Partial<TapsDescription> = {}): TapsDescription {
  return {
    coil,
    draws: [drawOf()],
    mixing_valve_C: null,
    pipe: {
      length_m: 8,
      tube: tubeOf('PEX', '1/2'),
      conductance_W_mK: 0.2,
      surroundings: roomAt(18),
    },
    ...over,
  };
}

export function backupOf(over: Partial<BackupDescription> = {}): BackupDescription {
  return {
    name: 'heater',
    fuel: { name: 'propane', lower_heating_value_J_kg: 46.3e6, density_kg_m3: 500 },
    efficiency: 0.82,
    max_heat_W: 25_000,
    set_C: 48,
    ...over,
  };
}

/** Round numbers, each another, so that a mix-up shows. */
export function pricesOf(over: Partial<Prices> = {}): Prices {
  return {
    currency: '$',
    dated: 'made up',
    copper_per_kg: 10,
    pex_per_m: 2,
    fitting_per_joint: 5,
    foam_per_m2_25mm: 12,
    collector_per_m2: 300,
    collector_per_tube: null,
    mixing_valve_each: 80,
    check_valve_each: 20,
    lid_seal_per_m: 2,
    fuel_per_litre: { diesel: 1.5, gasoline: 1.4, propane: 0.7 },
    ...over,
  };
}

type Overrides = Partial<Omit<PlantDescription, 'run'>> & { run?: Partial<PlantDescription['run']> };

/** The box of water and nothing else, but for what is given. */
export function plantOf(over: Overrides = {}): PlantDescription {
  const { run, ...rest } = over;
  return {
    name: 'by hand',
    site: { latitude_rad: 0.77, longitude_rad: 0, altitude_m: 0, time_zone_s: 0 },
    weather: steadyWeather(5),
    store: storeOf(),
    coils: [],
    engine: null,
    collector: null,
    supply: supplyOf(),
    taps: null,
    backup: null,
    prices: pricesOf(),
    ...rest,
    run: {
      first_day: 20,
      first_weekday: 0,
      days: 1,
      interval_s: 3600,
      layers: 20,
      tolerance: 1e-4,
      start: { bottom_C: 50, top_C: 60 },
      faults: [],
      ...run,
    },
  };
}

/** A household with engine, collector and four draws a day: everything at once. */
export function fullPlant(over: Overrides = {}): PlantDescription {
  return plantOf({
    weather: sunnyWeather(5),
    coils: [
      coilOf('household'),
      coilOf('engine', { roll_length_m: 18, fed_from: 'top' }),
      coilOf('collector', { tube: tubeOf('refrigeration', '1/2'), roll_length_m: 15, fed_from: 'top' }),
    ],
    engine: engineOf('engine'),
    collector: collectorOf('collector'),
    taps: tapsOf('household', {
      mixing_valve_C: 48,
      draws: [
        drawOf({ at_s: 23_400 }),
        drawOf({ name: 'wash', at_s: 28_000, duration_s: 90, flow_m3_s: 6e-5, shower: false }),
        drawOf({
          name: 'dishes',
          at_s: 66_000,
          duration_s: 240,
          flow_m3_s: 8e-5,
          wanted_C: 44,
          shower: false,
        }),
        drawOf({ at_s: 71_000, outlet: { kind: 'head', rated_Pa: 300_000 } }),
      ],
    }),
    ...over,
  });
}
