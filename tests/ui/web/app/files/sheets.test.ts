import { describe, expect, it } from 'vitest';
import { daysData } from '../../../../../ui/web/app/days-data.ts';
import { daysSheet } from '../../../../../ui/web/app/files/days-sheets.ts';
import { heatSheet } from '../../../../../ui/web/app/files/heat-sheet.ts';
import { heatBalance } from '../../../../../ui/web/app/heat-flows.ts';
import { handMadeResult } from '../../hand-made.ts';

const shown = { result: handMadeResult(), firstWeekday: 5 };
const whole = { from_s: 0, to_s: 86_400 };
const sheetOf = (units: 'US' | 'SI', window = whole) => ({ data: daysData(shown, units), shown, window });

describe('the panels of Days as numbers', () => {
  it('have the temperatures of each sample, its time in words and in hours', () => {
    const { head, rows } = daysSheet(sheetOf('US'), 'temperatures');
    expect(head).toEqual([
      'Until',
      'since the first midnight (h)',
      'top (F)',
      'middle (F)',
      'bottom (F)',
      'ran cold (s)',
    ]);
    // 40, 30 and 20 degrees Celsius; 50, 35 and 20.
    expect(rows[0]).toEqual(['Sat Jan 9, 06:00', 6, 104, 86, 68, 0]);
    expect(rows[1].slice(1)).toEqual([12, 122, 95, 68, 300]);
    expect(rows).toHaveLength(4);
  });

  it('have every layer by its height', () => {
    const { head, rows } = daysSheet(sheetOf('SI'), 'field');
    expect(head.slice(2)).toEqual(['at 25.4 cm (C)', 'at 76.2 cm (C)']);
    expect(rows.map((row) => row.slice(2))).toEqual([
      [20, 40],
      [20, 50],
      [30, 60],
      [40, 80],
    ]);
  });

  it('have heat in and out, flows of water, and nothing where nothing was drawn', () => {
    const heat = daysSheet(sheetOf('SI'), 'heat');
    expect(heat.head.slice(2)).toEqual(['engine (kW)', 'sun (kW)', 'losses (kW)', 'household (kW)']);
    expect(heat.rows[1].slice(2)).toEqual([4, 0, 0.12, 0]);
    const water = daysSheet(sheetOf('SI'), 'water');
    expect(water.head[2]).toBe('flow (L/min)');
    // A tenth of a litre a second.
    expect(water.rows[1][2]).toBeCloseTo(6, 5);
    const tap = daysSheet(sheetOf('SI'), 'tap');
    expect(tap.head.slice(2)).toEqual(['at the tap (C)', 'wanted (C)', 'ran cold (s)']);
    expect(tap.rows.map(([, , value]) => value)).toEqual([Number.NaN, 30, 40, Number.NaN]);
  });

  it('have only what is in view, and hours where samples are many unless all are wanted', () => {
    const view = { from_s: 21_600, to_s: 64_800 };
    expect(daysSheet(sheetOf('SI', view), 'temperatures').rows.map(([, hours]) => hours)).toEqual([12, 18]);
    const { result } = shown;
    const many = 1440;
    const series = {
      ...result.series,
      interval_s: 60,
      time_s: Float64Array.from({ length: many }, (_, i) => (i + 1) * 60),
      layer_C: new Float32Array(2 * many).fill(20),
      channels: {},
    };
    const fine = { result: { ...result, series }, firstWeekday: 5 };
    const of = { data: daysData(fine, 'SI'), shown: fine, window: whole };
    expect(daysSheet(of, 'temperatures').rows).toHaveLength(24);
    expect(daysSheet(of, 'temperatures', true).rows).toHaveLength(many);
  });

  it('have the spells of what ran', () => {
    const { head, rows } = daysSheet(sheetOf('SI'), 'ran');
    expect(head).toEqual(['what ran', 'from', 'to', 'from (h)', 'to (h)']);
    // Three hundred seconds cold before noon.
    expect(rows).toEqual([['ran cold', 'Sat Jan 9, 06:00', 'Sat Jan 9, 12:00', 6, 12]]);
  });
});

describe('where the heat goes as numbers', () => {
  const { series } = shown.result;
  const fuelled = { ...series, channels: { ...series.channels, fuel_W: series.channels.engine_W } };
  const balance = heatBalance(fuelled, whole);

  it('has both units, the reader’s first, and shares of all there was', () => {
    const { head, rows } = heatSheet(balance, 'US', 0);
    expect(head).toEqual(['which way', 'From where to where', 'Heat (kBtu)', 'Heat (kWh)', 'Share (%)']);
    expect(heatSheet(balance, 'mixed', 0).head[2]).toBe('Heat (kWh)');
    const engine = rows.find(([, path]) => path === 'Engine → Store');
    // Four kilowatts for six hours; the international table Btu.
    expect(engine?.[3]).toBeCloseTo(24, 6);
    expect(engine?.[2]).toBeCloseTo(24 * 3.412142, 3);
    expect(engine?.[4]).toBeCloseTo((100 * 24 * 3.6e6) / balance.spent_J, 6);
  });

  it('leaves out what the table leaves out', () => {
    const all = heatSheet(balance, 'SI', 0).rows.length;
    expect(heatSheet(balance, 'SI', 0.2).rows.length).toBeLessThan(all);
  });
});
