/**
 * The only file that knows the integrator package. It wraps Hairer's explicit extrapolation method with the
 * guards its hazards call for: every value a derivative returns is checked to be finite and named if it is
 * not; a budget of evaluations ends a run that would loop; one solver is reused, never re-entered.
 *
 * Between two accepted steps the state is a cubic Hermite interpolant of values and derivatives. It keeps
 * every linear invariant of the equations exactly (values and derivatives at both ends satisfy them), so a
 * state taken inside a step still closes the energy balance.
 */

import { Solver } from '#odex';
import { power } from './alike.ts';

/** A system of ordinary differential equations y' = f(t, y) over named states. */
export interface Equations {
  /** Number of states. */
  size: number;
  /** Writes the derivative at (t [s], y) to `out`; allocates nothing. */
  rates(t: number, y: number[], out: number[]): void;
  /** Name of a state, for messages: `store.layer[3]`. */
  nameOf(index: number): string;
  /** Absolute tolerance by state; Infinity for a pure integral that is not to steer the step. */
  absoluteTolerance: number[];
  /** What each state's tolerances are divided by; all 1 if left out. For states on which large flows hang. */
  sharpness?: number[];
}

/** A run that cannot go on, with the house form of message. */
export class IntegrationError extends Error {
  override name = 'IntegrationError';
}

/** One accepted step from t0 to t1. `at` interpolates the state; it costs one evaluation the first time. */
export interface Step {
  t0: number;
  t1: number;
  y0: number[];
  y1: number[];
  /** State at t0 <= t <= t1, written to `out`. */
  at(t: number, out: number[]): number[];
  /** Cheap second-order estimate of the state at t (value and slope at t0, value at t1): no evaluation. */
  near(t: number, out: number[]): number[];
}

/** Longest step when nothing else bounds it [s]. */
const LONGEST_STEP = 3600;
/**
 * Columns of the extrapolation, by tolerance. A step that fast loops keep short gains nothing from a high order: with
 * three columns four weeks of the demo at 1e-4 cost 55,000 evaluations and p99 0.012 K, with nine 66,000 and 0.033 K.
 */
const FEW_COLUMNS = 3;
const MOST_COLUMNS = 9;
const FINE = 1e-5;
/** Rates at rest, squared. */
const RESTING = 1e-11;
/**
 * A step may be followed by one so many times as long: a loop's fast states bound most steps by their stability, and
 * one that leaps is thrown away (5 % of a year's evaluations). The package asks for its inverse's cube.
 */
const MOST_GROWTH = 1.5;
/** Of the time: ends nearer to one another are the same. */
const ROUNDING = 1e-14;
/** Evaluations in one span: an hour at most, for which a stiff plant takes some thousands. */
const MOST_IN_A_SPAN = 500_000;

/** The package; only the length of the next step is worked out again, by powers that all engines compute alike. */
class AlikeSolver extends Solver {
  override midEx(j: number, h: number, x: number, y: number[], rates: number[]): boolean {
    const goesOn = super.midEx(j, h, x, y, rates);
    if (!goesOn || j === 0) return goesOn;
    const { stepSizeFac1, stepSizeFac2, stepSafetyFactor1, stepSafetyFactor2 } = this.options;
    const exponent = 1 / (2 * j + 1);
    const least = power(stepSizeFac1, exponent);
    const wanted = power(this.err / stepSafetyFactor1, exponent) / stepSafetyFactor2;
    this.hh[j] = Math.min(Math.abs(h) / Math.min(stepSizeFac2 / least, Math.max(least, wanted)), this.hMax);
    this.w[j] = this.a[j] / this.hh[j];
    return true;
  }
}

export class Integrator {
  evaluations = 0;
  steps = 0;
  #solver: Solver;
  #equations: Equations;
  #budget: number;
  #f1: number[];
  #busy = false;
  /** Evaluations at which the present span is given up. */
  #ceiling: number;
  /** The derivative last told to `know`, and where. */
  #knownTime = Number.NaN;
  readonly #knownState: number[];
  readonly #knownRates: number[];

