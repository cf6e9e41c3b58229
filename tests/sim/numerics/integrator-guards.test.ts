/** Each hazard of the package under the integrator, guarded. */
import { describe, expect, it } from 'vitest';
import { IntegrationError, Integrator } from '../../../sim/numerics/integrator.ts';
import { decay, equations, type Rates, run, swing } from './problems.ts';

describe('what cannot go on', () => {
  it('ends with the budget where the solution blows up', () => {
    const blowUp: Rates = (_t, y, out) => {
      out[0] = y[0] ** 2 / 100;
    };
    let calls = 0;
    const counted: Rates = (t, y, out) => {
      calls++;
      blowUp(t, y, out);
    };
    expect(() => run(counted, [1], 200, 1e-4, 5000)).toThrow(IntegrationError);
    expect(calls).toBeLessThanOrEqual(5001);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'names the state whose rate is %f, and when',
    (bad) => {
      const spoilt: Rates = (t, _y, out) => {
        out[0] = 0;
        out[1] = t > 70 ? bad : 1;
        out[2] = 0;
      };
      expect(() => run(spoilt, [0, 0, 0], 100, 1e-4)).toThrow(
        new RegExp(`part\\.state\\[1\\] at (7|8|9|100)[0-9.]* s - expected a finite rate .* got ${bad}`),
      );
    },
  );

  it('names a rate that is spoilt only at the very last instant', () => {
    const spoilt: Rates = (t, _y, out) => {
      out[0] = t >= 100 ? Number.NaN : 1;
    };
    expect(() => run(spoilt, [0], 100, 1e-4)).toThrow(/part\.state\[0\] at 100\.0 s/);
  });

  it('says so when the budget is spent, with what to do', () => {
    expect(() => run(swing, [1, 0], 1e6, 1e-6, 300)).toThrow(
      /expected at most 300 evaluations - got more - shorten the run/,
    );
  });

  it.each([
    [10, 10],
    [10, 5],
    [-1, 0],
    [0, Number.NaN],
    [Number.NaN, 1],
  ])('refuses the span from %d to %d', (from, to) => {
    const integrator = new Integrator(equations(1, decay), 1e-4, 100);
    expect(() => integrator.advance(from, [1], to, 1, () => undefined)).toThrow(/span forward in time/);
  });

  it('refuses a span inside a span, and is free again after a throw', () => {
    const integrator = new Integrator(equations(1, decay), 1e-4, 1e4);
    expect(() =>
      integrator.advance(0, [1], 100, 10, () => {
        integrator.advance(0, [1], 100, 10, () => undefined);
        return undefined;
      }),
    ).toThrow(/one span at a time/);
    const y = [1];
    integrator.advance(0, y, 500, 10, () => undefined);
    expect(y[0]).toBeCloseTo(Math.exp(-1), 4);
  });

  it.each([0, 1e-10, 0.02, Number.NaN])('refuses a tolerance of %f', (tolerance) => {
    expect(() => new Integrator(equations(1, decay), tolerance, 100)).toThrow(
      /run\.tolerance - expected 1e-9 to 1e-2/,
    );
  });
});
