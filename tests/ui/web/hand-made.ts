/** A run small enough to check by hand: two layers, one day in samples of six hours. */
import type { Result, Series } from '../../../sim/index.ts';

export const sixHours_s = 21_600;

export function handMadeSeries(): Series {
  return {
    interval_s: sixHours_s,
    time_s: Float64Array.of(1, 2, 3, 4).map((i) => i * sixHours_s),
    layers: 2,
    height_m: Float64Array.of(0.254, 0.762),
    layer_C: Float32Array.of(20, 40, 20, 50, 30, 60, 40, 80),
    channels: {
      engine_W: Float32Array.of(0, 4000, 0, 0),
      collector_W: Float32Array.of(0, 0, 1000, 0),
      household_W: Float32Array.of(0, 0, 2000, 0),
      loss_W: Float32Array.of(100, 100, 100, 100),
      evaporation_W: Float32Array.of(0, 20, 20, 20),
      mixed_flow_m3_s: Float32Array.of(0, 1e-4, 1e-4, 0),
      outlet_C: Float32Array.of(Number.NaN, 30, 40, Number.NaN),
      wanted_C: Float32Array.of(Number.NaN, 40, 40, Number.NaN),
      ran_cold_s: Float32Array.of(0, 300, 0, 0),
      air_C: Float32Array.of(-5, -4, 0, -2),
    },
  };
}

export function handMadeResult(): Result {
  return {
    name: 'By hand',
    first_day: 8,
    days: 1,
    figures: {},
    ledger: { paths: [], stored_change_J: 0, residual_J: 0, residual_percent: 0, throughput_J: 0 },
    events: [],
    cautions: [],
    series: handMadeSeries(),
    run: { evaluations: 0, steps: 0, restarts: 0 },
  };
}
