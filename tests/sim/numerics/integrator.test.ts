/** The integrator by its properties: exact solutions, orders, invariants and ceilings. */
import { describe, expect, it } from 'vitest';
import { Integrator, type Step } from '../../../sim/numerics/integrator.ts';
import { cascade, decay, equations, type Rates, run, swing } from './problems.ts';

describe('accuracy', () => {
  it.each([1e-3, 1e-5, 1e-7, 1e-9])('of a decay stays within twenty tolerances of %f', (tolerance) => {
    const { y } = run(decay, [80], 1000, tolerance);
    expect(Math.abs(y[0] / (80 * Math.exp(-2)) - 1)).toBeLessThan(20 * tolerance);
  });

  it.each([1e-3, 1e-5, 1e-7])(
    'of an oscillation over two periods stays within twenty tolerances of %f',
    (tolerance) => {
      const end = 4 * Math.PI * 100;
      const { y } = run(swing, [1, 0], end, tolerance);
      expect(Math.hypot(y[0] - 1, y[1])).toBeLessThan(20 * tolerance);
    },
  );

  it('follows a rate that depends on time alone', () => {
    const { y } = run(
      (t, _y, out) => {
        out[0] = Math.sin(t / 1000);
      },
      [0],
      20_000,
      1e-6,
    );
    expect(y[0]).toBeCloseTo(1000 * (1 - Math.cos(20)), 3);
  });

  it('costs few more evaluations for a thousandfold tolerance: the order is high', () => {
    const coarse = run(swing, [1, 0], 2000, 1e-4).integrator.evaluations;
    const fine = run(swing, [1, 0], 2000, 1e-7).integrator.evaluations;
    // A method of order 4 would need 1000^(1/5), four times as many.
    expect(fine / coarse).toBeLessThan(2.5);
  });
});

/** Error of an interpolant in the middle of a step of e^t, by the step's length. */
function middleError(interpolate: (step: Step, t: number, out: number[]) => number[], span: number): number {
  const growth: Rates = (_t, y, out) => {
    out[0] = y[0];
  };
  const integrator = new Integrator(equations(1, growth), 1e-9, 1e5);
  let error = Number.NaN;
  // Two steps are the fewest; the first is half the span.
  integrator.advance(0, [1], span, span / 2, (step) => {
    if (step.t0 === 0) {
      const middle = (step.t0 + step.t1) / 2;
      const exact = Math.exp(middle);
      error = Math.abs(interpolate(step, middle, [0])[0] - exact);
    }
    return undefined;
  });
  return error;
}

describe('between steps', () => {
  it('the state is interpolated to fourth order', () => {
    const at = (span: number) => middleError((step, t, out) => step.at(t, out), span);
    const order = Math.log2(at(0.4) / at(0.2));
    expect(order).toBeGreaterThan(3.7);
    expect(order).toBeLessThan(4.5);
  });

  it('the cheap estimate is of third order and costs nothing', () => {
    const near = (span: number) => middleError((step, t, out) => step.near(t, out), span);
    const order = Math.log2(near(0.4) / near(0.2));
    expect(order).toBeGreaterThan(2.7);
    expect(order).toBeLessThan(3.5);
    const integrator = new Integrator(equations(1, decay), 1e-4, 1e5);
    integrator.advance(0, [1], 100, 10, (step) => {
      const before = integrator.evaluations;
      step.near((step.t0 + step.t1) / 2, [0]);
      expect(integrator.evaluations).toBe(before);
      return undefined;
    });
  });

  it('the state costs one evaluation however often it is asked for', () => {
    const integrator = new Integrator(equations(1, decay), 1e-4, 1e5);
    integrator.advance(0, [1], 100, 10, (step) => {
      const before = integrator.evaluations;
      for (let i = 0; i <= 10; i++) step.at(step.t0 + ((step.t1 - step.t0) * i) / 10, [0]);
      expect(integrator.evaluations).toBe(before + 1);
      return undefined;
    });
  });

  it('the state meets both ends of the step', () => {
    const integrator = new Integrator(equations(2, swing), 1e-5, 1e5);
    integrator.advance(0, [1, 0], 300, 10, (step) => {
      expect(step.at(step.t0, [0, 0])).toEqual(step.y0);
      step.at(step.t1, [0, 0]).forEach((v, i) => {
        expect(v).toBeCloseTo(step.y1[i], 14);
      });
      return undefined;
    });
  });

  it('a sum that the equations keep is kept, at every instant', () => {
    const integrator = new Integrator(equations(3, cascade), 1e-3, 1e5);
    let worst = 0;
    let steps = 0;
    integrator.advance(0, [60, 20, 0], 5000, 10, (step) => {
      steps++;
      for (let i = 0; i <= 7; i++) {
        const [a, b, c] = step.at(step.t0 + ((step.t1 - step.t0) * i) / 7, [0, 0, 0]);
        worst = Math.max(worst, Math.abs(a + b + c - 80));
      }
      return undefined;
    });
    expect(steps).toBeGreaterThan(2);
    expect(worst).toBeLessThan(1e-12 * 80);
  });
});

