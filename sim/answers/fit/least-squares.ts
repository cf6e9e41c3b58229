/** Least squares with a prior on every unknown, for models that are dear to evaluate: whole runs of the simulation. */

/** Solves for u, in units in which the prior of each unknown is normal with mean 0 and standard deviation 1. */
export interface LeastSquares {
  /** Unknowns. */
  size: number;
  /** Residuals of several trials at once, each in units of the readings' doubt; null where a trial cannot be run. */
  residuals: (trials: readonly (readonly number[])[]) => Promise<(number[] | null)[]>;
  least: readonly number[];
  greatest: readonly number[];
}

export interface Solution {
  u: number[];
  residuals: number[];
  /** d residual / d unknown, by reading. */
  slopes: number[][];
  /** False where the rounds ran out before the steps had become small. */
  settled: boolean;
}

const MOST_ROUNDS = 8;
/** A step no longer than this share of every prior's deviation ends the search. */
const SMALL_STEP = 0.02;
/** Difference for slopes, in deviations of the prior: far above the run's own noise, well inside its curvature. */
const DIFFERENCE = 0.2;
const LONGEST_STEP = 2;

/**
 * Minimises sum r(u)^2 + sum u^2 by damped steps (J'J + I + d diag(J'J)) s = -(J'r + u); the damping d grows
 * tenfold after a step that makes the sum larger, which is not taken, and shrinks after one that does not.
 * Trials of one round are independent of each other and may run side by side.
 *
 * @returns null where the trial at the start cannot be run, or was stopped
 * @source Levenberg 1944 and Marquardt 1963 (from memory); tested on problems with known answers
 */
export async function solve(problem: LeastSquares, start: readonly number[]): Promise<Solution | null> {
  let u = [...start];
  let damping = 1e-3;
  let residuals = (await problem.residuals([u]))[0];
  if (!residuals) return null;
  let slopes = await slopesAt(problem, u, residuals);
  for (let round = 0; slopes && round < MOST_ROUNDS; round++) {
    const step = stepFrom(u, residuals, slopes, damping);
    const next = u.map((at, i) =>
      Math.min(problem.greatest[i], Math.max(problem.least[i], at + clamp(step[i], LONGEST_STEP))),
    );
    const moved = Math.max(...next.map((each, i) => Math.abs(each - u[i])));
    if (moved < SMALL_STEP) return { u, residuals, slopes, settled: true };
    const tried = (await problem.residuals([next]))[0];
    if (!tried || cost(tried, next) > cost(residuals, u)) {
      damping *= 10;
      continue;
    }
    damping /= 10;
    [u, residuals] = [next, tried];
    slopes = await slopesAt(problem, u, residuals);
  }
  return slopes ? { u, residuals, slopes, settled: false } : null;
}

/** d residual / d unknown by forward differences, inwards at a bound; null if a trial failed. */
export async function slopesAt(
  { size, residuals: run, greatest }: LeastSquares,
  u: readonly number[],
  base: readonly number[],
): Promise<number[][] | null> {
  const differences = Array.from({ length: size }, (_, i) =>
    u[i] + DIFFERENCE > greatest[i] ? -DIFFERENCE : DIFFERENCE,
  );
  const trials = differences.map((d, i) => u.map((at, k) => (k === i ? at + d : at)));
  const moved = await run(trials);
  if (moved.some((each) => each === null)) return null;
  return base.map((r, m) => differences.map((d, i) => ((moved[i] as number[])[m] - r) / d));
}

/** J'J + I: what readings and priors together say about the unknowns. */
export function information(slopes: readonly (readonly number[])[], size: number): number[][] {
  return Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, k) =>
      slopes.reduce((sum, row) => sum + row[i] * row[k], i === k ? 1 : 0),
    ),
  );
}

/**
 * Inverse of a symmetric positive definite matrix, as a covariance is of information.
 * @throws RangeError where it is not one
 */
export function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const columns = matrix.map((_, k) =>
    solveSymmetric(
      matrix,
      matrix.map((_, i) => (i === k ? 1 : 0)),
    ),
  );
  return matrix.map((_, i) => matrix.map((_, k) => columns[k][i]));
}

function stepFrom(
  u: readonly number[],
  r: readonly number[],
  slopes: readonly (readonly number[])[],
  damping: number,
): number[] {
  const matrix = information(slopes, u.length);
  const damped = matrix.map((row, i) => row.map((x, k) => (i === k ? x * (1 + damping) : x)));
  const down = u.map((at, i) => -slopes.reduce((sum, row, m) => sum + row[i] * r[m], at));
  return solveSymmetric(damped, down);
}

/** Solves A x = b for symmetric positive definite A by the factors of Cholesky. */
function solveSymmetric(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const n = b.length;
  const lower = a.map(() => new Array<number>(n).fill(0));
  for (let i = 0; i < n; i++) {
    for (let k = 0; k <= i; k++) {
      let rest = a[i][k];
      for (let j = 0; j < k; j++) rest -= lower[i][j] * lower[k][j];
      if (i !== k) lower[i][k] = rest / lower[k][k];
      else if (rest > 0) lower[i][i] = Math.sqrt(rest);
      else
        throw new RangeError(
          `least squares - expected a positive definite matrix - got ${rest} on the diagonal - scale the unknowns`,
        );
    }
  }
  const x = [...b];
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) x[i] -= lower[i][j] * x[j];
    x[i] /= lower[i][i];
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) x[i] -= lower[j][i] * x[j];
    x[i] /= lower[i][i];
  }
  return x;
}

function cost(r: readonly number[], u: readonly number[]): number {
  return [...r, ...u].reduce((sum, each) => sum + each * each, 0);
}

function clamp(x: number, most: number): number {
  return Math.min(most, Math.max(-most, x));
}
