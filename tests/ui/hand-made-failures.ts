/** What breaks it and the season, made by hand. */
import type { Answer, Banded, Column } from '../../sim/index.ts';

const fact = (dimension: Banded['dimension'], value: number, low = value, high = value): Banded => ({
  value,
  low,
  high,
  numerical: 0,
  dimension,
});
const column = (key: string, dimension: Column['dimension']): Column => ({ key, dimension });

export const breaks: Answer = {
  key: 'breaks',
  facts: {
    away_top_C: fact('temperature', 88, 80, 95),
    limitless_top_C: fact('temperature', 88),
    pump_collector_C: fact('temperature', 160),
    pump_steam_s: fact('time', 1200),
    trapped_per_K_Pa: fact('pressure', 8e5),
    trapped_rated_Pa: fact('pressure', 3.2e6),
    trapped_rated_K: fact('temperature_difference', 19),
    trapped_burst_K: fact('temperature_difference', 50),
  },
  headline: 'away_top_C',
  limit: 'sun',
  tables: {
    failures: {
      columns: [
        column('failure', 'text'),
        column('after_s', 'time'),
        column('reached_C', 'temperature'),
        column('plain_C', 'temperature'),
        column('more_K', 'temperature_difference'),
      ],
      rows: [
        ['pump', 1200, 160, null, null],
        ['away', null, 88, 85, null],
        ['trapped', null, null, null, null],
      ],
      present: null,
    },
    trapped: {
      columns: [column('coil', 'text')],
      rows: [['household']],
      present: null,
    },
    spared: {
      columns: [column('failure', 'text'), column('why', 'text')],
      rows: [['cistern', 'no_cistern']],
      present: null,
    },
  },
  curves: {},
  levers: [],
  cautions: [
    { key: 'trapped_coil', severity: 'danger' },
    { key: 'open_lid', severity: 'danger' },
  ],
  taken: ['one_at_a_time'],
};

export const season: Answer = {
  key: 'season',
  facts: {
    engine_s: fact('time', 730 * 3600),
    fuel_m3: fact('volume', 0.5),
    loss_J: fact('energy', 3.6e9),
    showers: fact('count', 1460),
    showers_cold: { ...fact('count', 3), low: 2.4, high: 40.2 },
    top_C_max: fact('temperature', 85),
    top_C_min: fact('temperature', 45),
    make_up_kg: fact('mass', 300),
    dry_s: fact('time', 181.5 * 86_400),
  },
  headline: 'loss_J',
  limit: 'engine',
  tables: {
    months: {
      columns: [
        column('month', 'month'),
        column('engine_s', 'time'),
        column('fuel_m3', 'volume'),
        column('showers_cold', 'number'),
        column('store_top_C_max', 'temperature'),
      ],
      rows: Array.from({ length: 12 }, (_, month) => [month + 1, 62 * 3600, 0.042, 0, 80]),
      present: null,
    },
  },
  curves: {},
  levers: [],
  cautions: [{ key: 'runs_dry', severity: 'danger' }],
  taken: ['level_kept'],
};
