/** Results hardly move with the tolerance and the number of layers; tests/bench/convergence.bench.ts measures further. */
import { describe, expect, it } from 'vitest';
import { apart, layerErrors, quantile, rms, runExample } from '../../bench/support/runs.ts';

const DAYS = 7;

describe.each(['demo', 'tote-sun'])('a week of %s', (name) => {
  const usual = runExample(name, { days: DAYS });

  it('at the usual tolerance is within hundredths of a kelvin of one at a thousandth of it', () => {
    const close = runExample(name, { days: DAYS, tolerance: 1e-7 });
    const errors = layerErrors(usual, close);
    expect(quantile(errors, 0.99)).toBeLessThan(0.1);
    expect(errors[errors.length - 1]).toBeLessThan(0.5);
    expect(Math.abs(apart('household_heat_J', usual, close))).toBeLessThan(5e-4);
    expect(Math.abs(apart('solar_heat_J', usual, close))).toBeLessThan(2e-3);
  });

  it('has in 20 layers what it has in 80', () => {
    const fine = runExample(name, { days: DAYS, layers: 80 });
    expect(Math.abs(apart('household_heat_J', usual, fine))).toBeLessThan(5e-3);
    expect(rms(layerErrors(usual, fine))).toBeLessThan(0.3);
  });

  it('comes nearer with more layers', () => {
    const fine = runExample(name, { days: DAYS, layers: 80 });
    const [coarse, finer] = [5, 40].map((layers) =>
      rms(layerErrors(runExample(name, { days: DAYS, layers }), fine)),
    );
    expect(finer).toBeLessThan(coarse / 4);
  });
});
