import { describe, expect, it } from 'vitest';
import type { Caution, Result } from '../../../sim/index.ts';
import { type FiguresInput, figureLines, looseCautions } from '../../../ui/terminal/figures-table.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';

const screen: Screen = { width: 70, unicode: true, colour: false };

const figures: Result['figures'] = {
  showers: 12,
  cold_shower_s: 270,
  first_cold_s: null,
  outlet_C_max: 60,
  store_top_C_max: 71,
  engine_s: null,
  fuel_m3: null,
};
const scald: Caution = { key: 'scald', part: 'taps', severity: 'danger', figure: 'outlet_C_max', value: 60 };

const lines = (change: Partial<FiguresInput> = {}) =>
  figureLines({ result: { figures, cautions: [] }, bands: {}, units: 'US', ...change }, screen);

describe('figureLines', () => {
  it('groups figures, in both systems of units', () => {
    expect(lines()).toEqual([
      'Hot water',
      '  Showers taken                               12',
      '  Time showers ran cold                  4.5 min',
      '  From the start to the first cold draw    never',
      '  Hottest water at the tap                140 °F  (60 °C)',
      'Store',
      '  Store top, hottest                      160 °F  (71 °C)',
    ]);
  });

  it('puts the reader’s units first', () => {
    expect(lines({ units: 'SI' })).toContain('  Hottest water at the tap                 60 °C  (140 °F)');
  });

  it('leaves out what nothing is known of', () => {
    expect(lines().join('\n')).not.toContain('Engine');
  });

  it('shows a band in the reader’s units', () => {
    const most = {
      path: 'a',
      label: '',
      value: '',
      source: '',
      grade: 'D',
      band: null,
      measure: null,
    } as const;
    const bands = { store_top_C_max: { low: 60, high: 80, most } };
    expect(lines({ bands }).at(-1)).toMatch(/160 °F {2}\(71 °C\) {2}140 °F to 176 °F$/);
  });

  it('puts a caution under its figure', () => {
    const out = lines({ result: { figures, cautions: [scald] } });
    const at = out.findIndex((line) => line.includes('Hottest water'));
    expect(out[at + 1]).toBe('  ! Danger: Scalding water at the tap. * Water reaches 140 °F at the');
    expect(out.every((line) => line.length <= 70)).toBe(true);
  });

  it('shows a caution without words by its key', () => {
    const cautions: Caution[] = [{ ...scald, key: 'new\u001b_one' }];
    expect(lines({ result: { figures, cautions } })).toContain('  ! Danger: new?_one. taps.');
  });
});

describe('looseCautions', () => {
  const noted: Caution = { key: 'estimate_only', part: 'plant', severity: 'note' };
  const unseen: Caution = { key: 'carbon_monoxide', part: 'set', severity: 'danger', figure: 'engine_s' };

  it('are those beside no figure that is shown', () => {
    expect(looseCautions({ figures, cautions: [scald, noted, unseen] })).toEqual([noted, unseen]);
  });
});
