import { describe, expect, it } from 'vitest';
import { waterAt, waterRange } from '../../../../ui/web/app/water-at.ts';
import { handMadeResult, sixHours_s } from '../hand-made.ts';

describe('the water at a time', () => {
  const result = handMadeResult();

  it('is that of the sample that closes the interval, at the end the last one', () => {
    const at = (hours: number) => Array.from(waterAt(result, hours * 3600).layer_C);
    expect(at(0)).toEqual([20, 40]);
    expect(at(6)).toEqual([20, 40]);
    expect(at(6.1)).toEqual([20, 50]);
    expect(at(24)).toEqual([40, 80]);
    expect(at(99)).toEqual([40, 80]);
    expect(waterAt(result, 7 * 3600).time_s).toBe(2 * sixHours_s);
  });

  it('stands as deep as the run has it, if the run followed it', () => {
    expect(waterAt(result, 0).level_m).toBeNull();
    const { series } = result;
    const level_m = Float32Array.of(1, 0.5, 0.25, 0.125);
    const followed = { ...result, series: { ...series, channels: { ...series.channels, level_m } } };
    expect(waterAt(followed, 12 * 3600).level_m).toBe(0.5);
  });

  it('is coloured between the coldest and the hottest of the run', () => {
    expect(waterRange(result)).toEqual([20, 80]);
  });
});
