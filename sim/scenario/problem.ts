/** What is wrong with a file, in the house's one shape, and how a found value is shown in it. */
import { quote } from './calendar.ts';

export interface Problem {
  /** Where in the file: `coils[0].tube.size`; the empty text is the file as a whole. */
  path: string;
  expected: string;
  got: string;
  fix: string;
}

/** Something worth saying about a file that is not wrong. */
export interface Note {
  path: string;
  text: string;
}

/** One line: where - expected - got - what to do. */
export function problemLine({ path, expected, got, fix }: Problem): string {
  return `${path || 'the file'} - expected ${expected} - got ${got} - ${fix}`;
}

/** `coils[0].tube.size` from its steps; a key that is no plain word, or longer than any there is, is quoted and cut. */
export function pathText(steps: readonly PropertyKey[]): string {
  let text = '';
  for (const step of steps) {
    if (typeof step === 'number') text += `[${step}]`;
    else if (/^[A-Za-z_]\w{0,59}$/.test(String(step))) text += (text && '.') + String(step);
    else text += `[${quote(String(step))}]`;
  }
  return text;
}

/** The steps of a path: `coils[0].rolls` is coils, 0, rolls. The inverse of `pathText` for plain words. */
export function pathSteps(path: string): (string | number)[] {
  const steps: (string | number)[] = [];
  for (const [, name, index] of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    steps.push(index === undefined ? name : Number(index));
  }
  return steps;
}

/** A value of any kind, short enough for a message. Never throws. */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'number' || typeof value === 'boolean') return `the ${typeof value} ${value}`;
  if (Array.isArray(value)) return value.length === 1 ? 'a list of 1' : `a list of ${value.length}`;
  return typeof value === 'object' ? 'an object { ... }' : `a ${typeof value}`;
}