  /**
   * @param equations the system
   * @param tolerance relative tolerance, 1e-9..1e-2
   * @param budget most evaluations this integrator may spend over its life
   * @throws RangeError if the tolerance is out of range
   */
  constructor(equations: Equations, tolerance: number, budget: number) {
    if (!(tolerance >= 1e-9 && tolerance <= 1e-2)) {
      throw new RangeError(
        `run.tolerance - expected 1e-9 to 1e-2 - got ${tolerance} - use 1e-4 unless you compare precisions`,
      );
    }
    this.#equations = equations;
    this.#budget = budget;
    this.#ceiling = budget;
    this.#f1 = new Array<number>(equations.size).fill(0);
    this.#knownState = this.#f1.slice();
    this.#knownRates = this.#f1.slice();
    const sharpness = (i: number) => equations.sharpness?.[i] ?? 1;
    this.#solver = new AlikeSolver((t, y, out) => this.#rates(t, y, out), equations.size, {
      rawFunction: true,
      denseOutput: false,
      // The package's own limit has no message worth reading: evaluations are counted instead.
      maxSteps: Number.MAX_SAFE_INTEGER,
      maxStepSize: LONGEST_STEP,
      // The package halves a step while rates change by more than themselves, which keeps a stiff state from wobbling
      // about its rest. At rest itself rates are rounding and it would halve for ever: below this (squared, over the
      // tolerance, per second) they count as none.
      uRound: RESTING,
      stepSizeFac1: power(MOST_GROWTH, -3),
      maxExtrapolationColumns: tolerance < FINE ? MOST_COLUMNS : FEW_COLUMNS,
      relativeTolerance: equations.absoluteTolerance.map((_, i) => tolerance / sharpness(i)),
      absoluteTolerance: equations.absoluteTolerance.map((a, i) =>
        Number.isFinite(a) ? a / sharpness(i) : 1e300,
      ),
    });
  }

  /**
   * Tells the derivative that the system, as it now is, has at (t [s], y): a span or step beginning there does not
   * ask for it again. Whoever changes the system afterwards evaluates it anew and tells that.
   */
  know(t: number, y: number[], rates: number[]): void {
    this.#knownTime = t;
    for (let i = 0; i < y.length; i++) {
      this.#knownState[i] = y[i];
      this.#knownRates[i] = rates[i];
    }
  }

  #isKnown(t: number, y: number[]): boolean {
    if (t !== this.#knownTime) return false;
    for (let i = 0; i < y.length; i++) if (y[i] !== this.#knownState[i]) return false;
    return true;
  }

  #rates(t: number, y: number[], out: number[]): void {
    if (this.#isKnown(t, y)) {
      for (let i = 0; i < out.length; i++) out[i] = this.#knownRates[i];
      return;
    }
    if (++this.evaluations > this.#ceiling) {
      throw new IntegrationError(
        `run at ${t.toFixed(1)} s - expected at most ${this.#ceiling} evaluations - got more - ` +
          'shorten the run, or look for a control that switches without a dead band',
      );
    }
    this.#equations.rates(t, y, out);
    let sum = 0;
    for (let i = 0; i < out.length; i++) sum += out[i];
    if (!Number.isFinite(sum)) this.#complain(t, out);
  }

  #complain(t: number, out: number[]): never {
    const i = out.findIndex((v) => !Number.isFinite(v));
    throw new IntegrationError(
      `${this.#equations.nameOf(i)} at ${t.toFixed(1)} s - expected a finite rate of change - got ${out[i]} - ` +
        'please report the scenario: the checks on its input should have caught this',
    );
  }

  /**
   * Integrates from t0 to t1 (0 <= t0 < t1), calling `onStep` after every accepted step. If `onStep` returns
   * a time inside the step, integration stops there with the interpolated state.
   *
   * @param y state at t0; overwritten with the state at the time reached
   * @param firstStep first step to try [s]
   * @param longestStep no step is longer [s]
   * @returns the time reached [s] and the step to start the next span with [s]
   */
  advance(
    t0: number,
    y: number[],
    t1: number,
    firstStep: number,
    onStep: (step: Step) => number | undefined,
    longestStep = LONGEST_STEP,
  ): { time: number; step: number } {
    if (!(t0 >= 0 && t1 > t0)) {
      throw new IntegrationError(
        `run - expected a span forward in time - got ${t0} s to ${t1} s - report this`,
      );
    }
    if (this.#busy)
      throw new IntegrationError('integrator - expected one span at a time - got two - report this');
    this.#busy = true;
    try {
      this.#ceiling = Math.min(this.#budget, this.evaluations + MOST_IN_A_SPAN);
      const solver = this.#solver;
      solver.options.initialStepSize = firstStep;
      solver.options.maxStepSize = Math.min(longestStep, t1 - t0);
      // After a first step is rejected the package reads a step size it may not have computed: NaN, or an old one.
      solver.hh.fill(LONGEST_STEP);
      let before = y.slice();
      let next = firstStep;
      // Told an end, the package takes two steps at least: here it is told none, and each step's bound is what is left.
      for (const { x0, x1, y: after } of solver.solutionSegments(t0, before)) {
        this.steps++;
        const proposed = this.#proposal(x1 - x0);
        const over = t1 - x1 <= ROUNDING * t1;
        next = over ? Math.max(next, proposed) : proposed;
        const end = over ? t1 : x1;
        const stop = onStep(this.#stepOf(x0, end, before, after));
        if (stop !== undefined && stop < end) {
          this.#stepOf(x0, end, before, after).at(stop, y);
          return { time: stop, step: next };
        }
        before = after;
        if (over) break;
        solver.hMax = Math.min(longestStep, t1 - x1);
      }
      for (let i = 0; i < y.length; i++) y[i] = before[i];
      return { time: t1, step: next };
    } finally {
      this.#busy = false;
    }
  }

  /** The step that the error of the one just taken allows [s]: the package's own rule, without the end of the span. */
  #proposal(step: number): number {
    const allowed = 0.94 * Math.cbrt(0.65 / this.#solver.err);
    return step * Math.min(MOST_GROWTH, allowed);
  }

  #stepOf(t0: number, t1: number, y0: number[], y1: number[]): Step {
    const f0 = this.#solver.dz;
    const f1 = this.#f1;
    const h = t1 - t0;
    let known = false;
    return {
      t0,
      t1,
      y0,
      y1,
      at: (t, out) => {
        if (!known) {
          this.#rates(t1, y1, f1);
          known = true;
        }
        const u = (t - t0) / h;
        const v = 1 - u;
        const a = v * v * (1 + 2 * u);
        const b = u * u * (3 - 2 * u);
        const c = h * u * v * v;
        const d = -h * u * u * v;
        for (let i = 0; i < y0.length; i++) out[i] = a * y0[i] + b * y1[i] + c * f0[i] + d * f1[i];
        return out;
      },
      near: (t, out) => {
        const s = t - t0;
        const u = s / h;
        for (let i = 0; i < y0.length; i++) {
          out[i] = y0[i] + f0[i] * s + (y1[i] - y0[i] - f0[i] * h) * u * u;
        }
        return out;
      },
    };
  }
}
