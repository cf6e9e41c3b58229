import { describe, expect, it } from 'vitest';
import type { ChartOptions } from '../../../../ui/web/charts/frame.ts';
import { rowsChart } from '../../../../ui/web/charts/rows-chart.ts';

const options: ChartOptions = {
  frame: { width: 260, height: 66, left: 40, right: 20, top: 8, bottom: 22 },
  span: { from_s: 0, to_s: 200 },
  timeWords: () => '',
  valueWords: String,
  apart_px: 50,
  of: (value) => value,
};
const rows = [
  { key: 'engine', label: 'engine', spells: [{ from_s: 20, to_s: 70 }] },
  {
    key: 'cold',
    label: 'ran cold',
    spells: [
      { from_s: 150, to_s: 150.1 },
      { from_s: 300, to_s: 400 },
    ],
  },
];

describe('rowsChart', () => {
  const drawn = rowsChart(rows, options, 'cold');

  it('draws a bar a spell in its machine’s row, and none out of view', () => {
    expect(drawn).toContain('<g class="row engine"><rect x="60" width="50" y="11" height="12"/></g>');
    expect(drawn).toContain('<g class="row cold chosen"><rect x="190" width="2" y="29" height="12"/></g>');
  });

  it('names each row beside it', () => {
    expect(drawn).toContain('<text x="34" y="17" class="value">engine</text>');
    expect(drawn).toContain('<text x="34" y="35" class="value">ran cold</text>');
  });
});
