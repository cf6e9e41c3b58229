/** A run's series as CSV: one row a sample, the unit of each column in its head. */
import type { Series } from '../../sim/index.ts';
import { csvCell, type UnitSystem } from '../words/index.ts';
import { columnUnit, unitOfKey } from './units.ts';

/** `time (h)` counts from the run's first midnight; each row closes the interval before it. */
export function seriesAsCsv(series: Series, units: UnitSystem): string {
  const { time_s, layers, layer_C, height_m, channels } = series;
  const temperature = columnUnit('temperature', units);
  const length = columnUnit('length', units);
  const columns = Object.entries(channels).map(([key, values]) => ({
    key,
    values,
    unit: unitOfKey(key, units),
  }));
  const heights = Array.from(height_m, (height) => `${csvCell(length.of(height))} ${length.symbol}`);
  const lines = [
    [
      'time (h)',
      ...heights.map((height) => `store at ${height} (${temperature.symbol})`),
      ...columns.map(({ key, unit }) => (unit ? `${stem(key)} (${unit.symbol})` : key)),
    ].join(','),
  ];
  for (let i = 0; i < time_s.length; i++) {
    const row = [csvCell(time_s[i] / 3600)];
    for (let layer = 0; layer < layers; layer++)
      row.push(csvCell(temperature.of(layer_C[i * layers + layer])));
    for (const { values, unit } of columns) row.push(csvCell(unit ? unit.of(values[i]) : values[i]));
    lines.push(row.join(','));
  }
  return `${lines.join('\n')}\n`;
}

/** A key without the SI unit at its end, which the head's own unit replaces. */
function stem(key: string): string {
  return key.replace(/_(C|W_m2|W|m3_s|m3|m)$/, '');
}
