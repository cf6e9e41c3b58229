/**
 * Values from outside, in checks.json, held against the tool's functions.
 *
 * A block names the checks it answers by the beginning of their ids and says what the tool computes for each, in the
 * shape of the check's `expected`. `checks.test.ts` compares every leaf and proves that nothing was left out.
 * To add a block: write blocks/<name>.ts, list it in blocks/index.ts, and take its ids off `awaited` there.
 */
import table from './checks.json' with { type: 'json' };

/** A leaf of an expected value. */
export type Leaf = number | string | boolean | null;

export interface Check {
  id: string;
  what: string;
  inputs: Record<string, unknown>;
  expected: unknown;
  units: string;
  tol: number;
  tol_kind: 'rel' | 'abs' | 'exact';
  source: string;
  how: string;
  provenance: string;
}

export const checks = table.checks as unknown as Check[];

/** What the tool computes for a check, shaped as its `expected`; leaves that are excused may be missing. */
export type Answer = (check: Check) => unknown;

export interface Block {
  name: string;
  /** By the beginning of an id; the longest that fits decides. */
  answers: Record<string, Answer>;
  /** Values compared are never fewer than this. */
  atLeast: number;
}

/** A value of checks.json that the tool does not compute, and why. */
export interface Excuse {
  /** Beginning of the ids. */
  ids: string;
  /** Leaf paths, or '*' for all of the check. */
  leaves: string[] | '*';
  because: string;
}

/** A numeric input by name. */
export function input(check: Check, name: string): number {
  const value = check.inputs[name];
  if (typeof value !== 'number') {
    throw new Error(`${check.id} - expected a number as input ${name} - got ${value} - look in checks.json`);
  }
  return value;
}

/** Leaves of a value by path: `poa.perez.Dec`; a bare value has the path `value`. */
export function leavesOf(value: unknown, path = ''): Map<string, Leaf> {
  const leaves = new Map<string, Leaf>();
  if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) {
      if (part === undefined) continue;
      for (const [below, leaf] of leavesOf(part, path === '' ? key : `${path}.${key}`))
        leaves.set(below, leaf);
    }
  } else {
    leaves.set(path === '' ? 'value' : path, value as Leaf);
  }
  return leaves;
}

/** Length of the block's key that fits an id best, 0 if none does. */
function keyLength(block: Block, id: string): number {
  return Math.max(0, ...Object.keys(block.answers).map((key) => (id.startsWith(key) ? key.length : 0)));
}

/** The checks a block answers. */
export function checksOf(block: Block): Check[] {
  return checks.filter(({ id }) => keyLength(block, id) > 0);
}

/** What the block computes for a check, as leaves. */
export function answerOf(block: Block, check: Check): Map<string, Leaf> {
  const length = keyLength(block, check.id);
  return leavesOf(block.answers[check.id.slice(0, length)](check));
}

/** How far a computed leaf is off, as a multiple of the check's tolerance; above 1 it fails. */
export function offBy(check: Check, got: Leaf | undefined, expected: Leaf): number {
  if (typeof expected !== 'number' || typeof got !== 'number')
    return got === expected ? 0 : Number.POSITIVE_INFINITY;
  const off = Math.abs(got - expected);
  if (check.tol_kind === 'exact') return off === 0 ? 0 : Number.POSITIVE_INFINITY;
  const allowed = check.tol_kind === 'abs' ? check.tol : check.tol * Math.abs(expected);
  // Rounding of a double, for expected values that are 0 or stand on the edge.
  return Number.isNaN(off) ? Number.POSITIVE_INFINITY : off / (allowed + 1e-12 * Math.abs(expected) + 1e-15);
}

/** The excuses that cover a check. */
export function excusesOf(excuses: Excuse[], check: Check): Excuse[] {
  return excuses.filter(({ ids }) => check.id.startsWith(ids));
}
