/**
 * Seeded chance: the same seed gives the same numbers on every machine. Nothing in `sim` draws from any
 * other source.
 */
import { cosine, sine } from './alike.ts';

/** Next number in [0, 1). */
export type Uniform = () => number;

/**
 * Small fast counting generator with 128 bits of state (three chaotic words and a counter, so that no seed
 * has a period below 2^32); passes the usual statistical batteries.
 *
 * @param seed any number; only its lower 32 bits count (a fraction is cut off)
 * @returns generator of numbers in [0, 1), steps of 2^-32
 * @source Doty-Humphrey, generator "sfc32" (public domain, PractRand); seeding by the splitmix32 finaliser;
 *   both from memory; uniformity, spread and repeatability are tested
 */
export function seededRandom(seed: number): Uniform {
  const next = splitMix(seed | 0);
  let a = next();
  let b = next();
  let c = next();
  let counter = 1;
  const step = (): number => {
    const out = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + out) | 0;
    return (out >>> 0) / 4294967296;
  };
  for (let i = 0; i < 12; i++) step();
  return step;
}

function splitMix(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let z = state ^ (state >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
}

/**
 * Normal deviates (mean 0, standard deviation 1) from uniform ones, in pairs:
 * sqrt(-2 ln u) cos(2 pi v) and the same with sin.
 *
 * @source Box & Muller 1958 (from memory); mean, spread and tails are tested
 */
export function normalDeviates(uniform: Uniform): () => number {
  let kept: number | undefined;
  return () => {
    if (kept !== undefined) {
      const out = kept;
      kept = undefined;
      return out;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    kept = radius * sine(angle);
    return radius * cosine(angle);
  };
}

/** Shuffles `items` in place, every order equally likely (Fisher & Yates). */
export function shuffle<T>(items: T[], uniform: Uniform): T[] {
  for (let i = items.length - 1; i > 0; i--) {
    const j = Math.floor(uniform() * (i + 1));
    [items[i], items[j]] = [items[j], items[i]];
  }
  return items;
}

/** Hypercubes drawn before the least correlated is kept. */
const CANDIDATES = 16;

/**
 * Points that fill the unit cube evenly: a Latin hypercube. In every dimension each of the n equal slices
 * holds exactly one point, at a random place in it. Of 16 such hypercubes the one with the smallest largest
 * correlation between two dimensions is kept, so that effects of two inputs are not confounded by chance.
 *
 * @param n points, 1..100 000
 * @param dims numbers per point, 1..100
 * @param seed as for `seededRandom`
 * @returns n points of `dims` numbers in (0, 1)
 * @source McKay, Beckman & Conover 1979 (from memory); the property is tested
 */
export function spaceFilling(n: number, dims: number, seed: number): Float64Array[] {
  if (
    !(Number.isInteger(n) && n >= 1 && n <= 100_000 && Number.isInteger(dims) && dims >= 1 && dims <= 100)
  ) {
    throw new RangeError(
      `spaceFilling - expected 1 to 100000 points of 1 to 100 numbers - got ${n} of ${dims} - ask for fewer`,
    );
  }
  const uniform = seededRandom(seed);
  let best: Float64Array[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < (dims === 1 ? 1 : CANDIDATES); c++) {
    const columns = Array.from({ length: dims }, () => latinColumn(n, uniform));
    const worst = largestCorrelation(columns);
    if (worst < least) {
      least = worst;
      best = columns;
    }
  }
  return Array.from({ length: n }, (_, i) => Float64Array.from(best, (column) => column[i]));
}

function latinColumn(n: number, uniform: Uniform): Float64Array {
  const slices = shuffle(
    Array.from({ length: n }, (_, i) => i),
    uniform,
  );
  // The half step of the generator's grid keeps a point off the slice's edges, 0 and 1 among them.
  return Float64Array.from(slices, (slice) => (slice + uniform() * (1 - 2 ** -20) + 2 ** -21) / n);
}

function largestCorrelation(columns: Float64Array[]): number {
  let worst = 0;
  for (let i = 0; i < columns.length; i++) {
    for (let j = 0; j < i; j++) worst = Math.max(worst, Math.abs(correlation(columns[i], columns[j])));
  }
  return worst;
}

/**
 * Correlation coefficient of two columns of equal length [-1..1]; 0 when either does not vary.
 */
export function correlation(x: ArrayLike<number>, y: ArrayLike<number>): number {
  const n = x.length;
  let sx = 0;
  let sy = 0;
  for (let i = 0; i < n; i++) {
    sx += x[i];
    sy += y[i];
  }
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let i = 0; i < n; i++) {
    const dx = x[i] - sx / n;
    const dy = y[i] - sy / n;
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}
