/**
 * The state vector. Integrals of flows come first, at fixed places; the parts' own states follow, in the
 * order in which the parts claim them. A part keeps the place it was given and knows nothing of the rest.
 */

/** Energy paths [J]: each is computed once, leaves one side and enters the other. */
export const PATHS = {
  fuel_to_coolant: 'in',
  engine_to_store: 'inside',
  radiator_to_air: 'out',
  block_to_air: 'out',
  engine_pipes_to_air: 'out',
  standby_to_engine: 'inside',
  sun_to_collector: 'in',
  collector_to_store: 'inside',
  collector_pipes_to_air: 'out',
  night_to_collector: 'inside',
  store_conducted: 'out',
  store_surface_air: 'out',
  store_lid_vapour: 'out',
  store_boiled: 'out',
  make_up_water: 'in',
  household_cold_in: 'in',
  household_to_taps: 'out',
  household_heat: 'inside',
  tap_pipe_to_air: 'out',
  backup_to_water: 'in',
} as const;
export type PathKey = keyof typeof PATHS;

/** Other integrals of a run. */
export const AMOUNTS = [
  'fuel_kg',
  'engine_electricity_J',
  'pump_electricity_J',
  'evaporated_kg',
  'boiled_kg',
  'mixed_kg',
  'coil_kg',
  'backup_fuel_kg',
] as const;
export type AmountKey = (typeof AMOUNTS)[number];

const keys: string[] = [...Object.keys(PATHS), ...AMOUNTS];
const places = Object.fromEntries(keys.map((key, i) => [key, i]));

/** Place of an energy path or amount in every state vector. */
export const placeOf = places as Record<PathKey | AmountKey, number>;

interface StateDeclaration {
  name: string;
  initial: number;
  sharpness: number;
}

/** Hands out places in the state vector; states are temperature-like [K] or shares of 1. */
export class Layout {
  readonly #states: StateDeclaration[] = [];

  /**
   * Claims neighbouring places for a part's states; returns the first.
   *
   * @param sharpness what their tolerance is divided by: a thermostat or a control turns a small error of some
   *   states into a large error of heat
   */
  claim(part: string, state: string, initial: ArrayLike<number>, sharpness = 1): number {
    const first = keys.length + this.#states.length;
    for (let i = 0; i < initial.length; i++) {
      const name = initial.length > 1 ? `${part}.${state}[${i}]` : `${part}.${state}`;
      this.#states.push({ name, initial: initial[i], sharpness });
    }
    return first;
  }

  get size(): number {
    return keys.length + this.#states.length;
  }

  nameOf(index: number): string {
    return index < keys.length ? keys[index] : this.#states[index - keys.length].name;
  }

  /** The starting vector: integrals at zero, states at their declared values. */
  initial(): number[] {
    return [...keys.map(() => 0), ...this.#states.map((s) => s.initial)];
  }

  /** Absolute tolerance by place: integrals do not steer the step. */
  tolerances(absolute: number): number[] {
    return [...keys.map(() => Number.POSITIVE_INFINITY), ...this.#states.map(() => absolute)];
  }

  /** What tolerances are divided by, by place. */
  sharpness(): number[] {
    return [...keys.map(() => 1), ...this.#states.map((s) => s.sharpness)];
  }
}
