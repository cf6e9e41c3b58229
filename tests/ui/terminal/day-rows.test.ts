import { describe, expect, it } from 'vitest';
import type { PlantDescription } from '../../../sim/index.ts';
import { dayLines } from '../../../ui/terminal/day-rows.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';
import { plant, result } from './hand-made.ts';

/** 48 columns for 48 hours. */
const screen: Screen = { width: 58, unicode: true, colour: false };
const row = (label: string, glyph: string) => `${label}${glyph.repeat(48)}`;

describe('dayLines', () => {
  it('draws store, engine, sun and draws on the same columns', () => {
    expect(dayLines(result, plant, 'SI', screen)).toEqual([
      '     °C   Store temperature   ░ top   ▒ middle   █ bottom   ┄ wanted 45 °C',
      row('        ┤', '░'),
      row('     68 ┤', '░'),
      row('        ┤', '░'),
      row('     64 ┤', '░'),
      row('        ┤', '░'),
      row('     60 ┤', '▒'),
      row('        ┤', '▒'),
      row('     56 ┤', '▒'),
      row('        ┤', '▒'),
      row('     52 ┤', '▒'),
      row('        ┤', '█'),
      row('     48 ┤', '█'),
      row('     46 ┤', '█'),
      row('     44 ┤', '█'),
      '        └┬───────────────────────┬───────────────────────',
      '         Jan 31                  Feb 1',
      '  engine       ███                                 ██████',
      '   h/day 3.0                     6.0',
      '     sun          ██████                  ██████',
      '  kWh/m2 3.0                     3.0',
      '   draws                   ██                      ██',
      '   L/day 120                     120',
    ]);
  });

  it('says the draws in gallons to who reads gallons', () => {
    // 120 L are 31.70 US gallons.
    expect(dayLines(result, plant, 'US', screen).at(-1)).toBe(' gal/day 31.7                    31.7');
  });

  it('leaves out the rows of parts that are not there', () => {
    const bare = { engine: null, collector: null, taps: null } as unknown as PlantDescription;
    const lines = dayLines(result, bare, 'SI', screen);
    expect(lines[0]).not.toContain('wanted');
    expect(lines.at(-1)).toBe('         Jan 31                  Feb 1');
  });
});
