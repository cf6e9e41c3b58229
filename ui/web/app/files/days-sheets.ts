/** The panels of Days as sheets of numbers: rows as "Show as table" has them, or every sample in view. */
import { chartWords, daysWords, storeWords } from '../../../words/index.ts';
import type { TimeSpan } from '../../charts/frame.ts';
import type { DaysData, DaysShown, HeatKey } from '../days-data.ts';
import type { PanelKey } from '../days-panels.ts';
import { type DaysRow, daysTable } from '../days-table.ts';
import { momentTitle } from '../moments.ts';
import type { ScreenUnit } from '../screen-units.ts';
import { headOf, type Sheet } from './csv.ts';

export interface SheetOf {
  data: DaysData;
  shown: DaysShown;
  window: TimeSpan;
}

type Column = [head: string, unit: ScreenUnit, value: (row: DaysRow) => number];

const seconds: ScreenUnit = { symbol: 's', of: (value) => value, text: String };

export function daysSheet({ data, shown, window }: SheetOf, panel: PanelKey, every = false): Sheet {
  if (panel === 'ran') return spellsSheet(data, shown, window);
  const { rows } = daysTable(data.series, window, every ? Number.POSITIVE_INFINITY : undefined);
  const columns = columnsOf(data, panel);
  return {
    head: [
      daysWords.until,
      headOf(chartWords.clock, 'h'),
      ...columns.map(([label, unit]) => headOf(label, unit.symbol)),
    ],
    rows: rows.map((row) => [
      momentTitle(shown, row.time_s),
      row.time_s / 3600,
      ...columns.map(([, unit, value]) => unit.of(value(row))),
    ]),
  };
}

function columnsOf(data: DaysData, panel: Exclude<PanelKey, 'ran'>): Column[] {
  const { units, series, heat } = data;
  const { temperature, power, flow, irradiance } = units;
  const channel = (key: keyof typeof daysWords.lines, unit: ScreenUnit): Column[] => {
    const values = series.channels[key];
    return values ? [[daysWords.lines[key], unit, ({ last }) => values[last]]] : [];
  };
  const cold: Column = [daysWords.rows.cold, seconds, (row) => row.cold_s];
  switch (panel) {
    case 'temperatures':
      return [
        ...(['top', 'middle', 'bottom'] as const).map(
          (key): Column => [storeWords[key], temperature, (row) => row[`${key}_C`]],
        ),
        cold,
      ];
    case 'field':
      return Array.from(series.height_m, (height_m, k): Column => {
        const at = daysWords.at(`${Number(units.length.of(height_m).toPrecision(3))} ${units.length.symbol}`);
        return [at, temperature, ({ last }) => series.layer_C[last * series.layers + k]];
      });
    case 'heat':
      return heat.streams.map(
        ({ key }): Column => [daysWords.streams[key as HeatKey], power, (row) => row.heat_W[key as HeatKey]],
      );
    case 'water': {
      const { hot_flow_m3_s: hot } = series.channels;
      const mean = ({ first, last }: DaysRow) =>
        hot
          ? hot.slice(first, last + 1).reduce((sum, each) => sum + each, 0) / (last + 1 - first)
          : Number.NaN;
      return [
        [daysWords.flow, flow, (row) => row.flow_m3_s],
        ...(hot ? [[daysWords.lines.hot_flow_m3_s, flow, mean] as Column] : []),
      ];
    }
    case 'sun':
      return [[daysWords.lines.sun_W_m2, irradiance, (row) => row.sun_W_m2]];
    case 'tap':
      return [
        ...(['outlet_C', 'wanted_C', 'hot_line_C', 'coil_outlet_C'] as const).flatMap((key) =>
          channel(key, temperature),
        ),
        cold,
      ];
  }
}

/** What ran: a row a spell that reaches into the window. */
function spellsSheet({ rows }: DaysData, shown: DaysShown, { from_s, to_s }: TimeSpan): Sheet {
  return {
    head: [
      chartWords.spell.what,
      chartWords.spell.from,
      chartWords.spell.to,
      headOf(chartWords.spell.from, 'h'),
      headOf(chartWords.spell.to, 'h'),
    ],
    rows: rows.flatMap(({ label, spells }) =>
      spells
        .filter((spell) => spell.to_s > from_s && spell.from_s < to_s)
        .map((spell) => [
          label,
          momentTitle(shown, spell.from_s),
          momentTitle(shown, spell.to_s),
          spell.from_s / 3600,
          spell.to_s / 3600,
        ]),
    ),
  };
}
