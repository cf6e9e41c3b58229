/** A made-up run of two days: 1 layer of 50 C, one of 60 C, one of 70 C; engine on for 3 h, then for 6 h. */
import type { PlantDescription, Result } from '../../../sim/index.ts';

const hour_s = 3600;
const samples = 49;
const byHour = (value: (hour: number) => number) =>
  Float32Array.from({ length: samples }, (_, i) => value(i - 1));
const between = (from: number, to: number, value: number) => (hour: number) =>
  hour % 24 >= from && hour % 24 < to ? value : 0;

export const result: Result = {
  name: 'Two made-up days',
  first_day: 30,
  days: 2,
  figures: { store_top_C_max: 70, engine_s: 9 * 3600 },
  ledger: {
    paths: [{ key: 'fuel_to_coolant', energy_J: 7.2e6, side: 'in' }],
    stored_change_J: 7.2e6,
    residual_J: 0,
    residual_percent: 0,
    throughput_J: 7.2e6,
  },
  events: [
    { time_s: 6 * hour_s, part: 'set', name: 'engine.start' },
    { time_s: 9 * hour_s, part: 'set', name: 'engine.stop' },
    { time_s: 42 * hour_s, part: 'set', name: 'engine.start' },
  ],
  cautions: [],
  series: {
    interval_s: hour_s,
    time_s: Float64Array.from({ length: samples }, (_, i) => i * hour_s),
    layers: 3,
    height_m: Float64Array.of(0.1, 0.3, 0.5),
    layer_C: Float32Array.from({ length: samples * 3 }, (_, i) => 50 + 10 * (i % 3)),
    channels: {
      // 500 W/m2 from 9 to 15 h: 3 kWh/m2 a day.
      sun_W_m2: byHour(between(9, 15, 500)),
      // 1 L/min for 2 h: 120 L a day.
      mixed_flow_m3_s: byHour(between(18, 20, 1 / 60_000)),
      outlet_C: byHour((hour) => (hour % 24 === 18 ? 41.25 : Number.NaN)),
    },
  },
  run: { evaluations: 100, steps: 10, restarts: 5 },
};

/** Only what the picture asks of a plant. */
export const plant = {
  engine: {},
  collector: {},
  taps: { draws: [{ wanted_C: 40 }, { wanted_C: 45 }] },
} as unknown as PlantDescription;
