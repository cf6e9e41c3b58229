/** Near rest all that is left of a rate is rounding, which may flip its sign at every look: no reason to take small steps. */
import { describe, expect, it } from 'vitest';
import { Integrator } from '../../../sim/numerics/integrator.ts';

describe('a system at rest but for rounding', () => {
  it.each([1e-4, 1e-6])('is passed in long steps at tolerance %f', (tolerance) => {
    // Falls three times as fast from above as it rises from below; both far below the tolerance in an hour.
    const rates = (_t: number, y: number[], out: number[]) => {
      out[0] = y[0] > 100 ? -3e-10 : 1e-10;
    };
    const equations = { size: 1, rates, nameOf: () => 'layer', absoluteTolerance: [tolerance] };
    const integrator = new Integrator(equations, tolerance, 100_000);
    const y = [100];
    integrator.advance(0, y, 86_400, 600, () => undefined);
    expect(integrator.evaluations).toBeLessThan(1000);
    expect(Math.abs(y[0] - 100)).toBeLessThan(1e-4);
  });
});
