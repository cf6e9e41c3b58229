import { describe, expect, it } from 'vitest';
import {
  firstSample,
  momentTitle,
  readout,
  sampleAfterKey,
  sampleAt,
} from '../../../../ui/web/app/moments.ts';
import type { Shown } from '../../../../ui/web/app/page-state.ts';
import { handMadeResult, handMadeSeries, sixHours_s } from '../hand-made.ts';

const shown: Shown = {
  choice: { scenario: 'demo', from: '2027-01-09', days: 1 },
  result: handMadeResult(),
  firstWeekday: 5,
  filled: 0,
};

describe('the cursor', () => {
  const series = handMadeSeries();

  it('stands at first where water first ran cold', () => {
    expect(firstSample(shown.result)).toBe(1);
  });

  it('stands at the end of a run in which none did', () => {
    const warm = handMadeResult();
    warm.series.channels.ran_cold_s[1] = 0;
    expect(firstSample(warm)).toBe(3);
  });

  it('goes to the sample that closes the interval pointed at', () => {
    expect([0, 1, sixHours_s, sixHours_s + 1, 1e9].map((time_s) => sampleAt(series, time_s))).toEqual([
      0, 0, 0, 1, 3,
    ]);
  });

  it.each([
    ['ArrowRight', 2],
    ['ArrowLeft', 0],
    ['PageUp', 3],
    ['PageDown', 0],
    ['Home', 0],
    ['End', 3],
    ['a', null],
  ])('answers the key %s', (key, sample) => {
    expect(sampleAfterKey(series, 1, key)).toBe(sample);
  });

  it('moves by a day where samples are shorter', () => {
    const long = { ...series, interval_s: 3600, time_s: new Float64Array(100) };
    expect(sampleAfterKey(long, 30, 'PageUp')).toBe(54);
  });
});

describe('the readout', () => {
  it('names the moment', () => {
    expect(momentTitle(shown, 1)).toBe('Sat Jan 9, 12:00');
  });

  it('gives every value with its unit', () => {
    const text = (system: 'US' | 'SI') =>
      readout(shown, 1, system).flatMap(({ rows }) => rows.map(({ label, text }) => `${label} ${text}`));
    expect(text('SI')).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^top 50(\.0)? °C$/),
        expect.stringMatching(/^engine 4(\.0+)? kW \(13\.6 kBtu\/h\)$/),
        expect.stringMatching(/^at the tap 30(\.0)? °C$/),
      ]),
    );
    expect(text('US')).toEqual(expect.arrayContaining([expect.stringMatching(/^top 122(\.0)? °F$/)]));
  });

  it('says beside the water at the tap that it scalds', () => {
    const tap = (outlet_C: number) => {
      const hot = handMadeResult();
      hot.series.channels.outlet_C[1] = outlet_C;
      return readout({ ...shown, result: hot }, 1, 'SI').find(({ title }) => title === 'Tap')?.rows[0].text;
    };
    expect(tap(48)).not.toContain('scalds');
    expect(tap(55)).toMatch(/^55 °C \(scalds\)$/);
  });

  it('says that nothing is drawn rather than showing a temperature of nothing', () => {
    const tap = readout(shown, 3, 'SI').find(({ title }) => title === 'Tap');
    expect(tap?.rows.map(({ text }) => text)).toEqual(['nothing drawn']);
  });

  it('leaves out what the plant does not have', () => {
    const labels = readout(shown, 1, 'SI').flatMap(({ rows }) => rows.map(({ label }) => label));
    expect(labels).not.toContain('on the glass');
  });
});
