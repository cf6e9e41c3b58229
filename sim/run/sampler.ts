/** Fills the series of a result: states where they are sampled, powers as means over the interval that closes there. */
import { type AmountKey, type PathKey, placeOf } from '../parts/layout.ts';
import { liquid, REFERENCE_HEAT_CAPACITY, temperatureOf } from '../parts/liquid.ts';
import type { Plant } from '../plant/plant.ts';
import type { Series } from './result.ts';

const WATER = { kind: 'water', mass_share: 0 } as const;
/** With samples this close, an outlet temperature is read at the instant; further apart it is the mean of what flowed [s]. */
const INSTANT_BELOW = 30;

/**
 * Channels that are the mean rate of integrals. With `stored_W` they hold every path of the ledger, so that the
 * balance can be drawn up over any stretch of the run.
 */
const RATES: [channel: string, integrals: PathKey[], less?: PathKey][] = [
  ['engine_W', ['engine_to_store']],
  ['collector_W', ['collector_to_store']],
  ['household_W', ['household_heat']],
  ['loss_W', ['store_conducted', 'store_surface_air']],
  ['evaporation_W', ['store_lid_vapour', 'store_boiled']],
  ['radiator_W', ['radiator_to_air']],
  ['fuel_W', ['fuel_to_coolant']],
  ['backup_W', ['backup_to_water']],
  ['engine_loss_W', ['block_to_air', 'engine_pipes_to_air']],
  ['standby_W', ['standby_to_engine']],
  ['absorbed_W', ['sun_to_collector']],
  ['collector_loss_W', ['collector_pipes_to_air']],
  ['night_W', ['night_to_collector']],
  ['make_up_W', ['make_up_water']],
  ['taps_W', ['household_to_taps'], 'household_cold_in'],
  ['tap_pipe_W', ['tap_pipe_to_air']],
];

export class Sampler {
  readonly series: Series;
  readonly #plant: Plant;
  readonly #channels: Record<string, Float32Array>;
  #next = 0;
  #opening = 0;
  #before: number[];
  #energyBefore_J: number;
  readonly #ranCold: () => number;
  #ranColdBefore = 0;

  /**
   * @param ranCold time for which draws have run cold so far [s]
   * @param from_s time of the first sample; rates are known from the second on
   */
  constructor(plant: Plant, initial: number[], ranCold: () => number, from_s = 0) {
    this.#plant = plant;
    this.#ranCold = ranCold;
    this.#before = initial.slice();
    this.#energyBefore_J = plant.energy(initial);
    const { run } = plant.description;
    const samples = Math.floor((run.days * 86_400 - from_s) / run.interval_s + 1e-9) + 1;
    const channel = () => new Float32Array(samples);
    this.#channels = Object.fromEntries(RATES.map(([key]) => [key, channel()]));
    const states = ['stored_W', 'hot_flow_m3_s', 'mixed_flow_m3_s', 'cold_C', 'air_C', 'level_m'];
    if (plant.taps) states.push('outlet_C', 'wanted_C', 'coil_outlet_C', 'hot_line_C', 'ran_cold_s');
    if (plant.engine) states.push('engine_C');
    if (plant.collector) states.push('collector_C', 'sun_W_m2');
    for (const key of states) this.#channels[key] = channel();
    const { layers, geometry } = plant.store;
    this.series = {
      interval_s: run.interval_s,
      time_s: Float64Array.from({ length: samples }, (_, i) => from_s + i * run.interval_s),
      layers,
      height_m: geometry.middle_m.slice(),
      layer_C: new Float32Array(samples * layers),
      channels: this.#channels,
    };
  }

  /** Time of the next sample [s]; Infinity when all are taken. */
  get next_s(): number {
    return this.#next < this.series.time_s.length ? this.series.time_s[this.#next] : Number.POSITIVE_INFINITY;
  }

