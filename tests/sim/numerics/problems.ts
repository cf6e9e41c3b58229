/** Small systems with exact solutions, to try the integrator on. */
import { type Equations, Integrator } from '../../../sim/numerics/integrator.ts';

export type Rates = (t: number, y: number[], out: number[]) => void;

export function equations(size: number, rates: Rates, absolute = 1e-9): Equations {
  return {
    size,
    rates,
    nameOf: (i) => `part.state[${i}]`,
    absoluteTolerance: new Array<number>(size).fill(absolute),
  };
}

export const decay: Rates = (_t, y, out) => {
  out[0] = -y[0] / 500;
};
/** Period 2 pi 100 s. */
export const swing: Rates = (_t, y, out) => {
  out[0] = y[1] / 100;
  out[1] = -y[0] / 100;
};
/** Leaves one vessel for a second and from there a third. */
export const cascade: Rates = (_t, y, out) => {
  out[0] = -y[0] / 300;
  out[1] = y[0] / 300 - y[1] / 900;
  out[2] = y[1] / 900;
};

/** State after integrating from 0 to `end`, and what it cost. */
export function run(rates: Rates, start: number[], end: number, tolerance: number, budget = 1e6) {
  const integrator = new Integrator(
    equations(start.length, rates, tolerance * 1e-3 + 1e-12),
    tolerance,
    budget,
  );
  const y = start.slice();
  integrator.advance(0, y, end, 10, () => undefined);
  return { y, integrator };
}
