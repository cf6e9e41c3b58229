/** Tables and curves of the showers' answer. */
import type { Column, Curve, Table } from '../answer.ts';
import type { Found } from './showers-facts.ts';

const TEMPERATURE = 'temperature';

/** `dull` showers by dull days; `waits` by what heats; `feel` the trace's moments; `day` the household's own. */
export function showerTables({ rows, waits, trace, day, plan }: Found, dull: number): Record<string, Table> {
  return {
    dull: {
      columns: [
        { key: 'dull_days', dimension: 'count' },
        { key: 'showers_whole', dimension: 'count' },
        { key: 'into_s', dimension: 'time' },
        { key: 'warm_s', dimension: 'time' },
      ],
      rows: rows.map((row, days) => [days, row?.whole ?? null, row?.into_s ?? null, row?.warm_s ?? null]),
      present: dull,
    },
    waits: {
      columns: [
        { key: 'heating', dimension: 'text' },
        { key: 'wait_s', dimension: 'time' },
      ],
      rows: Object.entries(waits),
      present: null,
    },
    feel: {
      columns: [
        { key: 'time_s', dimension: 'time' },
        { key: 'outlet_C', dimension: TEMPERATURE },
        { key: 'hot_line_C', dimension: TEMPERATURE },
        { key: 'coil_outlet_C', dimension: TEMPERATURE },
      ],
      rows: trace.time_s.map((s) => [s, trace.outlet_C[s], trace.hot_line_C[s], trace.coil_outlet_C[s]]),
      present: null,
    },
    day: {
      columns: [
        { key: 'draw', dimension: 'text' },
        { key: 'at_s', dimension: 'clock' },
        { key: 'lasts_s', dimension: 'time' },
        { key: 'wanted_C', dimension: TEMPERATURE },
        { key: 'warm_up_s', dimension: 'time' },
        { key: 'cold_s', dimension: 'time' },
        { key: 'lowest_C', dimension: TEMPERATURE },
        { key: 'hottest_C', dimension: TEMPERATURE },
      ],
      rows: day.draws.map((draw) => [
        draw.name,
        draw.at_s,
        draw.lasts_s,
        draw.wanted_C,
        draw.wait_s,
        draw.cold_s,
        draw.lowest_C,
        draw.hottest_C,
      ]),
      present: null,
    },
    shower: {
      columns: [
        { key: 'wanted_C', dimension: TEMPERATURE },
        { key: 'lasts_s', dimension: 'time' },
        { key: 'flow_m3_s', dimension: 'flow' },
        { key: 'gap_s', dimension: 'time' },
      ],
      rows: [[plan.shower.wanted_C, plan.shower.duration_s, plan.shower.flow_m3_s, plan.gap_s]],
      present: 0,
    },
  };
}

/** `dull`: showers over dull days; `feel`: the taps second by second. */
export function showerCurves({ rows, trace }: Found, dull: number): Record<string, Curve> {
  const line = (name: string, values: (number | null)[]) => ({
    name,
    y: { key: name, dimension: TEMPERATURE } satisfies Column,
    values,
  });
  return {
    dull: {
      x: { key: 'dull_days', dimension: 'count' },
      at: rows.map((_, days) => days),
      lines: [
        {
          name: 'showers',
          y: { key: 'showers', dimension: 'count' },
          values: rows.map((row) => row?.showers ?? null),
        },
      ],
      present: dull,
      knee: null,
    },
    feel: {
      x: { key: 'time_s', dimension: 'time' },
      at: trace.time_s,
      lines: [
        line('hot_line_C', trace.hot_line_C),
        line('outlet_C', trace.outlet_C),
        line('coil_outlet_C', trace.coil_outlet_C),
      ],
      present: null,
      knee: null,
    },
  };
}