  /** The series as far as it is filled: a run stopped early has no samples beyond. */
  filled(): Series {
    const n = this.#next;
    if (n === this.series.time_s.length) return this.series;
    const channels = Object.entries(this.#channels).map(
      ([key, values]) => [key, values.slice(0, n)] as const,
    );
    return {
      ...this.series,
      time_s: this.series.time_s.slice(0, n),
      layer_C: this.series.layer_C.slice(0, n * this.series.layers),
      channels: Object.fromEntries(channels),
    };
  }

  /** Takes the next sample from the state at its time. `observed` is the plant evaluated there, or nothing flows. */
  take(t: number, y: number[], evaluate: () => void): void {
    const plant = this.#plant;
    const i = this.#next++;
    const ch = this.#channels;
    const seconds = this.series.interval_s;
    const drawing = plant.taps?.drawing ?? false;
    if (drawing) evaluate();
    else plant.store.prepare(y);
    plant.store.record(y, this.series.layer_C, i * this.series.layers);
    const change = (key: PathKey | AmountKey) => y[placeOf[key]] - this.#before[placeOf[key]];
    for (const [key, integrals, less] of RATES) {
      let sum = less ? -change(less) : 0;
      for (const integral of integrals) sum += change(integral);
      ch[key][i] = i === 0 ? 0 : sum / seconds;
    }
    const energy_J = plant.energy(y);
    ch.stored_W[i] = i === 0 ? 0 : (energy_J - this.#energyBefore_J) / seconds;
    this.#energyBefore_J = energy_J;
    const mixed = change('mixed_kg');
    ch.mixed_flow_m3_s[i] = i === 0 ? 0 : mixed / seconds / 1000;
    ch.hot_flow_m3_s[i] = i === 0 ? 0 : change('coil_kg') / seconds / 1000;
    ch.cold_C[i] = plant.supply.cold_C(t, y);
    ch.air_C[i] = plant.air.outdoors_C(t);
    ch.level_m[i] = plant.store.level_m(y);
    if (plant.taps) ch.wanted_C[i] = this.#wanted(t);
    if (plant.taps) {
      const ranCold = this.#ranCold();
      ch.ran_cold_s[i] = ranCold - this.#ranColdBefore;
      this.#ranColdBefore = ranCold;
    }
    if (plant.taps) this.#outlet(i, mixed, change('household_to_taps'), drawing);
    if (plant.engine) ch.engine_C[i] = plant.engine.block_C(y);
    if (plant.collector) {
      ch.collector_C[i] = plant.collector.outlet_C(y);
      ch.sun_W_m2[i] = plant.collector.plane_W_m2(t);
    }
    for (let k = 0; k < y.length; k++) this.#before[k] = y[k];
  }

  /** The warmest wish among the draws open since the last sample [C]. */
  #wanted(t: number): number {
    const { openings } = this.#plant;
    const since = t - this.series.interval_s;
    let wanted = Number.NaN;
    while (this.#opening < openings.length && openings[this.#opening].to_s <= since) this.#opening++;
    for (let k = this.#opening; k < openings.length && openings[k].from_s < t; k++) {
      const { draw, to_s } = openings[k];
      if (to_s > since && !(draw.wanted_C <= wanted)) wanted = draw.wanted_C;
    }
    return wanted;
  }

  #outlet(i: number, mixed_kg: number, energy_J: number, drawing: boolean): void {
    const ch = this.#channels;
    const { taps } = this.#plant;
    if (!taps) return;
    ch.coil_outlet_C[i] = drawing ? taps.coil_outlet_C : Number.NaN;
    ch.hot_line_C[i] = drawing ? taps.hot_line_C : Number.NaN;
    if (this.series.interval_s < INSTANT_BELOW) ch.outlet_C[i] = drawing ? taps.outlet_C : Number.NaN;
    else if (mixed_kg > 1e-6) {
      ch.outlet_C[i] = temperatureOf(liquid(WATER), energy_J / mixed_kg / REFERENCE_HEAT_CAPACITY);
    } else ch.outlet_C[i] = Number.NaN;
  }
}
