/** Answers made by hand, with the shape that doubts and the next dollar give. */
import type { Answer, Banded, Column } from '../../sim/index.ts';

const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });
const banded = (dimension: Banded['dimension'], value: number, low = value, high = value): Banded => ({
  value,
  low,
  high,
  numerical: 0,
  dimension,
});
const count = (value: number) => banded('count', value);
const line = (name: string, values: number[]) => ({
  name,
  y: column('store_top_C', 'temperature'),
  values,
});

export const doubts: Answer = {
  key: 'doubts',
  facts: {
    cold_s: banded('time', 960, 0, 7200),
    showers_cold: banded('count', 2, 0, 12),
    store_mean_C: banded('temperature', 50, 42, 58),
    runs: count(20),
    asked: count(20),
    cold_runs: count(6),
    boiled_runs: count(0),
    varied: count(31),
    marked: count(2),
    idle: count(1),
    showers: count(42),
  },
  headline: 'cold_s',
  limit: 'none',
  tables: {
    runs: {
      columns: [column('run', 'number'), column('cold_s', 'time'), column('store_mean_C', 'temperature')],
      rows: [
        [1, 0, 58],
        [2, 7200, 42],
      ],
      present: null,
    },
    showers: {
      columns: [
        column('rank', 'number'),
        column('shower', 'number'),
        column('day', 'number'),
        column('weekday', 'number'),
        column('at_s', 'clock'),
        column('cold_runs', 'number'),
        column('most_s', 'time'),
      ],
      rows: [
        [2, 3, 1, 5, 71_100, 4, 300],
        [1, 4, 1, 5, 71_820, 6, 420],
        [3, 5, 2, 6, 23_400, 0, 0],
      ],
      present: null,
    },
    inputs: {
      columns: [
        column('rank', 'number'),
        column('path', 'text'),
        column('input', 'text'),
        column('low', 'text'),
        column('high', 'text'),
        column('marked', 'text'),
        column('at_low', 'time'),
        column('at_high', 'time'),
        column('moves', 'time'),
      ],
      rows: [
        [1, 'store.bridges', 'multiplier on the loss', '1.1', '2.5', 'yes', 600, 4200, 3600],
        [2, 'weather.seed', 'weather.seed', '8', '9', 'no', 900, 1800, 900],
        [null, 'supply.lift', 'lift', '0 ft', '15 ft', 'no', null, null, 0],
      ],
      present: null,
    },
    measurements: {
      columns: [
        column('path', 'text'),
        column('input', 'text'),
        column('recipe', 'text'),
        column('how', 'text'),
        column('low', 'text'),
        column('high', 'text'),
        column('was_from', 'time'),
        column('was_to', 'time'),
        column('from', 'time'),
        column('to', 'time'),
        column('left', 'share'),
      ],
      rows: [
        [
          'store.bridges',
          'multiplier on the loss',
          'cool_down',
          'No draws, eight hours.',
          '1.4',
          '1.6',
          0,
          6000,
          600,
          3600,
          0.5,
        ],
      ],
      present: null,
    },
    held: { columns: [column('path', 'text')], rows: [['a'], ['b'], ['c']], present: null },
  },
  curves: {
    top: {
      x: column('time_s', 'time'),
      at: [0, 43_200, 86_400],
      lines: [
        line('stands', [50, 60, 55]),
        line('least', [50, 52, 45]),
        line('most', [50, 70, 66]),
        line('run 1', [50, 70, 66]),
        line('run 2', [50, 52, 45]),
      ],
      present: null,
      knee: null,
    },
  },
  levers: [],
  cautions: [],
  taken: ['spread_evenly', 'like_years', 'others_held', 'each_alone', 'found_as_taken'],
};

export const next: Answer = {
  key: 'next',
  facts: {
    warm_m3_day: banded('volume', 0.3),
    gain: banded('volume', 0.004, 0.002, 0.009),
    tried: count(6),
    ranked: count(4),
    days: count(7),
    mixing_valve: banded('money', 90),
  },
  headline: 'gain',
  limit: 'none',
  tables: {
    changes: {
      columns: [
        column('rank', 'number'),
        column('change', 'text'),
        column('what', 'text'),
        column('gain', 'volume'),
        column('gain_low', 'volume'),
        column('gain_high', 'volume'),
        column('showers_warm', 'number'),
        column('cost', 'money'),
        column('cost_low', 'money'),
        column('cost_high', 'money'),
        column('fuel_year', 'money'),
        column('per_hundred', 'volume'),
        column('harm', 'text'),
      ],
      rows: [
        [1, 'spread', 'household', 0.004, 0.002, 0.009, 1, 0, 0, 0, 0, null, ''],
        [2, 'seal_lid', 'closed', 0.006, 0.001, 0.01, 0, 13, 8.7, 19.5, 0, 0.046, ''],
        [3, 'roll_parallel', 'household', 0.02, 0.01, 0.03, 2, 180, 120, 270, 0, 0.011, ''],
        [4, 'hour_more', 'diesel set', 0.05, 0, 0.1, 3, 0, 0, 0, 650, 0.0077, ''],
        [null, 'more_area', 1.5, 0.04, 0.02, 0.06, 2, 375, 250, 560, 0, 0.011, 'boils'],
        [null, 'roll_series', 'engine', 0.001, 0, 0.002, 0, null, null, null, 0, null, ''],
      ],
      present: null,
    },
  },
  curves: {},
  levers: [],
  cautions: [
    { key: 'fit_mixing_valve', severity: 'danger' },
    { key: 'fit_relief', severity: 'danger' },
    { key: 'vent_stays_open', severity: 'warning' },
  ],
  taken: ['each_change_alone', 'year_as_these_days', 'gain_over_few_runs', 'first_year_money'],
};
