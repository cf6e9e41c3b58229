/** Answers made by hand, with the shape that hours, collector and store give. */
import type { Answer, Banded, Column } from '../../sim/index.ts';

const hour = 3600;
const kWh = 3.6e6;

function banded(
  dimension: Banded['dimension'],
  unit: number,
  value: number,
  low = value,
  high = value,
): Banded {
  return { value: value * unit, low: low * unit, high: high * unit, numerical: 0, dimension };
}
const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });

const NEED_h = [4, 3.5, 3.75, 2.5, 1, 0.5, 0, 0.25, 2, 3, 4, 4.25];

export const hours: Answer = {
  key: 'hours',
  facts: {
    worst_s: banded('time', hour, 4.25, 2.04, 6.22),
    mean_s: banded('time', hour, 3, 1.44, 4.2),
    extra_year_s: banded('time', hour, 15.5, 0, 379),
    extra_fuel_m3: banded('volume', 1e-3, 22.9, 0, 560),
    extra_money: banded('money', 1, 27.5, 0, 672),
    engine_kWh_money: banded('money', 1, 0.49, 0.27, 0.84),
    backup_kWh_money: banded('money', 1, 0.153, 0.102, 0.23),
  },
  headline: 'worst_s',
  limit: 'engine',
  tables: {
    months: {
      columns: [
        column('month', 'month'),
        column('hours_s', 'time'),
        column('charging_s', 'time'),
        column('extra_s', 'time'),
        column('extra_fuel_m3', 'volume'),
        column('cold_share', 'share'),
        column('solar_share', 'share'),
      ],
      rows: NEED_h.map((need, i) => [
        i + 1,
        need * hour,
        4 * hour,
        Math.max(0, need - 4) * hour,
        Math.max(0, need - 4) * 0.04,
        need > 4 ? 0.06 : 0,
        0.2,
      ]),
      present: null,
    },
  },
  curves: {
    months: {
      x: column('month', 'month'),
      at: NEED_h.map((_, i) => i + 1),
      lines: [
        { name: 'hours_s', y: column('hours_s', 'time'), values: NEED_h.map((need) => need * hour) },
        { name: 'charging_s', y: column('hours_s', 'time'), values: NEED_h.map(() => 4 * hour) },
      ],
      present: null,
      knee: null,
    },
  },
  levers: [
    {
      path: 'engine.jacket_share',
      low: { text: '18 %', value: 5.5 * hour },
      high: { text: '33 %', value: 3.25 * hour },
    },
  ],
  cautions: [{ key: 'carbon_monoxide', severity: 'danger' }],
  taken: [
    'span_from_start',
    'typical_weeks',
    'level_kept',
    'no_backup',
    'worst_month_bands',
    'charging_hours',
  ],
};

export const collector: Answer = {
  key: 'collector',
  facts: {
    heat_J: banded('energy', kWh, 1324, 720, 1926),
    share: banded('share', 0.01, 20.2, 8.9, 35.8),
    dull_day_J: banded('energy', kWh, 0.78, 0.43, 1.14),
    dull_from_day: banded('count', 1, 345),
    spared_s: banded('time', hour, 311.5, 169.6, 453.5),
    spared_beyond_s: banded('time', hour, 167, 90.9, 243.2),
    spared_fuel_m3: banded('volume', 1e-3, 460, 250, 670),
    spared_money: banded('money', 1, 552, 240, 925),
    payback_years: banded('count', 1, 1.45, 0.57, 2.75),
    payback_beyond_years: banded('count', 1, 2.7, 1.06, 5.14),
    over_s: banded('time', hour, 29.98),
    boils_s: banded('time', 86_400, 4),
    away_top_C: banded('temperature', 1, 78.43),
    away_limitless_C: banded('temperature', 1, 95),
    dead_collector_C: banded('temperature', 1, 228.97),
    area_m2: banded('area', 1, 3.2),
    stops_paying_m2: banded('area', 1, 6.696),
  },
  headline: 'heat_J',
  limit: 'sun',
  tables: {
    sizes: {
      columns: [
        column('area_m2', 'area'),
        column('tubes', 'number'),
        column('heat_J', 'energy'),
        column('share', 'share'),
        column('price', 'money'),
        column('liner_over_s', 'time'),
      ],
      rows: [
        [0, 0, 0, 0, 0, 0],
        [1.6, 20, 760 * kWh, 0.13, 400, 0],
        [3.2, 40, 1324 * kWh, 0.2, 800, 30 * hour],
      ],
      present: 2,
    },
    months: {
      columns: [
        column('month', 'month'),
        { ...column('heat_1_J', 'energy'), at: { value: 1.6, dimension: 'area' } },
        { ...column('heat_2_J', 'energy'), at: { value: 3.2, dimension: 'area' } },
      ],
      rows: NEED_h.map((_, i) => [i + 1, (40 + i) * kWh, (80 + i) * kWh]),
      present: null,
    },
    long: {
      columns: [column('area_m2', 'area'), column('month', 'month'), column('heat_J', 'energy')],
      rows: [
        [1.6, 1, 46 * kWh],
        [3.2, 1, 85 * kWh],
      ],
      present: null,
    },
  },
  curves: {
    size: {
      x: column('area_m2', 'area'),
      at: [0, 1.6, 3.2],
      lines: [{ name: 'heat_J', y: column('heat_J', 'energy'), values: [0, 760 * kWh, 1324 * kWh] }],
      present: 3.2,
      knee: null,
    },
  },
  levers: [],
  cautions: [{ key: 'stagnation', severity: 'warning' }],
  taken: ['level_kept', 'four_stretches', 'spared_by_hours', 'coil_as_it_is'],
};

export const store: Answer = {
  key: 'store',
  facts: {
    drop_K: banded('temperature_difference', 1, 2.488, 1.687, 3.954),
    loss_W: banded('power', 1, 109.1, 73.4, 174.3),
    carried_s: banded('time', hour, 42.8, 0.19, 45.4),
    heat_up_s: banded('time', hour, 9.16, 6.41, 13.6),
    vapour_share: banded('share', 0.01, 18.4, 0, 32.6),
    usual_C: banded('temperature', 1, 48),
    full_C: banded('temperature', 1, 64),
    fresh_C: banded('temperature', 1, 10),
  },
  headline: 'drop_K',
  limit: 'insulation',
  tables: {
    insulation: {
      columns: [
        column('sides_m', 'length'),
        column('lid', 'text'),
        column('drop_K', 'temperature_difference'),
      ],
      rows: [
        [0.05, 'closed', 3.9],
        [0.1, 'closed', 2.5],
      ],
      present: 1,
    },
    all: {
      columns: [column('volume_m3', 'volume'), column('lid', 'text'), column('loss_W', 'power')],
      rows: [[0.9, 'closed', 109]],
      present: 0,
    },
  },
  curves: {},
  levers: [],
  cautions: [{ key: 'weight', severity: 'note' }],
  taken: ['at_usual', 'carried_from_full', 'heat_up_from_fresh'],
};
