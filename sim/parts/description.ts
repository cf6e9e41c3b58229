/**
 * What a plant is made of, in SI units, after a scenario file was read and every default filled in.
 * The parts compute from these; `sim/scenario` produces them; nothing here computes.
 *
 * Units are in the names: `_m`, `_m2`, `_m3_s`, `_C` (degrees Celsius), `_K` (a difference), `_W`, `_Pa`,
 * `_s`, `_rad`, `_kg_s`, `_J_K`; shares and multipliers are plain numbers.
 */

/** The liquid in a coil or loop. `mass_share` is the glycol's share by mass, 0 for plain water. */
export interface Fluid {
  kind: 'water' | 'propylene glycol' | 'ethylene glycol';
  mass_share: number;
}

/** Where a thing stands: a room with a daily swing (warmest at `warmest_s` after midnight), or outdoors. */
export type Surroundings =
  | { kind: 'room'; mean_C: number; swing_K: number; warmest_s: number; relative_humidity: number }
  | { kind: 'outdoors' };

/** One sheet of a wall, from the water outwards. `max_C` is the service limit of its warm face, or null. */
export interface WallLayer {
  material: string;
  thickness_m: number;
  resistance_m2K_W: number;
  max_C: number | null;
}

export type StoreShape =
  | { kind: 'box'; length_m: number; width_m: number; height_m: number }
  | { kind: 'upright cylinder'; diameter_m: number; height_m: number }
  | { kind: 'lying cylinder'; diameter_m: number; length_m: number };

/** The unpressurised store. Heights are measured from the inside bottom. */
export interface StoreDescription {
  shape: StoreShape;
  water_depth_m: number;
  /** The structural wall in contact with (or behind the liner of) the water; its share carries heat up and down. */
  wall: { material: string; thickness_m: number; conductivity_W_mK: number; max_C: number | null };
  liner: { material: string; max_C: number } | null;
  insulation: { sides: WallLayer[]; bottom: WallLayer[]; lid: WallLayer[] };
  lid: 'closed' | 'ajar' | 'open';
  /** Share of an open surface's evaporation that escapes past the lid (1 when open). */
  vapour_share: number;
  /** Multiplier on the evaporation of open water, under whatever share escapes (default 1). */
  evaporation: number;
  surroundings: Surroundings;
  /** What stands below the bottom face; null: the same surroundings. */
  ground_C: number | null;
  /** Multiplier on the conducted loss for bridges and leaks (default 1.5, until a cool-down test replaces it). */
  bridges: number;
  /** 'float' keeps the level with water at `make_up_C`; 'by hand' lets it fall. */
  make_up: 'float' | 'by hand';
  make_up_C: number;
}

/** Tube from a table or by own numbers. `label` says which, as in "3/8 in refrigeration tube". */
export interface Tube {
  label: string;
  material: string;
  outside_diameter_m: number;
  inside_diameter_m: number;
  conductivity_W_mK: number;
  density_kg_m3: number;
  heat_capacity_J_kgK: number;
}

/** A coil immersed in the store. */
export interface CoilDescription {
  name: string;
  tube: Tube;
  rolls: number;
  roll_length_m: number;
  join: 'series' | 'parallel';
  coil_diameter_m: number;
  spacing: 'touching' | 'finger gap' | 'spread';
  /** Distance between neighbouring turns, centre to centre. */
  pitch_m: number;
  bottom_m: number;
  top_m: number;
  fed_from: 'bottom' | 'top';
  fouling_m2K_W: number;
  /** Multiplier on the outside film for bundling (from `spacing` unless measured). */
  bundling: number;
  /** Multiplier on the outside correlation for a real tank (default 0.8, band 0.5-1.2). */
  outside_film: number;
  /** Multiplier on the inside film (default 1). */
  inside_film: number;
  /** Multiplier on the pressure lost in its turns (default 1). */
  friction: number;
}

/** A span of the week: `days` counts Monday as 0; from and to are seconds after midnight, to > from. */
export interface WeekSpan {
  days: number[];
  from_s: number;
  to_s: number;
}