describe('a stop inside a step', () => {
  it('leaves the state of that instant, and the run goes on from there', () => {
    const integrator = new Integrator(equations(2, swing, 1e-9), 1e-8, 1e5);
    const y = [1, 0];
    // The step is 30 s long: the interpolant's own error is at most 0.3^4/384, 2.1e-5.
    const { time } = integrator.advance(0, y, 40, 10, (step) => (step.t1 > 33 ? 33 : undefined));
    expect(time).toBe(33);
    expect(Math.abs(y[0] - Math.cos(0.33))).toBeLessThan(2.1e-5);
    expect(Math.abs(y[1] + Math.sin(0.33))).toBeLessThan(2.1e-5);
    integrator.advance(time, y, 600, 10, () => undefined);
    expect(Math.abs(y[0] - Math.cos(6))).toBeLessThan(4e-5);
    expect(Math.abs(y[1] + Math.sin(6))).toBeLessThan(4e-5);
  });

  it('asked for at the very end of a step is no stop', () => {
    const integrator = new Integrator(equations(1, decay), 1e-5, 1e5);
    const y = [1];
    expect(integrator.advance(0, y, 50, 10, (step) => step.t1).time).toBe(50);
    expect(y[0]).toBeCloseTo(Math.exp(-0.1), 6);
  });
});

describe('cost', () => {
  it('of a smooth hour with a fitting first step stays within 40 evaluations', () => {
    const { integrator } = run(
      (_t, y, out) => {
        out[0] = -y[0] / 1e5;
      },
      [60],
      3600,
      1e-4,
    );
    const before = integrator.evaluations;
    integrator.advance(3600, [59], 7200, 1800, () => undefined);
    expect(integrator.evaluations - before).toBeLessThanOrEqual(40);
  });

  it('of a day of a daily swing stays within 600 evaluations', () => {
    const { integrator } = run(
      (t, y, out) => {
        out[0] = (20 + 10 * Math.cos((2 * Math.PI * t) / 86_400) - y[0]) / 20_000;
      },
      [20],
      86_400,
      1e-4,
    );
    expect(integrator.evaluations).toBeLessThanOrEqual(600);
  });

  it('is not raised by an integral that is not to steer the step', () => {
    const bare = new Integrator(equations(1, decay), 1e-5, 1e5);
    const counted = new Integrator(
      {
        ...equations(2, (t, y, out) => {
          decay(t, y, out);
          out[1] = 1e6 * y[0] ** 2;
        }),
        absoluteTolerance: [1e-9, Number.POSITIVE_INFINITY],
      },
      1e-5,
      1e5,
    );
    bare.advance(0, [1], 2000, 10, () => undefined);
    const y = [1, 0];
    counted.advance(0, y, 2000, 10, () => undefined);
    expect(counted.steps).toBeLessThanOrEqual(bare.steps);
    // The integral of 1e6 e^(-2t/500).
    expect(y[1] / (1e6 * 250 * (1 - Math.exp(-8)))).toBeCloseTo(1, 3);
  });

  it('counts every call of the equations', () => {
    let calls = 0;
    const { integrator } = run(
      (t, y, out) => {
        calls++;
        decay(t, y, out);
      },
      [1],
      1000,
      1e-4,
    );
    expect(integrator.evaluations).toBe(calls);
  });
});

describe('a used integrator', () => {
  it('gives what a fresh one gives', () => {
    const fresh = run(swing, [1, 0], 700, 1e-5).y;
    const { integrator } = run(swing, [0.3, -2], 123, 1e-5);
    const y = [1, 0];
    integrator.advance(0, y, 700, 10, () => undefined);
    expect(y).toEqual(fresh);
  });

  it('leaves the state it was given alone until the span is done', () => {
    const integrator = new Integrator(equations(1, decay), 1e-4, 1e4);
    const y = [1];
    integrator.advance(0, y, 100, 10, () => {
      expect(y).toEqual([1]);
      return undefined;
    });
  });
});
