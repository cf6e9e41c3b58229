import { describe, expect, it } from 'vitest';
import { rowValues, type StoreTrace, storeChart, timeFoot } from '../../../ui/terminal/chart.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';
import { numberRow, sparkRow } from '../../../ui/terminal/spark.ts';

const unicode: Screen = { width: 60, unicode: true, colour: false };
const ascii: Screen = { width: 60, unicode: false, colour: false };

const trace: StoreTrace = {
  top: [92, 105, 128, 141, 133, 120],
  middle: [84, 91, 112, 130, 118, 100],
  bottom: [80, 82, 88, 101, 99, 90],
  unit: '°F',
  wanted: { value: 105, words: 'wanted 105 °F' },
  words: { title: 'Store temperature', top: 'top', middle: 'middle', bottom: 'bottom' },
};

describe('storeChart', () => {
  it('fills a row where the water is at least as hot as its number', () => {
    expect(storeChart(trace, unicode)).toEqual([
      '     °F   Store temperature   ░ top   ▒ middle   █ bottom   ┄ wanted 105 °F',
      '    140 ┤   ░',
      '        ┤   ░',
      '    130 ┤   ▒░',
      '        ┤  ░▒░',
      '    120 ┤  ░▒░░',
      '        ┤  ░▒▒░',
      '    110 ┤  ▒▒▒░',
      '    105 ┤┄░▒▒▒░',
      '    100 ┤ ░▒█▒▒',
      '        ┤ ░▒██▒',
      '     90 ┤░▒▒███',
      '        ┤░▒████',
      '     80 ┤██████',
    ]);
  });

  it('says the same in ASCII', () => {
    const lines = storeChart(trace, ascii);
    expect(lines[0]).toBe('     °F   Store temperature   . top   + middle   # bottom   - wanted 105 °F');
    expect(lines[8]).toBe('    105 |-.+++.');
    expect(lines.slice(1).join('')).toMatch(/^[\x20-\x7e]+$/);
  });

  it('paints each shade in one stretch', () => {
    const line = storeChart(trace, { ...unicode, colour: true }).at(-1);
    expect(line).toBe('     80 ┤\u001b[31m██████\u001b[0m');
  });

  it('leaves a column without samples empty', () => {
    const gap = { ...trace, top: [92, Number.NaN], middle: [84, Number.NaN], bottom: [80, Number.NaN] };
    expect(storeChart(gap, unicode).at(-1)).toBe('     80 ┤█');
  });

  it('gives only its head when there is nothing to draw', () => {
    expect(storeChart({ ...trace, top: [], middle: [], bottom: [] }, unicode)).toHaveLength(1);
  });
});

describe('rowValues', () => {
  const between = (low: number, high: number, wanted: number | null = null) =>
    rowValues({
      ...trace,
      top: [high],
      middle: [low],
      bottom: [low],
      wanted: wanted === null ? null : { value: wanted, words: '' },
    });

  it('stand on round numbers from the coldest to the hottest', () => {
    expect(between(41, 178)).toEqual([170, 160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 40]);
    expect(between(-12, 3)).toEqual([2, 0, -2, -4, -6, -8, -10, -12]);
  });
  it('reach up to the wanted temperature even where the store does not', () => {
    expect(between(60, 80, 105)[0]).toBe(105);
  });
  it('are a few even where nothing changes', () => {
    expect(between(50, 50)).toEqual([51.5, 51, 50.5, 50]);
  });
  it('are never many', () => {
    for (const high of [1, 9, 33, 140, 999, 2000]) expect(between(0, high).length).toBeLessThanOrEqual(15);
  });
});

describe('timeFoot', () => {
  it('puts a tick and words at each mark', () => {
    const marks = [0, 10, 20].map((column, i) => ({ column, words: `Jan ${9 + i}` }));
    expect(timeFoot(marks, 30, unicode)).toEqual([
      '        └┬─────────┬─────────┬─────────',
      '         Jan 9     Jan 10    Jan 11',
    ]);
    expect(timeFoot(marks, 30, ascii)[0]).toBe('        ++---------+---------+---------');
  });
  it('leaves off words that would collide or run out', () => {
    const marks = [0, 4, 12, 17].map((column, i) => ({ column, words: `Jan ${9 + i}` }));
    expect(timeFoot(marks, 20, unicode)[1]).toBe('         Jan 9       Jan 11');
  });
});

describe('sparkRow', () => {
  it('draws the share of the largest', () => {
    expect(sparkRow('sun', [0, 1, 4, 8, Number.NaN, 2], unicode)).toBe('     sun  ▁▄█ ▂');
    expect(sparkRow('sun', [0, 1, 4, 8, Number.NaN, 2], ascii)).toBe('     sun  .=@ :');
  });
  it('is blank where nothing happens', () => {
    expect(sparkRow('engine', [0, 0, 0], unicode)).toBe('  engine');
  });
});

it('numberRow puts numbers under their marks', () => {
  const marks = [
    { column: 0, text: '2.0' },
    { column: 10, text: '0' },
    { column: 20, text: '12.5' },
  ];
  expect(numberRow('h/day', marks)).toBe('   h/day 2.0       0         12.5');
});
