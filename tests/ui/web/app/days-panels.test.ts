import { describe, expect, it } from 'vitest';
import { daysData } from '../../../../ui/web/app/days-data.ts';
import { type PanelKey, panelsOf, readingsOf } from '../../../../ui/web/app/days-panels.ts';
import { panelSentence } from '../../../../ui/web/app/days-sentences.ts';
import { handMadeResult } from '../hand-made.ts';

const data = daysData({ result: handMadeResult(), firstWeekday: 5 }, 'SI');
const texts = (panel: PanelKey, sample: number) =>
  readingsOf(data, panel, 'SI').map(({ label, text }) => `${label} ${text(sample)}`);

describe('the panels', () => {
  it('show what the run has, and the tap only where a shower can be seen', () => {
    const day = { from_s: 0, to_s: 86_400 };
    expect(panelsOf(data, day)).toEqual(['temperatures', 'field', 'heat', 'ran', 'water']);
    expect(panelsOf(data, { from_s: 0, to_s: 3600 })).toContain('tap');
  });

  it('can be read line by line', () => {
    expect(texts('temperatures', 1)).toEqual(['top 50 °C', 'middle 35 °C', 'bottom 20 °C']);
    expect(texts('field', 1)).toEqual(['at 76 cm 50 °C', 'at 25 cm 20 °C']);
    expect(texts('ran', 1)).toEqual(['ran cold yes']);
    expect(texts('ran', 2)).toEqual(['ran cold no']);
    expect(texts('tap', 3)).toEqual(['at the tap nothing drawn', 'wanted nothing drawn']);
    expect(texts('heat', 1)[0]).toMatch(/^engine 4(\.0+)? kW/);
  });

  it('can be told in a sentence', () => {
    expect(panelSentence(data, 'temperatures')).toBe(
      'Store temperatures: top 40 °C to 80 °C; middle 30 °C to 60 °C; bottom 20 °C to 40 °C; water ran cold in 1 spell.',
    );
    expect(panelSentence(data, 'ran')).toBe('What ran, and when: ran cold 1 time.');
  });
});