export interface Fuel {
  name: string;
  lower_heating_value_J_kg: number;
  density_kg_m3: number;
}

/** A liquid-cooled engine generator whose coolant loop passes through a coil in the store. */
export interface EngineDescription {
  name: string;
  /** Name of the coil its coolant flows through. */
  coil: string;
  fuel: Fuel;
  rated_output_W: number;
  /** Fuel line: mass flow = no_load_kg_s + slope_kg_J x electrical output. */
  no_load_kg_s: number;
  slope_kg_J: number;
  /** Electrical load over the day while it runs: steps, first at 0 s; each holds until the next. */
  load: { from_s: number; output_W: number }[];
  /** Share of the fuel's lower heating value that reaches the coolant, at rated and at quarter load. */
  jacket_share: { rated: number; quarter: number };
  /** Further share recovered from the exhaust into the coolant; 0 unless an exchanger is fitted. */
  exhaust_share: number;
  /** Block, head and coolant (loop outside the coil included). */
  heat_capacity_J_K: number;
  coolant: Fluid;
  coolant_flow_m3_s: number;
  thermostat_open_C: number;
  thermostat_full_C: number;
  /** Radiator takes over between these, proportionally; conductance to the air at full. */
  radiator: { starts_C: number; full_C: number; conductance_W_K: number };
  block_loss_W_K: number;
  /** Heat the stopped engine draws out of the store per kelvin by thermosiphon (0 with a check valve). */
  standby_loss_W_K: number;
  /** Coolant returning colder than this is warned of. */
  coldest_return_C: number;
  pipes: { length_m: number; conductance_W_mK: number };
  surroundings: Surroundings;
  runs:
    | { kind: 'timetable'; spans: WeekSpan[] }
    | { kind: 'call for heat'; below_C: number; until_C: number; probe_m: number; spans: WeekSpan[] };
}

/** Incidence modifier: one curve, or a pair for tubes; angles ascending from 0, factor 1 at 0. */
export type Incidence =
  | { kind: 'single'; b0: number }
  | {
      kind: 'two-way';
      angle_rad: number[];
      /** In the plane along the tubes. */
      lengthwise: number[];
      /** In the plane across the tubes. */
      crosswise: number[];
    };

export interface CollectorDescription {
  name: string;
  coil: string;
  kind: 'evacuated tubes' | 'flat plate';
  /** Area on the basis that eta0, a1 and a2 are stated on. */
  area_m2: number;
  basis: 'gross' | 'aperture' | 'absorber';
  tubes: number | null;
  eta0: number;
  a1_W_m2K: number;
  a2_W_m2K2: number;
  incidence: Incidence;
  diffuse_modifier: number;
  heat_capacity_J_m2K: number;
  /** Stagnation ceiling: the quadratic is not extrapolated past it. */
  ceiling_C: number;
  tilt_rad: number;
  /** From north, clockwise; south is pi. */
  azimuth_rad: number;
  /** Horizon line: azimuth ascending in [0, 2 pi), elevation of the obstacle. Empty: open. */
  horizon: { azimuth_rad: number; elevation_rad: number }[];
  /** Share of each month's sun lost to snow or shade on the glass, January first. */
  shade_by_month: number[];
  fluid: Fluid;
  loop: 'filled' | 'drain-back';
  pump_flow_m3_s: number;
  pump_power_W: number;
  on_K: number;
  off_K: number;
  /** Store-top temperature above which the pump stays off. */
  high_limit_C: number;
  pipes: { length_m: number; conductance_W_mK: number; outdoor_share: number };
  check_valve: boolean;
  /** Heat drawn back to the collector per kelvin at night without a check valve. */
  night_loss_W_K: number;
}

export type ColdWater =
  | { kind: 'fixed'; temperature_C: number }
  | { kind: 'by month'; temperature_C: number[] }
  | {
      kind: 'cistern';
      volume_m3: number;
      start_C: number;
      /** To its surroundings. */
      conductance_W_K: number;
      surroundings: Surroundings;
      /** Water that replaces what is drawn. */
      refill_C: number;
    };

