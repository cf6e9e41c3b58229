/** An error on the way to a result, in the one shape that a person reads. */
import type { Problem } from '../../../sim/index.ts';
import { workWords } from '../../words/index.ts';

export function failure(error: unknown): Problem {
  return {
    path: '',
    expected: workWords.expected,
    got: error instanceof Error ? error.message : String(error),
    fix: workWords.change,
  };
}
