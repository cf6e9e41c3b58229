/**
 * Declarations for odex 3.0.0-rc.4, which ships none; only what `integrator.ts` uses. The package's own
 * source is TypeScript, but would be checked under this project's stricter flags.
 */
export type Derivative = (x: number, y: number[], out: number[]) => void;

export interface Options {
  maxSteps: number;
  initialStepSize: number;
  maxStepSize: number;
  maxExtrapolationColumns: number;
  /** Bounds how much longer the next step may be: with two columns `stepSizeFac1 ** (-1/3)` times. */
  stepSizeFac1: number;
  /** Bounds how much shorter. */
  stepSizeFac2: number;
  stepSafetyFactor1: number;
  stepSafetyFactor2: number;
  /** Machine precision; also the least square of scaled rates that the stiffness check heeds. */
  uRound: number;
  denseOutput: boolean;
  relativeTolerance: number | number[];
  absoluteTolerance: number | number[];
  rawFunction: boolean;
}

export interface SolutionSegment {
  x0: number;
  x1: number;
  y: number[];
}

export class Solver {
  constructor(f: Derivative, n: number, options?: Partial<Options>);
  /** Read at the start of every solve, so that a reused solver can be given another first step. */
  options: Options;
  /** Derivative at the start of the segment last yielded (kept by the solver when dense output is off). */
  dz: number[];
  /** Step size it would choose next, by column of the extrapolation; kept from one solve to the next. */
  hh: number[];
  /** Evaluations up to a column, and those a second that its next step would cost. */
  a: number[];
  w: number[];
  /** Error of the step last tried, in tolerances. */
  err: number;
  /** No next step is longer; may be changed between two. */
  hMax: number;
  /** Tries column j of a step h; false if the step is to be given up. Sets `err`, `hh` and `w` from the second on. */
  midEx(j: number, h: number, x: number, y: number[], rates: number[]): boolean;
  solutionSegments(
    x: number,
    y0: number[],
    xEnd?: number,
  ): Generator<SolutionSegment, undefined, boolean | undefined>;
}