/** Cold supply: a small demand pump, from open flow at no pressure to its cut-out pressure. */
export interface SupplyDescription {
  cold: ColdWater;
  pump: { open_flow_m3_s: number; cut_out_Pa: number; power_W: number };
  /** Height of the outlet above the cistern's water. */
  lift_m: number;
}

/** One draw: starts at `at_s` after midnight on `days` (Monday 0). */
export interface Draw {
  name: string;
  days: number[];
  at_s: number;
  duration_s: number;
  /** Flow wanted at the outlet, mixed. */
  flow_m3_s: number;
  wanted_C: number;
  /** 'head' is an orifice rated at `rated_Pa`; 'tap' is throttled by hand to the flow wanted. */
  outlet: { kind: 'head'; rated_Pa: number } | { kind: 'tap' };
  /** Counts as a shower for the figures. */
  shower: boolean;
}

export interface TapsDescription {
  /** Name of the coil that heats the household's water. */
  coil: string;
  draws: Draw[];
  /** Thermostatic mixing valve near the store: the hottest it lets through, or null if none is fitted. */
  mixing_valve_C: number | null;
  /** From the store to the taps. */
  pipe: { length_m: number; tube: Tube; conductance_W_mK: number; surroundings: Surroundings };
}

/** On-demand heater behind the household coil. */
export interface BackupDescription {
  name: string;
  fuel: Fuel;
  efficiency: number;
  max_heat_W: number;
  set_C: number;
}

/** What things cost, in a currency of the household's own; each number's unit stands in its name. */
export interface Prices {
  /** Its sign or short word. */
  currency: string;
  /** When the prices were asked for, in the household's words. */
  dated: string;
  copper_per_kg: number;
  pex_per_m: number;
  fitting_per_joint: number;
  foam_per_m2_25mm: number;
  collector_per_m2: number;
  /** Holds in place of the price by area where the collector is counted in tubes; null: it does not. */
  collector_per_tube: number | null;
  mixing_valve_each: number;
  check_valve_each: number;
  lid_seal_per_m: number;
  /** By the fuel's name. */
  fuel_per_litre: { diesel: number; gasoline: number; propane: number };
}

/** Hourly weather of a whole year in local standard time; element h is the mean of hour h..h+1. */
export interface HourlyWeather {
  place: string;
  /** A year made up from monthly means, not measured. */
  made_up?: true;
  latitude_rad: number;
  longitude_rad: number;
  altitude_m: number;
  time_zone_s: number;
  /** 8760 entries, from 1 January 00:00-01:00 (29 February left out). */
  global_horizontal_W_m2: Float64Array;
  direct_normal_W_m2: Float64Array;
  diffuse_horizontal_W_m2: Float64Array;
  air_C: Float64Array;
  dew_point_C: Float64Array;
  wind_m_s: Float64Array;
  albedo: Float64Array;
}

export interface PlantDescription {
  name: string;
  site: { latitude_rad: number; longitude_rad: number; altitude_m: number; time_zone_s: number };
  weather: HourlyWeather;
  store: StoreDescription;
  coils: CoilDescription[];
  engine: EngineDescription | null;
  collector: CollectorDescription | null;
  supply: SupplyDescription;
  taps: TapsDescription | null;
  backup: BackupDescription | null;
  prices: Prices;
  run: RunDescription;
}

/** A failure that a run plays, from one time of the run until before another. */
export type Fault = { from_s: number; to_s: number } & (
  | {
      /** The collectors' pump stands, the engine does not start, or nobody draws (away, a valve shut, no pump). */
      kind: 'collector pump' | 'engine' | 'household';
    }
  | {
      /** Air outdoors no warmer than this. */
      kind: 'cold spell';
      temperature_C: number;
    }
);

export interface RunDescription {
  /** Day of the (365-day) year the run starts on, 0 = 1 January, at midnight. */
  first_day: number;
  /** Weekday of the first day, Monday 0. */
  first_weekday: number;
  days: number;
  /** Series are sampled this often. */
  interval_s: number;
  layers: number;
  tolerance: number;
  /** Start temperatures of the water at the bottom and at the top, linear between. */
  start: { bottom_C: number; top_C: number };
  faults: Fault[];
}
