import { describe, expect, it } from 'vitest';
import { daysData } from '../../../../ui/web/app/days-data.ts';
import {
  firstMoment,
  momentAfterKey,
  momentTitle,
  nextTurn,
  readout,
} from '../../../../ui/web/app/moments.ts';
import { handMadeResult, handMadeSeries, sixHours_s } from '../hand-made.ts';

const shown = { result: handMadeResult(), firstWeekday: 5 };

describe('the cursor', () => {
  const series = handMadeSeries();

  it('stands at first where water first ran cold', () => {
    expect(firstMoment(shown.result)).toBe(2 * sixHours_s);
  });

  it('stands at the end of a run in which none did', () => {
    const warm = handMadeResult();
    warm.series.channels.ran_cold_s[1] = 0;
    expect(firstMoment(warm)).toBe(4 * sixHours_s);
  });

  it.each([
    ['ArrowRight', 3],
    ['ArrowLeft', 1],
    ['PageUp', 4],
    ['PageDown', 1],
    ['Home', 1],
    ['End', 4],
    ['a', null],
  ])('answers the key %s', (key, sample) => {
    expect(momentAfterKey(series, 2 * sixHours_s, key)).toBe(sample && sample * sixHours_s);
  });

  it('moves by a day where samples are shorter', () => {
    const time_s = Float64Array.from({ length: 100 }, (_, i) => i * 3600);
    expect(momentAfterKey({ ...series, time_s }, 36_000, 'PageUp')).toBe(36_000 + 86_400);
  });
});

describe('events', () => {
  const rows = [
    { key: 'engine', label: '', spells: [{ from_s: 100, to_s: 200 }] },
    { key: 'cold', label: '', spells: [{ from_s: 200, to_s: 300 }] },
  ];

  it('are found one after the other, forwards and back, with all that happens at once', () => {
    expect(nextTurn(rows, 0, true)).toEqual({ time_s: 100, words: 'engine starts' });
    expect(nextTurn(rows, 100, true)).toEqual({ time_s: 200, words: 'engine stops, water runs cold' });
    expect(nextTurn(rows, 250, false)?.time_s).toBe(200);
    expect(nextTurn(rows, 300, true)).toBeNull();
    expect(nextTurn(rows, 100, false)).toBeNull();
  });
});

describe('the readout', () => {
  const texts = (units: 'US' | 'SI', sample = 1, result = handMadeResult()) =>
    readout(daysData({ ...shown, result }, units), sample, units).flatMap(({ rows }) =>
      rows.map(({ label, text }) => `${label} ${text}`),
    );

  it('names the moment, with seconds where it has some', () => {
    expect(momentTitle(shown, 2 * sixHours_s)).toBe('Sat Jan 9, 12:00');
    expect(momentTitle(shown, 2 * sixHours_s + 50)).toBe('Sat Jan 9, 12:00:50');
  });

  it('gives every value with its unit', () => {
    expect(texts('SI')).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^top 50(\.0)? °C$/),
        expect.stringMatching(/^engine 4(\.0+)? kW/),
        expect.stringMatching(/^at the tap 30(\.0)? °C$/),
        expect.stringMatching(/^flow 6(\.0+)? L\/min$/),
      ]),
    );
    expect(texts('US')).toEqual(expect.arrayContaining([expect.stringMatching(/^top 122(\.0)? °F$/)]));
  });

  it('says beside the water at the tap that it scalds', () => {
    const tap = (outlet_C: number) => {
      const hot = handMadeResult();
      hot.series.channels.outlet_C[1] = outlet_C;
      return texts('SI', 1, hot).find((text) => text.startsWith('at the tap'));
    };
    expect(tap(48)).not.toContain('scalds');
    expect(tap(55)).toMatch(/55 °C \(scalds\)$/);
  });

  it('says that nothing is drawn rather than showing a temperature of nothing', () => {
    expect(texts('SI', 3)).toContain('at the tap nothing drawn');
  });

  it('leaves out what the plant does not have', () => {
    expect(texts('SI').join()).not.toContain('on the glass');
  });
});
